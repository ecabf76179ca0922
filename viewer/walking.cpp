#include "viewer/walking.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <string>

#include <glm/geometric.hpp>

namespace viewer {
namespace {

constexpr float kBody = 0.28f;  // from the middle to what is touched
// What one still steps up or down: before a door the step itself is not drawn.
constexpr float kUp = 0.62f, kDown = 0.62f;
constexpr float kOutside = 3.2f;  // from the door at the start
constexpr double kSteepest = 1.35;
constexpr float kOverSteps = 1.15f;  // over the steps that one goes up to next

glm::vec3 levelWay(double azimuth) {
  return {float(std::sin(azimuth)), float(std::cos(azimuth)), 0};
}

double azimuthOf(const glm::vec3& way) { return std::atan2(double(way.x), double(way.y)); }

glm::vec3 middleOf(const ElementRange& range) { return (range.low + range.high) * 0.5f; }

// Out of the building, square to the wall of an opening.
glm::vec3 outOf(const model::Model& model, const model::Element& element) {
  for (const auto& wall : model.settingOut.walls)
    if (wall.name == element.wall) return {float(wall.outward.x), float(wall.outward.y), 0.0f};
  return {0, -1, 0};
}

}  // namespace

Walking::Walking(const model::Model& model, const Scene& scene)
    : model_(&model), scene_(&scene), stairs_(model, scene) {
  // "wall A-B/Kitchen window/frame": its parts share all but the last word of their ids.
  const auto& elements = model.works.elements;
  std::map<std::string, size_t> known;
  for (size_t i = 0; i < elements.size(); ++i) {
    const std::string& id = elements[i].id;
    const bool window = elements[i].kind == model::ElementKind::Window && !elements[i].wall.empty();
    if (!window) continue;
    const ElementRange& range = scene.elements[i];
    const auto [at, isNew] = known.emplace(id.substr(0, id.rfind('/')), windows_.size());
    if (isNew) windows_.push_back({i, range.low, range.high});
    Pane& pane = windows_[at->second];
    pane.low = glm::min(pane.low, range.low);
    pane.high = glm::max(pane.high, range.high);
  }
}

glm::vec3 Walking::ahead() const { return levelWay(azimuth_); }

bool Walking::isDoor(std::uint32_t element) const {
  return element < model_->works.elements.size() &&
         model_->works.elements[element].kind == model::ElementKind::Door;
}

std::optional<float> Walking::floorUnder(const glm::vec3& from, const Meets& meets) const {
  const auto pick = meets({from, {0, 0, -1}});
  if (!pick) return std::nullopt;
  return pick->point.z;
}

void Walking::begin(const Meets& meets) {
  glm::vec3 at = (scene_->buildingLow + scene_->buildingHigh) * 0.5f, out{0, -1, 0};
  at.y = scene_->buildingLow.y;
  const auto& elements = model_->works.elements;
  for (size_t i = 0; i < elements.size(); ++i) {
    if (elements[i].kind != model::ElementKind::Door || elements[i].wall.empty()) continue;
    at = middleOf(scene_->elements[i]);
    out = outOf(*model_, elements[i]);
    break;
  }
  feet_ = at + out * kOutside;
  feet_.z = floorUnder({feet_.x, feet_.y, scene_->high.z + 5}, meets).value_or(0.0f);
  azimuth_ = azimuthOf(-out);
  elevation_ = 0;
}

void Walking::putAt(const glm::vec3& feet, const model::Vec2& way) {
  feet_ = feet;
  azimuth_ = azimuthOf({float(way.x), float(way.y), 0});
  elevation_ = 0;
}

bool Walking::barred(const glm::vec3& from, const glm::vec3& way, float length,
                     const Meets& meets) const {
  // At the chest, and at the knee over what is stepped on.
  std::vector<float> heights{kEye - 0.35f, kUp + 0.12f};
  std::vector<float> aside{0};
  if (stairs_.near(from)) {
    heights.push_back(kEye);  // steps overhead
    if (stairs_.isAlong(from, way)) heights[1] = kOverSteps;
    aside = {-0.06f, -0.03f, 0, 0.03f, 0.06f};  // no way between balusters
  }
  const glm::vec3 across{way.y, -way.x, 0};
  for (const float height : heights)
    for (const float off : aside)
      if (barredAt(from + glm::vec3(0, 0, height) + across * off, way, length, meets)) return true;
  return false;
}

// Behind a door the way goes on.
bool Walking::barredAt(glm::vec3 at, const glm::vec3& way, float length, const Meets& meets) const {
  for (int doors = 0; doors < 12 && length > 0; ++doors) {
    const auto pick = meets({at, way});
    if (!pick || pick->along > length) return false;
    if (!isDoor(pick->element)) return true;
    at += way * (pick->along + 0.005f);
    length -= pick->along + 0.005f;
  }
  return false;
}

bool Walking::step(float forward, float right, const Meets& meets) {
  const glm::vec3 along = ahead(), across{along.y, -along.x, 0};
  const glm::vec3 by = along * forward + across * right;
  const float length = glm::length(by);
  if (length <= 0) return true;
  const glm::vec3 way = by / length;
  if (barred(feet_, way, length + kBody, meets)) return false;
  const glm::vec3 to = feet_ + by;
  const auto floor = floorUnder(to + glm::vec3(0, 0, kUp + 0.05f), meets);
  if (!floor || *floor > feet_.z + kUp || *floor < feet_.z - kDown) return false;
  feet_ = {to.x, to.y, stairs_.level({to.x, to.y, *floor}, meets).value_or(*floor)};
  return true;
}

void Walking::look(double right, double up) {
  azimuth_ = std::remainder(azimuth_ + right, 2 * std::numbers::pi);
  elevation_ = std::clamp(elevation_ - up, -kSteepest, kSteepest);
}

bool Walking::standsAt(const glm::vec3& at, float level, const Meets& meets) {
  const auto floor = floorUnder({at.x, at.y, level + 1.0f}, meets);
  if (!floor || std::abs(*floor - level) > 0.35f) return false;
  feet_ = {at.x, at.y, stairs_.level({at.x, at.y, *floor}, meets).value_or(*floor)};
  return true;
}

bool Walking::climb(int by, const Meets& meets) {
  std::vector<float> floors;
  for (const double level : model_->settingOut.levels.finishedFloor) floors.push_back(float(level));
  if (model_->job.cellar) floors.push_back(float(model_->job.cellar->floor));
  std::sort(floors.begin(), floors.end());
  if (by < 0) std::reverse(floors.begin(), floors.end());
  constexpr float kApart = 1.5f;  // of two floors, at least
  for (const float level : floors) {
    if ((by > 0) != (level > feet_.z) || std::abs(level - feet_.z) < kApart) continue;
    if (standsAt(feet_, level, meets)) return true;
    for (const glm::vec3& end : stairs_.endsAt(level))
      if (standsAt(end, level, meets)) return true;
    return false;
  }
  return false;
}

bool Walking::toWindow(const Meets& meets, double time) {
  const auto& elements = model_->works.elements;
  for (size_t tried = 0; tried < windows_.size(); ++tried) {
    const size_t at = (window_ + tried) % windows_.size();
    const Pane& pane = windows_[at];
    if (double(scene_->elements[pane.element].appears) > time) continue;
    const glm::vec3 out = outOf(*model_, elements[pane.element]);
    const glm::vec3 middle = (pane.low + pane.high) * 0.5f;
    const glm::vec3 stand = middle - out * 0.9f;
    const auto floor = floorUnder({stand.x, stand.y, pane.low.z + 0.3f}, meets);
    const float eye = floor.value_or(0.0f) + kEye;
    if (!floor || eye < pane.low.z || eye > pane.high.z) continue;
    feet_ = {stand.x, stand.y, *floor};
    azimuth_ = azimuthOf(out);
    elevation_ = 0;
    window_ = at + 1;
    return true;
  }
  return false;
}

Camera Walking::camera() const {
  Camera camera;
  camera.azimuth = azimuth_;
  camera.elevation = elevation_;
  camera.fieldOfView = 1.05;
  camera.distance = 1;
  camera.target = feet_ + glm::vec3(0, 0, kEye) - (camera.eye() - camera.target);
  return camera;
}

}  // namespace viewer
