#include "viewer/camera.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include <glm/geometric.hpp>
#include <glm/gtc/matrix_transform.hpp>

namespace viewer {

namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kMargin = 1.12;    // round what is framed
constexpr double kNearest = 0.4;    // metres from eye to target
constexpr double kFarthest = 5000;  // the same
constexpr double kFlattest = 0.03;  // field of view that passes for parallel while easing

struct Axes {
  glm::vec3 right, up, forward;
};

Axes axesOf(const Camera& c) {
  const double sa = std::sin(c.azimuth), ca = std::cos(c.azimuth);
  const double se = std::sin(c.elevation), ce = std::cos(c.elevation);
  return {glm::vec3(ca, -sa, 0), glm::vec3(sa * se, ca * se, ce), glm::vec3(sa * ce, ca * ce, -se)};
}

// Half the height of the view at the target, metres.
double halfHeight(const Camera& c) { return c.distance * std::tan(c.fieldOfView / 2); }

std::array<glm::vec3, 8> cornersOf(const glm::vec3& low, const glm::vec3& high) {
  std::array<glm::vec3, 8> corners;
  for (size_t i = 0; i < 8; ++i)
    corners[i] = {i & 1 ? high.x : low.x, i & 2 ? high.y : low.y, i & 4 ? high.z : low.z};
  return corners;
}

}  // namespace

glm::vec3 Camera::eye() const {
  return target - axesOf(*this).forward * static_cast<float>(distance);
}

glm::mat4 Camera::view() const {
  const Axes axes = axesOf(*this);
  return glm::lookAt(eye(), eye() + axes.forward, axes.up);
}

glm::mat4 Camera::projection(double aspect, const glm::vec3& low, const glm::vec3& high) const {
  const Axes axes = axesOf(*this);
  const glm::vec3 margin = (high - low) * 0.05f + 0.5f;
  double nearest = 1e30, farthest = -1e30;
  for (const glm::vec3& corner : cornersOf(low - margin, high + margin)) {
    const double depth = glm::dot(corner - eye(), axes.forward);
    nearest = std::min(nearest, depth);
    farthest = std::max(farthest, depth);
  }
  farthest = std::max(farthest, 1.0);
  const double h = halfHeight(*this);
  if (parallel) return glm::mat4(glm::ortho(-h * aspect, h * aspect, -h, h, nearest, farthest));
  nearest = std::max(nearest, std::max(0.05, farthest / 5000));
  return glm::mat4(glm::perspective(fieldOfView, aspect, nearest, farthest));
}

Ray Camera::rayThrough(const glm::vec2& at, double aspect) const {
  const Axes axes = axesOf(*this);
  const float h = static_cast<float>(halfHeight(*this));
  const glm::vec3 onTarget = target +
                             axes.right * ((at.x * 2 - 1) * h * static_cast<float>(aspect)) +
                             axes.up * ((1 - at.y * 2) * h);
  if (!parallel) return {eye(), glm::normalize(onTarget - eye())};
  // From far behind the eye, so that nothing near is missed: a parallel view has no eye point.
  return {onTarget - axes.forward * static_cast<float>(distance + 2000), axes.forward};
}

std::optional<glm::vec3> Camera::project(const glm::vec3& p, double aspect) const {
  const Axes axes = axesOf(*this);
  const glm::vec3 from = p - eye();
  const double depth = glm::dot(from, axes.forward);
  if (!parallel && depth <= 1e-3) return std::nullopt;
  const double h = parallel ? halfHeight(*this) : depth * std::tan(fieldOfView / 2);
  const double x = glm::dot(from, axes.right) / (h * aspect);
  const double y = glm::dot(from, axes.up) / h;
  return glm::vec3((x + 1) / 2, (1 - y) / 2, depth);
}

void Camera::orbit(double deltaAzimuth, double deltaElevation) {
  azimuth = std::remainder(azimuth + deltaAzimuth, 2 * kPi);
  elevation = std::clamp(elevation + deltaElevation, 0.0, kPi / 2);
}

void Camera::pan(const glm::vec2& by, double aspect) {
  const Axes axes = axesOf(*this);
  const float h = static_cast<float>(2 * halfHeight(*this));
  target += axes.up * (by.y * h) - axes.right * (by.x * h * static_cast<float>(aspect));
}

