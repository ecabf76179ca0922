#include "viewer/scene_element.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>

#include <glm/geometric.hpp>

namespace viewer {

namespace {

constexpr std::uint32_t kFree = 0xffffffffu;
constexpr double kCreaseCosine = 0.94;  // 20 degrees
constexpr float kOnPlane = 1e-5f;       // metres
constexpr double kSliver = 1e-9;        // twice the square metres of a triangle without a normal

std::uint64_t hashOf(const glm::vec3& p) {
  std::array<std::uint32_t, 3> bits;
  const glm::vec3 noNegativeZero = p + 0.0f;
  std::memcpy(bits.data(), &noNegativeZero, sizeof bits);
  std::uint64_t h = bits[0] * 0x9e3779b97f4a7c15ull;
  h = (h ^ (h >> 29) ^ bits[1]) * 0xbf58476d1ce4e5b9ull;
  h = (h ^ (h >> 32) ^ bits[2]) * 0x94d049bb133111ebull;
  return h ^ (h >> 31);
}

// As glm::packSnorm4x8, which rounds by a call to the C library.
std::uint32_t packed(const glm::dvec3& normal) {
  std::uint32_t bytes = 0;
  for (int i = 2; i >= 0; --i) {
    const auto byte = static_cast<int>(normal[i] * 127 + (normal[i] < 0 ? -0.5 : 0.5));
    bytes = bytes << 8 | static_cast<std::uint8_t>(byte);
  }
  return bytes;
}

// A convex part of a triangle: each of four planes at most adds one corner.
struct Ring {
  std::array<glm::vec3, 8> corners;
  size_t count = 0;
  void add(const glm::vec3& p) { corners[count++] = p; }
};

// The parts of a convex ring on either side of dot(direction, p) = height.
std::pair<Ring, Ring> cut(const Ring& ring, const glm::vec3& direction, float height) {
  std::pair<Ring, Ring> parts;
  float over[8];
  bool flat = true;
  for (size_t i = 0; i < ring.count; ++i) {
    over[i] = glm::dot(direction, ring.corners[i]) - height;
    flat = flat && std::abs(over[i]) <= kOnPlane;
  }
  if (flat) return {ring, {}};
  for (size_t i = 0; i < ring.count; ++i) {
    const size_t next = (i + 1) % ring.count;
    const glm::vec3 &p = ring.corners[i], &q = ring.corners[next];
    const float a = over[i], b = over[next];
    if (a <= kOnPlane) parts.first.add(p);
    if (a >= -kOnPlane) parts.second.add(p);
    if ((a < -kOnPlane && b > kOnPlane) || (a > kOnPlane && b < -kOnPlane)) {
      // From the lower end, whichever way the ring runs, so that neighbours split alike.
      const glm::vec3 on = a < b ? p + (q - p) * (-a / (b - a)) : q + (p - q) * (-b / (a - b));
      parts.first.add(on);
      parts.second.add(on);
    }
  }
  return parts;
}

}  // namespace

std::vector<std::pair<glm::vec3, float>> clampPlanes(const ElementRange& range) {
  std::vector<std::pair<glm::vec3, float>> planes;
  for (const Growth* growth : {&range.placed, &range.removed}) {
    if (!growth->moves()) continue;
    const glm::vec3 middle = (range.low + range.high) * 0.5f;
    const float reach = glm::dot(glm::abs(growth->direction), range.high - range.low) * 0.5f;
    const float centre = glm::dot(growth->direction, middle);
    for (const float height : {growth->low, growth->high}) {
      if (height > centre - reach + kOnPlane && height < centre + reach - kOnPlane)
        planes.emplace_back(growth->direction, height);
    }
  }
  return planes;
}

void ElementBuilder::weld(const model::Solid& solid) {
  size_t size = 16;
  while (size < solid.points.size() * 2) size *= 2;
  slots_.assign(size, kFree);
  points_.clear();
  welded_.clear();
  for (const model::Vec3& point : solid.points) {
    const glm::vec3 p = glm::vec3(point - origin_);
    size_t slot = hashOf(p) & (size - 1);
    while (slots_[slot] != kFree && points_[slots_[slot]] != p) slot = (slot + 1) & (size - 1);
    if (slots_[slot] == kFree) {
      slots_[slot] = static_cast<std::uint32_t>(points_.size());
      points_.push_back(p);
    }
    welded_.push_back(slots_[slot]);
  }
}

void ElementBuilder::add(const model::Element& element, std::uint32_t index, ElementRange& range,
                         const CutFace& isCutFace) {
  range_ = &range;
  index_ = index;
  material_ = static_cast<std::uint32_t>(element.material);
  isCutFace_ = isCutFace ? &isCutFace : nullptr;
  weld(element.solid);
  range_->low = glm::vec3(1e30f);
  range_->high = glm::vec3(-1e30f);
  for (const glm::vec3& p : points_) {
    range_->low = glm::min(range_->low, p);
    range_->high = glm::max(range_->high, p);
  }
  range_->firstIndex = static_cast<std::uint32_t>(made_.indices.size());
  range_->firstEdge = static_cast<std::uint32_t>(made_.edges.size());
  planes_ = clampPlanes(*range_);
  const size_t firstVertex = made_.vertices.size();
  moments_.resize(points_.size());
  for (size_t i = 0; i < points_.size(); ++i) moments_[i] = momentsAt(points_[i]);
  sidesOfPlanes_.clear();
  if (!planes_.empty())
    for (const glm::vec3& p : points_) sidesOfPlanes_.push_back(sidesOf(p));
  firstCorner_.assign(points_.size(), -1);
  corners_.clear();
  normals_.clear();
  packedNormals_.clear();
  triangles_.clear();
  sides_.clear();
  firstSide_.assign(points_.size(), -1);
  slivers_ = false;
  double area = 0, volume = 0;
  const model::Vec3 inside = model::Vec3((range_->low + range_->high) * 0.5f) + origin_;
  for (const auto& t : element.solid.triangles) {
    triangles_.emplace_back(welded_[t[0]], welded_[t[1]], welded_[t[2]]);
    const model::Vec3& p = element.solid.points[t[0]];
    const model::Vec3 n =
        glm::cross(element.solid.points[t[1]] - p, element.solid.points[t[2]] - p);
    const double length = glm::length(n);
    normals_.push_back(length > kSliver ? n / length : model::Vec3(0));
    packedNormals_.push_back(packed(normals_.back()));
    slivers_ = slivers_ || length <= kSliver;
    area += length / 2;
    volume += glm::dot(p - inside, n) / 6;
    addTriangle(static_cast<std::uint32_t>(triangles_.size() - 1));
  }
  range_->thickness = area > 0 ? static_cast<float>(4 * volume / area) : 0;
  const double count = static_cast<double>(std::max<size_t>(triangles_.size(), 1));
  range_->grain = static_cast<float>(std::sqrt(area / count));
  addEdges();
  range_->indexCount = static_cast<std::uint32_t>(made_.indices.size()) - range_->firstIndex;
  range_->edgeCount = static_cast<std::uint32_t>(made_.edges.size()) - range_->firstEdge;
  setSpan(firstVertex);
}

// First and last moment over the element's corners.
void ElementBuilder::setSpan(size_t firstVertex) {
  float appears = range_->placed.from, complete = appears, goes = appears, fades = appears;
  for (size_t i = firstVertex; i < made_.vertices.size(); ++i) {
    const Vertex& v = made_.vertices[i];
    const bool first = i == firstVertex;
    appears = first ? v.appears : std::min(appears, v.appears);
    complete = first ? v.appears : std::max(complete, v.appears);
    goes = first ? v.goes : std::max(goes, v.goes);
    fades = first ? v.goes : std::min(fades, v.goes);
  }
  range_->appears = appears;
  range_->complete = complete;
  range_->goes = goes;
  range_->fades = fades;
}

std::uint32_t ElementBuilder::newVertex(const glm::vec3& p, const Moments& moments,
                                        const glm::dvec3& normal) {
  std::uint32_t material = material_;
  if (isCutFace_ && (*isCutFace_)(glm::dvec3(p), normal)) material |= kCutFace;
  // Written where it stays: a copy of what was just put together field by field waits for it.
  Vertex& vertex = made_.vertices.emplace_back();
  vertex.position = p;
  vertex.normal = glm::vec3(normal);
  vertex.appears = moments.appears;
  vertex.goes = moments.goes;
  vertex.element = index_;
  vertex.material = material;
  return static_cast<std::uint32_t>(made_.vertices.size() - 1);
}

std::uint32_t ElementBuilder::vertexAt(std::uint32_t point, std::uint32_t triangle) {
  const std::uint32_t normal = packedNormals_[triangle];
  for (std::int32_t c = firstCorner_[point]; c >= 0; c = corners_[static_cast<size_t>(c)].next) {
    const Corner& known = corners_[static_cast<size_t>(c)];
    if (known.normal == normal) return known.vertex;
  }
  const std::uint32_t vertex = newVertex(points_[point], moments_[point], normals_[triangle]);
  Corner& corner = corners_.emplace_back();
  corner.normal = normal;
  corner.vertex = vertex;
  corner.next = firstCorner_[point];
  firstCorner_[point] = static_cast<std::int32_t>(corners_.size() - 1);
  return vertex;
}

ElementBuilder::Sides ElementBuilder::sidesOf(const glm::vec3& p) const {
  unsigned under = 0, over = 0;
  for (size_t i = 0; i < planes_.size(); ++i) {  // four at most
    const float height = glm::dot(planes_[i].first, p) - planes_[i].second;
    under |= height < -kOnPlane ? 1u << i : 0;
    over |= height > kOnPlane ? 1u << i : 0;
  }
  return {static_cast<std::uint8_t>(under), static_cast<std::uint8_t>(over)};
}

void ElementBuilder::addSide(std::uint32_t a, std::uint32_t b, std::uint32_t triangle) {
  for (std::int32_t i = firstSide_[a]; i >= 0; i = sides_[static_cast<size_t>(i)].next) {
    Side& known = sides_[static_cast<size_t>(i)];
    if (known.b != b) continue;
    known.second = triangle;
    ++known.count;
    return;
  }
  Side& side = sides_.emplace_back();
  side.a = a;
  side.b = b;
  side.first = side.second = triangle;
  side.count = 1;
  side.next = firstSide_[a];
  firstSide_[a] = static_cast<std::int32_t>(sides_.size() - 1);
}

void ElementBuilder::addTriangle(std::uint32_t triangle) {
  const glm::uvec3& t = triangles_[triangle];
  const glm::dvec3& normal = normals_[triangle];
  for (int i = 0; i < 3; ++i) {
    const std::uint32_t a = t[i], b = t[(i + 1) % 3];
    if (a != b) addSide(std::min(a, b), std::max(a, b), triangle);
  }
  if (normal == glm::dvec3(0)) return;
  if (!planes_.empty()) {
    const Sides &x = sidesOfPlanes_[t.x], &y = sidesOfPlanes_[t.y], &z = sidesOfPlanes_[t.z];
    if ((x.under | y.under | z.under) & (x.over | y.over | z.over))
      return split({points_[t.x], points_[t.y], points_[t.z]}, normal);
  }
  for (int i = 0; i < 3; ++i) made_.indices.push_back(vertexAt(t[i], triangle));
}

void ElementBuilder::split(const glm::vec3 (&corners)[3], const glm::dvec3& normal) {
  std::array<Ring, 16> rings;  // four planes make no more
  size_t count = 1;
  for (const glm::vec3& corner : corners) rings[0].add(corner);
  for (const auto& [direction, height] : planes_) {
    const size_t before = count;
    for (size_t i = 0; i < before; ++i) {
      auto [under, over] = cut(rings[i], direction, height);
      const bool both = under.count >= 3 && over.count >= 3;
      rings[i] = under.count >= 3 ? under : over;
      if (both) rings[count++] = over;
    }
  }
  for (size_t r = 0; r < count; ++r) {
    const Ring& ring = rings[r];
    if (ring.count < 3) continue;
    const std::uint32_t first = newVertex(ring.corners[0], normal);
    std::uint32_t last = newVertex(ring.corners[1], normal);
    for (size_t i = 2; i < ring.count; ++i) {
      const std::uint32_t vertex = newVertex(ring.corners[i], normal);
      made_.indices.insert(made_.indices.end(), {first, last, vertex});
      last = vertex;
    }
  }
}

// Triangulations that keep every point have triangles with three points in line. They belong to the
// face beyond their longest side: then a crease along them is drawn once, and no line where they
// lie in the middle of a face.
void ElementBuilder::adoptSlivers() {
  bool adopted = true;
  while (adopted) {
    adopted = false;
    for (const Side& side : sides_) {
      for (const auto& [own, other] :
           {std::pair(side.first, side.second), std::pair(side.second, side.first)}) {
        if (normals_[own] != glm::dvec3(0) || normals_[other] == glm::dvec3(0)) continue;
        const float length = glm::distance(points_[side.a], points_[side.b]);
        const glm::uvec3& t = triangles_[own];
        float longest = 0;
        for (int k = 0; k < 3; ++k)
          longest = std::max(longest, glm::distance(points_[t[k]], points_[t[(k + 1) % 3]]));
        if (length < longest * 0.9999f) continue;
        normals_[own] = normals_[other];
        packedNormals_[own] = packedNormals_[other];
        adopted = true;
      }
    }
  }
}

void ElementBuilder::addEdges() {
  if (slivers_) adoptSlivers();
  for (const Side& side : sides_) {
    const glm::dvec3 &na = normals_[side.first], &nb = normals_[side.second];
    if (na == glm::dvec3(0) || nb == glm::dvec3(0)) continue;
    const double cosine = glm::dot(na, nb);
    // Where a layer of soil runs out to nothing there is nothing to see.
    if (range_->soil && side.count == 2 && cosine < -kCreaseCosine) continue;
    // Four faces meet where two shells touch: then there is always a line to draw.
    if (side.count != 2 || cosine < kCreaseCosine)
      emit(side.a, side.b, packedNormals_[side.first], packedNormals_[side.second]);
  }
}

void ElementBuilder::putEdge(const glm::vec3& p, const Moments& moments, std::uint32_t a,
                             std::uint32_t b) {
  EdgeVertex& edge = made_.edges.emplace_back();
  edge.position = p;
  edge.appears = moments.appears;
  edge.goes = moments.goes;
  edge.element = index_;
  edge.normalA = a;
  edge.normalB = b;
}

void ElementBuilder::emit(std::uint32_t from, std::uint32_t to, std::uint32_t a, std::uint32_t b) {
  const glm::vec3 &p = points_[from], &q = points_[to];
  const auto apart = [&] {
    const Sides &x = sidesOfPlanes_[from], &y = sidesOfPlanes_[to];
    return ((x.under | y.under) & (x.over | y.over)) != 0;
  };
  if (planes_.empty() || !apart()) {
    putEdge(p, moments_[from], a, b);
    putEdge(q, moments_[to], a, b);
    return;
  }
  std::vector<float> cuts{0, 1};
  for (const auto& [direction, height] : planes_) {
    const float under = glm::dot(direction, p) - height, over = glm::dot(direction, q) - height;
    if (std::min(under, over) < -kOnPlane && std::max(under, over) > kOnPlane)
      cuts.push_back(under / (under - over));
  }
  std::sort(cuts.begin(), cuts.end());
  for (size_t i = 0; i + 1 < cuts.size(); ++i) {
    for (const float f : {cuts[i], cuts[i + 1]}) {
      const glm::vec3 at = p + (q - p) * f;
      putEdge(at, momentsAt(at), a, b);
    }
  }
}

}  // namespace viewer
