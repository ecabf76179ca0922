#include "model/drawing/report_pages.h"

#include <algorithm>

namespace model {

namespace {

constexpr double kGap = 4;      // between columns, border and words, mm
constexpr double kHeading = 3;  // height of its capitals

}  // namespace

ReportPages::ReportPages(Paper paper)
    : blank_(blankSheet(paper, paper == Paper::A3 ? Lie::Landscape : Lie::Portrait)),
      paper_(nameOf(paper)),
      columns_(paper == Paper::A3 ? 2 : 1),
      title_(paper == Paper::A3 ? 104 : 96) {}

TablePlace ReportPages::next(Drawing& drawing) {
  if (drawing.sheets.empty() || column_ == columns_) {
    drawing.sheets.push_back(blank_);
    column_ = 0;
  }
  const bool first = drawing.sheets.size() == 1, last = column_ + 1 == columns_;
  const Area border = insideBorder(blank_);
  const double width = (border.width() - kGap * double(columns_ + 1)) / double(columns_);
  const double left = border.low.x + kGap + double(column_) * (width + kGap);
  const double foot = !first ? kTitleStripHeight : last ? kTitleBlockHeight : 0;
  ++column_;
  return {drawing.sheets.size() - 1,
          {{left, border.low.y + foot + kGap}, {left + width, border.high.y - kGap}}};
}

Area ReportPages::besideTitle() const {
  const Area border = insideBorder(blank_);
  const double column = (border.width() - kGap) / double(columns_);
  return {{border.high.x - column, border.low.y},
          {border.high.x - title_, border.low.y + kTitleBlockHeight}};
}

void ReportPages::finish(Drawing& drawing, TitleBlock block, const TextWidth& widthOf) const {
  if (block.scale.empty()) block.scale = "report at " + paper_;
  for (size_t i = 0; i < drawing.sheets.size(); ++i) {
    block.sheet = std::to_string(i + 1) + " of " + std::to_string(drawing.sheets.size());
    if (i == 0)
      drawTitleBlock(drawing.sheets[i], block, title_, widthOf);
    else
      drawTitleStrip(drawing.sheets[i], block, widthOf);
  }
}

void drawStatement(Drawing& drawing, const ReportPages& pages, const std::string& what,
                   const std::string& marks, const TextWidth& widthOf) {
  const Area area = pages.besideTitle();
  const auto none = [&](Drawing&) { return TablePlace{0, area}; };
  TablePlace place{0, {area.low + Vec2{0, 1}, area.high - Vec2{2, 1.5}}};
  place = drawParagraph(drawing, "The designer decides.", place, none, {2.1, true}, 1.7, widthOf);
  place = drawParagraph(drawing, what, place, none, {1.8, false}, 1.7, widthOf);
  place.area.high.y -= 1;
  drawParagraph(drawing, marks, place, none, {1.8, false}, 1.7, widthOf);
}

ReportFlow::ReportFlow(Drawing& drawing, ReportPages& pages, const TextWidth& widthOf)
    : drawing_(drawing), pages_(pages), widthOf_(widthOf) {
  place_ = onwards()(drawing_);
}

std::function<TablePlace(Drawing&)> ReportFlow::onwards(double indent) {
  return [this, indent](Drawing& drawing) {
    TablePlace place = pages_.next(drawing);
    top_ = place.area.high.y;
    place.area.low.x += indent;
    return place;
  };
}

void ReportFlow::gap(double height) {
  if (place_.area.high.y < top_) place_.area.high.y -= std::min(height, place_.area.height());
}

void ReportFlow::keep(double height) {
  if (place_.area.height() < height && place_.area.high.y < top_) place_ = onwards()(drawing_);
}

void ReportFlow::heading(const std::string& words, double keep) {
  gap(3);
  this->keep(keep + kHeading);
  paragraph(words, {kHeading, true});
  gap(1);
}

void ReportFlow::paragraph(const std::string& words, const Letters& letters) {
  place_ = drawParagraph(drawing_, words, place_, onwards(), letters, kLeading, widthOf_);
  gap(0.6 * letters.size);
}

void ReportFlow::item(const std::string& mark, const std::string& words, const Letters& letters) {
  keep(2 * kLeading * letters.size);
  Text text;
  text.layer = Layer::Tables;
  text.text = mark;
  text.size = letters.size;
  text.bold = true;
  text.up = Up::Top;
  text.at = {place_.area.low.x, place_.area.high.y};
  if (!mark.empty()) drawing_.sheets[place_.sheet].texts.push_back(text);
  TablePlace beside = place_;
  beside.area.low.x += kIndent;
  place_ = drawParagraph(drawing_, words, beside, onwards(kIndent), letters, kLeading, widthOf_);
  place_.area.low.x -= kIndent;
  gap(0.6 * letters.size);
}

void ReportFlow::tables(const std::vector<SheetTable>& tables) {
  std::vector<SheetTable> some = tables;
  std::erase_if(some, [](const SheetTable& table) { return table.rows.empty(); });
  if (!some.empty()) place_ = drawTables(drawing_, some, place_, onwards(), widthOf_);
}

TablePlace ReportFlow::room(double height) {
  keep(height);
  TablePlace taken = place_;
  taken.area.low.y = taken.area.high.y - height;
  place_.area.high.y = taken.area.low.y;
  return taken;
}

}  // namespace model
