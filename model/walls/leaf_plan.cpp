#include "model/walls/leaf_plan.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "model/settingout/coursing.h"
#include "model/walls/gable_profile.h"

namespace model {

namespace {

constexpr double kOnLevel = 1e-3;  // metres
constexpr double kPier = 0.010;    // a narrower one is not built

constexpr double kThinnest = 0.020;

double leafThickness(const WallBuildUp& walls, LeafSide side) {
  return side == LeafSide::Outer ? walls.outerLeaf : walls.innerLeaf;
}

std::optional<Lift> liftWithTop(const SettingOut& settingOut, double level) {
  for (const Lift& lift : settingOut.lifts) {
    if (std::fabs(lift.top - level) < kOnLevel) return lift;
  }
  return std::nullopt;
}

// When the lintel is laid; nothing when there is no wall at its level.
bool chooseStage(const Job& job, const SettingOut& settingOut, const LeafPlan& plan,
                 LintelPlan& lintel) {
  const BuiltOpening& opening = settingOut.openings[lintel.opening];
  const double head = opening.head;
  const auto common = settingOut.levels.commonHead[static_cast<size_t>(opening.storey)];
  const auto under = liftWithTop(settingOut, head);
  if (common && std::fabs(*common - head) < kOnLevel && under && under->storey == opening.storey &&
      head < plan.levelTop + kOnLevel) {
    lintel.stage = {StageKind::Lintels, opening.storey, 0};
    lintel.ownStage = true;
    lintel.lift = {StageKind::RunIn, under->storey, under->number};
    return true;
  }
  if (head >= plan.levelTop - kOnLevel) {
    lintel.stage = {StageKind::Gables, 0, 0};
    return settingOut.walls[plan.wall].eaves == EavesKind::Gable;
  }
  for (const Lift& lift : settingOut.lifts) {
    if (head < leafStop(job, settingOut, plan, lift.bottom) - kOnLevel ||
        head >= leafStop(job, settingOut, plan, lift.top) - kOnLevel)
      continue;
    lintel.stage = lintel.lift = {StageKind::RunIn, lift.storey, lift.number};
    return true;
  }
  return false;
}

// Bearings shrink where there is no pier for them: a neighbour at the same height gets half.
Rect lintelRect(const Job& job, const SettingOut& settingOut, const LeafPlan& plan, size_t index) {
  const BuiltOpening& opening = settingOut.openings[index];
  const Opening& drawn = job.openings[opening.jobIndex];
  Rect rect{opening.s0 - drawn.lintelBearing, opening.head, opening.s1 + drawn.lintelBearing,
            opening.head + drawn.lintelHeight};
  for (size_t i = 0; i < settingOut.openings.size(); ++i) {
    const BuiltOpening& other = settingOut.openings[i];
    if (i == index || other.wall != opening.wall) continue;
    // Over this opening: the lintel stays under the other's sill.
    if (other.s0 < rect.s1 && other.s1 > rect.s0 && other.sill >= opening.head - kOnLevel) {
      rect.z1 = std::min(rect.z1, other.sill);
    }
    const double over = other.head + job.openings[other.jobIndex].lintelHeight;
    if (other.sill > rect.z1 || over < rect.z0) continue;
    if (other.s0 >= opening.s1) rect.s1 = std::min(rect.s1, (opening.s1 + other.s0) / 2);
    if (other.s1 <= opening.s0) rect.s0 = std::max(rect.s0, (opening.s0 + other.s1) / 2);
  }
  rect.s0 = std::max(rect.s0, plan.layer.from);
  rect.s1 = std::min(rect.s1, plan.layer.to);
  // No slip of wall beside a lintel that almost reaches the end.
  if (rect.s0 < plan.layer.from + kPier) rect.s0 = plan.layer.from;
  if (rect.s1 > plan.layer.to - kPier) rect.s1 = plan.layer.to;
  return rect;
}

void planLintels(const Job& job, const SettingOut& settingOut, LeafPlan& plan) {
  const bool gable = settingOut.walls[plan.wall].eaves == EavesKind::Gable;
  std::vector<FacePair> slope;
  if (gable) slope = gableLineOn(job, settingOut, plan.layer);
  for (size_t i = 0; i < settingOut.openings.size(); ++i) {
    if (settingOut.openings[i].wall != plan.wall) continue;
    LintelPlan lintel;
    lintel.opening = i;
    lintel.rect = lintelRect(job, settingOut, plan, i);
    const double limit =
        gable ? lowestBetween(slope, lintel.rect.s0, lintel.rect.s1) - kThinnest : plan.levelTop;
    lintel.rect.z1 = std::min(lintel.rect.z1, limit);
    if (lintel.rect.z1 - lintel.rect.z0 < kThinnest || lintel.rect.empty()) continue;
    if (chooseStage(job, settingOut, plan, lintel)) plan.lintels.push_back(lintel);
  }
}

// The length that is free of openings and lintels beside a jamb, between two levels; at most
// `length`.
double freeBeside(const LeafPlan& plan, double jamb, bool before, Rect r, size_t ownLintel) {
  (before ? r.s1 : r.s0) = jamb;
  const auto keepOff = [&](const Rect& other) {
    if (!r.overlaps(other)) return;
    if (before)
      r.s0 = std::max(r.s0, other.s1);
    else
      r.s1 = std::min(r.s1, other.s0);
  };
  for (const Rect& opening : plan.openings) keepOff(opening);
  for (size_t i = 0; i < plan.lintels.size(); ++i)
    if (i != ownLintel) keepOff(plan.lintels[i].rect);
  for (const PadstonePlan& padstone : plan.padstones) keepOff(padstone.rect);
  return r.s1 - r.s0;
}

// Under both ends of a lintel, from the jambs; only where the whole of one has room over the damp
// course and clear of the corner.
void planPadstones(const Job& job, const SettingOut& settingOut, LeafPlan& plan) {
  const double height = job.walls.blockHeight + job.walls.joint;
  for (size_t i = 0; i < plan.lintels.size(); ++i) {
    const BuiltOpening& opening = settingOut.openings[plan.lintels[i].opening];
    const double length = job.openings[opening.jobIndex].padstone;
    if (length <= 0 || opening.head - height < settingOut.levels.dampCourse) continue;
    for (const bool atStart : {true, false}) {
      Rect r{opening.s0 - length, opening.head - height, opening.s0, opening.head};
      if (!atStart) r.s0 = opening.s1, r.s1 = opening.s1 + length;
      const double free = freeBeside(plan, atStart ? r.s1 : r.s0, atStart, r, i);
      const bool inLeaf = r.s0 > plan.layer.from + kPier && r.s1 < plan.layer.to - kPier;
      if (free > length - 1e-6 && inLeaf) plan.padstones.push_back({i, atStart, r});
    }
  }
}

// Under windows, down to the damp course at most and clear of what is open below.
void planSills(const Job& job, const SettingOut& settingOut, LeafPlan& plan) {
  for (size_t i = 0; i < settingOut.openings.size(); ++i) {
    const BuiltOpening& opening = settingOut.openings[i];
    const double height = job.openings[opening.jobIndex].sillHeight;
    if (opening.wall != plan.wall || opening.kind != OpeningKind::Window || height <= 0) continue;
    if (opening.sill > plan.levelTop + kOnLevel) continue;  // in a gable it follows the slope
    SillPlan sill{i, {opening.s0, opening.sill - height, opening.s1, opening.sill}};
    bool clear = sill.rect.z0 > settingOut.levels.dampCourse - 1e-6;
    for (const Rect& other : plan.openings) clear = clear && !sill.rect.overlaps(other);
    for (const LintelPlan& lintel : plan.lintels) clear = clear && !sill.rect.overlaps(lintel.rect);
    if (clear) plan.sills.push_back(sill);
  }
}

// Air bricks take the place of a brick and its joints in the course at or under their level. One
// that meets an opening or a lintel, or has no room at a corner, is left out; validation tells.
void planVents(const Job& job, const SettingOut& settingOut, LeafPlan& plan) {
  const double damp = settingOut.levels.dampCourse, under = damp - kDampCourseThickness;
  for (size_t i = 0; i < job.airBricks.size(); ++i) {
    const AirBrick& brick = job.airBricks[i];
    if (settingOut.wallNamed(brick.wall) != plan.wall) continue;
    const WallLine& line = settingOut.walls[plan.wall];
    const bool fromEnd = settingOut.cornerNamed(brick.from) == line.to;
    const double at = fromEnd ? line.length - brick.at : brick.at;
    const double datum = brick.level < damp - kOnLevel ? under : damp;
    const double course = job.walls.course();
    const double bottom = datum + course * std::floor((brick.level - datum + kOnLevel) / course);
    const double half = job.walls.brickLength / 2 + job.walls.joint;
    const Rect rect{at - half, bottom, at + half, bottom + course};
    bool clear = rect.s0 > plan.layer.from + kPier && rect.s1 < plan.layer.to - kPier &&
                 rect.z1 < plan.levelTop + 1e-6;
    for (const Rect& other : plan.cuts()) clear = clear && !rect.overlaps(other);
    for (const MovementGap& gap : plan.gaps)
      clear = clear && (rect.s1 < gap.from + 1e-6 || rect.s0 > gap.to - 1e-6);
    // Closers stand beside openings and under them.
    for (const Rect& o : plan.openings)
      clear = clear &&
              !rect.overlaps({o.s0 - kCloserWidth, o.z0 - kCloserWidth, o.s1 + kCloserWidth, o.z1});
    for (const FoundationRun& run : settingOut.foundations)
      if (run.wall == plan.wall && run.from < rect.s1 && run.to > rect.s0)
        clear = clear && rect.z0 > run.top - 1e-6;
    if (clear) plan.vents.push_back({i, rect});
  }
}

}  // namespace

namespace {

// The highest top of a course of whole blocks in the inner leaf that is not over `level`; each lift
// begins with one.
double blockCourseUnder(const Job& job, const SettingOut& settingOut, double level) {
  const double course = job.walls.blockHeight + job.walls.joint;
  double bottom = settingOut.levels.dampCourse, top = bottom;
  for (const Lift& lift : settingOut.lifts) {
    if (lift.bottom > level) break;
    bottom = lift.bottom;
    top = lift.top;
  }
  if (top <= level) return top;
  return bottom + course * std::floor((level - bottom + 1e-6) / course);
}

}  // namespace

const char* nameOf(LeafSide side) { return side == LeafSide::Outer ? "outer leaf" : "inner leaf"; }

std::vector<Rect> LeafPlan::cuts() const {
  std::vector<Rect> all = openings;
  for (const LintelPlan& lintel : lintels) all.push_back(lintel.rect);
  for (const PadstonePlan& padstone : padstones) all.push_back(padstone.rect);
  for (const SillPlan& sill : sills) all.push_back(sill.rect);
  for (const VentPlan& vent : vents) all.push_back(vent.rect);
  return all;
}

std::vector<Rect> openingsIn(const SettingOut& settingOut, const WallLayer& layer, size_t wall) {
  std::vector<Rect> rects;
  for (const BuiltOpening& opening : settingOut.openings) {
    if (opening.wall != wall) continue;
    Rect r{opening.s0, opening.sill, opening.s1, opening.head};
    if (r.s0 < layer.from + kPier) r.s0 = layer.from - 1;
    if (r.s1 > layer.to - kPier) r.s1 = layer.to + 1;
    if (!r.empty()) rects.push_back(r);
  }
  return rects;
}

double levelTopOf(const Job& job, const SettingOut& settingOut, const WallLayer& layer, size_t wall,
                  bool wholeCourses) {
  constexpr double kClear = 0.005;  // a slope that begins nearer to a course begins on the next
  const Levels& levels = settingOut.levels;
  double top = levels.wallTop;
  if (wholeCourses) {
    top = levels.outerLeafTop;
  } else if (layer.outer < settingOut.faceDistances.innerLeafFront - 1e-9) {
    top = std::min(top, levels.eavesUnderside + layer.outer * settingOut.tanPitch);
  }  // else under the plate: the birdsmouths clear it
  if (settingOut.walls[wall].eaves == EavesKind::Gable) {
    const double slope = lowestOf(gableLineOn(job, settingOut, layer)) - kClear;
    const double course = job.walls.course();
    if (layer.outer > settingOut.faceDistances.innerLeafFront - 1e-9)
      top = std::min(top, blockCourseUnder(job, settingOut, slope));
    while (top > slope) top -= course;
  }
  return top;
}

LeafPlan leafPlan(const Job& job, const SettingOut& settingOut, size_t wall, LeafSide side) {
  const WallBuildUp& walls = job.walls;
  const double outer = side == LeafSide::Outer ? 0 : settingOut.faceDistances.innerLeafFront;
  LeafPlan plan;
  plan.wall = wall;
  plan.side = side;
  plan.layer = layerOf(settingOut, wall, outer, outer + leafThickness(walls, side));
  if (plan.layer.empty()) return plan;
  plan.levelTop = levelTopOf(job, settingOut, plan.layer, wall, side == LeafSide::Outer);
  plan.openings = openingsIn(settingOut, plan.layer, wall);
  if (side == LeafSide::Outer) {
    plan.gaps = movementJointsIn(job, settingOut, wall);
    plan.dampSteps = dampStepsIn(job, settingOut, wall);
    plan.corbels = corbelsOn(job, settingOut, wall);
  }
  planLintels(job, settingOut, plan);
  if (side == LeafSide::Inner)
    planPadstones(job, settingOut, plan);
  else
    planSills(job, settingOut, plan);
  planVents(job, settingOut, plan);
  return plan;
}

double leafStop(const Job& job, const SettingOut& settingOut, const LeafPlan& plan, double level) {
  if (plan.side == LeafSide::Outer) level = outerLeafStop(job, settingOut.levels, level);
  return std::min(level, plan.levelTop);
}

std::vector<Rect> bearings(const Job& job, const SettingOut& settingOut, const LeafPlan& plan,
                           const Lift& lift) {
  const double stop = leafStop(job, settingOut, plan, lift.top);
  std::vector<Rect> rects;
  for (const LintelPlan& lintel : plan.lintels) {
    if (!lintel.ownStage || lintel.lift != StageKey{StageKind::RunIn, lift.storey, lift.number})
      continue;
    const Rect rect{lintel.rect.s0, stop, lintel.rect.s1, lintel.rect.z0};
    if (!rect.empty()) rects.push_back(rect);
  }
  return rects;
}

std::string openingLabel(const SettingOut& settingOut, size_t opening) {
  const auto bare = [&](size_t i) {
    const std::string& name = settingOut.openings[i].name;
    return name.empty() ? "Opening " + std::to_string(i + 1) : name;
  };
  int earlier = 0;
  for (size_t i = 0; i < opening; ++i) earlier += bare(i) == bare(opening) ? 1 : 0;
  return earlier == 0 ? bare(opening) : bare(opening) + " (" + std::to_string(earlier + 1) + ")";
}

}  // namespace model
