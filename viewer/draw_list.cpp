#include "viewer/draw_list.h"

#include <glm/geometric.hpp>

namespace viewer {

namespace {

constexpr float kSkyThickness = 0.08f;  // metres

// How a box lies to a plane: -1 wholly on the kept side, +1 wholly cut away, 0 both.
int sideOf(const ElementRange& range, const glm::vec4& plane) {
  const glm::vec3 normal(plane);
  const float centre = glm::dot(normal, (range.low + range.high) * 0.5f) + plane.w;
  const float reach = glm::dot(glm::abs(normal), range.high - range.low) * 0.5f;
  if (centre - reach >= 0) return 1;
  return centre + reach <= 0 ? -1 : 0;
}

void addFront(const Growth& growth, CutFill::Kind kind, std::uint32_t element, double time,
              std::vector<CutFill>& cuts) {
  if (!growth.moves() || time <= growth.from || time >= growth.to) return;
  cuts.push_back({kind, element, frontPlane(growth, kind, growth.frontAt(time))});
}

}  // namespace

glm::vec4 frontPlane(const Growth& growth, CutFill::Kind kind, float front) {
  const glm::vec4 plane = glm::vec4(growth.direction, -front) / glm::length(growth.direction);
  // What is placed stands behind its front, what is removed in front of it.
  return kind == CutFill::Kind::Removed ? -plane : plane;
}

void Pieces::add(std::uint32_t from, std::uint32_t size) {
  if (size == 0) return;
  if (!first.empty() && first.back() + count.back() == from) {
    count.back() += size;
    return;
  }
  first.push_back(from);
  count.push_back(size);
}

std::uint64_t Pieces::total() const {
  std::uint64_t sum = 0;
  for (const std::uint32_t n : count) sum += n;
  return sum;
}

bool standsAt(const ElementRange& range, double time) {
  return range.appears <= time && time < range.goes;
}

void listFor(const Scene& scene, const Frame& frame, DrawList& list) {
  for (Pieces* p : {&list.still, &list.moving, &list.sky, &list.soils, &list.glass, &list.edges,
                    &list.soilEdges, &list.comingEdges})
    p->clear();
  list.cuts.clear();
  const double coming = frame.ghostNext ? frame.stage + 2.0 : frame.time;
  for (const std::uint32_t i : scene.order) {
    const ElementRange& range = scene.elements[i];
    if (range.placed.from > frame.time && range.placed.from > coming) break;  // nor any after it
    if (range.profile && !frame.profiles) continue;
    if (range.appears > frame.time) {
      if (range.appears < coming) list.comingEdges.add(range.firstEdge, range.edgeCount);
      continue;
    }
    if (range.goes <= frame.time) continue;
    const int side = frame.section.on ? sideOf(range, frame.section.plane) : -1;
    if (side > 0) continue;
    const bool seeThrough = frame.seeThroughGround && range.soil;
    const bool still = side < 0 && range.complete <= frame.time && frame.time < range.fades;
    (seeThrough    ? list.soils
     : range.glass ? list.glass
     : still       ? list.still
                   : list.moving)
        .add(range.firstIndex, range.indexCount);
    if (still && !seeThrough && !range.glass && range.thickness > kSkyThickness)
      list.sky.add(range.firstIndex, range.indexCount);
    (seeThrough ? list.soilEdges : list.edges).add(range.firstEdge, range.edgeCount);
    addFront(range.placed, CutFill::Kind::Placed, i, frame.time, list.cuts);
    addFront(range.removed, CutFill::Kind::Removed, i, frame.time, list.cuts);
    if (side == 0) {
      const float length = glm::length(glm::vec3(frame.section.plane));
      list.cuts.push_back({CutFill::Kind::Section, i, frame.section.plane / length});
    }
  }
}

}  // namespace viewer
