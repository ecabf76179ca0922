#include "model/drawing/sheet_table.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "model/drawing/paragraph.h"
#include "model/drawing/wrap_text.h"

namespace model {

namespace {

constexpr double kPad = kCellPad;
constexpr double kLine = 1.75;  // from line to line, in heights of capitals
constexpr double kTitleSize = 2.5;
constexpr double kBelowTitle = 2.0;
constexpr double kWhole = 80;  // tables no higher than this are not split, mm
constexpr double kBeside = 8;  // between two narrow tables side by side
constexpr double kSqueezed = 0.65;

class TableDrawer {
 public:
  TableDrawer(Drawing& drawing, TablePlace place,
              const std::function<TablePlace(Drawing&)>& nextPlace, const TextWidth& widthOf,
              const TableStyleOnSheet& style)
      : drawing_(drawing), place_(place), nextPlace_(nextPlace), widthOf_(widthOf), style_(style) {}

  void draw(const SheetTable& table) {
    widths_ = columnWidths(table, place_.area.width(), widthOf_, style_);
    std::vector<double> heights = rowHeights(table);
    const double whole = wholeHeight(table, heights);
    const size_t together = whole <= kWhole ? heights.size() : std::min<size_t>(2, heights.size());
    const double least =
        together == heights.size()
            ? whole
            : headHeight(table) +
                  std::accumulate(heights.begin(), heights.begin() + long(together), 0.0);
    if (!fresh_ && place_.area.height() < least) next(table, heights);
    head(table, false);
    for (size_t i = 0; i < table.rows.size(); ++i) {
      if (place_.area.height() < roomFor(heights, i) && !fresh_) {
        rule(kPen035);
        next(table, heights);
        head(table, true);
      }
      std::vector<std::string> texts = table.rows[i];
      // A row that no place has room for goes on in the next.
      while (place_.area.height() < rowHeight(cellsOf(texts, false))) {
        texts = beginningOfRow(table, std::move(texts));
        rule(kPen035);
        next(table, heights);
        head(table, true);
      }
      row(cellsOf(texts, false), table, false);
      fresh_ = false;
      rule(kPen013);
    }
    rule(kPen035);
    note(table);
    place_.area.high.y -= style_.between;
  }

  // Both in one band, when they are narrow enough and there is height. False: nothing is drawn.
  bool drawBeside(const SheetTable& left, const SheetTable& right) {
    const Area area = place_.area;
    const double all = area.width() - kBeside;
    const auto natural = [&](const SheetTable& table) {
      const auto widths = columnWidths(table, 1e9, widthOf_, style_);
      return std::accumulate(widths.begin(), widths.end(), 0.0);
    };
    const double first = natural(left), second = natural(right);
    // The first as it likes to be; the second may wrap its words a little for it.
    if (first + kSqueezed * second > all) return false;
    const double share = std::max(first, all * first / (first + second));
    const double split = area.low.x + std::min(share, all - kSqueezed * second);
    const Area leftArea{area.low, {split, area.high.y}};
    const Area rightArea{{split + kBeside, area.low.y}, area.high};
    const auto fits = [&](const SheetTable& table, const Area& part) {
      place_.area = part;
      widths_ = columnWidths(table, part.width(), widthOf_, style_);
      return wholeHeight(table, rowHeights(table)) <= part.height();
    };
    const bool bothFit = fits(left, leftArea) && fits(right, rightArea);
    place_.area = area;
    if (!bothFit) return false;
    double lowest = area.high.y;
    for (const auto& [table, part] : {std::pair{&left, leftArea}, std::pair{&right, rightArea}}) {
      place_.area = part;
      draw(*table);
      lowest = std::min(lowest, place_.area.high.y);
    }
    place_.area = {area.low, {area.high.x, lowest}};
    return true;
  }

  TablePlace left() const { return place_; }

 private:
  using Cells = std::vector<std::vector<std::string>>;

  Sheet& sheet() { return drawing_.sheets[place_.sheet]; }
  double line() const { return kLine * style_.letters; }

  Cells cellsOf(const std::vector<std::string>& texts, bool bold) const {
    Cells cells;
    for (size_t i = 0; i < widths_.size(); ++i) {
      const std::string text = i < texts.size() ? texts[i] : "";
      cells.push_back(wrapped(text, widths_[i] - 2 * kPad, {style_.letters, bold}, widthOf_));
    }
    return cells;
  }

  double rowHeight(const Cells& cells) const {
    size_t lines = 1;
    for (const auto& cell : cells) lines = std::max(lines, cell.size());
    return double(lines) * line() + 0.6;
  }

  std::vector<double> rowHeights(const SheetTable& table) const {
    std::vector<double> heights;
    for (const auto& row : table.rows) heights.push_back(rowHeight(cellsOf(row, false)));
    return heights;
  }

  double noteHeight(const SheetTable& table) const {
    if (table.note.empty()) return 0;
    return 1.2 + line() * double(noteLines(table).size());
  }

  std::vector<std::string> noteLines(const SheetTable& table) const {
    return wrapped(table.note, place_.area.width(), {style_.letters, false}, widthOf_);
  }

  double wholeHeight(const SheetTable& table, const std::vector<double>& heights) const {
    return headHeight(table) + noteHeight(table) +
           std::accumulate(heights.begin(), heights.end(), 0.0);
  }

