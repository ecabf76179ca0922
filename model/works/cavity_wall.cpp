// Both leaves of every wall, cut by stage: below the damp course, corner by corner and run by run
// of each lift, and the gables.
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "model/bond/laid_leaf.h"
#include "model/bond/toothing.h"
#include "model/in_parallel.h"
#include "model/settingout/gable_edges.h"
#include "model/walls/gable_profile.h"
#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"
#include "model/works/append_works.h"
#include "model/works/cavity_closers.h"
#include "model/works/cavity_parts.h"
#include "model/works/corbel_courses.h"
#include "model/works/gable_rise.h"
#include "model/works/joint_filler.h"
#include "model/works/leaf_parts.h"
#include "model/works/parts.h"
#include "model/works/racking.h"
#include "model/works/wall_infill.h"
#include "model/works/weep_holes.h"

namespace model {

namespace {

constexpr double kFar = 1e3;  // metres
// The same: what goes into a standing wall would else share an edge with the corner of its leaf.
constexpr double kClearOfEdge = 1e-4;

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
    parts_.emplace(layLeaf(job_, settingOut_, bonds_, plan_), plan_.layer, works_);
    corbels_ = corbelCourses(settingOut_, plan_, *parts_, works_);
    cuts_ = plan_.cuts();
    for (const DampStepPlan& step : plan_.dampSteps)
      for (const Rect& strip : step.strips()) cuts_.push_back(strip);
    if (plan_.side == LeafSide::Outer) toothings_ = toothingsOf(job_, settingOut_, cavity_.wall);
    if (plan_.side == LeafSide::Outer && !cavity_.empty()) {
      weepHoles_ = weepHoles(job_, settingOut_, cavity_, parts_->laid());
      for (const WeepHole& hole : weepHoles_) cuts_.push_back(hole.rect);
    }
    belowDampCourse();
    for (const Lift& lift : settingOut_.lifts) raise(lift);
    if (wall_.eaves == EavesKind::Gable) gable();
  }

 private:
  // One part with the units that it holds and no part before it; `forth`: laid along the wall, not
  // back.
  void put(const std::string& part, const std::string& name, Solid solid, const Placement& placed,
           const UnitsHeld& holds, bool forth = true) {
    put(part, name, std::move(solid), plan_.layer.thickness(), placed, *parts_, holds, forth);
  }

  void put(const std::string& part, const std::string& name, Solid solid, double thickness,
           const Placement& placed, LeafParts& parts, const UnitsHeld& holds, bool forth) {
    const bool brick = plan_.side == LeafSide::Outer;
    Element element;
    element.id = layerId(wall_, nameOf(plan_.side)) + "/" + part;
    element.name = layerName(wall_, nameOf(plan_.side)) + ", " + name;
    element.kind = brick ? ElementKind::OuterLeaf : ElementKind::InnerLeaf;
    element.material = brick ? Material::Brick : Material::Block;
    element.quantity = {volume(solid) / thickness, Unit::SquareMetre};
    element.solid = std::move(solid);
    element.placed = placed;
    element.wall = wall_.name;
    if (element.solid.empty()) return;
    parts.add(std::move(element), holds, forth);
  }

  // A part of a lift: what of some rectangles is not cut out, with what of it goes into a standing
  // wall, and then what of it stands out.
  void putPart(const std::string& part, const std::string& name, const std::vector<Rect>& rects,
               const std::vector<Rect>& without, Solid teeth, const Placement& placed,
               const UnitsHeld& holds, bool forth = true) {
    std::vector<Rect> inLine = without;
    for (const CorbelCourse& corbel : corbels_) inLine.push_back(corbel.rect());
    Solid solid = plan_.layer.solid(fromRectangles(rects, inLine));
    solid.append(teeth);
    put(part, name, std::move(solid), placed, holds, forth);
    for (CorbelCourse& corbel : corbels_)
      put(part + "/" + corbel.id(), name + ", " + corbel.name(), corbel.solid(rects, without),
          corbel.thickness(), placed, corbel.parts(), holds, forth);
  }

