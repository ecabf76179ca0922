#include "model/drawing/brief_column.h"

#include <algorithm>
#include <numeric>

#include "model/drawing/wrap_text.h"

namespace model {

namespace {

constexpr double kLeading = 1.7;   // from line to line, in heights of capitals
constexpr double kHeading = 1.08;  // capitals of a heading, in those of the words
constexpr double kBetween = 2.6;   // parts, mm
constexpr double kBox = 6.0;       // least height of a row to write in by hand, mm
constexpr double kHand = 12;       // least width of one
constexpr double kFirst = 26;      // least width of what stands before them
constexpr double kBetweenItems = 0.5;
constexpr size_t kMostLines = 4;  // of one cell
const Pen kRule{kPen025, LineType::Continuous}, kFine{kPen013, LineType::Continuous};

// What is to be written in takes what is left, and is wide enough for a hand as far as the first
// column can give way.
void widenBoxes(const SheetTable& table, double left, std::vector<double>& widths) {
  std::vector<size_t> empty;
  for (size_t i = 1; i < widths.size(); ++i)
    if (std::all_of(table.rows.begin(), table.rows.end(),
                    [&](const auto& row) { return i >= row.size() || row[i].empty(); }))
      empty.push_back(i);
  if (table.rows.empty()) {  // all of it is
    widths[0] += left / 2;
    left /= 2;
  }
  if (empty.empty()) {
    widths[0] += left;
    return;
  }
  for (const size_t i : empty) {
    widths[i] += left / double(empty.size());
    const double lacks = std::clamp(kHand - widths[i], 0.0, std::max(0.0, widths[0] - kFirst));
    widths[i] += lacks;
    widths[0] -= lacks;
  }
}

bool hasHeads(BriefLook look) { return look == BriefLook::Table || look == BriefLook::Boxes; }

}  // namespace

BriefPart briefWords(const std::string& heading, const std::string& words,
                     const std::string& more) {
  BriefPart part{heading, BriefLook::Prose, {}, more, 0};
  part.table.columns = {{"", false}};
  part.table.rows = {{words}};
  return part;
}

BriefPart briefList(const std::string& heading, const std::vector<std::string>& items,
                    const std::string& mark, const std::string& more) {
  BriefPart part{heading, BriefLook::List, {}, more, 0};
  part.table.columns = {{"", false}, {"", false}};
  for (size_t i = 0; i < items.size(); ++i)
    part.table.rows.push_back({mark.empty() ? std::to_string(i + 1) : mark, items[i]});
  return part;
}

BriefColumn::BriefColumn(std::vector<BriefPart> parts, double width, double letters,
                         const TextWidth& widthOf)
    : width_(width), letters_(letters), widthOf_(widthOf) {
  for (BriefPart& part : parts) {
    Laid laid;
    laid.part = std::move(part);
    const SheetTable& table = laid.part.table;
    laid.heading = shortened(laid.part.heading, width_, {kHeading * letters_, true}, widthOf_);
    laid.blankHeight = kBox;
    if (laid.part.look == BriefLook::Prose) {
      laid.widths = {width_ + 2 * kCellPad};
      // A line is a row.
      for (const auto& text : table.rows)
        for (const std::string& each : wrapped(text.at(0), width_, {letters_, false}, widthOf_))
          laid.rows.push_back({{{each}}, line()});
    } else {
      if (laid.part.look == BriefLook::List) {
        const double mark = 2.8 * letters_;
        laid.widths = {mark, width_ - mark};
      } else {
        TableStyleOnSheet style;
        style.letters = letters_;
        laid.widths = columnWidths(table, width_, widthOf_, style);
        const double left = width_ - std::accumulate(laid.widths.begin(), laid.widths.end(), 0.0);
        if (laid.part.look == BriefLook::Boxes)
          widenBoxes(table, std::max(left, 0.0), laid.widths);
        else
          laid.widths[0] += std::max(left, 0.0);
        std::vector<std::string> heads;
        for (const auto& column : table.columns) heads.push_back(column.heading);
        laid.heads = rowOf(laid, heads, true);
      }
      for (const auto& texts : table.rows) laid.rows.push_back(rowOf(laid, texts, false));
    }
    parts_.push_back(std::move(laid));
  }
}

double BriefColumn::line() const { return kLeading * letters_; }

BriefColumn::Row BriefColumn::rowOf(const Laid& laid, const std::vector<std::string>& texts,
                                    bool bold) const {
  Row row;
  size_t most = 1;
  for (size_t i = 0; i < laid.widths.size(); ++i) {
    const double room = laid.widths[i] - 2 * kCellPad;
    const std::string text = i < texts.size() ? texts[i] : "";
    auto lines = wrapped(text, room, {letters_, bold}, widthOf_);
    if (lines.size() > kMostLines) {
      std::string rest;
      for (size_t k = kMostLines - 1; k < lines.size(); ++k)
        rest += (rest.empty() ? "" : " ") + lines[k];
      lines.resize(kMostLines);
      lines.back() = shortened(rest, room, {letters_, bold}, widthOf_);
    }
    most = std::max(most, lines.size());
    row.cells.push_back(std::move(lines));
  }
  row.height = double(most) * line() + kBetweenItems;
  if (laid.part.look == BriefLook::Boxes && !bold) row.height = std::max(row.height, kBox);
  return row;
}

double BriefColumn::heightOf(const Laid& laid, size_t shown, size_t blanks) const {
  double height = kHeading * line() + 0.8;
  if (hasHeads(laid.part.look) && shown + blanks > 0) height += laid.heads.height;
  for (size_t i = 0; i < shown; ++i) height += laid.rows[i].height;
  height += double(blanks) * laid.blankHeight;
  if (shown < laid.rows.size()) height += line();
  return height + kBetween;
}

double BriefColumn::height() const {
  double height = 0;
  for (const Laid& laid : parts_) height += heightOf(laid, laid.shown, laid.blanks);
  return height;
}

bool BriefColumn::fit(double most) {
  for (Laid& laid : parts_) laid.shown = laid.blanks = 0;
  double left = most - height();
  const auto give = [&](Laid& laid, size_t shown, size_t blanks) {
    const double more = heightOf(laid, shown, blanks) - heightOf(laid, laid.shown, laid.blanks);
    if (more > left + 1e-9) return false;
    left -= more;
    laid.shown = shown;
    laid.blanks = blanks;
    return true;
  };
  // All of a part at once where the last of its rows makes room: "and 1 more" takes as much.
  for (bool any = true; any;) {
    any = false;
    for (Laid& laid : parts_) {
      if (laid.shown == laid.rows.size()) continue;
      if (give(laid, laid.shown + 1, 0) ||
          (laid.shown + 2 == laid.rows.size() && give(laid, laid.shown + 2, 0)))
        any = true;
    }
  }
  const bool whole = std::all_of(parts_.begin(), parts_.end(),
                                 [](const Laid& laid) { return laid.shown == laid.rows.size(); });
  if (whole)
    for (bool any = true; any;) {
      any = false;
      for (Laid& laid : parts_)
        if (laid.blanks < laid.part.blanks && give(laid, laid.shown, laid.blanks + 1)) any = true;
    }
  return whole;
}

size_t BriefColumn::leftOut() const {
  size_t rows = 0;
  for (const Laid& laid : parts_) rows += laid.rows.size() - laid.shown;
  return rows;
}

std::string BriefColumn::moreWords(const Laid& laid) const {
  const size_t left = laid.rows.size() - laid.shown;
  const std::string where = laid.part.more.empty() ? "" : ": `" + laid.part.more + "`";
  const std::string words =
      laid.part.look == BriefLook::Prose
          ? "\u2026 all of it" + where
          : (laid.shown == 0 ? std::to_string(left) : "and " + std::to_string(left) + " more") +
                where;
  return shortened(words, width_, {letters_, false}, widthOf_);
}

void BriefColumn::drawRow(Sheet& sheet, const Vec2& at, const Laid& laid, const Row& row,
                          bool bold) const {
  const bool prose = laid.part.look == BriefLook::Prose;
  double x = at.x - (prose || laid.part.look == BriefLook::List ? kCellPad : 0);
  for (size_t i = 0; i < row.cells.size(); ++i) {
    const bool right = !prose && laid.part.table.columns[i].numeric;
    double y = at.y - line() / 2;
    // Beside a higher cell in the middle, so that a figure stands in its box.
    if (laid.part.look == BriefLook::Boxes)
      y -= (row.height - double(row.cells[i].size()) * line()) / 2;
    for (const std::string& words : row.cells[i]) {
      if (!words.empty()) {
        Text text;
        text.layer = Layer::Tables;
        text.text = words;
        text.size = letters_;
        text.bold = bold;
        text.up = Up::Middle;
        text.across = right ? Across::Right : Across::Left;
        text.at = {right ? x + laid.widths[i] - kCellPad : x + kCellPad, y};
        sheet.texts.push_back(text);
      }
      y -= line();
    }
    x += laid.widths[i];
  }
}

double BriefColumn::draw(Sheet& sheet, const Area& area) const {
  double y = area.high.y;
  const double left = area.low.x, right = left + width_;
  const auto rule = [&](const Pen& pen) { sheet.line(Layer::Tables, pen, {left, y}, {right, y}); };
  for (const Laid& laid : parts_) {
    Text heading;
    heading.layer = Layer::Tables;
    heading.text = laid.heading;
    heading.size = kHeading * letters_;
    heading.bold = true;
    heading.up = Up::Middle;
    heading.at = {left, y - kHeading * line() / 2};
    sheet.texts.push_back(heading);
    y -= kHeading * line() + 0.3;
    rule(kRule);
    y -= 0.5;
    const bool table = hasHeads(laid.part.look) && laid.shown + laid.blanks > 0;
    const double top = y;
    if (table) {
      drawRow(sheet, {left, y}, laid, laid.heads, true);
      y -= laid.heads.height;
      rule(kFine);
    }
    for (size_t i = 0; i < laid.shown; ++i) {
      drawRow(sheet, {left, y}, laid, laid.rows[i], false);
      y -= laid.rows[i].height;
      if (table) rule(kFine);
    }
    for (size_t i = 0; i < laid.blanks; ++i) {
      y -= laid.blankHeight;
      rule(kFine);
    }
    if (table && laid.part.look == BriefLook::Boxes) {
      double x = left;
      sheet.line(Layer::Tables, kFine, {x, top}, {x, y});
      for (const double width : laid.widths) {
        x += width;
        sheet.line(Layer::Tables, kFine, {std::min(x, right), top}, {std::min(x, right), y});
      }
    }
    if (laid.shown < laid.rows.size()) {
      Text more;
      more.layer = Layer::Tables;
      more.text = moreWords(laid);
      more.size = letters_;
      more.up = Up::Middle;
      more.at = {left, y - line() / 2};
      sheet.texts.push_back(more);
      y -= line();
    }
    y -= kBetween;
  }
  return y;
}

}  // namespace model
