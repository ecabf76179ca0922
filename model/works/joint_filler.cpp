#include "model/works/joint_filler.h"

#include <algorithm>

#include "model/walls/gable_profile.h"
#include "model/walls/wall_names.h"
#include "model/works/gable_rise.h"
#include "model/works/wall_infill.h"

namespace model {

namespace {

class Filler {
 public:
  Filler(const Job& job, const SettingOut& settingOut, const LeafPlan& leaf, Works& works)
      : job_(job),
        settingOut_(settingOut),
        leaf_(leaf),
        line_(settingOut.walls[leaf.wall]),
        works_(works) {}

  void fill(const MovementGap& gap) const {
    const double damp = settingOut_.levels.dampCourse - kDampCourseThickness;
    std::vector<Rect> below;
    for (Rect r : aboveConcrete(settingOut_, leaf_.layer, leaf_.wall, damp)) {
      r.s0 = std::max(r.s0, gap.from);
      r.s1 = std::min(r.s1, gap.to);
      if (!r.empty()) below.push_back(r);
    }
    put(gap, "below damp course", "below the damp course",
        leaf_.layer.solid(fromRectangles(below, {})),
        upward({StageKind::WallsBelowDampCourse}, lowestConcrete(settingOut_), damp));
    for (const Lift& lift : settingOut_.lifts) {
      const Rect part{gap.from, leafStop(job_, settingOut_, leaf_, lift.bottom), gap.to,
                      leafStop(job_, settingOut_, leaf_, lift.top)};
      Solid solid;
      leaf_.layer.addBox(part, solid);
      put(gap, liftId(job_, lift), liftName(job_, lift), std::move(solid),
          upward({StageKind::RunIn, lift.storey, lift.number}, lift.bottom, lift.top));
    }
    if (line_.eaves != EavesKind::Gable) return;
    const WallLayer slit = leaf_.layer.between(gap.from, gap.to);
    put(gap, "gable", "gable",
        gableSolid(slit, gableLineOn(job_, settingOut_, slit), leaf_.levelTop, {}),
        gableRise(job_, settingOut_));
  }

 private:
  void put(const MovementGap& gap, const std::string& part, const std::string& name, Solid solid,
           const Placement& placed) const {
    const std::string which = "movement joint " + std::to_string(gap.joint + 1);
    Element element;
    element.id = layerId(line_, which) + "/" + part;
    element.name = layerName(line_, which) + ", filler and sealant, " + name;
    element.kind = ElementKind::JointFiller;
    element.material = Material::Membrane;
    element.quantity = {volume(solid) / (leaf_.layer.thickness() * (gap.to - gap.from)),
                        Unit::Metre};
    element.solid = std::move(solid);
    element.placed = placed;
    element.wall = line_.name;
    add(works_, std::move(element));
  }

  const Job& job_;
  const SettingOut& settingOut_;
  const LeafPlan& leaf_;
  const WallLine& line_;
  Works& works_;
};

}  // namespace

void buildJointFiller(const Job& job, const SettingOut& settingOut, const LeafPlan& leaf,
                      Works& works) {
  const Filler filler(job, settingOut, leaf, works);
  if (leaf.layer.empty()) return;
  for (const MovementGap& gap : leaf.gaps) filler.fill(gap);
}

}  // namespace model
