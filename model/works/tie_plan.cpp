// Where wall ties lie: rows in the bed joints that both leaves have, staggered, and more of them
// beside what is not bonded.
#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "model/walls/movement_joints.h"
#include "model/walls/parapet_line.h"
#include "model/works/cavity_plan.h"
#include "model/works/stretches.h"
#include "model/works/wall_infill.h"

namespace model {

namespace {

constexpr double kHair = 1e-3;      // metres
constexpr double kSameTie = 0.060;  // nearer than this two ties are one
constexpr double kFall = 0.003;     // outwards, inside the joints: common practice, no source
constexpr double kCover = 0.030;    // of masonry over a tie
constexpr double kClear = 0.012;    // from a tie's middle to what it must not touch

// What a length of wall ends at: an edge beside which there are more ties, or none.
constexpr int kNoEdge = -1, kCloser = 0, kOpening = 10000, kJoint = 20000, kVerge = 30000;

struct Length {
  double from = 0, to = 0;
  int atFrom = kNoEdge, atTo = kNoEdge;
};

class Ties {
 public:
  Ties(const Job& job, const SettingOut& settingOut, CavityPlan& plan)
      : job_(job), settingOut_(settingOut), plan_(plan), built_(job.walls.builtIn) {
    for (const MovementGap& gap : movementJointsIn(job, settingOut, plan.wall))
      joints_.push_back((gap.from + gap.to) / 2);
  }

  void plan() {
    const std::vector<BlockBed> beds = bedsThatTie();
    double lowest = std::numeric_limits<double>::max(), last = lowest;
    for (const FoundationRun& run : settingOut_.foundations)
      if (run.wall == plan_.wall) lowest = last = std::min(lowest, run.top);
    for (size_t i = 0; i < beds.size(); ++i) {
      const double next = i + 1 < beds.size() ? beds[i + 1].level : top();
      const bool row = next - last > built_.tieUp + kHair;
      across_ = built_.tieAcross;
      if (row && barrierBetween(last, beds[i].level))
        across_ *= std::min(1.0, built_.tieUp / (beds[i].level - last));
      if (row) last = beds[i].level;
      layBed(beds[i], next, row ? whole() : besideSteps(beds, i, last));
      rows_ += row ? 1 : 0;
    }
  }

 private:
  double top() const { return plan_.slope.empty() ? plan_.levelTop : gableTop(job_, settingOut_); }

  // The bed of the outer leaf at or under a level: its underside.
  double brickBed(double level) const {
    const double damp = settingOut_.levels.dampCourse, course = job_.walls.course();
    const double datum =
        level < damp - kDampCourseThickness + 1e-6 ? damp - kDampCourseThickness : damp;
    return datum + course * std::floor((level - datum + kHair) / course);
  }

  // Not in the damp course, and not where a leaf has no course over it.
  std::vector<BlockBed> bedsThatTie() const {
    std::vector<BlockBed> beds = blockBeds(job_, settingOut_, plan_.inner);
    const double damp = settingOut_.levels.dampCourse;
    std::erase_if(beds, [&](const BlockBed& bed) {
      if (std::fabs(bed.level - damp) < job_.walls.joint) return true;
      if (inLevelBarrier(bed) || inLongTray(bed)) return true;
      if (bed.part == TiePlan::Part::BelowDampCourse)
        return brickBed(bed.level) < lowestConcrete(settingOut_) + kCover;
      return plan_.slope.empty() &&
             bed.level + kCover >
                 std::min({plan_.levelTop, plan_.outer.levelTop, plan_.inner.levelTop});
    });
    return beds;
  }

  // There is a row over it or under it then.
  bool inLevelBarrier(const BlockBed& bed) const {
    const Rect tie = tieIn(bed, 0).rect();
    return std::any_of(plan_.barriers.begin(), plan_.barriers.end(), [&](const BarrierPlan& b) {
      return !b.upright && tie.z1 + kHair > b.rect.z0 && tie.z0 - kHair < b.rect.z1;
    });
  }

  // Would it go through a tray's sheet?
  static bool crosses(const TiePlan& tie, const TrayPlan& tray) {
    const double half = kTieThickness / 2 + kHair;
    const bool over = tie.outer - half > tray.low + kTrayThickness &&
                      tie.inner - half > tray.high + kTrayThickness;
    return !over && !(tie.outer + half < tray.low && tie.inner + half < tray.high);
  }

  // Over a level barrier: the rows go over it and under it too.
  bool inLongTray(const BlockBed& bed) const {
    const TiePlan tie = tieIn(bed, 0);
    return std::any_of(plan_.trays.begin(), plan_.trays.end(), [&](const TrayPlan& tray) {
      return tray.over == TrayPlan::Over::Barrier && crosses(tie, tray);
    });
  }

