// Where the rod is cut into strips, and where labels go on one.
#include <algorithm>
#include <cmath>

#include "model/drawing/rod_strip_parts.h"

namespace model {

namespace {

constexpr double kSearch = 0.080;  // back from the longest piece, for a quiet place to join
constexpr double kStep = 0.001;
constexpr double kQuiet = 0.020;  // from the nearest mark; more does not help

double nearestMark(const GaugeRod& rod, double level) {
  double nearest = kQuiet;
  const auto note = [&](double at) { nearest = std::min(nearest, std::fabs(at - level)); };
  for (const GaugeMark& mark : rod.marks) note(mark.level);
  for (const RodCourse& course : rod.courses) note(course.top());
  return nearest;
}

double joinUnder(const GaugeRod& rod, double highest) {
  double best = highest;
  for (double level = highest; level > highest - kSearch; level -= kStep)
    if (nearestMark(rod, level) > nearestMark(rod, best) + 1e-9) best = level;
  return best;
}

}  // namespace

std::vector<RodPiece> rodPieces(const GaugeRod& rod, double longest) {
  std::vector<RodPiece> pieces;
  const double end = rod.top + kRodEnd;
  for (double low = rod.foot; low < end - 1e-9;) {
    const double high = low + longest >= end ? end : joinUnder(rod, low + longest);
    pieces.push_back({low, high, pieces.size() + 1, 0});
    low = high;
  }
  for (RodPiece& piece : pieces) piece.of = pieces.size();
  return pieces;
}

bool spreadLabels(std::vector<RodLabel>& labels, double low, double high, double line) {
  std::stable_sort(labels.begin(), labels.end(),
                   [](const RodLabel& a, const RodLabel& b) { return a.at > b.at; });
  const double gap = line * 0.35;
  const auto below = [&](const RodLabel& label) {
    return (double(label.lines.size()) - 0.5) * line;
  };
  double edge = high;
  for (RodLabel& label : labels) {
    label.middle = std::min(label.at, edge - line / 2);
    edge = label.middle - below(label) - gap;
  }
  // Those that were pushed out below push the others up again.
  edge = low;
  for (size_t i = labels.size(); i-- > 0;) {
    labels[i].middle = std::max(labels[i].middle, edge + below(labels[i]));
    edge = labels[i].middle + line / 2 + gap;
  }
  return labels.empty() || labels.front().middle + line / 2 <= high + 1e-9;
}

}  // namespace model
