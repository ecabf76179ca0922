// The pages of a report and what flows down their columns. Private to this folder.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "model/drawing/paper.h"
#include "model/drawing/paragraph.h"
#include "model/drawing/sheet_table.h"
#include "model/drawing/title_block.h"

namespace model {

// A4 upright with one column, A3 lying with two: the same column of words on either. The first page
// has the title block at its foot, the others a strip.
class ReportPages {
 public:
  explicit ReportPages(Paper paper);

  // The next column; the first call begins the first page.
  TablePlace next(Drawing& drawing);

  // Beside the title block on the first page.
  Area besideTitle() const;

  // Border and title on every page, once all pages are there.
  void finish(Drawing& drawing, TitleBlock block, const TextWidth& widthOf) const;

 private:
  Sheet blank_;
  std::string paper_;
  size_t columns_ = 1, column_ = 0;
  double title_ = 0;  // width of its block
};

// Beside the title block of what goes to the designer: that they decide, what it is, and how its
// marks read.
void drawStatement(Drawing& drawing, const ReportPages& pages, const std::string& what,
                   const std::string& marks, const TextWidth& widthOf);

// Headings, paragraphs, tables and boxes one below another.
class ReportFlow {
 public:
  ReportFlow(Drawing& drawing, ReportPages& pages, const TextWidth& widthOf);

  // Not left alone at a foot: at least `keep` mm follow it in the column.
  void heading(const std::string& words, double keep = 30);
  void paragraph(const std::string& words, const Letters& letters = kBody);
  // With a number or mark in front of its first line.
  void item(const std::string& mark, const std::string& words, const Letters& letters = kBody);
  void tables(const std::vector<SheetTable>& tables);
  void gap(double height);
  // Goes on to the next column unless that much is left, or the column is new.
  void keep(double height);
  // A place of that height that is not split.
  TablePlace room(double height);

  double width() const { return place_.area.width(); }
  double left() const { return place_.area.height(); }  // of the column
  Drawing& drawing() { return drawing_; }

  static constexpr Letters kBody{2.1, false};
  static constexpr double kLeading = 1.75;
  static constexpr double kIndent = 12;  // of what stands behind a mark, mm

 private:
  // What asks for the next column, and for one that is indented.
  std::function<TablePlace(Drawing&)> onwards(double indent = 0);

  Drawing& drawing_;
  ReportPages& pages_;
  const TextWidth& widthOf_;
  TablePlace place_;
  double top_ = 0;  // of the column, to know a new one
};

}  // namespace model
