#include "viewer/section_ease.h"

#include <algorithm>

#include <glm/geometric.hpp>

namespace viewer {
namespace {

// Where a plane of that direction has the whole scene on the side that is kept.
float outside(const glm::vec4& plane, const Scene& scene) {
  float farthest = -1e30f;
  for (int i = 0; i < 8; ++i) {
    const glm::vec3 corner{i & 1 ? scene.high.x : scene.low.x, i & 2 ? scene.high.y : scene.low.y,
                           i & 4 ? scene.high.z : scene.low.z};
    farthest = std::max(farthest, glm::dot(glm::vec3(plane), corner));
  }
  return -farthest - 0.01f;
}

bool parallel(const Section& a, const Section& b) {
  return glm::distance(glm::vec3(a.plane), glm::vec3(b.plane)) < 1e-4f;
}

float mixed(float a, float b, double part) {
  const double smooth = part * part * (3 - 2 * part);
  return float(double(a) + (double(b) - double(a)) * smooth);
}

}  // namespace

void SectionEase::begin(const Section& from, const Section& to, const Scene& scene) {
  from_ = from;
  to_ = to;
  fromOutside_ = outside(from.plane, scene);
  toOutside_ = outside(to.plane, scene);
  moving_ = true;
}

void SectionEase::at(double part, Section& section) {
  if (!moving_) return;
  if (part >= 1) {
    section = to_;
    moving_ = false;
    return;
  }
  if (from_.on && to_.on && parallel(from_, to_)) {
    section = to_;
    section.plane.w = mixed(from_.plane.w, to_.plane.w, part);
    return;
  }
  // Out with the one, then in with the other.
  const double out = from_.on ? (to_.on ? 0.5 : 1.0) : 0.0;
  section.on = true;
  if (part < out) {
    section.plane = from_.plane;
    section.plane.w = mixed(from_.plane.w, fromOutside_, part / out);
  } else if (to_.on) {
    section.plane = to_.plane;
    section.plane.w = mixed(toOutside_, to_.plane.w, (part - out) / (1 - out));
  } else {
    section.on = false;
  }
}

bool SectionEase::made(const Section& section) const {
  return moving_ || (section.on == to_.on && section.plane == to_.plane);
}

void SectionEase::originMoved(const glm::vec3& by) {
  for (Section* each : {&from_, &to_}) each->plane.w += glm::dot(glm::vec3(each->plane), by);
  fromOutside_ += glm::dot(glm::vec3(from_.plane), by);
  toOutside_ += glm::dot(glm::vec3(to_.plane), by);
}

}  // namespace viewer
