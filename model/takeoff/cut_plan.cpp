#include "model/takeoff/cut_plan.h"

#include <algorithm>
#include <cmath>

namespace model {
namespace {

constexpr double kTenth = 1e-4;  // metres

}  // namespace

int tenthsOf(double metres) { return static_cast<int>(std::lround(metres / kTenth)); }

CutPlan planCuts(const PieceLengths& pieces, double unit) {
  const int whole = tenthsOf(unit), saw = tenthsOf(kSawCut);
  CutPlan plan;
  PieceLengths ends;  // left over
  const auto keep = [&](int length, int count) {
    if (length > 0 && count > 0) ends[length] += count;
  };
  long used = 0;
  for (auto piece = pieces.rbegin(); piece != pieces.rend(); ++piece) {
    const auto [length, count] = *piece;
    used += static_cast<long>(length) * count;
    int left = count;
    // Ends that are alike are cut alike, so many at once.
    for (auto end = ends.lower_bound(length); left > 0 && end != ends.end();
         end = ends.lower_bound(length)) {
      const int from = end->first, have = std::min(left, end->second);
      end->second -= have;
      if (end->second == 0) ends.erase(end);
      keep(from - length - saw, have);
      left -= have;
    }
    const int each = std::max(1, (whole + saw) / (length + saw)), full = left / each;
    plan.wholes += full;
    keep(whole - each * (length + saw), full);
    left -= full * each;
    if (left == 0) continue;
    plan.wholes += 1;
    keep(whole - left * (length + saw), 1);
  }
  plan.lost = std::max(0.0, (static_cast<double>(plan.wholes) * whole - double(used)) * kTenth);
  return plan;
}

}  // namespace model
