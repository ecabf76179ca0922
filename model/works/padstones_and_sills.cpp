// Padstones under lintels, and sills under windows, where the drawing has them.
#include "model/level_text.h"
#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"
#include "model/works/across_cavity.h"
#include "model/works/lintel_placement.h"
#include "model/works/parts.h"
#include "model/works/reveals.h"

namespace model {

namespace {

// How far a sill comes forward of the finished face, and how far its top falls in front of the
// frame: common practice, no source.
constexpr double kNose = 0.040, kFall = 0.010;

void buildPadstones(const Job& job, const SettingOut& settingOut, const LeafPlan& plan,
                    Works& works) {
  const WallLine& line = settingOut.walls[plan.wall];
  for (const PadstonePlan& padstone : plan.padstones) {
    const std::string over = openingLabel(settingOut, plan.lintels[padstone.lintel].opening);
    const std::string end = padstone.atStart ? "left" : "right";
    Element element;
    element.id = layerId(line, nameOf(plan.side)) + "/padstone " + end + " of " + over;
    element.name = "Padstone " + end + " of " + over + ", under its lintel";
    element.kind = ElementKind::Padstone;
    element.material = Material::Concrete;
    plan.layer.addBox(padstone.rect, element.solid);
    element.quantity = {1, Unit::Each};
    element.placed =
        whenLeafReaches(job, settingOut, padstone.rect.z0, padstone.rect.z0 > plan.levelTop - 1e-6);
    element.wall = line.name;
    add(works, std::move(element));
  }
}

void buildSills(const Job& job, const SettingOut& settingOut, const LeafPlan& plan, Works& works) {
  const WallLine& line = settingOut.walls[plan.wall];
  for (const SillPlan& sill : plan.sills) {
    const Rect& r = sill.rect;
    const double front = -job.walls.render - kNose, back = plan.layer.inner;
    Element element;
    element.id =
        layerId(line, nameOf(plan.side)) + "/sill of " + openingLabel(settingOut, sill.opening);
    element.name = "Sill of " + openingLabel(settingOut, sill.opening);
    element.kind = ElementKind::MasonrySill;
    element.material = Material::Concrete;
    element.solid = alongWall(
        line, {{front, r.z0}, {back, r.z0}, {back, r.z1}, {kReveal, r.z1}, {front, r.z1 - kFall}},
        r.s0, r.s1);
    element.quantity = {1, Unit::Each};
    element.placed = whenLeafReaches(job, settingOut, r.z0, false);
    element.wall = line.name;
    add(works, std::move(element));
  }
}

}  // namespace

void buildPadstonesAndSills(const Job& job, const SettingOut& settingOut, Works& works) {
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    const LeafPlan inner = leafPlan(job, settingOut, wall, LeafSide::Inner);
    if (!inner.layer.empty()) buildPadstones(job, settingOut, inner, works);
    const LeafPlan outer = leafPlan(job, settingOut, wall, LeafSide::Outer);
    if (!outer.layer.empty()) buildSills(job, settingOut, outer, works);
  }
}

}  // namespace model
