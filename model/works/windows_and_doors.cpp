// First-fix windows and doors, set in the outer part of the reveal: frames of timber with glass or
// leaves between them, and a sill in front of every window.
#include <algorithm>
#include <cmath>

#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"
#include "model/works/parts.h"
#include "model/works/reveals.h"

namespace model {

namespace {

// Sizes of the members: common practice, no source.
constexpr double kFrameDepth = 0.070;
constexpr double kGlass = 0.024;
constexpr double kDoorLeaf = 0.044;
constexpr double kWidestLight = 1.000;
constexpr double kWidestDoorLeaf = 1.200;
constexpr double kStile = 0.090;       // round the glass of a glazed door
constexpr double kBottomRail = 0.200;  // under it
constexpr double kGlazedFrom = 1.500;  // doors this wide are glazed
constexpr double kSillNose = 0.040;    // in front of the finished face

class OpeningBuilder {
 public:
  OpeningBuilder(const Job& job, const SettingOut& settingOut, size_t index, Works& works)
      : opening_(settingOut.openings[index]),
        wall_(settingOut.walls[opening_.wall]),
        label_(openingLabel(settingOut, index)),
        nose_(job.walls.render + kSillNose),
        works_(works) {
    begin_ = static_cast<double>(index) / static_cast<double>(settingOut.openings.size());
  }

  void build() {
    if (!hasFrame(opening_)) return;
    if (opening_.kind == OpeningKind::Window)
      window();
    else
      door();
  }

 private:
  Rect outside() const { return {opening_.s0, opening_.sill, opening_.s1, opening_.head}; }

  // Equal bays side by side within a frame, with one member between neighbours.
  std::vector<Rect> bays(const Rect& in, double widest, double between) const {
    const double width = in.s1 - in.s0;
    const double count = std::max(1.0, std::ceil((width + between) / (widest + between) - 1e-9));
    const double bay = (width - between * (count - 1)) / count;
    std::vector<Rect> all;
    for (double i = 0; i < count; ++i) {
      const double s = in.s0 + i * (bay + between);
      all.push_back({s, in.z0, s + bay, in.z1});
    }
    return all;
  }

  Solid slab(const std::vector<Rect>& add, const std::vector<Rect>& cut, double from,
             double depth) const {
    WallLayer layer;  // square through: a reveal has no mitres
    layer.wall = &wall_;
    layer.outer = from;
    layer.inner = from + depth;
    layer.from = -1e9;
    layer.to = 1e9;
    return layer.solid(fromRectangles(add, cut));
  }

  void put(const std::string& part, Material material, Solid solid, const Quantity& quantity) {
    Element element;
    const bool isWindow = opening_.kind == OpeningKind::Window;
    element.id = "wall " + wall_.name + "/" + label_ + "/" + part;
    element.name = label_ + ", " + part;
    element.kind = isWindow ? ElementKind::Window : ElementKind::Door;
    element.material = material;
    element.solid = std::move(solid);
    element.quantity = quantity;
    element.placed = whole({StageKind::WindowsAndDoors}, begin_);
    element.wall = wall_.name;
    add(works_, std::move(element));
  }

  void putGlass(const std::vector<Rect>& lights) {
    double area = 0;
    for (const Rect& r : lights) area += (r.s1 - r.s0) * (r.z1 - r.z0);
    put("glass", Material::Glass, slab(lights, {}, kReveal + (kFrameDepth - kGlass) / 2, kGlass),
        {area, Unit::SquareMetre});
  }

  void window() {
    const Rect r = outside();
    const Rect in{r.s0 + kFrameFace, r.z0 + kFrameFace, r.s1 - kFrameFace, r.z1 - kFrameFace};
    const auto lights = bays(in, kWidestLight, kFrameFace);
    put("frame", Material::Timber, slab({r}, lights, kReveal, kFrameDepth), {1, Unit::Each});
    putGlass(lights);
    put("sill", Material::Concrete,
        slab({{r.s0, r.z0, r.s1, r.z0 + kSillHeight}}, {}, -nose_, nose_ + kReveal),
        {r.s1 - r.s0, Unit::Metre});
  }

  // Jambs and head; the leaves come down to the sill.
  void door() {
    const Rect r = outside();
    const Rect in{r.s0 + kFrameFace, r.z0, r.s1 - kFrameFace, r.z1 - kFrameFace};
    put("frame", Material::Timber, slab({r}, {in}, kReveal, kFrameDepth), {1, Unit::Each});
    const double inset = kReveal + (kFrameDepth - kDoorLeaf) / 2;
    if (opening_.kind == OpeningKind::Garage) {
      put("leaf", Material::Steel, slab({in}, {}, inset, kDoorLeaf), {1, Unit::Each});
      return;
    }
    std::vector<Rect> lights;
    const auto leaves = bays(in, kWidestDoorLeaf, 0);
    if (r.s1 - r.s0 >= kGlazedFrom) {
      for (const Rect& leaf : leaves) {
        const Rect light{leaf.s0 + kStile, leaf.z0 + kBottomRail, leaf.s1 - kStile,
                         leaf.z1 - kStile};
        if (!light.empty()) lights.push_back(light);
      }
    }
    put("leaf", Material::Timber, slab({in}, lights, inset, kDoorLeaf),
        {static_cast<double>(leaves.size()), Unit::Each});
    if (!lights.empty()) putGlass(lights);
  }

  const BuiltOpening& opening_;
  const WallLine& wall_;
  std::string label_;
  double nose_ = 0;  // of the sill, in front of the outer leaf
  Works& works_;
  double begin_ = 0;
};

}  // namespace

bool hasFrame(const BuiltOpening& opening) {
  return opening.kind != OpeningKind::Opening && opening.s1 - opening.s0 >= 4 * kFrameFace &&
         opening.head - opening.sill >= 4 * kFrameFace;
}

void buildWindowsAndDoors(const Job& job, const SettingOut& settingOut, Works& works) {
  for (size_t i = 0; i < settingOut.openings.size(); ++i) {
    OpeningBuilder(job, settingOut, i, works).build();
  }
}

}  // namespace model
