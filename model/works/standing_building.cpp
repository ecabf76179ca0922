// Buildings that stand already, as quiet massing: walls to their height under a simple roof, and
// what is in the ground as a part of its own.
#include <algorithm>
#include <cmath>

#include "model/works/parts.h"

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

}  // namespace

void buildStandingBuildings(const Job& job, const SettingOut& settingOut, Works& works) {
  for (size_t i = 0; i < job.site.buildings.size(); ++i) {
    const StandingBuilding& building = job.site.buildings[i];
    Polygon outline = building.outline;
    if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
    const double low = levelsAlong(settingOut.terrain, outline).low;
    const double bottom = low - building.foundationDepth, eaves = low + building.height;
    const Solid top = hippedTop(outline, eaves);
    const double highest = top.empty() ? eaves : bounds(top).high.z;
    const std::string label =
        building.name.empty() ? "Building " + std::to_string(i + 1) : building.name;
    const auto put = [&](const std::string& part, Material material, Solid solid) {
      Element element;
      element.id = "standing building " + std::to_string(i + 1) + "/" + part;
      element.name = label + ", " + part;
      element.kind = ElementKind::StandingBuilding;
      element.material = material;
      element.quantity = {volume(solid), Unit::CubicMetre};
      element.solid = std::move(solid);
      element.placed = whole({StageKind::Existing});
      if (building.kind == BuildingKind::Demolish) {
        element.removed = downward({StageKind::Demolition}, highest, bottom);
      }
      add(works, std::move(element));
    };
    if (building.foundationDepth > 1e-3) {
      put("below ground", Material::Masonry, prism({outline, {}}, bottom, low));
    }
    put("walls", Material::Masonry, prism({outline, {}}, low, eaves));
    put("roof", Material::Tile, top);
  }
}

}  // namespace model
