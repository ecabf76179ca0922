// What the booklets of the programme share: their pages, the contents, the head of a stage's page.
// Private to this folder.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "model/drawing/crew_brief.h"
#include "model/drawing/report_pages.h"

namespace model {

// Free inside the border of an A4 page, above the strip along its foot.
Area bookletArea(const Sheet& sheet);

// "Stage 3 of 40", the name in one or two lines, and at the right what is said of it, the first
// bold. A rule beneath. Returns the level that it comes down to, the same for every name.
double drawStageHead(Sheet& sheet, const Area& area, const std::string& number,
                     const std::string& name, const std::vector<std::string>& beside,
                     const TextWidth& widthOf);

// As large as it goes into the area, with a thin frame.
void drawPicture(Sheet& sheet, const Area& area, const Jpeg& jpeg);

// Words in a frame whose lower edge is the area's; the title stands before them. At most six lines,
// then `more` says which command tells the rest. Returns the level of its upper edge.
double drawFramed(Sheet& sheet, const Area& area, const std::string& title,
                  const std::string& words, double pen, const std::string& more,
                  const TextWidth& widthOf);

struct BookletFront {
  std::string title, words;
  bool crews = false;                // a column of them in the contents
  std::vector<SheetTable> tables;    // after the contents
  std::vector<std::string> names{};  // of the stages, where they are called otherwise
};

class Booklet {
 public:
  Booklet(const Model& model, const std::string& what, const BookletOptions& options,
          const TextWidth& widthOf);

  // Title, words, and the stages with their dates and pages. Nothing for a single stage.
  void contents(const BookletFront& front);
  void pages(const std::function<void(Sheet&, size_t stage)>& draw);
  // With its border, title block and page numbers.
  Drawing finish();

 private:
  Drawing drawContents(const BookletFront& front, size_t before) const;

  const Model& model_;
  BookletOptions options_;
  const TextWidth& widthOf_;
  TitleBlock block_;
  Drawing drawing_;
};

}  // namespace model
