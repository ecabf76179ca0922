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

constexpr double kNoArea = 1e-12;  // twice the square metres of a triangle to be left out

// Square to the triangle, as long as twice its area.
Vec3 across(const Solid& solid, const std::array<std::uint32_t, 3>& t) {
  const Vec3& a = solid.points[t[0]];
  return glm::cross(solid.points[t[1]] - a, solid.points[t[2]] - a);
}

// Into the format's axes.
void turn(float* at, const Vec3& v) {
  at[0] = float(v.x);
  at[1] = float(v.z);
  at[2] = float(-v.y);
}

}  // namespace

bool hasArea(const Solid& solid) {
  // What is not finite counts as well: it is refused where it is packed.
  return std::any_of(solid.triangles.begin(), solid.triangles.end(), [&](const auto& triangle) {
    return !(glm::length(across(solid, triangle)) < kNoArea);
  });
}

void GlbBuffers::reserve(size_t triangles) {
  // Flat faces of four corners are the usual ones: two triangles, four vertices of three numbers.
  positions.reserve(triangles * 6);
  normals.reserve(triangles * 6);
  indices16.reserve(triangles * 3);
}

void GlbBuffers::store(float* at, const Vec3& position, GlbPart& part) const {
  turn(at, position - origin_);
  for (size_t axis = 0; axis < 3; ++axis) {
    part.low[axis] = std::min(part.low[axis], at[axis]);
    part.high[axis] = std::max(part.high[axis], at[axis]);
  }
}

std::uint32_t GlbBuffers::cornerFor(std::uint32_t point, const Vec3& normal) {
  // Normals of one flat face agree to rounding; faces that meet at a crease differ far more.
  constexpr double kSame = 1 - 1e-9;
  for (std::uint32_t c = firstAtPoint_[point]; c != kNone; c = corners_[c].next) {
    if (glm::dot(corners_[c].normal, normal) > kSame) return c;
  }
  const auto c = std::uint32_t(corners_.size());
  corners_.push_back({point, firstAtPoint_[point], normal});
  firstAtPoint_[point] = c;
  return c;
}

void GlbBuffers::findCorners(const Solid& solid) {
  firstAtPoint_.assign(solid.points.size(), kNone);
  corners_.clear();
  indices_.clear();
  for (const auto& t : solid.triangles) {
    const Vec3 normal = across(solid, t);
    const double area = glm::length(normal);
    if (!std::isfinite(area)) throw std::runtime_error("a coordinate is not a finite number");
    if (area < kNoArea) continue;
    for (std::uint32_t point : t) indices_.push_back(cornerFor(point, normal / area));
  }
}

GlbPart GlbBuffers::add(const Solid& solid) {
  findCorners(solid);
  GlbPart part = emptyPart();
  part.vertexCount = corners_.size();
  positions.resize(positions.size() + 3 * corners_.size());
  normals.resize(normals.size() + 3 * corners_.size());
  for (size_t c = 0; c < corners_.size(); ++c) {
    store(&positions[3 * (part.firstVertex + c)], solid.points[corners_[c].point], part);
    turn(&normals[3 * (part.firstNormal + c)], corners_[c].normal);
  }
  part.indexCount = indices_.size();
  // 65535 itself is kept free: it restarts primitives in some drivers, so glTF forbids it.
  part.wide = part.vertexCount > std::numeric_limits<std::uint16_t>::max();
  if (part.wide) {
    part.firstIndex = indices32.size();
    indices32.insert(indices32.end(), indices_.begin(), indices_.end());
  } else {
    part.firstIndex = indices16.size();
    indices16.insert(indices16.end(), indices_.begin(), indices_.end());
  }
  return part;
}

GlbPart GlbBuffers::addLine(const Vec3& a, const Vec3& b) {
  if (!finite(a) || !finite(b)) throw std::runtime_error("a coordinate is not a finite number");
  GlbPart part = emptyPart();
  part.vertexCount = 2;
  positions.resize(positions.size() + 6);
  store(&positions[3 * part.firstVertex], a, part);
  store(&positions[3 * part.firstVertex + 3], b, part);
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
