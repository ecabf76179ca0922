// Buildings that stand already, as quiet massing: walls to their height under a simple roof, and
// what is in the ground as a part of its own. One that stands outside the boundary stands on a
// piece of ground of its own.
#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

#include <glm/geometric.hpp>

#include "model/works/junction_cuts.h"
#include "model/works/parts.h"
#include "model/works/plan_shapes.h"

namespace model {

namespace {

// Massing only: nobody has measured these roofs. Common practice, no source.
constexpr double kPitch = 0.577;  // rise over run, about 30 degrees

// The heaped surface of a hipped roof: its underside flat, its top the skeleton's faces.
Solid hippedTop(const Polygon& outline, double level) {
  const auto result = roofSkeleton(outline, std::vector<bool>(outline.size(), false));
  if (!result.skeleton) return {};
  Solid solid;
  const auto pointIndex = [&](const Vec3& p) {
    for (size_t i = 0; i < solid.points.size(); ++i) {
      if (solid.points[i] == p) return static_cast<unsigned>(i);
    }
    solid.points.push_back(p);
    return static_cast<unsigned>(solid.points.size() - 1);
  };
  for (const auto& t : triangulate({outline, {}})) {
    const auto at = [&](unsigned i) { return pointIndex({outline[i], level}); };
    solid.triangles.push_back({at(t[0]), at(t[2]), at(t[1])});
  }
  for (const RoofFace& face : result.skeleton->faces) {
    const auto at = [&](unsigned i) {
      const double rise = face.run[i] < 1e-9 ? 0 : face.run[i] * kPitch;
      return pointIndex({face.plan[i], level + rise});
    };
    for (const auto& t : triangulate({face.plan, {}})) {
      solid.triangles.push_back({at(t[0]), at(t[1]), at(t[2])});
    }
  }
  return solid;
}

// Of the ground shown round and under a building outside the boundary, metres. Common practice on
// drawings, no source.
constexpr double kGroundRound = 1.0;
constexpr double kGroundUnder = 0.3;
constexpr double kLeastArea = 0.01;  // square metres; less is a sliver of the boundary's rounding

Polygon outlineOf(const StandingBuilding& building) {
  Polygon outline = building.outline;
  if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
  return outline;
}

// The outline and what lies within kGroundRound of it, with square corners.
Regions widened(const Polygon& outline) {
  const Polygon mitred = offsetMitred(outline, -kGroundRound);
  if (!crossingEdges(mitred)) return {{mitred, {}}};
  // A recess narrower than that closes up.
  Regions wide{{outline, {}}};
  for (size_t i = 0; i < outline.size(); ++i) {
    const Vec2 &a = outline[i], &b = outline[(i + 1) % outline.size()];
    const double length = glm::distance(a, b), more = 2 * kGroundRound;
    const Polygon beside = rectangleOnPlan((a + b) * 0.5, (b - a) / length, length + more, more);
    wide = unite(wide, {{beside, {}}});
  }
  return wide;
}

// Pieces of ground outside the boundary. No two share a place: the ground round a building leaves
// out every building, and the ground round those before it.
class GroundOutside {
 public:
  GroundOutside(const Job& job, const SettingOut& out) : taken_{{out.terrain.boundary, {}}} {
    for (const StandingBuilding& building : job.site.buildings)
      buildings_ = unite(buildings_, {{outlineOf(building), {}}});
  }

  Regions under(const Polygon& outline) const { return parts({{outline, {}}}, taken_); }

  Regions round(const Polygon& outline) {
    Regions ring = parts(subtract(widened(outline), buildings_), taken_);
    taken_ = unite(taken_, ring);
    return ring;
  }

 private:
  static Regions parts(const Regions& whole, const Regions& less) {
    Regions left = subtract(whole, less);
    std::erase_if(left, [](const Region& region) { return area(region) < kLeastArea; });
    return left;
  }

