#include "model/works/weep_holes.h"

#include <algorithm>
#include <cmath>

#include "model/walls/wall_names.h"
#include "model/works/cavity_parts.h"
#include "model/works/lintel_placement.h"
#include "model/works/wall_infill.h"

namespace model {

namespace {

constexpr double kWidestJoint = 0.025;  // metres: what is wider is an opening
constexpr double kInside = 0.010;       // from the end of a tray
constexpr double kOverGround = 0.020;
constexpr double kLevel = 1e-3;

// The cross joints of one course between two places, as high as the course without its bed.
std::vector<Rect> jointsOf(const LaidLeaf& laid, size_t band, double from, double to) {
  std::vector<MasonryUnit> course(
      laid.units.begin() + static_cast<std::ptrdiff_t>(laid.firstOf[band]),
      laid.units.begin() + static_cast<std::ptrdiff_t>(laid.firstOf[band + 1]));
  std::erase_if(course, [](const MasonryUnit& unit) {
    return unit.piece == Piece::Split || unit.piece == Piece::Raked;
  });
  std::sort(course.begin(), course.end(),
            [](const MasonryUnit& a, const MasonryUnit& b) { return a.s0 < b.s0; });
  std::vector<Rect> joints;
  // Right through the leaf: in a thick one a brick may lie behind a joint of the face.
  double laidTo = course.empty() ? 0 : course.front().s1;
  for (size_t i = 0; i + 1 < course.size(); ++i) {
    laidTo = std::max(laidTo, course[i].s1);
    const Rect joint{laidTo, course[i].z0, course[i + 1].s0, course[i].z1};
    if (joint.empty() || joint.s1 - joint.s0 > kWidestJoint) continue;
    if (joint.s0 > from && joint.s1 < to) joints.push_back(joint);
  }
  return joints;
}

// Is it a movement joint, which stays closed?
bool inGap(const LeafPlan& leaf, const Rect& joint) {
  return std::any_of(leaf.gaps.begin(), leaf.gaps.end(), [&](const MovementGap& gap) {
    return gap.from < joint.s1 && gap.to > joint.s0;
  });
}

// The first and the last, and as few between as keep them near enough to each other.
std::vector<Rect> spaced(const std::vector<Rect>& joints, double apart) {
  std::vector<Rect> chosen;
  for (size_t i = 0; i < joints.size(); ++i) {
    const bool ends = i == 0 || i + 1 == joints.size();
    if (ends || joints[i + 1].s0 - chosen.back().s0 > apart + kLevel) chosen.push_back(joints[i]);
  }
  return chosen;
}

}  // namespace

std::vector<WeepHole> weepHoles(const Job& job, const SettingOut& settingOut,
                                const CavityPlan& cavity, const LaidLeaf& outer) {
  std::vector<WeepHole> holes;
  const double apart = job.walls.builtIn.weepSpacing;
  const auto drain = [&](std::optional<size_t> tray, size_t band, double from, double to) {
    std::vector<Rect> joints = jointsOf(outer, band, from, to);
    std::erase_if(joints, [&](const Rect& joint) { return inGap(cavity.outer, joint); });
    for (const Rect& r : spaced(joints, apart)) holes.push_back({tray, r});
  };
  const WallLayer& leaf = cavity.outer.layer;
  for (size_t i = 0; i < cavity.trays.size(); ++i) {
    const TrayPlan& tray = cavity.trays[i];
    const auto band =
        std::find_if(outer.bands.begin(), outer.bands.end(),
                     [&](const CourseBand& b) { return b.bottom > tray.low - kLevel; });
    if (band == outer.bands.end()) continue;
    drain(i, static_cast<size_t>(band - outer.bands.begin()),
          std::max(tray.from, leaf.from) + kInside, std::min(tray.to, leaf.to) - kInside);
  }
  const WallLine& line = settingOut.walls[cavity.wall];
  const double ground = levelsAlong(settingOut.terrain, line.start, line.end).high;
  for (size_t band = 0; band < outer.bands.size(); ++band) {
    const CourseBand& course = outer.bands[band];
    if (course.number != -1 || course.bottom < ground + kOverGround) continue;
    drain(std::nullopt, band, std::max(cavity.layer.from, leaf.from) + kInside,
          std::min(cavity.layer.to, leaf.to) - kInside);
  }
  return holes;
}

void buildWeepVents(const Job& job, const SettingOut& settingOut, const CavityPlan& cavity,
                    const std::vector<WeepHole>& holes, Works& works) {
  const WallLine& line = settingOut.walls[cavity.wall];
  for (size_t i = 0; i < holes.size();) {
    Element element;
    const std::optional<size_t> tray = holes[i].tray;
    const double foot = holes[i].rect.z0;
    for (; i < holes.size() && holes[i].tray == tray; ++i) {
      cavity.outer.layer.addBox(holes[i].rect, element.solid);
      element.quantity.amount += 1;
    }
    element.quantity.unit = Unit::Each;
    const TrayNames names = tray ? namesOf(settingOut, cavity, cavity.trays[*tray])
                                 : TrayNames{"foot of the cavity", ""};
    element.id = layerId(line, "weep vents") + "/" + names.id;
    element.name = tray ? "Weep vents over " + names.over
                        : layerName(line, "weep vents") + ", at the foot of the cavity";
    element.kind = ElementKind::WeepVent;
    element.material = Material::Membrane;
    element.placed = tray ? whenLeafReaches(job, settingOut, foot, foot > cavity.outer.levelTop)
                          : upward({StageKind::WallsBelowDampCourse}, lowestConcrete(settingOut),
                                   settingOut.levels.dampCourse - kDampCourseThickness);
    element.wall = line.name;
    add(works, std::move(element));
  }
}

}  // namespace model
