// Both leaves of every wall, cut by stage: below the damp course, corner by corner and run by run
// of each lift, and the gables.
#include <algorithm>

#include "model/works/gable_profile.h"
#include "model/works/leaf_plan.h"
#include "model/works/parts.h"
#include "model/works/racking.h"
#include "model/works/wall_infill.h"
#include "model/works/wall_names.h"

namespace model {

namespace {

class LeafBuilder {
 public:
  LeafBuilder(const Job& job, const SettingOut& settingOut, size_t wall, LeafSide side,
              Works& works)
      : job_(job),
        settingOut_(settingOut),
        wall_(settingOut.walls[wall]),
        plan_(leafPlan(job, settingOut, wall, side)),
        works_(works) {
    const bool brick = side == LeafSide::Outer;
    racking_.unitLength = (brick ? job.walls.brickLength : job.walls.blockLength) + job.walls.joint;
    racking_.unitHeight = (brick ? job.walls.brickHeight : job.walls.blockHeight) + job.walls.joint;
    racking_.datum = settingOut.levels.dampCourse;
  }

  void build() {
    if (plan_.layer.empty()) return;
    belowDampCourse();
    for (const Lift& lift : settingOut_.lifts) raise(lift);
    if (wall_.eaves == EavesKind::Gable) gable();
  }

 private:
  void put(const std::string& part, const std::string& name, Solid solid, const Placement& placed) {
    const bool brick = plan_.side == LeafSide::Outer;
    Element element;
    element.id = layerId(wall_, nameOf(plan_.side)) + "/" + part;
    element.name = layerName(wall_, nameOf(plan_.side)) + ", " + name;
    element.kind = brick ? ElementKind::OuterLeaf : ElementKind::InnerLeaf;
    element.material = brick ? Material::Brick : Material::Block;
    element.quantity = {volume(solid) / plan_.layer.thickness(), Unit::SquareMetre};
    element.solid = std::move(solid);
    element.placed = placed;
    element.wall = wall_.name;
    add(works_, std::move(element));
  }

  void belowDampCourse() {
    const double top = settingOut_.levels.dampCourse - kDampCourseThickness;
    const auto rects = aboveConcrete(settingOut_, plan_.layer, plan_.wall, top);
    put("below damp course", "below the damp course",
        plan_.layer.solid(fromRectangles(rects, plan_.cuts())),
        upward({StageKind::WallsBelowDampCourse}, lowestConcrete(settingOut_), top));
  }

  void raise(const Lift& lift) {
    const double top = std::min(lift.top, plan_.levelTop);
    if (top - lift.bottom < 1e-6) return;
    const std::vector<Rect> cuts = plan_.cuts();
    std::vector<Rect> notRun = cuts;
    for (const bool atStart : {true, false}) {
      const double free = freeLength(plan_, atStart, lift.bottom, top);
      const auto corner = rackedCorner(plan_.layer, atStart, free, lift.bottom, top, racking_);
      notRun.insert(notRun.end(), corner.begin(), corner.end());
      const std::string name =
          "corner " + settingOut_.corners[atStart ? wall_.from : wall_.to].letter;
      put(liftId(lift) + "/" + name, liftName(job_, lift) + ", " + name,
          plan_.layer.solid(fromRectangles(corner, cuts)),
          upward({StageKind::RaiseCorners, lift.storey, lift.number}, lift.bottom, lift.top));
    }
    const Rect whole{plan_.layer.from, lift.bottom, plan_.layer.to, top};
    put(liftId(lift) + "/run", liftName(job_, lift) + ", between the corners",
        plan_.layer.solid(fromRectangles({whole}, notRun)),
        upward({StageKind::RunIn, lift.storey, lift.number}, lift.bottom, lift.top));
  }

  void gable() {
    const auto line = rafterLineOn(settingOut_, plan_.layer);
    put("gable", "gable", gableSolid(plan_.layer, line, plan_.levelTop, plan_.cuts()),
        upward({StageKind::Gables}, settingOut_.levels.outerLeafTop, settingOut_.levels.ridge));
  }

  const Job& job_;
  const SettingOut& settingOut_;
  const WallLine& wall_;
  const LeafPlan plan_;
  Works& works_;
  Racking racking_;
};

}  // namespace

void buildCavityWalls(const Job& job, const SettingOut& settingOut, Works& works) {
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    for (const LeafSide side : {LeafSide::Outer, LeafSide::Inner}) {
      LeafBuilder(job, settingOut, wall, side, works).build();
    }
    buildCavityFill(job, settingOut, wall, works);
    buildCavityInsulation(job, settingOut, wall, works);
  }
}

}  // namespace model
