#include "model/job/align.h"

#include <algorithm>

namespace model {

namespace {

constexpr size_t kMostCells = 1000000;  // of the comparison table

using Same = std::function<bool(size_t, size_t)>;

// Pairs of the longest common subsequence of [b0, b1) and [n0, n1).
std::vector<std::pair<size_t, size_t>> commonPairs(size_t b0, size_t b1, size_t n0, size_t n1,
                                                   const Same& same) {
  const size_t rows = b1 - b0, columns = n1 - n0;
  if (rows * columns > kMostCells) return {};
  std::vector<std::vector<char>> equal(rows, std::vector<char>(columns));
  std::vector<std::vector<int>> longest(rows + 1, std::vector<int>(columns + 1));
  for (size_t i = rows; i-- > 0;) {
    for (size_t j = columns; j-- > 0;) {
      equal[i][j] = same(b0 + i, n0 + j);
      longest[i][j] =
          equal[i][j] ? longest[i + 1][j + 1] + 1 : std::max(longest[i + 1][j], longest[i][j + 1]);
    }
  }
  std::vector<std::pair<size_t, size_t>> pairs;
  for (size_t i = 0, j = 0; i < rows && j < columns;) {
    if (equal[i][j]) {
      pairs.emplace_back(b0 + i++, n0 + j++);
    } else if (longest[i + 1][j] >= longest[i][j + 1]) {
      ++i;
    } else {
      ++j;
    }
  }
  return pairs;
}

}  // namespace

std::vector<AlignedPair> align(size_t before, size_t now, const Same& same) {
  size_t head = 0, tail = 0;
  while (head < std::min(before, now) && same(head, head)) ++head;
  while (tail < std::min(before, now) - head && same(before - 1 - tail, now - 1 - tail)) ++tail;
  auto anchors = commonPairs(head, before - tail, head, now - tail, same);
  std::vector<AlignedPair> rows;
  for (size_t i = 0; i < head; ++i) rows.push_back({i, i});
  anchors.emplace_back(before - tail, now - tail);
  size_t b = head, n = head;
  for (const auto& [nextB, nextN] : anchors) {
    while (b < nextB && n < nextN) rows.push_back({b++, n++});
    while (b < nextB) rows.push_back({b++, std::nullopt});
    while (n < nextN) rows.push_back({std::nullopt, n++});
    if (b < before - tail && n < now - tail) rows.push_back({b++, n++});
  }
  while (b < before) rows.push_back({b++, n++});
  return rows;
}

}  // namespace model