  static std::vector<Stretch> whole() { return {{-1e9, 1e9}}; }

  // Where the tray of a step takes ties out of a row, they lie in the beds next over and under it
  // that are clear. `last`: of the row at or under this bed.
  std::vector<Stretch> besideSteps(const std::vector<BlockBed>& beds, size_t bed,
                                   double last) const {
    std::vector<Stretch> stretches;
    for (const TrayPlan& tray : plan_.trays) {
      const auto isCrossed = [&](size_t i) { return crosses(tieIn(beds[i], 0), tray); };
      if (tray.over != TrayPlan::Over::Step || isCrossed(bed)) continue;
      const bool over = bed > 0 && isCrossed(bed - 1),
                 under = bed + 1 < beds.size() && isCrossed(bed + 1);
      // Under it: when the next row, which would be in time, is one of those that are crossed.
      if (over && last > tray.low - kHair)
        stretches.push_back({tray.from, tray.to});
      else if (under && last + built_.tieUp < tray.high)
        stretches.push_back({tray.from, tray.to});
    }
    return stretches;
  }

  // A row that comes too high after a barrier and its tray has more ties, so that there are as
  // many.
  bool barrierBetween(double low, double high) const {
    return std::any_of(plan_.barriers.begin(), plan_.barriers.end(), [&](const BarrierPlan& b) {
      return !b.upright && b.rect.z1 > low && b.rect.z0 < high;
    });
  }

  TiePlan tieIn(const BlockBed& bed, double s) const {
    const double joint = job_.walls.joint, fall = std::min(kFall, joint - kTieThickness);
    TiePlan tie;
    tie.s = s;
    tie.inner = bed.level + joint / 2 + fall / 2;
    tie.outer = brickBed(bed.level) + joint / 2 - fall / 2;
    tie.part = bed.part;
    tie.lift = bed.lift;
    return tie;
  }

  // What is left of the wall's length where ties of this bed may lie.
  std::vector<Length> freeLengths(const BlockBed& bed) const {
    const Rect band = [&] {
      Rect r = tieIn(bed, 0).rect();
      return Rect{-1e9, r.z0 - kHair, 1e9, r.z1 + kHair};
    }();
    std::vector<Length> free{{plan_.layer.from + kClear, plan_.layer.to - kClear}};
    const auto cut = [&](double from, double to, int what) {
      std::vector<Length> left;
      for (const Length& length : free) {
        if (to <= length.from || from >= length.to) {
          left.push_back(length);
          continue;
        }
        if (from > length.from) left.push_back({length.from, from, length.atFrom, what});
        if (to < length.to) left.push_back({to, length.to, what, length.atTo});
      }
      free = left;
    };
    const auto keepOff = [&](const Rect& r, int what) {
      if (r.overlaps(band)) cut(r.s0 - kClear, r.s1 + kClear, what);
    };
    // A tie may lie right over the upper edge of a long tray or under its lower one, but not over
    // its stop ends.
    const auto keepOffSheet = [&](const TrayPlan& tray) {
      if (crosses(tieIn(bed, 0), tray)) keepOff(tray.pastCorners(), kNoEdge);
      Rect end = tray.rect();
      end.s1 = end.s0 + kTrayThickness;
      if (tray.stopFrom) keepOff(end, kNoEdge);
      end.s1 = tray.to;
      end.s0 = end.s1 - kTrayThickness;
      if (tray.stopTo) keepOff(end, kNoEdge);
    };
    for (size_t i = 0; i < plan_.openings.size(); ++i)
      keepOff(plan_.openings[i], kOpening + static_cast<int>(i));
    for (size_t i = 0; i < plan_.closers.size(); ++i)
      keepOff(plan_.closers[i].rect,
              plan_.closers[i].upright ? kCloser + static_cast<int>(i) : kNoEdge);
    for (const TrayPlan& tray : plan_.trays) {
      if (tray.over == TrayPlan::Over::Lintel)
        keepOff(tray.rect(), kNoEdge);
      else
        keepOffSheet(tray);
    }
    for (const Rect& sleeve : plan_.sleeves) keepOff(sleeve, kNoEdge);
    for (const BarrierPlan& barrier : plan_.barriers) keepOff(barrier.rect, kNoEdge);
    for (size_t i = 0; i < joints_.size(); ++i)
      cut(joints_[i], joints_[i], kJoint + static_cast<int>(i));
    for (const FoundationRun& run : settingOut_.foundations)
      if (run.wall == plan_.wall && run.top + kCover > band.z0)
        cut(run.from <= 0 ? -1e9 : run.from - kClear,
            run.to >= plan_.layer.wall->length ? 1e9 : run.to + kClear, kNoEdge);
    for (const CavityPlan::LowSlope& low : plan_.underSlope(band.z1 + kCover))
      cut(low.from, low.to, low.begins ? kVerge : kVerge + 1);
    std::erase_if(free, [](const Length& length) { return length.to - length.from < kHair; });
    return free;
  }

