#include "viewer/stair_walk.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

namespace viewer {
namespace {

constexpr double kReach = 1.0;
constexpr double kEnd = 0.5;  // from a flight's end to where one stands before or behind it

double glided(const model::StairFlight& flight, double s) {
  // A finish that is not drawn is stepped over at the ends.
  const double low = flight.stands, high = flight.lands;
  const double half = flight.going / 2;
  const double first = flight.fromFloor + flight.rise, last = flight.toFloor - flight.rise;
  if (s < half) return low + (first - low) * (s + half) / flight.going;
  if (s > flight.run() - half)
    return last + (high - last) * (s - flight.run() + half) / flight.going;
  return first + flight.slope() * (s - half);
}

}  // namespace

StairWalk::Place StairWalk::placeOf(const model::StairFlight& flight,
                                    const glm::vec3& local) const {
  const model::Vec3 at = scene_->world(local);
  const model::Vec2 by = model::Vec2(at) - flight.foot;
  return {glm::dot(by, flight.along), glm::dot(by, flight.left), at.z};
}

glm::vec3 StairWalk::local(const model::StairFlight& flight, const Place& place) const {
  return scene_->local({flight.at(place.s, place.q), place.z});
}

// Its first step is under somebody over it.
bool StairWalk::stands(const model::StairFlight& flight, const Meets& meets) const {
  const double s = flight.going / 2, z = flight.fromFloor + flight.rise;
  const auto pick = meets({local(flight, {s, 0, z + 0.3}), {0, 0, -1}});
  return pick && pick->element < model_->works.elements.size() &&
         model_->works.elements[pick->element].kind == model::ElementKind::StairTread;
}

std::optional<float> StairWalk::level(const glm::vec3& floor, const Meets& meets) const {
  for (const model::StairFlight& flight : model_->settingOut.stairs) {
    const Place at = placeOf(flight, floor);
    const double half = flight.going / 2;
    if (at.s < -half || at.s > flight.run() + half || std::abs(at.q) > flight.half()) continue;
    const double level = glided(flight, at.s);
    if (std::abs(at.z - level) > flight.rise || !stands(flight, meets)) continue;
    return float(level);
  }
  return std::nullopt;
}

bool StairWalk::near(const glm::vec3& feet) const {
  return std::any_of(model_->settingOut.stairs.begin(), model_->settingOut.stairs.end(),
                     [&](const model::StairFlight& flight) {
                       const Place at = placeOf(flight, feet);
                       const double front = std::min(flight.front(), flight.wellFrom);
                       return at.s > front - kReach && at.s < flight.wellTo + kReach &&
                              std::abs(at.q) < flight.half() + kReach &&
                              at.z > flight.stands - kReach && at.z < flight.toFloor + kReach;
                     });
}

bool StairWalk::isAlong(const glm::vec3& feet, const glm::vec3& way) const {
  return std::any_of(
      model_->settingOut.stairs.begin(), model_->settingOut.stairs.end(),
      [&](const model::StairFlight& flight) {
        const Place at = placeOf(flight, feet);
        const bool on =
            at.s > -kReach && at.s < flight.run() + kReach && std::abs(at.q) < flight.half() &&
            std::abs(at.z - glided(flight, std::clamp(at.s, -flight.going / 2, flight.run()))) <
                0.5;
        const double along = std::abs(way.x * flight.along.x + way.y * flight.along.y);
        return on && along > 0.8;
      });
}

std::vector<glm::vec3> StairWalk::endsAt(float level) const {
  std::vector<glm::vec3> ends;
  for (const model::StairFlight& flight : model_->settingOut.stairs) {
    if (std::abs(flight.toFloor - double(level)) < 1e-3)
      ends.push_back(local(flight, {flight.wellTo + kEnd, 0, flight.toFloor}));
    if (std::abs(flight.fromFloor - double(level)) < 1e-3)
      ends.push_back(local(flight, {flight.front() - kEnd / 2, 0, flight.fromFloor}));
  }
  return ends;
}

}  // namespace viewer
