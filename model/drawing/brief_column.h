// Parts one below another in a column that must hold them: whole rows are left out rather than
// anything run over, and where they are is said. Private to this folder.
#pragma once

#include <string>
#include <vector>

#include "model/drawing/sheet_table.h"

namespace model {

enum class BriefLook {
  Prose,  // the first cell of each row, wrapped over the column
  List,   // a number or mark, then words
  Table,  // with headings
  Boxes   // the same with upright rules and higher rows, to be written in
};

struct BriefPart {
  std::string heading;
  BriefLook look = BriefLook::Prose;
  SheetTable table;   // its title and note are not used
  std::string more;   // the command that tells all of it
  size_t blanks = 0;  // Boxes: rows to write in by hand, when there is room
};

// A part of words alone; one without words is to be left out by the caller.
BriefPart briefWords(const std::string& heading, const std::string& words, const std::string& more);
// Numbered from 1, or each with the same mark.
BriefPart briefList(const std::string& heading, const std::vector<std::string>& items,
                    const std::string& mark, const std::string& more);

class BriefColumn {
 public:
  // `letters`: height of capitals, mm. `widthOf` must outlive it.
  BriefColumn(std::vector<BriefPart> parts, double width, double letters, const TextWidth& widthOf);

  // Chooses the rows that are drawn: each part in turn gets one more as long as all go into the
  // height. True when none is left out.
  bool fit(double height);
  // Rows that fit() left out.
  size_t leftOut() const;
  // From the area's upper edge; it must be as wide as was said, and as high as fit() was told.
  // Returns the level that it comes down to.
  double draw(Sheet& sheet, const Area& area) const;

 private:
  struct Row {
    std::vector<std::vector<std::string>> cells;  // lines of each
    double height = 0;
  };
  struct Laid {
    BriefPart part;
    std::vector<double> widths;
    std::string heading;
    Row heads;
    std::vector<Row> rows;
    size_t shown = 0, blanks = 0;
    double blankHeight = 0;
  };

  double line() const;
  Row rowOf(const Laid& laid, const std::vector<std::string>& texts, bool bold) const;
  double heightOf(const Laid& laid, size_t shown, size_t blanks) const;
  double height() const;
  void drawRow(Sheet& sheet, const Vec2& at, const Laid& laid, const Row& row, bool bold) const;
  std::string moreWords(const Laid& laid) const;

  std::vector<Laid> parts_;
  double width_, letters_;
  const TextWidth& widthOf_;
};

}  // namespace model
