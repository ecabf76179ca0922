#include <algorithm>
#include <numeric>

#include "model/drawing/sheet_table.h"
#include "model/drawing/wrap_text.h"

namespace model {

namespace {

constexpr double kPad = kCellPad;
constexpr double kMostForAWord = 0.3;  // of the table's width

// Takes from the widest until the sum is no more than `width`, none below its least.
void giveWay(std::vector<double>& widths, const std::vector<double>& least, double width) {
  for (int round = 0; round < 100; ++round) {
    double excess = std::accumulate(widths.begin(), widths.end(), 0.0) - width;
    if (excess <= 1e-9) return;
    double widest = 0, next = 0;
    for (size_t i = 0; i < widths.size(); ++i)
      if (widths[i] > least[i] + 1e-9) widest = std::max(widest, widths[i]);
    if (widest == 0) return;
    std::vector<size_t> those;
    for (size_t i = 0; i < widths.size(); ++i) {
      if (widths[i] <= least[i] + 1e-9) continue;
      if (widths[i] > widest - 1e-9)
        those.push_back(i);
      else
        next = std::max(next, widths[i]);
    }
    const double each = std::min(excess / double(those.size()), widest - next);
    for (const size_t i : those) widths[i] = std::max(least[i], widths[i] - each);
  }
}

}  // namespace

std::vector<double> columnWidths(const SheetTable& table, double width, const TextWidth& widthOf,
                                 const TableStyleOnSheet& style) {
  const size_t count = table.columns.size();
  std::vector<double> liked(count, 0), words(count, 0), least(count, 0);
  const auto like = [&](size_t i, const std::string& text, bool bold) {
    const Letters letters{style.letters, bold};
    // Headings break at their spaces before they widen a column.
    const double whole =
        bold ? widestWord(text, letters, widthOf) : widthOf(text, letters.size, letters.bold);
    liked[i] = std::max(liked[i], whole + 2 * kPad + 0.01);
    words[i] = std::max(words[i], widestWord(text, letters, widthOf) + 2 * kPad + 0.01);
  };
  for (size_t i = 0; i < count; ++i) {
    like(i, table.columns[i].heading, true);
    for (const auto& row : table.rows)
      if (i < row.size()) like(i, row[i], false);
    // A word that would take most of the table is broken rather than all words beside it.
    if (!table.columns[i].numeric) words[i] = std::min(words[i], kMostForAWord * width);
    // Figures are never broken as long as anything else can give way.
    least[i] = table.columns[i].numeric ? words[i] : 3 * style.letters + 2 * kPad;
  }
  giveWay(liked, words, width);
  giveWay(liked, least, width);
  giveWay(liked, std::vector<double>(count, width / double(std::max<size_t>(count, 1)) / 2), width);
  return liked;
}

}  // namespace model