  // Movement joints too, from the foot to the top.
  std::vector<Rect> cutsAndGaps() const {
    std::vector<Rect> all = cuts_;
    for (const MovementGap& gap : plan_.gaps) all.push_back({gap.from, -kFar, gap.to, kFar});
    return all;
  }

  void belowDampCourse() {
    const double top = settingOut_.levels.dampCourse - kDampCourseThickness;
    const auto rects = aboveConcrete(settingOut_, plan_.layer, plan_.wall, top);
    put("below damp course", "below the damp course",
        plan_.layer.solid(fromRectangles(rects, cutsAndGaps())),
        upward({StageKind::WallsBelowDampCourse}, lowestConcrete(settingOut_), top),
        unitsIn({betweenLevels(-1e6, top)}));
  }

  void raise(const Lift& lift) {
    const double bottom = leafStop(job_, settingOut_, plan_, lift.bottom);
    const double top = leafStop(job_, settingOut_, plan_, lift.top);
    const std::vector<Rect> madeUp = bearings(job_, settingOut_, plan_, lift);
    if (top - bottom < 1e-6 && madeUp.empty()) return;
    const std::string cut =
        plan_.side == LeafSide::Outer ? "" : topCourseWords(job_.walls, top - bottom);
    std::vector<Rect> cuts = cutsAndGaps();
    cuts.insert(cuts.end(), madeUpBefore_.begin(), madeUpBefore_.end());
    std::vector<Rect> notRun = cuts, corners;
    std::vector<std::vector<Rect>> notTeeth;  // of the run: at the start, at the end
    for (const bool atStart : {true, false}) {
      const double free = freeLength(plan_, atStart, bottom, top);
      const auto corner =
          rackedCorner(parts_->laid(), plan_.layer, atStart, free, bottom, top, module_);
      notRun.insert(notRun.end(), corner.begin(), corner.end());
      corners.insert(corners.end(), corner.begin(), corner.end());
      corners_.insert(corners_.end(), corner.begin(), corner.end());
      const std::string name =
          "corner " + settingOut_.corners[atStart ? wall_.from : wall_.to].letter;
      notTeeth.push_back(corner);
      putPart(liftId(job_, lift) + "/" + name, liftName(job_, lift) + ", " + name + cut, corner,
              cuts, teeth(atStart, bottom, top, corner, true),
              upward({StageKind::RaiseCorners, lift.storey, lift.number}, lift.bottom, lift.top),
              unitsIn(parts_->openEnded(corner, atStart)), atStart);
    }
    const auto reveals = rackedReveals(parts_->laid(), plan_, corners, bottom, top, module_);
    notRun.insert(notRun.end(), reveals.begin(), reveals.end());
    corners_.insert(corners_.end(), reveals.begin(), reveals.end());
    putPart(liftId(job_, lift) + "/reveals", liftName(job_, lift) + ", reveals" + cut, reveals,
            cuts, {},
            upward({StageKind::RaiseCorners, lift.storey, lift.number}, lift.bottom, lift.top),
            unitsIn(reveals));
    std::vector<Rect> run = madeUp;
    run.push_back({plan_.layer.from, bottom, plan_.layer.to, top});
    Solid inRun;
    for (const bool atStart : {true, false})
      inRun.append(teeth(atStart, bottom, top, notTeeth[atStart ? 0 : 1], false));
    putPart(liftId(job_, lift) + "/run", liftName(job_, lift) + ", between the corners" + cut, run,
            notRun, std::move(inRun),
            upward({StageKind::RunIn, lift.storey, lift.number}, lift.bottom, lift.top),
            unitsIn(parts_->openEnded(run, true, true)));
    madeUpBefore_.insert(madeUpBefore_.end(), madeUp.begin(), madeUp.end());
  }

