// Both leaves of every wall, cut by stage: below the damp course, corner by corner and run by run
// of each lift, and the gables.
#include <algorithm>
#include <cmath>
#include <functional>

#include "model/bond/laid_leaf.h"
#include "model/level_text.h"
#include "model/settingout/coursing.h"
#include "model/walls/gable_profile.h"
#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"
#include "model/works/cavity_closers.h"
#include "model/works/cavity_parts.h"
#include "model/works/parts.h"
#include "model/works/racking.h"
#include "model/works/wall_infill.h"
#include "model/works/weep_holes.h"

namespace model {

namespace {

class LeafBuilder {
 public:
  LeafBuilder(const Job& job, const SettingOut& settingOut, const LeafBonds& bonds,
              const CavityPlan& cavity, LeafSide side, Works& works)
      : job_(job),
        settingOut_(settingOut),
        bonds_(bonds),
        cavity_(cavity),
        wall_(settingOut.walls[cavity.wall]),
        plan_(side == LeafSide::Outer ? cavity.outer : cavity.inner),
        works_(works),
        module_((side == LeafSide::Outer ? job.walls.brickLength : job.walls.blockLength) +
                job.walls.joint) {}

  // Of all lifts: what is raised before the run between, reveals too.
  const std::vector<Rect>& corners() const { return corners_; }
  const std::vector<WeepHole>& holes() const { return weepHoles_; }

  void build() {
    if (plan_.layer.empty()) return;
    laid_ = layLeaf(job_, settingOut_, bonds_, plan_);
    taken_.assign(laid_.units.size(), false);
    frame_ = works_.frames.size();
    works_.frames.push_back(laid_.frame);
    cuts_ = plan_.cuts();
    if (plan_.side == LeafSide::Outer && !cavity_.empty()) {
      weepHoles_ = weepHoles(job_, settingOut_, cavity_, laid_);
      for (const WeepHole& hole : weepHoles_) cuts_.push_back(hole.rect);
    }
    belowDampCourse();
    for (const Lift& lift : settingOut_.lifts) raise(lift);
    if (wall_.eaves == EavesKind::Gable) gable();
  }

 private:
  using Holds = std::function<bool(const MasonryUnit&)>;

  // One part with the units that it holds and no part before it; `forth`: laid along the wall, not
  // back.
  void put(const std::string& part, const std::string& name, Solid solid, const Placement& placed,
           const Holds& holds, bool forth = true) {
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
    if (element.solid.empty()) return;
    element.frame = frame_;
    element.firstUnit = works_.units.size();
    takeUnits(placed, holds, forth);
    element.unitCount = works_.units.size() - element.firstUnit;
    add(works_, std::move(element));
  }

  // Course after course, each while the part grows past it.
  void takeUnits(const Placement& placed, const Holds& holds, bool forth) {
    std::vector<size_t> course;
    for (size_t band = 0; band + 1 < laid_.firstOf.size(); ++band) {
      course.clear();
      for (size_t i = laid_.firstOf[band]; i < laid_.firstOf[band + 1]; ++i)
        if (!taken_[i] && holds(laid_.units[i])) course.push_back(i);
      if (course.empty()) continue;
      // By the bed first: a piece that is cut in height lies on another.
      std::stable_sort(course.begin(), course.end(), [&](size_t a, size_t b) {
        const MasonryUnit &p = laid_.units[a], &q = laid_.units[b];
        if (std::fabs(p.z0 - q.z0) > 1e-6) return p.z0 < q.z0;
        return forth ? p.s0 < q.s0 : p.s0 > q.s0;
      });
      const auto share = [&](double z) {
        return std::clamp((z - placed.low) / (placed.high - placed.low), 0.0, 1.0);
      };
      const double from = share(laid_.bands[band].bottom), to = share(laid_.bands[band].top);
      for (size_t k = 0; k < course.size(); ++k) {
        MasonryUnit unit = laid_.units[course[k]];
        const double done = (static_cast<double>(k) + 0.5) / static_cast<double>(course.size());
        unit.when = static_cast<float>(from + (to - from) * done);
        taken_[course[k]] = true;
        works_.units.push_back(unit);
      }
    }
  }

  static Holds heldBy(std::vector<Rect> rects) {
    return [rects = std::move(rects)](const MasonryUnit& unit) {
      const double s = (unit.s0 + unit.s1) / 2, z = (unit.z0 + unit.z1) / 2;
      return std::any_of(rects.begin(), rects.end(), [&](const Rect& r) {
        return s > r.s0 && s < r.s1 && z > r.z0 && z < r.z1;
      });
    };
  }
  // Units at a corner run on past the length of full thickness.
  std::vector<Rect> openEnded(std::vector<Rect> rects, bool atStart, bool both = false) const {
    for (Rect& r : rects) {
      if ((both || atStart) && r.s0 < plan_.layer.from + 1e-6) r.s0 = -1e6;
      if ((both || !atStart) && r.s1 > plan_.layer.to - 1e-6) r.s1 = 1e6;
    }
    return rects;
  }
  static Rect levels(double bottom, double top) { return {-1e6, bottom, 1e6, top}; }

