// Both leaves of every wall, cut by stage: below the damp course, corner by corner and run by run
// of each lift, and the gables.
#include <algorithm>

#include "model/level_text.h"
#include "model/settingout/coursing.h"
#include "model/works/cavity_closers.h"
#include "model/walls/gable_profile.h"
#include "model/walls/leaf_plan.h"
#include "model/works/parts.h"
#include "model/works/racking.h"
#include "model/works/wall_infill.h"
#include "model/walls/wall_names.h"

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

  // ", top blocks cut to 198" where whole blocks do not come out.
  std::string cutOf(double bottom, double top) const {
    constexpr double kLeastBlock = 0.040;  // a thinner one is no block: the bed makes it up
    if (plan_.side == LeafSide::Outer) return "";
    const double left = cutBlockCourse(job_.walls, top - bottom), block = left - job_.walls.joint;
    if (left == 0) return "";
    return block < kLeastBlock ? ", " + lengthText(left) + " made up at the top"
                               : ", top blocks cut to " + lengthText(block);
  }

  void raise(const Lift& lift) {
    const double bottom = leafStop(job_, settingOut_, plan_, lift.bottom);
    const double top = leafStop(job_, settingOut_, plan_, lift.top);
    const std::vector<Rect> madeUp = bearings(job_, settingOut_, plan_, lift);
    if (top - bottom < 1e-6 && madeUp.empty()) return;
    const std::string cut = cutOf(bottom, top);
    // Each lift of blocks starts on a whole one; bricks keep to the courses from the damp course.
    racking_.datum = plan_.side == LeafSide::Outer ? settingOut_.levels.dampCourse : bottom;
    std::vector<Rect> cuts = plan_.cuts();
    cuts.insert(cuts.end(), madeUpBefore_.begin(), madeUpBefore_.end());
    std::vector<Rect> notRun = cuts;
    for (const bool atStart : {true, false}) {
      const double free = freeLength(plan_, atStart, bottom, top);
      const auto corner = rackedCorner(plan_.layer, atStart, free, bottom, top, racking_);
      notRun.insert(notRun.end(), corner.begin(), corner.end());
      const std::string name =
          "corner " + settingOut_.corners[atStart ? wall_.from : wall_.to].letter;
      put(liftId(job_, lift) + "/" + name, liftName(job_, lift) + ", " + name + cut,
          plan_.layer.solid(fromRectangles(corner, cuts)),
          upward({StageKind::RaiseCorners, lift.storey, lift.number}, lift.bottom, lift.top));
    }
    std::vector<Rect> run = madeUp;
    run.push_back({plan_.layer.from, bottom, plan_.layer.to, top});
    put(liftId(job_, lift) + "/run", liftName(job_, lift) + ", between the corners" + cut,
        plan_.layer.solid(fromRectangles(run, notRun)),
        upward({StageKind::RunIn, lift.storey, lift.number}, lift.bottom, lift.top));
    madeUpBefore_.insert(madeUpBefore_.end(), madeUp.begin(), madeUp.end());
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
  std::vector<Rect> madeUpBefore_;  // under the lintels, on lifts before
};

}  // namespace

void buildCavityWalls(const Job& job, const SettingOut& settingOut, Works& works) {
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    for (const LeafSide side : {LeafSide::Outer, LeafSide::Inner}) {
      LeafBuilder(job, settingOut, wall, side, works).build();
    }
    buildCavityFill(job, settingOut, wall, works);
    buildCavityInsulation(job, settingOut, wall, works);
    buildCavityClosers(job, settingOut, wall, works);
  }
}

}  // namespace model
