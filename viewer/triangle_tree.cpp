#include "viewer/triangle_tree.h"

#include <algorithm>
#include <numeric>
#include <optional>

#include <glm/geometric.hpp>

namespace viewer {

namespace {

constexpr std::uint32_t kLeaf = 6;

// Without branches, for what is asked most often.
inline float lesser(float a, float b) { return a < b ? a : b; }
inline float greater(float a, float b) { return a > b ? a : b; }

// Distance at which the ray enters the box, or nothing.
inline std::optional<float> enters(const Ray& ray, const glm::vec3& inverse, const glm::vec3& low,
                                   const glm::vec3& high) {
  const glm::vec3 a = (low - ray.from) * inverse, b = (high - ray.from) * inverse;
  const float in =
      greater(greater(lesser(a.x, b.x), lesser(a.y, b.y)), greater(lesser(a.z, b.z), 0.0f));
  const float out = lesser(lesser(greater(a.x, b.x), greater(a.y, b.y)), greater(a.z, b.z));
  return in <= out ? std::optional(in) : std::nullopt;
}

// Moeller and Trumbore, "Fast, minimum storage ray/triangle intersection", JGT 2(1), 1997; in
// double precision because a parallel view's rays start kilometres away.
std::optional<TriangleHit> meets(const Ray& ray, const std::array<glm::vec3, 3>& t) {
  const glm::dvec3 from(ray.from), direction(ray.direction), a(t[0]);
  const glm::dvec3 e1 = glm::dvec3(t[1]) - a, e2 = glm::dvec3(t[2]) - a;
  const glm::dvec3 p = glm::cross(direction, e2);
  const double determinant = glm::dot(e1, p);
  if (determinant == 0) return std::nullopt;
  const glm::dvec3 s = from - a;
  const double u = glm::dot(s, p) / determinant;
  const glm::dvec3 q = glm::cross(s, e1);
  const double v = glm::dot(direction, q) / determinant;
  // A hair over the edge counts, so that rays do not slip between neighbours.
  constexpr double kHair = 1e-9;
  if (u < -kHair || v < -kHair || u + v > 1 + kHair) return std::nullopt;
  const double along = glm::dot(e2, q) / determinant;
  if (along < 0) return std::nullopt;
  return TriangleHit{0, static_cast<float>(along), determinant < 0};
}

}  // namespace

TriangleTree::TriangleTree(std::span<const std::uint32_t> indices, const glm::vec3* positions,
                           size_t stride)
    : indices_(indices), positions_(reinterpret_cast<const char*>(positions)), stride_(stride) {
  const auto count = static_cast<std::uint32_t>(indices.size() / 3);
  order_.resize(count);
  std::iota(order_.begin(), order_.end(), 0u);
  if (count == 0) return;
  std::vector<Box> boxes(count);
  for (std::uint32_t i = 0; i < count; ++i) {
    const auto t = corners(i);
    boxes[i].low = glm::min(t[0], glm::min(t[1], t[2]));
    boxes[i].high = glm::max(t[0], glm::max(t[1], t[2]));
    boxes[i].middle = (boxes[i].low + boxes[i].high) * 0.5f;
  }
  nodes_.reserve(count);
  build(boxes, 0, count);
}

std::array<glm::vec3, 3> TriangleTree::corners(std::uint32_t triangle) const {
  std::array<glm::vec3, 3> t;
  for (size_t i = 0; i < 3; ++i)
    t[i] = *reinterpret_cast<const glm::vec3*>(positions_ + indices_[triangle * 3 + i] * stride_);
  return t;
}

void TriangleTree::build(std::vector<Box>& boxes, std::uint32_t first, std::uint32_t count) {
  const size_t self = nodes_.size();
  nodes_.push_back({glm::vec3(1e30f), glm::vec3(-1e30f), first, count});
  glm::vec3 low(1e30f), high(-1e30f);
  for (std::uint32_t i = first; i < first + count; ++i) {
    const Box& box = boxes[order_[i]];
    nodes_[self].low = glm::min(nodes_[self].low, box.low);
    nodes_[self].high = glm::max(nodes_[self].high, box.high);
    low = glm::min(low, box.middle);
    high = glm::max(high, box.middle);
  }
  if (count <= kLeaf) return;
  const glm::vec3 size = high - low;
  const int axis = size.x > size.y ? (size.x > size.z ? 0 : 2) : (size.y > size.z ? 1 : 2);
  const std::uint32_t half = count / 2;
  const auto begin = order_.begin() + first;
  std::nth_element(begin, begin + half, begin + count, [&](std::uint32_t a, std::uint32_t b) {
    return boxes[a].middle[axis] < boxes[b].middle[axis];
  });
  build(boxes, first, half);
  nodes_[self].count = 0;
  nodes_[self].first = static_cast<std::uint32_t>(nodes_.size());
  build(boxes, first + half, count - half);
}

TriangleHit TriangleTree::nearest(const Ray& ray,
                                  const std::function<bool(const TriangleHit&)>& counts) const {
  TriangleHit best;
  best.along = -1;
  if (nodes_.empty()) return best;
  const glm::vec3 inverse = 1.0f / ray.direction;
  struct Waiting {
    std::uint32_t node;
    float in;  // where the ray enters it
  };
  // Halves of halves: there are never more of them than a count of triangles has bits.
  std::array<Waiting, 64> waiting;
  size_t count = 0;
  const auto wait = [&](std::uint32_t index, const std::optional<float>& in) {
    if (in) waiting[count++] = {index, *in};
  };
  const auto enter = [&](std::uint32_t index) {
    return enters(ray, inverse, nodes_[index].low, nodes_[index].high);
  };
  wait(0, enter(0));
  while (count > 0) {
    const auto [index, in] = waiting[--count];
    if (best.along >= 0 && in > best.along) continue;
    const Node& node = nodes_[index];
    if (node.count == 0) {
      // The nearer one is looked into first: what it hits often rules the other out.
      const auto a = enter(index + 1), b = enter(node.first);
      const bool second = a && b && *b < *a;
      wait(second ? index + 1 : node.first, second ? a : b);
      wait(second ? node.first : index + 1, second ? b : a);
      continue;
    }
    for (std::uint32_t i = node.first; i < node.first + node.count; ++i) {
      auto hit = meets(ray, corners(order_[i]));
      if (!hit) continue;
      hit->triangle = order_[i];
      // Where two faces coincide the back one wins: there the ray is inside a thing already.
      const bool nearer = best.along < 0 || hit->along < best.along - 1e-4f ||
                          (hit->along < best.along + 1e-4f && hit->backFace && !best.backFace);
      if (nearer && counts(*hit)) best = *hit;
    }
  }
  return best;
}

bool TriangleTree::meetsBefore(const Ray& ray, float before,
                               const std::function<bool(const TriangleHit&)>& counts) const {
  if (nodes_.empty()) return false;
  const glm::vec3 inverse = 1.0f / ray.direction;
  std::array<std::uint32_t, 64> waiting;
  size_t count = 0;
  waiting[count++] = 0;
  while (count > 0) {
    const std::uint32_t index = waiting[--count];
    const Node& node = nodes_[index];
    const auto in = enters(ray, inverse, node.low, node.high);
    if (!in || *in >= before) continue;
    if (node.count == 0) {
      waiting[count++] = node.first;
      waiting[count++] = index + 1;
      continue;
    }
    for (std::uint32_t i = node.first; i < node.first + node.count; ++i) {
      auto hit = meets(ray, corners(order_[i]));
      if (!hit || hit->along >= before) continue;
      hit->triangle = order_[i];
      if (counts(*hit)) return true;
    }
  }
  return false;
}

}  // namespace viewer