  void belowDampCourse() {
    const double top = settingOut_.levels.dampCourse - kDampCourseThickness;
    const auto rects = aboveConcrete(settingOut_, plan_.layer, plan_.wall, top);
    put("below damp course", "below the damp course",
        plan_.layer.solid(fromRectangles(rects, cuts_)),
        upward({StageKind::WallsBelowDampCourse}, lowestConcrete(settingOut_), top),
        heldBy({levels(-1e6, top)}));
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
    std::vector<Rect> cuts = cuts_;
    cuts.insert(cuts.end(), madeUpBefore_.begin(), madeUpBefore_.end());
    std::vector<Rect> notRun = cuts, corners;
    for (const bool atStart : {true, false}) {
      const double free = freeLength(plan_, atStart, bottom, top);
      const auto corner = rackedCorner(laid_, plan_.layer, atStart, free, bottom, top, module_);
      notRun.insert(notRun.end(), corner.begin(), corner.end());
      corners.insert(corners.end(), corner.begin(), corner.end());
      corners_.insert(corners_.end(), corner.begin(), corner.end());
      const std::string name =
          "corner " + settingOut_.corners[atStart ? wall_.from : wall_.to].letter;
      put(liftId(job_, lift) + "/" + name, liftName(job_, lift) + ", " + name + cut,
          plan_.layer.solid(fromRectangles(corner, cuts)),
          upward({StageKind::RaiseCorners, lift.storey, lift.number}, lift.bottom, lift.top),
          heldBy(openEnded(corner, atStart)), atStart);
    }
    const auto reveals = rackedReveals(laid_, plan_, corners, bottom, top, module_);
    notRun.insert(notRun.end(), reveals.begin(), reveals.end());
    corners_.insert(corners_.end(), reveals.begin(), reveals.end());
    put(liftId(job_, lift) + "/reveals", liftName(job_, lift) + ", reveals" + cut,
        plan_.layer.solid(fromRectangles(reveals, cuts)),
        upward({StageKind::RaiseCorners, lift.storey, lift.number}, lift.bottom, lift.top),
        heldBy(reveals));
    std::vector<Rect> run = madeUp;
    run.push_back({plan_.layer.from, bottom, plan_.layer.to, top});
    put(liftId(job_, lift) + "/run", liftName(job_, lift) + ", between the corners" + cut,
        plan_.layer.solid(fromRectangles(run, notRun)),
        upward({StageKind::RunIn, lift.storey, lift.number}, lift.bottom, lift.top),
        heldBy(openEnded(run, true, true)));
    madeUpBefore_.insert(madeUpBefore_.end(), madeUp.begin(), madeUp.end());
  }

  void gable() {
    const auto line = rafterLineOn(settingOut_, plan_.layer);
    put("gable", "gable", gableSolid(plan_.layer, line, plan_.levelTop, cuts_),
        upward({StageKind::Gables}, settingOut_.levels.outerLeafTop, settingOut_.levels.ridge),
        heldBy({levels(-1e6, 1e6)}));
  }

  const Job& job_;
  const SettingOut& settingOut_;
  const LeafBonds& bonds_;
  const CavityPlan& cavity_;
  const WallLine& wall_;
  const LeafPlan& plan_;
  Works& works_;
  const double module_;  // a unit and its joint
  LaidLeaf laid_;
  std::vector<bool> taken_;  // units that a part has
  size_t frame_ = 0;
  std::vector<Rect> cuts_;  // out of the solids: weep holes too, which no unit is laid round
  std::vector<WeepHole> weepHoles_;
  std::vector<Rect> corners_;
  std::vector<Rect> madeUpBefore_;  // under the lintels, on lifts before
};

}  // namespace

void buildCavityWalls(const Job& job, const SettingOut& settingOut, Works& works) {
  const LeafBonds bonds = deriveLeafBonds(job, settingOut);
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    const CavityPlan cavity = cavityPlan(job, settingOut, wall);
    std::vector<Rect> corners;
    std::vector<WeepHole> holes;
    for (const LeafSide side : {LeafSide::Outer, LeafSide::Inner}) {
      LeafBuilder leaf(job, settingOut, bonds, cavity, side, works);
      leaf.build();
      corners.insert(corners.end(), leaf.corners().begin(), leaf.corners().end());
      holes.insert(holes.end(), leaf.holes().begin(), leaf.holes().end());
    }
    buildCavityFill(settingOut, cavity, works);
    if (!cavity.empty()) {
      buildWallTies(job, settingOut, cavity, corners, works);
      buildInsulationBoards(job, settingOut, cavity, works);
      buildCavityTrays(job, settingOut, cavity, works);
      buildWeepVents(settingOut, cavity, holes, works);
      buildAirBricks(job, settingOut, cavity, works);
    }
    buildCavityClosers(job, settingOut, wall, works);
  }
}

}  // namespace model
