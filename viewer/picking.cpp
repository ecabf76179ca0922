#include "viewer/picking.h"

#include <algorithm>
#include <cmath>
#include <mutex>

#include <glm/geometric.hpp>

#include "viewer/draw_list.h"
#include "viewer/triangle_tree.h"
#include "viewer/unit_picking.h"

namespace viewer {

namespace {

float heightOver(const glm::vec4& plane, const glm::vec3& p) {
  return glm::dot(glm::vec3(plane), p) + plane.w;
}

// Where the ray crosses from the gone side of the plane to the kept one; negative: nowhere ahead.
float entry(const Ray& ray, const glm::vec4& plane) {
  const float speed = glm::dot(glm::vec3(plane), ray.direction);
  if (speed >= 0) return -1;
  return -heightOver(plane, ray.from) / speed;
}

// The nearest point to p on the line from a to b.
glm::vec3 nearestOn(const glm::vec3& a, const glm::vec3& b, const glm::vec3& p) {
  const glm::vec3 along = b - a;
  const float square = glm::dot(along, along);
  if (square == 0) return a;
  return a + along * std::clamp(glm::dot(p - a, along) / square, 0.0f, 1.0f);
}

}  // namespace

struct Picker::Impl {
  explicit Impl(const Scene& s) : scene(s) {}

  const TriangleTree& tree() const {
    std::call_once(once, [this] {
      const glm::vec3* first = scene.vertices.empty() ? nullptr : &scene.vertices[0].position;
      made.emplace(scene.indices, first, sizeof(Vertex));
    });
    return *made;
  }
  const Vertex& vertexOf(std::uint32_t triangle) const {
    return scene.vertices[scene.indices[triangle * 3]];
  }
  bool stands(const Vertex& on, const glm::vec3& p, const Frame& frame) const {
    const ElementRange& range = scene.elements[on.element];
    const auto time = static_cast<float>(frame.time);
    if (time >= range.removed.at(p)) return false;
    const bool laying = range.unitCount > 0 && time < range.complete;
    if (laying ? !unitAt(scene, on.element, p, on.normal, frame.time).found()
               : time < range.placed.at(p))
      return false;
    return !frame.section.on || heightOver(frame.section.plane, p) <= 0;
  }
  bool shown(const TriangleHit& hit, const Ray& ray, const Frame& frame) const {
    const Vertex& on = vertexOf(hit.triangle);
    const ElementRange& range = scene.elements[on.element];
    if (seenThrough(range, frame)) return false;
    if (range.profile && !frame.profiles) return false;
    return standsAt(range, frame.time) && stands(on, ray.from + ray.direction * hit.along, frame);
  }
  Pick cutBefore(const TriangleHit& hit, const Ray& ray, const Frame& frame) const;

  const Scene& scene;
  mutable std::once_flag once;
  mutable std::optional<TriangleTree> made;
};

// The ray met the inside of a thing first: it came in through the last of the faces that time or
// the section has cut.
Pick Picker::Impl::cutBefore(const TriangleHit& hit, const Ray& ray, const Frame& frame) const {
  Pick pick;
  pick.element = vertexOf(hit.triangle).element;
  const ElementRange& range = scene.elements[pick.element];
  const auto consider = [&](glm::vec4 plane) {
    const float along = entry(ray, plane);
    if (along <= pick.along || along > hit.along) return;
    pick.along = along;
    pick.normal = glm::normalize(glm::vec3(plane));
  };
  if (frame.section.on) consider(frame.section.plane);
  const auto moving = [&](const Growth& g) {
    return g.moves() && frame.time > g.from && frame.time < g.to;
  };
  if (moving(range.placed))
    consider(glm::vec4(range.placed.direction, -range.placed.frontAt(frame.time)));
  if (moving(range.removed))
    consider(-glm::vec4(range.removed.direction, -range.removed.frontAt(frame.time)));
  pick.point = ray.from + ray.direction * pick.along;
  return pick;
}

Picker::Picker(const Scene& scene) : impl_(std::make_unique<Impl>(scene)) {}
Picker::~Picker() = default;

std::optional<Pick> Picker::pick(const Ray& ray, const Frame& frame) const {
  const TriangleHit hit =
      impl_->tree().nearest(ray, [&](const TriangleHit& h) { return impl_->shown(h, ray, frame); });
  if (hit.along < 0) return std::nullopt;
  if (hit.backFace) {
    Pick pick = impl_->cutBefore(hit, ray, frame);
    if (pick.along > 0) return pick;
  }
  const Vertex& v = impl_->vertexOf(hit.triangle);
  Pick pick{v.element, ray.from + ray.direction * hit.along, v.normal, hit.along};
  const UnitHit unit = unitAt(impl_->scene, v.element, pick.point, v.normal, frame.time);
  if (unit.found()) pick.element = unit.element, pick.unit = unit.unit;
  return pick;
}

bool Picker::meetsBefore(const Ray& ray, float before, const Frame& frame) const {
  if (frame.section.on) {
    // What the section has cut is met where it was cut, and has no face there.
    const float in = entry(ray, frame.section.plane);
    if (in > 0 && in < before) {
      const auto met = pick(ray, frame);
      return met && met->along < before;
    }
  }
  return impl_->tree().meetsBefore(
      ray, before, [&](const TriangleHit& h) { return impl_->shown(h, ray, frame); });
}

Snap Picker::snap(const Pick& pick, float reach) const {
  Snap snap;
  snap.point = pick.point;
  if (pick.element >= impl_->scene.elements.size()) return snap;
  const ElementRange& range = impl_->scene.elements[pick.element];
  float nearestCorner = reach, nearestEdge = reach;
  glm::vec3 corner(0), edge(0);
  for (std::uint32_t i = 0; i + 1 < range.edgeCount; i += 2) {
    const glm::vec3& a = impl_->scene.edges[range.firstEdge + i].position;
    const glm::vec3& b = impl_->scene.edges[range.firstEdge + i + 1].position;
    for (const glm::vec3& p : {a, b}) {
      const float d = glm::distance(p, pick.point);
      if (d < nearestCorner) nearestCorner = d, corner = p;
    }
    const glm::vec3 on = nearestOn(a, b, pick.point);
    const float d = glm::distance(on, pick.point);
    if (d < nearestEdge) nearestEdge = d, edge = on;
  }
  // A corner within reach is what was meant, although an edge is always nearer.
  if (nearestCorner < reach) return {SnapKind::Corner, corner};
  if (nearestEdge < reach) return {SnapKind::Edge, edge};
  return snap;
}

}  // namespace viewer
