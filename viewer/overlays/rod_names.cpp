#include "viewer/overlays/rod_names.h"

#include <algorithm>
#include <numeric>

#include "viewer/overlays/stack_apart.h"

namespace viewer {
namespace {

struct Span {
  float from = 0, to = 0;
  float length() const { return to - from; }
};

// The heights of the column that nothing has taken.
std::vector<Span> freeSpans(const Box& column, const RodNameRoom& room) {
  std::vector<Span> blocked;
  for (const Box& box : room.taken) {
    const Box wide = box.grown(room.gap);
    if (wide.overlaps(column)) blocked.push_back({wide.top, wide.bottom});
  }
  std::sort(blocked.begin(), blocked.end(),
            [](const Span& a, const Span& b) { return a.from < b.from; });
  std::vector<Span> spans;
  float from = column.top;
  for (const Span& span : blocked) {
    if (span.from > from) spans.push_back({from, span.from});
    from = std::max(from, span.to);
  }
  if (column.bottom > from) spans.push_back({from, column.bottom});
  return spans;
}

size_t linesIn(const Span& span, float line) {
  return size_t(std::max(0.0f, (span.length() - 1e-3f) / line));
}

float away(const Span& span, float y) { return std::max({0.0f, span.from - y, y - span.to}); }

// The most important ones, in their order.
std::vector<size_t> kept(const std::vector<RodName>& names, size_t count) {
  std::vector<size_t> order(names.size());
  std::iota(order.begin(), order.end(), size_t(0));
  std::stable_sort(order.begin(), order.end(),
                   [&](size_t a, size_t b) { return names[a].priority > names[b].priority; });
  order.resize(std::min(count, order.size()));
  std::sort(order.begin(), order.end());
  return order;
}

// The names of each span, in their order: each in the nearest, pushed on where that is full. There
// are lines enough for all.
std::vector<std::vector<size_t>> share(const std::vector<size_t>& which,
                                       const std::vector<RodName>& names,
                                       const std::vector<Span>& spans, float line) {
  std::vector<std::vector<size_t>> shared(spans.size());
  for (const size_t i : which) {
    const auto nearest = std::min_element(
        spans.begin(), spans.end(),
        [&](const Span& a, const Span& b) { return away(a, names[i].y) < away(b, names[i].y); });
    shared[size_t(nearest - spans.begin())].push_back(i);
  }
  for (size_t s = 0; s + 1 < spans.size(); ++s)
    while (shared[s].size() > linesIn(spans[s], line)) {
      shared[s + 1].insert(shared[s + 1].begin(), shared[s].back());
      shared[s].pop_back();
    }
  for (size_t s = spans.size() - 1; s > 0; --s)
    while (shared[s].size() > linesIn(spans[s], line)) {
      shared[s - 1].push_back(shared[s].front());
      shared[s].erase(shared[s].begin());
    }
  return shared;
}

}  // namespace

std::vector<PlacedRodName> placeRodNames(const std::vector<RodName>& names, float edge, float way,
                                         const RodNameRoom& room) {
  float widest = 0;
  for (const RodName& name : names) widest = std::max(widest, name.width);
  const float wide =
      std::min({widest, room.most, way > 0 ? room.sheet.right - edge : edge - room.sheet.left});
  if (names.empty() || edge < room.sheet.left || edge > room.sheet.right ||
      wide < std::min(widest, room.least))
    return {};
  Box column{edge, room.sheet.top, edge + wide, room.sheet.bottom};
  if (way < 0) column.left = edge - wide, column.right = edge;
  const auto spans = freeSpans(column, room);
  if (spans.empty()) return {};
  size_t lines = 0;
  for (const Span& span : spans) lines += linesIn(span, room.line);
  const auto shared = share(kept(names, lines), names, spans, room.line);
  std::vector<PlacedRodName> placed;
  for (size_t s = 0; s < spans.size(); ++s) {
    std::vector<float> wanted;
    for (const size_t i : shared[s]) wanted.push_back(names[i].y);
    const auto middles = stackApart(wanted, room.line, spans[s].from, spans[s].to);
    for (size_t i = 0; middles && i < wanted.size(); ++i) {
      const float width = std::min(names[shared[s][i]].width, wide), y = (*middles)[i];
      const float left = way > 0 ? edge : edge - width;
      placed.push_back({shared[s][i], {left, y - room.line / 2, left + width, y + room.line / 2}});
    }
  }
  return placed;
}

}  // namespace viewer
