#include "model/works/cavity_closers.h"

#include <algorithm>

#include "model/walls/gable_profile.h"
#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"
#include "model/works/gable_rise.h"
#include "model/works/wall_infill.h"

namespace model {

namespace {

constexpr double kUnderSlope = 0.020;  // as holes in a gable are kept under it
constexpr double kShortest = 0.020;

class Closers {
 public:
  Closers(const Job& job, const SettingOut& settingOut, size_t wall)
      : settingOut_(settingOut),
        wall_(wall),
        layer_(layerOf(settingOut, wall, settingOut.faceDistances.outerLeafBack,
                       settingOut.faceDistances.innerLeafFront)) {
    if (layer_.empty()) return;
    levelTop_ = levelTopOf(job, settingOut, layer_, wall, false);
    const bool gable = settingOut.walls[wall].eaves == EavesKind::Gable;
    if (gable) slope_ = gableLineOn(job, settingOut, layer_);
    for (size_t i = 0; i < settingOut.openings.size(); ++i) {
      const BuiltOpening& o = settingOut.openings[i];
      if (o.wall != wall) continue;
      for (const bool left : {true, false}) {
        Rect r = left ? Rect{o.s0 - kCloserWidth, o.sill, o.s0, o.head}
                      : Rect{o.s1, o.sill, o.s1 + kCloserWidth, o.head};
        put(i, left ? "left jamb" : "right jamb", r, true, gable);
      }
      const char* under = o.kind == OpeningKind::Window ? "sill" : "threshold";
      put(i, under, {o.s0, o.sill - kCloserWidth, o.s1, o.sill}, false, gable);
    }
  }

  const WallLayer& layer() const { return layer_; }
  double levelTop() const { return levelTop_; }
  std::vector<CloserPlan> plan() const { return plan_; }

 private:
  void put(size_t opening, const char* place, Rect r, bool upright, bool gable) {
    r.s0 = std::max(r.s0, layer_.from);
    r.s1 = std::min(r.s1, layer_.to);
    if (r.s1 - r.s0 < kShortest) return;
    const double top = gable ? lowestBetween(slope_, r.s0, r.s1) - kUnderSlope : levelTop_;
    r.z1 = std::min(r.z1, top);
    for (size_t i = 0; i < settingOut_.openings.size(); ++i) {
      const BuiltOpening& other = settingOut_.openings[i];
      if (other.wall == wall_ && i != opening) makeWay(r, upright, hole(other));
    }
    for (const CloserPlan& before : plan_) makeWay(r, upright, before.rect);
    if (r.s1 - r.s0 < kShortest || r.z1 - r.z0 < kShortest) return;
    plan_.push_back({opening, place, r, upright});
  }

  static Rect hole(const BuiltOpening& o) { return {o.s0, o.sill, o.s1, o.head}; }

  // Gives up what is taken: the larger part that is left of a closer's length, or of its width.
  static void makeWay(Rect& r, bool upright, const Rect& taken) {
    if (r.empty() || !r.overlaps(taken)) return;
    const Rect parts[] = {{r.s0, r.z0, r.s1, std::min(r.z1, taken.z0)},
                          {r.s0, std::max(r.z0, taken.z1), r.s1, r.z1},
                          {r.s0, r.z0, std::min(r.s1, taken.s0), r.z1},
                          {std::max(r.s0, taken.s1), r.z0, r.s1, r.z1}};
    const auto worth = [&](const Rect& part) {
      if (part.s1 - part.s0 < kShortest || part.z1 - part.z0 < kShortest) return 0.0;
      return upright ? part.z1 - part.z0 : part.s1 - part.s0;
    };
    r = *std::max_element(std::begin(parts), std::end(parts),
                          [&](const Rect& a, const Rect& b) { return worth(a) < worth(b); });
    if (worth(r) == 0) r = {};
  }

  const SettingOut& settingOut_;
  size_t wall_;
  WallLayer layer_;
  std::vector<FacePair> slope_;
  double levelTop_ = 0;
  std::vector<CloserPlan> plan_;
};

}  // namespace

std::vector<CloserPlan> closerPlan(const Job& job, const SettingOut& settingOut, size_t wall) {
  return Closers(job, settingOut, wall).plan();
}

namespace {

class CloserBuilder {
 public:
  CloserBuilder(const Job& job, const SettingOut& settingOut, size_t wall, Works& works)
      : job_(job),
        settingOut_(settingOut),
        line_(settingOut.walls[wall]),
        closers_(job, settingOut, wall),
        behindSheet_(layerOf(settingOut, wall,
                             settingOut.faceDistances.outerLeafBack + kDampCourseThickness,
                             settingOut.faceDistances.innerLeafFront)),
        sheet_(layerOf(settingOut, wall, settingOut.faceDistances.outerLeafBack,
                       settingOut.faceDistances.outerLeafBack + kDampCourseThickness)),
        works_(works) {}

  void build() {
    const std::vector<CloserPlan> plan = closers_.plan();
    double from = insulationBottom(settingOut_);
    for (const Lift& lift : settingOut_.lifts) {
      const double to = std::min(lift.top, closers_.levelTop());
      inOneGo(plan, from, to, liftId(job_, lift), liftName(job_, lift),
              upward({StageKind::RunIn, lift.storey, lift.number}, lift.bottom, lift.top));
      from = to;
    }
    if (line_.eaves != EavesKind::Gable) return;
    inOneGo(plan, from, 1e300, "gable", "gable", gableRise(job_, settingOut_));
  }

 private:
  // What of the closers stands between two levels, and the damp courses of the upright ones.
  void inOneGo(const std::vector<CloserPlan>& plan, double z0, double z1, const std::string& part,
               const std::string& name, const Placement& placed) {
    Element damp;
    for (const CloserPlan& closer : plan) {
      Rect r = closer.rect;
      r.z0 = std::max(r.z0, z0);
      r.z1 = std::min(r.z1, z1);
      if (r.empty()) continue;
      const std::string opening = openingLabel(settingOut_, closer.opening);
      Element element;
      element.id =
          layerId(line_, "cavity closer") + "/" + opening + "/" + closer.place + "/" + part;
      element.name = "Cavity closer, " + opening + ", " + closer.place + ", " + name;
      element.kind = ElementKind::CavityCloser;
      element.material = Material::Insulation;
      (closer.upright ? behindSheet_ : closers_.layer()).addBox(r, element.solid);
      element.quantity = {closer.upright ? r.z1 - r.z0 : r.s1 - r.s0, Unit::Metre};
      element.placed = placed;
      element.wall = line_.name;
      add(works_, std::move(element));
      if (!closer.upright) continue;
      sheet_.addBox(r, damp.solid);
      damp.quantity.amount += r.z1 - r.z0;
    }
    damp.id = layerId(line_, "damp course") + "/jambs/" + part;
    damp.name = layerName(line_, "damp course") + ", upright at jambs, " + name;
    damp.kind = ElementKind::DampCourse;
    damp.material = Material::Membrane;
    damp.quantity.unit = Unit::Metre;
    damp.placed = placed;
    damp.wall = line_.name;
    add(works_, std::move(damp));
  }

  const Job& job_;
  const SettingOut& settingOut_;
  const WallLine& line_;
  Closers closers_;
  WallLayer behindSheet_, sheet_;  // the cavity but for the upright damp course, and that
  Works& works_;
};

}  // namespace

void buildCavityClosers(const Job& job, const SettingOut& settingOut, size_t wall, Works& works) {
  CloserBuilder(job, settingOut, wall, works).build();
}

}  // namespace model
