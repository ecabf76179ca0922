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

using Ring = std::vector<glm::vec3>;

// The parts of a convex ring on either side of dot(direction, p) = height.
std::pair<Ring, Ring> cut(const Ring& ring, const glm::vec3& direction, float height) {
  std::pair<Ring, Ring> parts;
  const auto lies = [&](const glm::vec3& p) {
    return std::abs(glm::dot(direction, p) - height) <= kOnPlane;
  };
  if (std::all_of(ring.begin(), ring.end(), lies)) return {ring, {}};
  for (size_t i = 0; i < ring.size(); ++i) {
    const glm::vec3 &p = ring[i], &q = ring[(i + 1) % ring.size()];
    const float a = glm::dot(direction, p) - height, b = glm::dot(direction, q) - height;
    if (a <= kOnPlane) parts.first.push_back(p);
    if (a >= -kOnPlane) parts.second.push_back(p);
    if ((a < -kOnPlane && b > kOnPlane) || (a > kOnPlane && b < -kOnPlane)) {
      // From the lower end, whichever way the ring runs, so that neighbours split alike.
      const glm::vec3 on = a < b ? p + (q - p) * (-a / (b - a)) : q + (p - q) * (-b / (a - b));
      parts.first.push_back(on);
      parts.second.push_back(on);
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
    const glm::vec3 p = scene_.local(point);
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
  range_->firstIndex = static_cast<std::uint32_t>(scene_.indices.size());
  range_->firstEdge = static_cast<std::uint32_t>(scene_.edges.size());
  planes_ = clampPlanes(*range_);
  firstCorner_.assign(points_.size(), -1);
  corners_.clear();
  normals_.clear();
  triangles_.clear();
  sides_.clear();
  firstSide_.assign(points_.size(), -1);
  slivers_ = false;
  double area = 0, volume = 0;
  const model::Vec3 inside = scene_.world((range_->low + range_->high) * 0.5f);
  for (const auto& t : element.solid.triangles) {
    triangles_.emplace_back(welded_[t[0]], welded_[t[1]], welded_[t[2]]);
    const model::Vec3& p = element.solid.points[t[0]];
    const model::Vec3 n =
        glm::cross(element.solid.points[t[1]] - p, element.solid.points[t[2]] - p);
    const double length = glm::length(n);
    normals_.push_back(length > kSliver ? n / length : model::Vec3(0));
    slivers_ = slivers_ || length <= kSliver;
    area += length / 2;
    volume += glm::dot(p - inside, n) / 6;
    addTriangle(static_cast<std::uint32_t>(triangles_.size() - 1));
  }
  range_->thickness = area > 0 ? static_cast<float>(4 * volume / area) : 0;
  const double count = static_cast<double>(std::max<size_t>(triangles_.size(), 1));
  range_->grain = static_cast<float>(std::sqrt(area / count));
  addEdges();
  range_->indexCount = static_cast<std::uint32_t>(scene_.indices.size()) - range_->firstIndex;
  range_->edgeCount = static_cast<std::uint32_t>(scene_.edges.size()) - range_->firstEdge;
}

std::uint32_t ElementBuilder::newVertex(const glm::vec3& p, const glm::dvec3& normal) {
  std::uint32_t material = material_;
  if (isCutFace_ && (*isCutFace_)(glm::dvec3(p), normal)) material |= kCutFace;
  scene_.vertices.push_back(
      {p, glm::vec3(normal), range_->placed.at(p), range_->removed.at(p), index_, material});
  return static_cast<std::uint32_t>(scene_.vertices.size() - 1);
}

std::uint32_t ElementBuilder::vertexAt(std::uint32_t point, const glm::dvec3& normal) {
  for (std::int32_t c = firstCorner_[point]; c >= 0; c = corners_[static_cast<size_t>(c)].next) {
    const Corner& corner = corners_[static_cast<size_t>(c)];
    if (glm::dot(corner.normal, normal) > 0.9999) return corner.vertex;
  }
  const std::uint32_t vertex = newVertex(points_[point], normal);
  corners_.push_back({normal, vertex, firstCorner_[point]});
  firstCorner_[point] = static_cast<std::int32_t>(corners_.size() - 1);
  return vertex;
}

void ElementBuilder::addSide(std::uint32_t a, std::uint32_t b, std::uint32_t triangle) {
  for (std::int32_t i = firstSide_[a]; i >= 0; i = sides_[static_cast<size_t>(i)].next) {
    Side& side = sides_[static_cast<size_t>(i)];
    if (side.b != b) continue;
    side.second = triangle;
    ++side.count;
    return;
  }
  sides_.push_back({a, b, triangle, triangle, 1, firstSide_[a]});
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
  if (!planes_.empty()) return split({points_[t.x], points_[t.y], points_[t.z]}, normal);
  for (int i = 0; i < 3; ++i) scene_.indices.push_back(vertexAt(t[i], normal));
}

void ElementBuilder::split(const glm::vec3 (&corners)[3], const glm::dvec3& normal) {
  const auto passes = [&](const std::pair<glm::vec3, float>& plane) {
    bool under = false, over = false;
    for (const glm::vec3& corner : corners) {
      const float height = glm::dot(plane.first, corner) - plane.second;
      under |= height < -kOnPlane;
      over |= height > kOnPlane;
    }
    return under && over;
  };
  if (std::none_of(planes_.begin(), planes_.end(), passes)) {
    for (const glm::vec3& corner : corners) scene_.indices.push_back(newVertex(corner, normal));
    return;
  }
  std::vector<Ring> rings{{corners[0], corners[1], corners[2]}};
  for (const auto& [direction, height] : planes_) {
    std::vector<Ring> next;
    for (const Ring& ring : rings) {
      auto [under, over] = cut(ring, direction, height);
      if (under.size() >= 3) next.push_back(std::move(under));
      if (over.size() >= 3) next.push_back(std::move(over));
    }
    rings = std::move(next);
  }
  for (const Ring& ring : rings) {
    const std::uint32_t first = newVertex(ring[0], normal);
    std::uint32_t last = newVertex(ring[1], normal);
    for (size_t i = 2; i < ring.size(); ++i) {
      const std::uint32_t vertex = newVertex(ring[i], normal);
      scene_.indices.insert(scene_.indices.end(), {first, last, vertex});
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
    if (side.count != 2 || cosine < kCreaseCosine) emit(points_[side.a], points_[side.b], na, nb);
  }
}

void ElementBuilder::emit(const glm::vec3& p, const glm::vec3& q, const glm::dvec3& na,
                          const glm::dvec3& nb) {
  const auto apart = [&](const std::pair<glm::vec3, float>& plane) {
    const float a = glm::dot(plane.first, p) - plane.second,
                b = glm::dot(plane.first, q) - plane.second;
    return std::min(a, b) < -kOnPlane && std::max(a, b) > kOnPlane;
  };
  if (std::none_of(planes_.begin(), planes_.end(), apart)) {
    const std::uint32_t a = packed(na), b = packed(nb);
    for (const glm::vec3& at : {p, q})
      scene_.edges.push_back({at, range_->placed.at(at), range_->removed.at(at), index_, a, b});
    return;
  }
  std::vector<float> cuts{0, 1};
  for (const auto& [direction, height] : planes_) {
    const float a = glm::dot(direction, p) - height, b = glm::dot(direction, q) - height;
    if (std::min(a, b) < -kOnPlane && std::max(a, b) > kOnPlane) cuts.push_back(a / (a - b));
  }
  std::sort(cuts.begin(), cuts.end());
  for (size_t i = 0; i + 1 < cuts.size(); ++i) {
    for (const float f : {cuts[i], cuts[i + 1]}) {
      const glm::vec3 at = p + (q - p) * f;
      scene_.edges.push_back(
          {at, range_->placed.at(at), range_->removed.at(at), index_, packed(na), packed(nb)});
    }
  }
}

}  // namespace viewer