  // What goes into a standing wall between two levels: of the courses that the corner there holds,
  // or of the others.
  Solid teeth(bool atStart, double bottom, double top, const std::vector<Rect>& corner,
              bool inCorner) const {
    Solid solid;
    for (const Toothing& toothing : toothings_) {
      if (toothing.plan.atStart != atStart) continue;
      for (const CourseBand& band : parts_->laid().bands) {
        const double middle = (band.bottom + band.top) / 2;
        const bool held = std::any_of(corner.begin(), corner.end(), [&](const Rect& r) {
          return r.z0 < middle && r.z1 > middle;
        });
        if (middle < bottom || middle > top || held != inCorner ||
            !toothing.holds(job_, bonds_.outer, band.number))
          continue;
        const double end = atStart ? 0 : wall_.length;
        plan_.layer.addBox({atStart ? end - toothing.deep : end + kClearOfEdge, band.bottom,
                            atStart ? end - kClearOfEdge : end + toothing.deep, band.top},
                           solid);
      }
    }
    return solid;
  }

  void gable() {
    // Over the eaves a parapet's outer leaf has the whole corner: the return is behind it.
    const bool returned =
        plan_.side == LeafSide::Outer && parapetOn(job_, settingOut_, plan_.wall) != nullptr;
    const WallLayer layer = returned ? squared(plan_.layer) : plan_.layer;
    // Movement joints go right through it, to the slope.
    Solid solid;
    double from = layer.from;
    const auto upTo = [&](double to) {
      const WallLayer part = layer.between(from, to);
      solid.append(gableSolid(part, gableLineOn(job_, settingOut_, part), plan_.levelTop, cuts_));
    };
    for (const MovementGap& gap : plan_.gaps) {
      upTo(gap.from);
      from = gap.to;
    }
    upTo(layer.to);
    put("gable", "gable", std::move(solid), gableRise(job_, settingOut_),
        unitsIn({betweenLevels(-1e6, 1e6)}));
  }

  const Job& job_;
  const SettingOut& settingOut_;
  const LeafBonds& bonds_;
  const CavityPlan& cavity_;
  const WallLine& wall_;
  const LeafPlan& plan_;
  Works& works_;
  const double module_;  // a unit and its joint
  std::optional<LeafParts> parts_;
  std::list<CorbelCourse> corbels_;
  std::vector<Rect> cuts_;  // out of the solids: weep holes too, which no unit is laid round
  std::vector<WeepHole> weepHoles_;
  std::vector<Toothing> toothings_;
  std::vector<Rect> corners_;
  std::vector<Rect> madeUpBefore_;  // under the lintels, on lifts before
};

void buildCavityWall(const Job& job, const SettingOut& settingOut, const LeafBonds& bonds,
                     size_t wall, Works& works) {
  const CavityPlan cavity = cavityPlan(job, settingOut, wall);
  std::vector<Rect> corners;
  std::vector<WeepHole> holes;
  for (const LeafSide side : {LeafSide::Outer, LeafSide::Inner}) {
    LeafBuilder leaf(job, settingOut, bonds, cavity, side, works);
    leaf.build();
    corners.insert(corners.end(), leaf.corners().begin(), leaf.corners().end());
    holes.insert(holes.end(), leaf.holes().begin(), leaf.holes().end());
  }
  buildJointFiller(job, settingOut, cavity.outer, works);
  buildCavityFill(settingOut, cavity, works);
  if (!cavity.empty()) {
    buildWallTies(job, settingOut, cavity, corners, works);
    buildCavityBarriers(job, settingOut, cavity, works);
    buildInsulationBoards(job, settingOut, cavity, works);
    buildCavityTrays(job, settingOut, cavity, works);
    buildWeepVents(job, settingOut, cavity, holes, works);
    buildAirBricks(job, settingOut, cavity, works);
  }
  buildCavityClosers(job, settingOut, wall, works);
}

}  // namespace

void buildCavityWalls(const Job& job, const SettingOut& settingOut, Works& works) {
  const LeafBonds bonds = deriveLeafBonds(job, settingOut);
  std::vector<Works> walls(settingOut.walls.size());
  inParallel(walls.size(), [&](size_t wall) {
    Works own;  // not in its place: what grows beside another's slows both down
    buildCavityWall(job, settingOut, bonds, wall, own);
    walls[wall] = std::move(own);
  });
  for (Works& wall : walls) appendWorks(works, std::move(wall));
}

}  // namespace model
