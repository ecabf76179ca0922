// Bonds with headers, and stacks: each wall, or what lies between its movement joints, is one run.
#include <algorithm>
#include <cmath>
#include <optional>

#include "model/bond/bond_pattern.h"
#include "model/bond/fit_bond.h"
#include "model/bond/quarter_run.h"

namespace model {
namespace {

constexpr double kRounding = 0.001;  // drawings are to the millimetre
constexpr double kSame = 0.003;      // nobody cuts less
constexpr int kLeastZone = 8;        // quarters over which cut bricks are spread

// Stretches of a wall without a movement joint among them.
struct Run {
  size_t wall = 0, first = 0, count = 0;
  std::vector<int> grid;  // of the stations, in quarters from the first
  int breakAt = 0;
  size_t breakIn = 0;
  bool odd = false;

  int quarters() const { return grid.back(); }
};

double lengthOf(const DryStretch& stretch) { return stretch.to - stretch.from; }

// Does the length come out in so many quarters, when each stretcher's joint gives?
bool takesUp(const BrickSizes& sizes, const DryStretch& stretch, int quarters) {
  const double over = lengthOf(stretch) - quarters * sizes.quarter();
  if (std::fabs(over) < kRounding) return true;
  const double joints = quarters / 4.0 + (stretch.opening ? 1 : 0);
  return over > 0 ? over <= joints * (sizes.most - sizes.joint) + 1e-6
                  : -over <= joints * (sizes.joint - sizes.least) + 1e-6;
}

// Half bricks before quarters, and these before cut ones.
int quartersOf(const BrickSizes& sizes, DryStretch& stretch) {
  const double quarters = lengthOf(stretch) / sizes.quarter();
  StretchFit& fit = stretch.fit;
  fit = StretchFit{};
  fit.joint = sizes.joint;
  const int inHalves = std::max(kHeader, 2 * static_cast<int>(std::lround(quarters / 2)));
  fit.halfBricks = inHalves / 2;
  fit.over = lengthOf(stretch) - inHalves * sizes.quarter();
  if (takesUp(sizes, stretch, inHalves)) {
    fit.regular = true;
    fit.joint = sizes.joint + 4 * fit.over / inHalves;
    return inHalves;
  }
  const int nearest = std::max(1, static_cast<int>(std::lround(quarters)));
  if (takesUp(sizes, stretch, nearest)) return nearest;
  return std::max(1, static_cast<int>(std::ceil(quarters - 1e-6)));
}

QuarterRun runOf(const BrickSizes& sizes, const Run& run, bool odd, size_t through) {
  return {sizes.bond, run.quarters(), through, odd, run.breakAt};
}

// Under the widest opening, or in the middle of the longest pier; where a stretch is broken by its
// length, there.
void chooseBreak(const DryBond& bond, Run& run) {
  const WallBond& wall = bond.walls[run.wall];
  std::optional<size_t> best;
  const auto better = [&](size_t a, size_t b) {
    const DryStretch &one = wall.stretches[a], &other = wall.stretches[b];
    if (one.fit.regular != other.fit.regular) return !one.fit.regular;
    const bool roomA = one.opening && lengthOf(one) > 3 * bond.sizes.module();
    const bool roomB = other.opening && lengthOf(other) > 3 * bond.sizes.module();
    if (roomA != roomB) return roomA;
    return lengthOf(one) > lengthOf(other) + 1e-9;
  };
  for (size_t i = 0; i < run.count; ++i)
    if (!best || better(run.first + i, *best)) best = run.first + i;
  run.breakIn = *best;
  run.breakAt = (run.grid[*best - run.first] + run.grid[*best - run.first + 1]) / 2;
}

std::vector<Run> runsOf(DryBond& bond) {
  std::vector<Run> runs;
  for (size_t w = 0; w < bond.walls.size(); ++w) {
    WallBond& wall = bond.walls[w];
    bool open = false;
    for (size_t i = 0; i < wall.stretches.size(); ++i) {
      DryStretch& stretch = wall.stretches[i];
      if (stretch.movement) {
        stretch.fit = StretchFit{};
        stretch.fit.regular = true;
        stretch.fit.joint = lengthOf(stretch) + bond.sizes.joint;
        open = false;
        continue;
      }
      if (!open) runs.push_back({w, i, 0, {0}, 0, 0, false});
      open = true;
      Run& run = runs.back();
      ++run.count;
      run.grid.push_back(run.grid.back() + quartersOf(bond.sizes, stretch));
    }
  }
  for (Run& run : runs) chooseBreak(bond, run);
  return runs;
}

// Each run the way that comes out, if one does. Then the courses must meet in order all round:
// walls that are not odd are even in number. Beyond a movement joint either course may begin.
void chooseParities(DryBond& bond, std::vector<Run>& runs) {
  for (Run& run : runs) {
    const bool even = comesOut(runOf(bond.sizes, run, false, 0));
    run.odd = !even && comesOut(runOf(bond.sizes, run, true, 0));
    WallBond& wall = bond.walls[run.wall];
    if (run.odd) wall.odd = !wall.odd;
  }
  const auto even = std::count_if(bond.walls.begin(), bond.walls.end(),
                                  [](const WallBond& wall) { return !wall.odd; });
  if (even % 2 == 0 || runs.empty()) return;
  for (WallBond& wall : bond.walls) {
    for (DryStretch& stretch : wall.stretches) {
      if (!stretch.movement) continue;
      stretch.fit.odd = true;
      wall.odd = !wall.odd;
      return;
    }
  }
  const auto cost = [&](const Run& run) {
    const bool broken = !comesOut(runOf(bond.sizes, run, run.odd, 0));
    const bool other = !comesOut(runOf(bond.sizes, run, !run.odd, 0));
    return (other ? 2 : 0) - (broken ? 2 : 0);
  };
  Run* best = nullptr;
  for (Run& run : runs) {
    if (!best || cost(run) < cost(*best) ||
        (cost(run) == cost(*best) && run.quarters() > best->quarters()))
      best = &run;
  }
  if (cost(*best) > 0) bond.brokenToClose.push_back({best->wall, best->breakIn});
  best->odd = !best->odd;
  bond.walls[best->wall].odd = !bond.walls[best->wall].odd;
}

// Bricks are cut in the middle of a stretch, over such a length that they lap as they should: so
// many quarters. 0: joints take up what it is over.
int cutZone(const BrickSizes& sizes, const DryStretch& stretch, int quarters) {
  if (takesUp(sizes, stretch, quarters)) return 0;
  const double over = lengthOf(stretch) - quarters * sizes.quarter();
  const int wanted = static_cast<int>(std::ceil(std::fabs(over) / kJointGives));
  const int zone = std::min(quarters, std::max(kLeastZone, wanted));
  return zone + (quarters - zone) % 2;
}

// What is left of a lap of a quarter in a stretch.
double quarterIn(const BrickSizes& sizes, const DryStretch& stretch, int quarters) {
  const int zone = cutZone(sizes, stretch, quarters);
  const double over = lengthOf(stretch) - quarters * sizes.quarter();
  return sizes.quarter() + std::min(0.0, over) / (zone > 0 ? zone : quarters);
}

// Where the quarters of a run come along the wall.
class Places {
 public:
  Places(const BrickSizes& sizes, const WallBond& wall, const Run& run) {
    for (size_t i = 0; i < run.count; ++i) {
      const DryStretch& stretch = wall.stretches[run.first + i];
      const int from = run.grid[i], count = run.grid[i + 1] - from;
      add(from, stretch.from);
      const int zone = cutZone(sizes, stretch, count);
      const int aside = (count - zone) / 2;
      if (zone == 0 || aside == 0) continue;
      add(from + aside, stretch.from + aside * sizes.quarter());
      add(run.grid[i + 1] - aside, stretch.to - aside * sizes.quarter());
    }
    add(run.quarters(), wall.stretches[run.first + run.count - 1].to);
  }

