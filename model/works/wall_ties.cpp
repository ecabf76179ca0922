// Wall ties: one element for those of a wall that are laid in one lift.
#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "model/level_text.h"
#include "model/walls/wall_names.h"
#include "model/works/cavity_parts.h"
#include "model/works/gable_rise.h"
#include "model/works/wall_infill.h"

namespace model {

namespace {

// A strip across the cavity that falls outwards.
Solid stripOf(const WallLayer& layer, const TiePlan& tie) {
  const double half = kTieThickness / 2, s0 = tie.s - kTieWidth / 2, s1 = tie.s + kTieWidth / 2;
  const WallLine& wall = *layer.wall;
  const Region face{{{s0, -half}, {s1, -half}, {s1, half}, {s0, half}}, {}};
  std::vector<Vec3> front, back;
  for (const Vec2& p : face.outer) {
    front.emplace_back(wall.at(p.x, layer.outer), tie.outer + p.y);
    back.emplace_back(wall.at(p.x, layer.inner), tie.inner + p.y);
  }
  return panel(face, front, back);
}

// Would a corner cover the bed that the tie lies in?
bool covered(const TiePlan& tie, const std::vector<Rect>& corners) {
  constexpr double kOver = 0.015;  // metres: in the course on that bed
  return tie.part == TiePlan::Part::Lift &&
         std::any_of(corners.begin(), corners.end(), [&](const Rect& r) {
           const double z = (tie.s > r.s0 && tie.s < r.s1 ? tie.inner : -1e9) + kOver;
           return z > r.z0 && z < r.z1;
         });
}

}  // namespace

double tieLength(const Job& job) {
  constexpr double kEmbedded = 0.050;  // at least, in each leaf: check M14
  constexpr double kGives = 0.0125;    // so that it still is when a cavity is wide; common practice
  constexpr double kStep = 0.025;      // lengths that are sold: common practice, no source
  const double least = job.walls.cavity + 2 * (kEmbedded + kGives);
  return kStep * std::ceil(least / kStep - 1e-6);
}

void buildWallTies(const Job& job, const SettingOut& settingOut, const CavityPlan& plan,
                   const std::vector<Rect>& corners, Works& works) {
  const WallLine& line = settingOut.walls[plan.wall];
  std::map<std::tuple<TiePlan::Part, size_t, bool>, Element> parts;
  for (const TiePlan& tie : plan.ties) {
    const auto [found, isNew] = parts.try_emplace({tie.part, tie.lift, covered(tie, corners)});
    Element& element = found->second;
    element.solid.append(stripOf(plan.layer, tie));
    element.quantity.amount += 1;
  }
  const std::string length = ", " + lengthText(tieLength(job)) + " long";
  for (auto& [where, element] : parts) {
    std::string id, name;
    const auto& [part, liftIndex, atCorner] = where;
    switch (part) {
      case TiePlan::Part::BelowDampCourse:
        id = "below damp course";
        name = "below the damp course";
        element.placed = upward({StageKind::WallsBelowDampCourse}, lowestConcrete(settingOut),
                                settingOut.levels.dampCourse - kDampCourseThickness);
        break;
      case TiePlan::Part::Lift: {
        const Lift& lift = settingOut.lifts[liftIndex];
        id = liftId(job, lift) + (atCorner ? "/corners" : "/run");
        name = liftName(job, lift) + (atCorner ? ", at the corners" : ", between the corners");
        const StageKind stage = atCorner ? StageKind::RaiseCorners : StageKind::RunIn;
        element.placed = upward({stage, lift.storey, lift.number}, lift.bottom, lift.top);
        break;
      }
      case TiePlan::Part::Gable:
        id = name = "gable";
        element.placed = gableRise(job, settingOut);
        break;
    }
    element.id = layerId(line, "wall ties") + "/" + id;
    element.name = layerName(line, "wall ties" + length) + ", " + name;
    element.kind = ElementKind::WallTie;
    element.material = Material::Steel;
    element.quantity.unit = Unit::Each;
    element.wall = line.name;
    add(works, std::move(element));
  }
}

}  // namespace model
