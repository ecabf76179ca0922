#include "model/exchange/glb_buffers.h"

#include <algorithm>
#include <cmath>
#include <glm/geometric.hpp>
#include <limits>
#include <stdexcept>

namespace model {

namespace {

bool finite(const Vec3& p) {
  return std::isfinite(p.x) && std::isfinite(p.y) && std::isfinite(p.z);
}

void push(std::vector<float>& out, const Vec3& v) {
  out.push_back(float(v.x));
  out.push_back(float(v.z));
  out.push_back(float(-v.y));
}

}  // namespace

void GlbBuffers::addPosition(const Vec3& p, GlbPart& part) {
  if (!finite(p)) throw std::runtime_error("a coordinate is not a finite number");
  push(positions, p - origin_);
  const float* stored = positions.data() + positions.size() - 3;
  for (size_t axis = 0; axis < 3; ++axis) {
    part.low[axis] = std::min(part.low[axis], stored[axis]);
    part.high[axis] = std::max(part.high[axis], stored[axis]);
  }
  ++part.vertexCount;
}

std::uint32_t GlbBuffers::vertexFor(std::uint32_t point, const Vec3& normal) {
  // Normals of one flat face agree to rounding; faces that meet at a crease differ far more.
  constexpr double kSame = 1 - 1e-9;
  for (std::uint32_t v = firstAtPoint_[point]; v != kNone; v = nextAtPoint_[v]) {
    if (glm::dot(vertexNormals_[v], normal) > kSame) return v;
  }
  const auto v = std::uint32_t(vertexPoints_.size());
  vertexPoints_.push_back(point);
  vertexNormals_.push_back(normal);
  nextAtPoint_.push_back(firstAtPoint_[point]);
  firstAtPoint_[point] = v;
  return v;
}

GlbPart GlbBuffers::add(const Solid& solid) {
  firstAtPoint_.assign(solid.points.size(), kNone);
  nextAtPoint_.clear();
  vertexPoints_.clear();
  vertexNormals_.clear();
  triangleVertices_.clear();
  for (const auto& t : solid.triangles) {
    const Vec3& a = solid.points[t[0]];
    const Vec3 across = glm::cross(solid.points[t[1]] - a, solid.points[t[2]] - a);
    const double area = glm::length(across);
    if (!std::isfinite(area)) throw std::runtime_error("a coordinate is not a finite number");
    if (area < 1e-12) continue;
    for (std::uint32_t point : t) triangleVertices_.push_back(vertexFor(point, across / area));
  }

  GlbPart part = emptyPart();
  for (size_t v = 0; v < vertexPoints_.size(); ++v) {
    addPosition(solid.points[vertexPoints_[v]], part);
    push(normals, vertexNormals_[v]);
  }
  part.indexCount = triangleVertices_.size();
  // 65535 itself is kept free: it restarts primitives in some drivers, so glTF forbids it.
  part.wide = part.vertexCount > std::numeric_limits<std::uint16_t>::max();
  if (part.wide) {
    part.firstIndex = indices32.size();
    indices32.insert(indices32.end(), triangleVertices_.begin(), triangleVertices_.end());
  } else {
    part.firstIndex = indices16.size();
    for (std::uint32_t v : triangleVertices_) indices16.push_back(std::uint16_t(v));
  }
  return part;
}

GlbPart GlbBuffers::addLine(const Vec3& a, const Vec3& b) {
  GlbPart part = emptyPart();
  addPosition(a, part);
  addPosition(b, part);
  return part;
}

GlbPart GlbBuffers::emptyPart() const {
  constexpr float kFar = std::numeric_limits<float>::max();
  GlbPart part;
  part.firstVertex = positions.size() / 3;
  part.firstNormal = normals.size() / 3;
  part.low = {kFar, kFar, kFar};
  part.high = {-kFar, -kFar, -kFar};
  return part;
}

}  // namespace model