  // What there must be to draw row i here: no few last rows go on alone.
  static double roomFor(const std::vector<double>& heights, size_t i) {
    constexpr size_t kLast = 3, kBefore = 2;
    if (i < kBefore || i + kLast != heights.size()) return heights[i];
    return std::accumulate(heights.begin() + long(i), heights.end(), 0.0);
  }

  Cells headings(const SheetTable& table) const {
    std::vector<std::string> texts;
    for (const auto& column : table.columns) texts.push_back(column.heading);
    return cellsOf(texts, true);
  }

  std::vector<std::string> titleLines(const std::string& title) const {
    return wrapped(title, place_.area.width(), {kTitleSize, true}, widthOf_);
  }

  double headHeight(const SheetTable& table) const {
    return double(titleLines(table.title + ", continued").size()) * kLine * kTitleSize +
           kBelowTitle + rowHeight(headings(table));
  }

  // Draws as many lines of a row as there is room for, one at least; returns what is left of it.
  std::vector<std::string> beginningOfRow(const SheetTable& table, std::vector<std::string> texts) {
    const auto most = size_t(std::max(1.0, (place_.area.height() - 0.6) / line()));
    Cells cells = cellsOf(texts, false);
    for (size_t i = 0; i < cells.size(); ++i) {
      if (cells[i].size() > most) cells[i].resize(most);
      if (i < texts.size()) texts[i] = textAfter(texts[i], cells[i]);
    }
    row(cells, table, false);
    return texts;
  }

  void next(const SheetTable& table, std::vector<double>& heights) {
    const double width = place_.area.width();
    place_ = nextPlace_(drawing_);
    fresh_ = true;
    if (std::abs(place_.area.width() - width) < 1e-9) return;
    widths_ = columnWidths(table, place_.area.width(), widthOf_, style_);
    for (size_t i = 0; i < heights.size(); ++i)
      heights[i] = rowHeight(cellsOf(table.rows[i], false));
  }

  void head(const SheetTable& table, bool again) {
    for (const std::string& text : titleLines(table.title + (again ? ", continued" : ""))) {
      Text words;
      words.layer = Layer::Tables;
      words.text = text;
      words.size = kTitleSize;
      words.bold = true;
      words.up = Up::Top;
      words.at = {place_.area.low.x, place_.area.high.y};
      sheet().texts.push_back(words);
      place_.area.high.y -= kLine * kTitleSize;
    }
    place_.area.high.y -= kBelowTitle - 1;
    rule(kPen035);
    row(headings(table), table, true);
    rule(kPen025);
  }

  void row(const Cells& cells, const SheetTable& table, bool bold) {
    const double height = rowHeight(cells);
    double x = place_.area.low.x;
    for (size_t i = 0; i < cells.size(); ++i) {
      const bool right = table.columns[i].numeric;
      // Headings stand at the foot of their row.
      double y = place_.area.high.y - 0.3 - line() / 2;
      if (bold) y -= height - 0.6 - double(cells[i].size()) * line();
      for (const std::string& text : cells[i]) {
        if (!text.empty()) {
          Text words;
          words.layer = Layer::Tables;
          words.text = text;
          words.size = style_.letters;
          words.bold = bold;
          words.up = Up::Middle;
          words.across = right ? Across::Right : Across::Left;
          words.at = {right ? x + widths_[i] - kPad : x + kPad, y};
          sheet().texts.push_back(words);
        }
        y -= line();
      }
      x += widths_[i];
    }
    place_.area.high.y -= height;
  }

  void note(const SheetTable& table) {
    if (table.note.empty()) return;
    if (place_.area.height() < std::min(noteHeight(table), kWhole)) place_ = nextPlace_(drawing_);
    place_.area.high.y -= 1.2;
    place_ = drawParagraph(drawing_, table.note, place_, nextPlace_, {style_.letters, false}, kLine,
                           widthOf_);
  }

  // Across the table, at where it has come to.
  void rule(double pen) {
    const double width = std::accumulate(widths_.begin(), widths_.end(), 0.0);
    const Vec2 from{place_.area.low.x, place_.area.high.y};
    sheet().line(Layer::Tables, {pen, LineType::Continuous}, from, from + Vec2{width, 0});
  }

  Drawing& drawing_;
  TablePlace place_;
  const std::function<TablePlace(Drawing&)>& nextPlace_;
  const TextWidth& widthOf_;
  const TableStyleOnSheet& style_;
  std::vector<double> widths_;
  bool fresh_ = false;  // nothing of this table is in the place yet, and the place is a new one
};

}  // namespace

TablePlace drawTables(Drawing& drawing, const std::vector<SheetTable>& tables, TablePlace first,
                      const std::function<TablePlace(Drawing&)>& nextPlace,
                      const TextWidth& widthOf, const TableStyleOnSheet& style) {
  TableDrawer drawer(drawing, first, nextPlace, widthOf, style);
  for (size_t i = 0; i < tables.size(); ++i) {
    if (i + 1 < tables.size() && drawer.drawBeside(tables[i], tables[i + 1]))
      ++i;
    else
      drawer.draw(tables[i]);
  }
  return drawer.left();
}

}  // namespace model
