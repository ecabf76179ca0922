#include "model/bond/bond_count.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "model/bond/toothing.h"
#include "model/bond/wall_corbel.h"
#include "model/walls/leaf_plan.h"

namespace model {
namespace {

constexpr double kSame = 0.003;  // metres: nobody cuts less
constexpr double kHair = 1e-6;

using Lengths = std::vector<std::array<double, 2>>;

class WallCounter {
 public:
  WallCounter(const Job& job, const SettingOut& out, const DryBond& bond, size_t wall)
      : job_(job),
        out_(out),
        bond_(bond),
        wall_(wall),
        plan_(leafPlan(job, out, wall, LeafSide::Outer)),
        toothings_(toothingsOf(job, out, wall)) {}

  BondCount count() {
    const double course = job_.walls.course(), datum = out_.levels.dampCourse;
    double lowest = datum;
    for (const FoundationRun& run : out_.foundations)
      if (run.wall == wall_) lowest = std::min(lowest, run.top);
    const int first = static_cast<int>(std::floor((lowest - datum) / course + 1e-3));
    const int last =
        static_cast<int>(std::floor((out_.levels.outerLeafTop - datum) / course + 1e-3));
    counted_.leastLap = std::numeric_limits<double>::max();
    for (int above = first; above < last; ++above) lay(above);
    return counted_;
  }

  Lengths open(int above) const {
    const double course = job_.walls.course();
    const double bottom = out_.levels.dampCourse + above * course;
    Lengths lengths;
    for (const FoundationRun& run : out_.foundations)
      if (run.wall == wall_ && run.top > bottom + course / 2)
        lengths.push_back({run.from <= kHair ? -1e3 : run.from,
                           run.to >= out_.walls[wall_].length - kHair ? 1e6 : run.to});
    for (const Rect& cut : plan_.cuts())
      if (cut.z0 < bottom + course / 2 && cut.z1 > bottom + course / 2)
        lengths.push_back({cut.s0, cut.s1});
    return lengths;
  }

 private:
  void lay(int above) {
    const Lengths here = open(above);
    std::vector<LaidPiece> laid = layCourse(bond_, wall_, above, here);
    for (const Toothing& toothing : toothings_)
      toothPieces(job_, bond_, toothing, above, out_.walls[wall_].length, laid);
    for (const CorbelPlan& corbel : plan_.corbels)
      shapeCorbelCourse(out_, bond_, wall_, corbel, above, laid);
    if (laid.empty()) {
      jointsUnder_.clear();
      return;
    }
    ++counted_.courses;
    for (const LaidPiece& brick : laid) add(brick);
    // Against the course under it, between the same openings: others are a jamb's own matter.
    std::vector<double> joints = jointsOf(laid);
    if (here == openUnder_) takeLap(jointsUnder_, joints);
    openUnder_ = here;
    jointsUnder_ = std::move(joints);
  }

  void add(const LaidPiece& brick) {
    const BrickSizes& sizes = bond_.sizes;
    const double length = brick.length();
    if (brick.special) {
      const WallLine& line = out_.walls[wall_];
      const bool atStart = brick.from < line.length / 2;
      const double angle = out_.corners[atStart ? line.from : line.to].angle;
      if (length > sizes.module() / 2)
        ++counted_.special[static_cast<int>(std::lround(angle * 180 / std::numbers::pi))];
    } else if (brick.closer) {
      ++counted_.closer;
    } else if (std::fabs(length - sizes.brick) < kSame ||
               (brick.header && brick.back - brick.front > sizes.brick - kSame)) {
      ++counted_.whole;
    } else if (std::fabs(length - sizes.halfBrick()) < kSame) {
      ++counted_.half;
    } else {
      ++counted_.cut[static_cast<int>(std::lround(length * 1000))];
    }
  }

  std::vector<double> jointsOf(const std::vector<LaidPiece>& laid) const {
    std::vector<double> joints;
    const LaidPiece* before = nullptr;
    for (const LaidPiece& piece : laid) {
      if (piece.front > 0) continue;
      // Wider is an opening, or a movement joint.
      if (before && piece.from - before->to < bond_.sizes.most + kSame)
        joints.push_back((before->to + piece.from) / 2);
      before = &piece;
    }
    return joints;
  }

  // Both in ascending order.
  void takeLap(const std::vector<double>& below, const std::vector<double>& over) {
    for (size_t i = 0, k = 0; i < below.size() && k < over.size();) {
      counted_.leastLap = std::min(counted_.leastLap, std::fabs(below[i] - over[k]));
      below[i] < over[k] ? ++i : ++k;
    }
  }

  const Job& job_;
  const SettingOut& out_;
  const DryBond& bond_;
  size_t wall_;
  LeafPlan plan_;
  std::vector<Toothing> toothings_;
  BondCount counted_;
  Lengths openUnder_;  // of the course under the one being laid
  std::vector<double> jointsUnder_;
};

}  // namespace

Lengths openAt(const Job& job, const SettingOut& settingOut, size_t wall, int above) {
  return WallCounter(job, settingOut, DryBond{}, wall).open(above);
}

std::vector<BondCount> countBond(const Job& job, const SettingOut& settingOut,
                                 const DryBond& bond) {
  std::vector<BondCount> counts;
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall)
    counts.push_back(WallCounter(job, settingOut, bond, wall).count());
  return counts;
}

}  // namespace model
