// Forms for the cellar walls: ply on both faces, soldiers behind it, rakers inside.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/works/cellar_dig.h"
#include "model/works/parts.h"
#include "model/works/plan_shapes.h"

namespace model {

namespace {

// Common practice, no source, all of it.
constexpr double kPly = 0.018;
constexpr double kSoldierWidth = 0.050, kSoldierDepth = 0.100;
constexpr double kSpacing = 1.200;
constexpr double kRakerReach = 1.200;  // of its foot from the wall
constexpr double kRakerSize = 0.075;
constexpr double kFromCorner = 0.300;
constexpr double kOff = 0.005;  // clear of other timber

class FormBuilder {
 public:
  FormBuilder(const Job& job, const SettingOut& out, Works& works)
      : works_(works), bottom_(out.levels.cellarSlabTop), top_(out.levels.cellarWallTop) {
    outer_ = out.cellarOutline;
    inner_ = offsetMitred(outer_, job.cellar->wall);
    forms_ = subtract({{offsetMitred(outer_, -kPly), {}}}, {{offsetMitred(inner_, kPly), {}}});
    const CellarDig dig = deriveCellarDig(job, out);
    roomOutside_ = dig.margin;
    // Ground that cannot be dug (a building, the neighbour's) leaves no room for forms outside.
    free_ = intersect(dig.bottom, {{out.terrain.boundary, {}}});
    for (const StandingBuilding& building : job.site.buildings) {
      if (building.kind == BuildingKind::Demolish) continue;
      Polygon outline = building.outline;
      if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
      free_ = subtract(free_, {{outline, {}}});
    }
  }

  void build() {
    if (top_ - bottom_ < 0.1) return;
    ply("outside", outer_, -kPly);
    ply("inside", inner_, kPly);
    for (size_t i = 0; i < outer_.size(); ++i) soldiers(i);
    put("soldiers and rakers", "Cellar wall forms, soldiers and rakers", Material::Timber, timber_,
        {static_cast<double>(pieces_), Unit::Each}, 0.3);
  }

 private:
  void put(const std::string& id, const std::string& name, Material material, Solid solid,
           Quantity quantity, double begin) {
    Element element;
    element.id = "cellar forms/" + id;
    element.name = name;
    element.kind = ElementKind::Formwork;
    element.material = material;
    element.solid = std::move(solid);
    element.quantity = quantity;
    element.placed = upward({StageKind::CellarForms}, bottom_, top_, begin, 1);
    element.removed = whole({StageKind::CellarWalls}, 0.9);
    add(works_, std::move(element));
  }

  void ply(const std::string& side, const Polygon& face, double inward) {
    const Polygon other = offsetMitred(face, inward);
    const bool outside = inward < 0;
    Regions sheet = subtract({{outside ? other : face, {}}}, {{outside ? face : other, {}}});
    sheet = intersect(sheet, free_);
    double length = 0;
    for (size_t i = 0; i < face.size(); ++i) {
      length += glm::distance(face[i], face[(i + 1) % face.size()]);
    }
    put("ply " + side, "Cellar wall forms, " + side + " face", Material::Plywood,
        prism(sheet, bottom_, top_), {length * (top_ - bottom_), Unit::SquareMetre}, 0.05);
  }

  // An upright behind the ply, `away` metres off the face.
  bool soldier(const Vec2& face, const Vec2& along, const Vec2& away) {
    const Vec2 centre = face + away * (kPly + kOff + kSoldierDepth / 2);
    const Polygon foot = rectangleOnPlan(centre, along, kSoldierWidth, kSoldierDepth);
    // At a re-entrant corner the next wall may stand there.
    if (!holds(free_, foot) || !clear(foot) || !intersect({{foot, {}}}, forms_).empty())
      return false;
    taken_.push_back(foot);
    timber_.append(prism(Region{foot, {}}, bottom_, top_));
    ++pieces_;
    return true;
  }

  bool clear(const Polygon& figure) const {
    return std::none_of(taken_.begin(), taken_.end(),
                        [&](const Polygon& other) { return overlapping(figure, other); });
  }

  void soldiers(size_t i) {
    const size_t next = (i + 1) % outer_.size();
    const Vec2 along = glm::normalize(outer_[next] - outer_[i]), out{along.y, -along.x};
    const double length = glm::distance(inner_[i], inner_[next]);
    if (glm::dot(inner_[next] - inner_[i], along) < 2 * kFromCorner) return;
    const double spaces = std::max(1.0, std::ceil((length - 2 * kFromCorner) / kSpacing));
    for (double k = 0; k <= spaces; ++k) {
      const double s = kFromCorner + (length - 2 * kFromCorner) * k / spaces;
      const Vec2 inside = inner_[i] + along * s;
      const double across = glm::dot(outer_[i] - inside, out);
      if (roomOutside_ > kPly + kOff + kSoldierDepth + 0.15)
        soldier(inside + out * across, along, out);
      if (insideRoom(inside, -out) && soldier(inside, along, -out)) raker(inside, along, -out);
    }
  }

  bool insideRoom(const Vec2& face, const Vec2& inward) const {
    return contains(inner_, face + inward * (kPly + kOff + kSoldierDepth + 0.05));
  }

  // From the soldier, two thirds up, down to the slab. Left out where the cellar has no room.
  void raker(const Vec2& face, const Vec2& along, const Vec2& inward) {
    const double from = kPly + 2 * kOff + kSoldierDepth + kRakerSize;
    const double to = from + kRakerReach;
    const Vec2 middle = face + inward * ((from + to) / 2);
    const Polygon foot =
        rectangleOnPlan(middle, along, kRakerSize + 0.02, to - from + 2 * kRakerSize - 2 * kOff);
    if (!holds({{offsetInner(), {}}}, foot) || !clear(foot)) return;
    taken_.push_back(foot);
    const double high = bottom_ + (top_ - bottom_) * 2 / 3, low = bottom_ + kRakerSize;
    timber_.append(
        bar({face + inward * from, high}, {face + inward * to, low}, kRakerSize, kRakerSize));
    ++pieces_;
  }

  Polygon offsetInner() const { return offsetMitred(inner_, kPly); }

  Works& works_;
  double bottom_, top_, roomOutside_ = 0;
  Polygon outer_, inner_;
  Regions free_;
  Regions forms_;  // the walls and the ply on both their faces
  std::vector<Polygon> taken_;
  Solid timber_;
  int pieces_ = 0;
};

}  // namespace

void buildFormwork(const Job& job, const SettingOut& settingOut, Works& works) {
  if (job.cellar && job.cellar->kind == CellarWallKind::Concrete)
    FormBuilder(job, settingOut, works).build();
}

}  // namespace model
