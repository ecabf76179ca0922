#include "model/works/cavity_closers.h"

#include <algorithm>

#include "model/walls/gable_profile.h"
#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"
#include "model/works/wall_infill.h"

namespace model {

namespace {

constexpr double kWidth = 0.075;  // of a closer, square to the opening: common practice, no source
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
    if (gable) slope_ = rafterLineOn(settingOut, layer_);
    for (size_t i = 0; i < settingOut.openings.size(); ++i) {
      const BuiltOpening& o = settingOut.openings[i];
      if (o.wall != wall) continue;
      for (const bool left : {true, false}) {
        Rect r = left ? Rect{o.s0 - kWidth, o.sill, o.s0, o.head}
                      : Rect{o.s1, o.sill, o.s1 + kWidth, o.head};
        put(i, left ? "left jamb" : "right jamb", r, true, gable);
      }
      const char* under = o.kind == OpeningKind::Window ? "sill" : "threshold";
      put(i, under, {o.s0, o.sill - kWidth, o.s1, o.sill}, false, gable);
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

void buildCavityClosers(const Job& job, const SettingOut& settingOut, size_t wall, Works& works) {
  const Closers closers(job, settingOut, wall);
  const WallLine& line = settingOut.walls[wall];
  const auto put = [&](const CloserPlan& closer, double z0, double z1, const std::string& part,
                       const std::string& name, const Placement& placed) {
    Rect r = closer.rect;
    r.z0 = std::max(r.z0, z0);
    r.z1 = std::min(r.z1, z1);
    if (r.empty()) return;
    const std::string at = openingLabel(settingOut, closer.opening) + ", " + closer.place;
    Element element;
    element.id = layerId(line, "cavity closer") + "/" + openingLabel(settingOut, closer.opening) +
                 "/" + closer.place + "/" + part;
    element.name = "Cavity closer, " + at + ", " + name;
    element.kind = ElementKind::CavityCloser;
    element.material = Material::Insulation;
    element.solid = closers.layer().solid(fromRectangles({r}, {}));
    element.quantity = {closer.upright ? r.z1 - r.z0 : r.s1 - r.s0, Unit::Metre};
    element.placed = placed;
    element.wall = line.name;
    add(works, std::move(element));
  };
  for (const CloserPlan& closer : closers.plan()) {
    double from = insulationBottom(settingOut);
    for (const Lift& lift : settingOut.lifts) {
      put(closer, from, std::min(lift.top, closers.levelTop()), liftId(job, lift),
          liftName(job, lift),
          upward({StageKind::RunIn, lift.storey, lift.number}, lift.bottom, lift.top));
      from = std::min(lift.top, closers.levelTop());
    }
    if (line.eaves != EavesKind::Gable) continue;
    put(closer, from, 1e300, "gable", "gable",
        upward({StageKind::Gables}, settingOut.levels.outerLeafTop, settingOut.levels.ridge));
  }
}

}  // namespace model