void Camera::zoomTo(const glm::vec2& at, double factor, double aspect) {
  const double next = std::clamp(distance * factor, kNearest, kFarthest);
  const float share = static_cast<float>(1 - next / distance);
  const Axes axes = axesOf(*this);
  const float h = static_cast<float>(halfHeight(*this));
  target += (axes.right * ((at.x * 2 - 1) * h * static_cast<float>(aspect)) +
             axes.up * ((1 - at.y * 2) * h)) *
            share;
  distance = next;
}

void Camera::frame(const glm::vec3& low, const glm::vec3& high, double aspect) {
  const Axes axes = axesOf(*this);
  target = (low + high) * 0.5f;
  const double tangent = std::tan(fieldOfView / 2) / kMargin;
  double needed = kNearest;
  for (const glm::vec3& corner : cornersOf(low, high)) {
    const glm::vec3 from = corner - target;
    const double x = std::abs(glm::dot(from, axes.right)) / (tangent * aspect);
    const double y = std::abs(glm::dot(from, axes.up)) / tangent;
    const double nearer = parallel ? 0 : -glm::dot(from, axes.forward);
    needed = std::max(needed, std::max(x, y) + nearer);
  }
  distance = std::min(needed, kFarthest);
}

void Camera::keepSensible(const glm::vec3& low, const glm::vec3& high) {
  const glm::vec3 size = high - low;
  target = glm::clamp(target, low - size * 0.25f, high + size * 0.25f);
  const double diagonal = std::max(1.0, static_cast<double>(glm::length(size)));
  distance = std::clamp(distance, kNearest, diagonal * 6);
  elevation = std::clamp(elevation, 0.0, kPi / 2);
}

void Camera::keepAbove(double level) {
  if (parallel) return;  // a parallel view has no eye that could be under anything
  const double short_ = level - eye().z;
  if (short_ <= 0) return;
  // Tilt first, which keeps the thing in the middle; lift the target only when that is not enough.
  const double sine = std::clamp((level - target.z) / distance, -1.0, 1.0);
  elevation = std::clamp(std::max(elevation, std::asin(sine)), 0.0, kPi / 2);
  if (eye().z < level) target.z += static_cast<float>(level - eye().z);
}

const std::vector<std::string>& standardViewNames() {
  static const std::vector<std::string> names{
      "plan",       "north",      "south",      "east",       "west",
      "north-east", "north-west", "south-east", "south-west", "section"};
  return names;
}

std::optional<Camera> standardView(const std::string& name, const glm::vec3& low,
                                   const glm::vec3& high, double aspect) {
  struct View {
    const char* name;
    double azimuth, elevation;
    bool parallel;
  };
  static constexpr std::array<View, 10> kViews{{{"plan", 0, kPi / 2, true},
                                                {"north", kPi, 0, true},
                                                {"south", 0, 0, true},
                                                {"east", -kPi / 2, 0, true},
                                                {"west", kPi / 2, 0, true},
                                                {"north-east", -kPi * 3 / 4, 0.5, false},
                                                {"north-west", kPi * 3 / 4, 0.5, false},
                                                {"south-east", -kPi / 4, 0.5, false},
                                                {"south-west", kPi / 4, 0.5, false},
                                                {"section", 0, 0, true}}};
  for (const View& view : kViews) {
    if (name != view.name) continue;
    Camera camera;
    camera.azimuth = view.azimuth;
    camera.elevation = view.elevation;
    camera.parallel = view.parallel;
    camera.frame(low, high, aspect);
    return camera;
  }
  return std::nullopt;
}

Camera between(const Camera& a, const Camera& b, double t) {
  if (t <= 0) return a;
  if (t >= 1) return b;
  const double e = t * t * (3 - 2 * t);
  Camera c;
  c.target = a.target + (b.target - a.target) * static_cast<float>(e);
  c.azimuth = a.azimuth + std::remainder(b.azimuth - a.azimuth, 2 * kPi) * e;
  c.elevation = a.elevation + (b.elevation - a.elevation) * e;
  c.parallel = a.parallel && b.parallel;
  // A parallel view is a very long lens from very far, so the change of lens is smooth too.
  const bool mixed = a.parallel != b.parallel;
  const double fa = mixed && a.parallel ? kFlattest : a.fieldOfView;
  const double fb = mixed && b.parallel ? kFlattest : b.fieldOfView;
  c.fieldOfView = std::exp(std::log(fa) + (std::log(fb) - std::log(fa)) * e);
  const double height = std::exp(std::log(halfHeight(a)) * (1 - e) + std::log(halfHeight(b)) * e);
  c.distance = height / std::tan(c.fieldOfView / 2);
  return c;
}

}  // namespace viewer