  double at(int quarter) const {
    size_t i = 1;
    while (i + 1 < knots_.size() && knots_[i].quarter < quarter) ++i;
    const Knot &a = knots_[i - 1], &b = knots_[i];
    return a.s + (b.s - a.s) * (quarter - a.quarter) / (b.quarter - a.quarter);
  }

 private:
  struct Knot {
    int quarter;
    double s;
  };
  void add(int quarter, double s) { knots_.push_back({quarter, s}); }
  std::vector<Knot> knots_;
};

// One course of a run. A joint takes half of what the pieces on either side are over, so that these
// keep their size, as far as joints go.
std::vector<CrossJoint> placedCourse(const BrickSizes& sizes, const Places& places,
                                     const std::vector<int>& quarters, int end) {
  std::vector<CrossJoint> joints;
  int before = 0;
  double from = places.at(0);
  for (size_t i = 0; i < quarters.size(); ++i) {
    const int here = quarters[i], after = i + 1 < quarters.size() ? quarters[i + 1] : end;
    const double over = places.at(after) - from - (after - before) * sizes.quarter();
    joints.push_back(
        {places.at(here), std::clamp(sizes.joint + over / 2, sizes.least, sizes.most)});
    before = here;
    from = joints.back().at;
  }
  return joints;
}

// The cut pieces of a course in a stretch that is broken. `quarters` are the grid's for `joints`.
std::vector<double> cutsIn(const BrickSizes& sizes, const Places& places, const Run& run,
                           const std::vector<int>& quarters, const std::vector<CrossJoint>& joints,
                           size_t stretch) {
  std::vector<double> cuts;
  int before = 0;
  double from = places.at(0) + sizes.joint / 2;
  for (size_t k = 0; k <= quarters.size(); ++k) {
    const bool last = k == quarters.size();
    const int at = last ? run.quarters() : quarters[k];
    const double to = last ? places.at(at) - sizes.joint / 2 : joints[k].at - joints[k].width / 2;
    const bool inside = at > run.grid[stretch] && before < run.grid[stretch + 1];
    const bool besideHeader = before == kHeader || at == run.quarters() - kHeader;
    const bool ownCloser = besideHeader && at - before == kCloser;
    const bool sized = std::fabs(to - from - sizes.brick) < kSame ||
                       std::fabs(to - from - sizes.halfBrick()) < kSame;
    if (inside && !ownCloser && !sized) cuts.push_back(to - from);
    before = at;
    if (!last) from = joints[k].at + joints[k].width / 2;
  }
  return cuts;
}

}  // namespace

void fitQuarterBond(DryBond& bond) {
  std::vector<Run> runs = runsOf(bond);
  chooseParities(bond, runs);
  const std::vector<size_t> through = throughCourses(bond);
  for (WallBond& wall : bond.walls) wall.joints.assign(coursesOf(bond.sizes.bond), {});
  size_t wallBefore = bond.walls.size(), course = 0;
  for (const Run& run : runs) {
    WallBond& wall = bond.walls[run.wall];
    if (run.wall != wallBefore)
      course = through[run.wall];
    else if (wall.stretches[run.first - 1].fit.odd)
      course ^= 1u;
    wallBefore = run.wall;
    const QuarterJoints laid = layQuarters(runOf(bond.sizes, run, run.odd, course));
    const Places places(bond.sizes, wall, run);
    if (laid.broken) {
      StretchFit& fit = wall.stretches[run.breakIn].fit;
      fit.pattern = fit.regular;
      fit.regular = false;
    }
    for (size_t i = 0; i < run.count; ++i) {
      DryStretch& stretch = wall.stretches[run.first + i];
      stretch.fit.lap = laid.lap * quarterIn(bond.sizes, stretch, run.grid[i + 1] - run.grid[i]);
    }
    for (size_t k = 0; k < laid.joints.size(); ++k) {
      const std::vector<CrossJoint> joints =
          placedCourse(bond.sizes, places, laid.joints[k], run.quarters());
      wall.joints[k].insert(wall.joints[k].end(), joints.begin(), joints.end());
      for (size_t i = 0; i < run.count && k < 2; ++i) {
        StretchFit& fit = wall.stretches[run.first + i].fit;
        if (!fit.regular) fit.cuts[k] = cutsIn(bond.sizes, places, run, laid.joints[k], joints, i);
      }
    }
    if (run.odd) course ^= 1u;
  }
}

}  // namespace model
