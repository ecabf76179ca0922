// The coping of garden walls, stone by stone, and the caps of their piers.
#include <algorithm>
#include <cmath>

#include "model/works/coping_stones.h"
#include "model/works/garden_parts.h"

namespace model {

namespace {

constexpr double kLeastFace = 0.100;  // of a stone, at its short side

void addCoping(const GardenSite& site, const std::string& part, const std::string& name,
               const UnitFrame& frame, Solid solid, int pieces, Works& works) {
  Element e;
  e.id = site.id + "/" + part;
  e.name = site.name + ", " + name;
  e.wall = site.id;
  e.kind = ElementKind::Coping;
  e.material = Material::Concrete;
  e.quantity = {static_cast<double>(pieces), Unit::Each};
  // From end to end, on the bed of the last course.
  Placement placed = whole({StageKind::GardenWalls}, kGardenFilled);
  placed.direction = Vec3(frame.along, 0);
  placed.low = 1e300;
  placed.high = -1e300;
  for (const Vec3& p : solid.points) {
    const double s = p.x * frame.along.x + p.y * frame.along.y;
    placed.low = std::min(placed.low, s);
    placed.high = std::max(placed.high, s);
  }
  placed.end = 1;
  e.placed = placed;
  e.solid = std::move(solid);
  add(works, std::move(e));
}

}  // namespace

void buildGardenCoping(const GardenSite& site, Works& works) {
  const GardenPlan& plan = site.plan;
  const double bottom = plan.wall->top, top = bottom + plan.wall->coping;
  const double out = plan.corbel + kCopingOut;
  for (size_t i = 0; i < plan.lengths.size(); ++i) {
    const GardenLength& length = plan.lengths[i];
    Solid stones, caps;
    int count = 0;
    for (auto [from, to] : plan.betweenPiers(length, out)) {
      if (from <= 0 && length.freeStart) from -= out;
      if (to >= length.length && length.freeEnd) to += out;
      int pieces = std::max(
          1, static_cast<int>(std::ceil((to - from) / (kCopingLength + kCopingJoint) - 1e-6)));
      // A stone at a mitre is longer than the mitre reaches.
      const double reach = (plan.sizes.thickness() + out) *
                           std::max(std::abs(length.skewStart), std::abs(length.skewEnd));
      if (reach > 0)
        pieces = std::clamp(static_cast<int>((to - from) / (reach + kLeastFace)), 1, pieces);
      const double each = (to - from + kCopingJoint) / pieces;
      for (int k = 0; k < pieces; ++k) {
        const double s0 = from + k * each;
        const double s1 = k + 1 == pieces ? to : s0 + each - kCopingJoint;
        stones.append(
            prism(Region{plan.part(length, s0, s1, -out, plan.sizes.thickness() + out), {}}, bottom,
                  top));
      }
      count += pieces;
    }
    for (const SolidPierPlace& place : length.run.piers)
      caps.append(prism(Region{plan.pierSquare(length, place, out), {}}, bottom, top));
    const std::string of = plan.lengths.size() > 1 ? " of length " + std::to_string(i + 1) : "";
    if (!stones.empty())
      addCoping(site, "coping" + of, "coping" + of, length.frame, stones, count, works);
    if (!caps.empty())
      addCoping(site, "caps" + of, "caps of its piers" + of, length.frame, caps,
                static_cast<int>(length.run.piers.size()), works);
  }
}

}  // namespace model