  Regions taken_, buildings_;
};

void addGround(Works& works, const std::string& id, const std::string& name, Solid solid) {
  Element element;
  element.id = id;
  element.name = name;
  element.kind = ElementKind::Ground;
  element.material = Material::Earth;
  element.quantity = {volume(solid), Unit::CubicMetre};
  element.solid = std::move(solid);
  element.placed = whole({StageKind::Existing});
  add(works, std::move(element));
}

}  // namespace

namespace {

// By its name, which survives when another is left out; those without one, or with another's, by
// their number too.
std::vector<std::string> namesOf(const std::vector<StandingBuilding>& buildings) {
  std::vector<std::string> names;
  std::set<std::string> taken;
  for (size_t i = 0; i < buildings.size(); ++i) {
    const std::string number = std::to_string(i + 1), &name = buildings[i].name;
    const auto alike =
        std::count_if(buildings.begin(), buildings.end(),
                      [&](const StandingBuilding& other) { return other.name == name; });
    std::string own = name.empty() ? "no. " + number : alike > 1 ? name + " no. " + number : name;
    while (!taken.insert(own).second) own += " no. " + number;
    names.push_back(std::move(own));
  }
  return names;
}

// One part of a building, and whether it is cut out again.
using Put = std::function<void(const std::string&, Material, Solid, const JunctionCut::Hole*)>;

// Its walls: but for what junctions cut out of them one solid, and what stands over and under that.
void putWalls(const SettingOut& settingOut, const std::vector<JunctionCut>& cuts, size_t building,
              const Polygon& outline, double low, double eaves, const Put& put) {
  Regions left{{outline, {}}};
  for (const JunctionCut& cut : cuts)
    if (cut.plan.building == building) left = subtract(left, {{cut.place, {}}});
  const bool whole = std::none_of(cuts.begin(), cuts.end(), [&](const JunctionCut& cut) {
    return cut.plan.building == building;
  });
  if (whole) left = {{outline, {}}};
  put("walls", Material::Masonry, prism(left, low, eaves), nullptr);
  for (const JunctionCut& cut : cuts) {
    if (cut.plan.building != building) continue;
    const Regions place = intersect({{outline, {}}}, {{cut.place, {}}});
    const WallLine& line = settingOut.walls[cut.plan.wall];
    const std::string at = "walls at corner " +
                           settingOut.corners[cut.plan.atStart ? line.from : line.to].letter +
                           " of " + line.name;
    double from = low;
    int number = 0;
    for (const JunctionCut::Hole& hole : cut.holes) {
      const std::string which = std::to_string(++number);
      if (hole.bottom - from > 1e-6)
        put(at + ", under " + cut.what + " " + which, Material::Masonry,
            prism(place, from, hole.bottom), nullptr);
      put(at + ", " + cut.what + " " + which, Material::Masonry,
          prism(place, hole.bottom, hole.top), &hole);
      from = hole.top;
    }
    put(at + ", over it", Material::Masonry, prism(place, from, eaves), nullptr);
  }
}

}  // namespace

void buildStandingBuildings(const Job& job, const SettingOut& settingOut, Works& works) {
  GroundOutside outside(job, settingOut);
  const std::vector<std::string> names = namesOf(job.site.buildings);
  const std::vector<JunctionCut> cuts = junctionCuts(job, settingOut);
  for (size_t i = 0; i < job.site.buildings.size(); ++i) {
    const StandingBuilding& building = job.site.buildings[i];
    const Polygon outline = outlineOf(building);
    const double low = levelsAlong(settingOut.terrain, outline).low;
    const double bottom = low - building.foundationDepth, eaves = low + building.height;
    const Solid top = hippedTop(outline, eaves);
    const double highest = top.empty() ? eaves : bounds(top).high.z;
    const std::string label =
        building.name.empty() ? "Building " + std::to_string(i + 1) : building.name;
    const Put put = [&](const std::string& part, Material material, Solid solid,
                        const JunctionCut::Hole* hole) {
      Element element;
      element.id = "standing building " + names[i] + "/" + part;
      element.name = label + ", " + part;
      element.kind = ElementKind::StandingBuilding;
      element.material = material;
      element.quantity = {volume(solid), Unit::CubicMetre};
      element.solid = std::move(solid);
      element.placed = whole({StageKind::Existing});
      if (building.kind == BuildingKind::Demolish) {
        element.removed = downward({StageKind::Demolition}, highest, bottom);
      } else if (hole != nullptr) {
        element.removed = whole(hole->stage);
        if (hole->pocket) element.quantity = {1, Unit::Each};
      }
      add(works, std::move(element));
    };
    if (building.foundationDepth > 1e-3) {
      put("below ground", Material::Masonry, prism({outline, {}}, bottom, low), nullptr);
    }
    putWalls(settingOut, cuts, i, outline, low, eaves, put);
    put("roof", Material::Tile, top, nullptr);
    const Regions under = outside.under(outline);
    if (under.empty()) continue;
    const std::string own = " standing building " + names[i];
    addGround(works, "ground under" + own, "Ground under " + label,
              prism(under, bottom - kGroundUnder, bottom));
    const Regions round = outside.round(outline);
    if (!round.empty()) {
      addGround(works, "ground round" + own, "Ground round " + label,
                prism(round, bottom - kGroundUnder, low));
    }
  }
}

}  // namespace model