  // `row`: the lengths of the wall in which it has a row of ties.
  void layBed(const BlockBed& bed, double next, const std::vector<Stretch>& row) {
    std::vector<TiePlan> laid;
    for (const Length& length : freeLengths(bed)) {
      std::vector<TiePlan> ties;
      const double away = std::max(built_.tieWithin - kCloserWidth, 2 * kClear);
      const double room = length.to - length.from;
      const auto beside = [&](int edge, bool after, double s) {
        if (edge == kNoEdge || !due(edge, after, bed.level, next)) return;
        ties.push_back(tieIn(bed, s));
        ties.back().extra = true;
      };
      // Closers take the first of the length from the jamb.
      const auto reach = [&](int edge) {
        const bool closer = edge >= kCloser && edge < kOpening;
        return std::min(closer ? std::max(away - kCloserWidth, 0.0) : away, room / 2);
      };
      beside(length.atFrom, true, length.from + reach(length.atFrom));
      beside(length.atTo, false, length.to - reach(length.atTo));
      for (const Stretch& part : row)
        across(bed, std::max(length.from, part.from), std::min(length.to, part.to), ties);
      std::sort(ties.begin(), ties.end(),
                [](const TiePlan& a, const TiePlan& b) { return a.s < b.s; });
      keepApart(ties);
      laid.insert(laid.end(), ties.begin(), ties.end());
    }
    plan_.ties.insert(plan_.ties.end(), laid.begin(), laid.end());
  }

  // On one side of an edge: would it be too far to the next bed without a tie in this one?
  bool due(int edge, bool after, double level, double next) {
    const auto [last, isNew] = besideAt_.emplace(2 * edge + (after ? 1 : 0), footOf(edge));
    if (next - last->second <= built_.tieUpBeside + kHair) return false;
    last->second = level;
    return true;
  }

  // Where an edge begins; those that are there from the foot have a tie in their first bed.
  double footOf(int edge) const {
    if (edge >= kJoint) return -1e9;
    if (edge >= kOpening) return plan_.openings[static_cast<size_t>(edge - kOpening)].z0;
    return plan_.closers[static_cast<size_t>(edge - kCloser)].rect.z0;
  }

  // The row's own, staggered against the rows over and under it.
  void across(const BlockBed& bed, double from, double to, std::vector<TiePlan>& ties) const {
    const double step = across_;
    const double first = plan_.layer.from + step * (rows_ % 2 == 0 ? 0.25 : 0.75);
    for (double k = std::ceil((from - first) / step) - 1;; ++k) {
      const double s = besideBarriers(first + k * step);
      if (s > to + 1e-9 && first + k * step > to) return;
      if (s > from - 1e-9 && s < to + 1e-9) ties.push_back(tieIn(bed, s));
    }
  }

  // A place in an upright barrier goes to its nearer side, so that the row has no gap there.
  double besideBarriers(double s) const {
    for (const BarrierPlan& barrier : plan_.barriers) {
      const double from = barrier.rect.s0 - kClear, to = barrier.rect.s1 + kClear;
      if (barrier.upright && s > from && s < to) return s - from < to - s ? from : to;
    }
    return s;
  }

  // A tie of the row that stands near one beside an edge is left out where that keeps the spacing.
  void keepApart(std::vector<TiePlan>& ties) const {
    for (size_t i = 0; i < ties.size();) {
      const bool crowded = i > 0 && ties[i].s - ties[i - 1].s < kSameTie;
      if (crowded) {
        const size_t which = ties[i].extra ? i - 1 : i;
        ties.erase(ties.begin() + static_cast<std::ptrdiff_t>(which));
        continue;
      }
      const bool between = i > 0 && i + 1 < ties.size();
      const bool needless = between && !ties[i].extra && (ties[i - 1].extra || ties[i + 1].extra) &&
                            ties[i + 1].s - ties[i - 1].s < across_ + kHair;
      if (needless)
        ties.erase(ties.begin() + static_cast<std::ptrdiff_t>(i));
      else
        ++i;
    }
  }

  const Job& job_;
  const SettingOut& settingOut_;
  CavityPlan& plan_;
  const BuiltIn& built_;
  std::vector<double> joints_;      // s of the movement joints
  std::map<int, double> besideAt_;  // by edge and side: the level of the last tie
  int rows_ = 0;
  double across_ = 0;  // apart in the row being laid
};

}  // namespace

void planTies(const Job& job, const SettingOut& settingOut, CavityPlan& plan) {
  Ties(job, settingOut, plan).plan();
}

}  // namespace model
