#include "viewer/scene.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include <glm/geometric.hpp>

#include "model/in_parallel.h"
#include "viewer/going.h"
#include "viewer/scene_element.h"
#include "viewer/scene_seams.h"
#include "viewer/scene_units.h"
#include "viewer/silhouette.h"

namespace viewer {

namespace {

bool isSoil(model::ElementKind kind) {
  using enum model::ElementKind;
  return kind == Ground || kind == Topsoil || kind == Spoil || kind == Backfill;
}

// What the camera frames when it frames the building.
bool isBuilding(model::ElementKind kind) {
  using enum model::ElementKind;
  return !isSoil(kind) && kind != StandingBuilding && kind != ProfileBoard && kind != Peg &&
         kind != Scaffold && kind != TrenchSupport && kind != EdgeProtection;
}

model::Vec3 originOf(const model::Model& model) {
  model::Bounds site;
  for (const model::Vec2& p : model.settingOut.outline) site.add({p.x, p.y, 0});
  if (site.empty()) {
    for (const auto& element : model.works.elements)
      site.add(model::Vec3(model::bounds(element.solid).low));
  }
  if (site.empty()) return {0, 0, 0};
  // Whole metres, so that nothing is lost between the model's numbers and these.
  return {std::round((site.low.x + site.high.x) / 2), std::round((site.low.y + site.high.y) / 2),
          0};
}

Coursing coursingOf(const model::Model& model) {
  const model::WallBuildUp& walls = model.job.walls;
  Coursing c;
  c.brickLength = static_cast<float>(walls.brickLength);
  c.brickHeight = static_cast<float>(walls.brickHeight);
  c.blockLength = static_cast<float>(walls.blockLength);
  c.blockHeight = static_cast<float>(walls.blockHeight);
  c.joint = static_cast<float>(walls.joint);
  c.from = static_cast<float>(model.settingOut.levels.dampCourse);
  return c;
}

// Whether an upright face lies on the site's boundary.
ElementBuilder::CutFace sidesOf(const Scene& scene, const model::Polygon& boundary) {
  return [&scene, &boundary](const glm::dvec3& local, const glm::dvec3& normal) {
    if (std::abs(normal.z) > 0.02) return false;
    const model::Vec2 p(local.x + scene.origin.x, local.y + scene.origin.y);
    for (size_t i = 0; i < boundary.size(); ++i) {
      const model::Vec2 &a = boundary[i], &b = boundary[(i + 1) % boundary.size()];
      const model::Vec2 along = glm::normalize(b - a);
      const model::Vec2 outward(along.y, -along.x);
      if (std::abs(glm::dot(p - a, outward)) < 1e-3 &&
          outward.x * normal.x + outward.y * normal.y > 0.999)
        return true;
    }
    return false;
  };
}

void setClock(const model::Model& model, const model::Element& element, Scene& scene,
              ElementRange& range) {
  range.placed = growthOf(model.programme, element.placed, scene.origin);
  range.removed = never();
  if (!element.removed) return;
  model::Bounds box;
  for (const model::Vec3& p : element.solid.points) box.add(model::Vec3(scene.local(p)));
  range.removed =
      goingOf(model.programme, element, scene.origin, glm::vec3(box.low), glm::vec3(box.high));
}

void setWall(const model::Model& model, const model::Element& element, const Scene& scene,
             ElementRange& range) {
  const model::SettingOut& out = model.settingOut;
  if (element.unitCount > 0) {
    const model::UnitFrame& frame = model.works.frames[element.frame];
    range.wallStart = glm::vec2(frame.start - model::Vec2(scene.origin));
    range.along = glm::vec2(frame.along);
    return;
  }
  if (element.wall.empty()) return;
  for (size_t i = 0; i < out.walls.size(); ++i) {
    if (out.walls[i].name != element.wall) continue;
    range.wallStart = glm::vec2(out.walls[i].start - model::Vec2(scene.origin));
    range.along = glm::vec2(out.walls[i].along);
    range.wallPhase = static_cast<float>(i % 2);
    return;
  }
}

// Boards and tiles without a wall run the longer way.
void setGrain(const model::Element& element, ElementRange& range) {
  const glm::vec3 size = range.high - range.low;
  if (element.wall.empty() && element.unitCount == 0 && size.y > size.x) range.along = {0, 1};
}

// Earliest moment at which anything of the element can be there; its order in the buffers.
float firstMoment(const ElementRange& range) { return range.placed.from; }

void setBounds(const model::Works& works, Scene& scene) {
  model::Bounds all, building;
  for (size_t i = 0; i < scene.elements.size(); ++i) {
    const ElementRange& range = scene.elements[i];
    if (range.indexCount == 0) continue;
    model::Bounds own;
    own.add(model::Vec3(range.low));
    own.add(model::Vec3(range.high));
    all.add(own);
    if (isBuilding(works.elements[i].kind)) building.add(own);
  }
  if (all.empty()) return;
  if (building.empty()) building = all;
  scene.low = glm::vec3(all.low);
  scene.high = glm::vec3(all.high);
  scene.buildingLow = glm::vec3(building.low);
  scene.buildingHigh = glm::vec3(building.high);
}

// The elements in Scene::order from one place to another, as they are made apart from the others.
struct Stretch {
  size_t from = 0, to = 0, triangles = 0;
  ElementBuilder::Made made;
};

// Stretches of about as many triangles each.
std::vector<Stretch> stretchesOf(const model::Works& works, const Scene& scene) {
  constexpr size_t kLeast = 4000;  // triangles
  size_t all = 0;
  for (const auto& element : works.elements) all += element.solid.triangles.size();
  const size_t most = std::max(kLeast, all / (size_t(2) * model::coreCount()) + 1);
  std::vector<Stretch> stretches(1);
  for (size_t i = 0; i < scene.order.size(); ++i) {
    if (stretches.back().triangles >= most) stretches.push_back({i, i, 0, {}});
    stretches.back().triangles += works.elements[scene.order[i]].solid.triangles.size();
    stretches.back().to = i + 1;
  }
  return stretches;
}

void buildStretch(const model::Model& model, Stretch& stretch, Scene& scene) {
  ElementBuilder::Made made;  // not in its place: what grows beside another's slows both down
  // Room for what layers of soil take, whose triangles are split and share few corners. What is not
  // used costs nothing.
  made.indices.reserve(stretch.triangles * 4);
  made.vertices.reserve(stretch.triangles * 3);
  made.edges.reserve(stretch.triangles * 3);
  const auto sides = sidesOf(scene, model.settingOut.terrain.boundary);
  ElementBuilder builder(scene.origin, made);
  for (size_t i = stretch.from; i < stretch.to; ++i) {
    const std::uint32_t e = scene.order[i];
    ElementRange& range = scene.elements[e];
    builder.add(model.works.elements[e], e, range, range.soil ? sides : ElementBuilder::CutFace{});
    setGrain(model.works.elements[e], range);
  }
  stretch.made = std::move(made);
}

void joinFaces(const std::vector<Stretch>& stretches, Scene& scene) {
  struct Start {
    size_t vertex = 0, index = 0;
  };
  std::vector<Start> starts(1);
  for (const Stretch& stretch : stretches)
    starts.push_back({starts.back().vertex + stretch.made.vertices.size(),
                      starts.back().index + stretch.made.indices.size()});
  scene.vertices.resize(starts.back().vertex);
  scene.indices.resize(starts.back().index);
  model::inParallel(stretches.size(), [&](size_t s) {
    const Stretch& stretch = stretches[s];
    const auto vertex = static_cast<std::uint32_t>(starts[s].vertex);
    const auto index = static_cast<std::uint32_t>(starts[s].index);
    std::copy(stretch.made.vertices.begin(), stretch.made.vertices.end(),
              scene.vertices.begin() + vertex);
    std::transform(stretch.made.indices.begin(), stretch.made.indices.end(),
                   scene.indices.begin() + index, [vertex](std::uint32_t i) { return i + vertex; });
    for (size_t i = stretch.from; i < stretch.to; ++i)
      scene.elements[scene.order[i]].firstIndex += index;
  });
}

void joinAll(const model::Works& works, std::vector<Stretch>& stretches, Scene& scene) {
  std::vector<LineStretch> lines;
  for (Stretch& stretch : stretches)
    lines.push_back({stretch.from, stretch.to, std::move(stretch.made.edges)});
  joinFaces(stretches, scene);
  joinLines(works, std::move(lines), scene);
}

}  // namespace

Scene buildScene(const model::Model& model) {
  Scene scene;
  const auto& elements = model.works.elements;
  scene.origin = originOf(model);
  scene.coursing = coursingOf(model);
  scene.stageCount = static_cast<double>(model.programme.stages.size());
  scene.elements.resize(elements.size());
  for (size_t i = 0; i < elements.size(); ++i) {
    setClock(model, elements[i], scene, scene.elements[i]);
    setWall(model, elements[i], scene, scene.elements[i]);
    scene.elements[i].soil = isSoil(elements[i].kind);
    scene.elements[i].glass = elements[i].material == model::Material::Glass;
    scene.elements[i].profile = elements[i].kind == model::ElementKind::ProfileBoard ||
                                elements[i].kind == model::ElementKind::Peg;
    scene.elements[i].quiet = elements[i].kind == model::ElementKind::StandingBuilding;
  }
  scene.order.resize(elements.size());
  std::iota(scene.order.begin(), scene.order.end(), 0u);
  std::stable_sort(scene.order.begin(), scene.order.end(), [&](std::uint32_t a, std::uint32_t b) {
    return firstMoment(scene.elements[a]) < firstMoment(scene.elements[b]);
  });

  std::vector<Stretch> stretches = stretchesOf(model.works, scene);
  model::inParallel(stretches.size() + 1, [&](size_t which) {
    if (which == 0)  // the longest first
      addUnits(model.works, scene);
    else
      buildStretch(model, stretches[which - 1], scene);
  });
  joinAll(model.works, stretches, scene);
  setBounds(model.works, scene);
  scene.silhouette = silhouetteOf(model, scene.origin);
  return scene;
}

}  // namespace viewer
