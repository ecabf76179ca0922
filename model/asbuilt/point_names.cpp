#include "model/asbuilt/point_names.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/asbuilt/read_points.h"
#include "model/asbuilt/words.h"
#include "model/job/reading_targets.h"

namespace model {

namespace {

constexpr double kAtCorner = 0.5, kAtPin = 0.25, kAtWall = 1.0;  // metres

bool isLevel(ReadingKind kind) { return kind == ReadingKind::Level || kind == ReadingKind::Staff; }

TargetPlace placeOf(const Job& job, const std::string& target) {
  const ReadingTarget* found = findReadingTarget(target);
  if (!found) return TargetPlace::Walls;
  // Only the lowest storey's floor is a slab.
  const bool upper = storeyOfTarget(target, job.storeys.size()).value_or(0) > 0;
  return found->place == TargetPlace::SlabPins && upper ? TargetPlace::Walls : found->place;
}

// Gathers names, each once.
class Names {
 public:
  Names(const Job& job, const SettingOut& settingOut) : job_(job), out_(settingOut) {}

  void corners() {
    for (const auto& corner : out_.corners) add(corner.letter);
  }
  void walls() {
    for (const auto& wall : out_.walls) add(wall.name);
  }
  void openings() {
    for (const auto& opening : out_.openings) add(opening.name);
  }
  void pins(TargetPlace place) {
    for (const LevelPin& pin : pinsFor(levelPins(job_, out_), place)) add("pin " + pin.name);
  }
  void diagonals() {
    const size_t n = out_.corners.size();
    for (size_t i = 0; i < n; ++i)
      for (size_t j = i + 2; j < n; ++j)
        if (i > 0 || j + 1 < n) add(out_.corners[i].letter + "-" + out_.corners[j].letter);
  }
  void ownPoints() {
    for (const ReadingSet& set : job_.readings) {
      for (const Reading& row : set.rows)
        if (row.position && isLevel(row.kind)) add(row.at, row.position);
    }
    if (job_.site.benchMark) add(job_.site.benchMark->name, job_.site.benchMark->at);
    for (const BenchMark& mark : job_.site.marks) add(mark.name, mark.at);
  }
  std::vector<PointName> take() { return std::move(names_); }

 private:
  void add(const std::string& name, const std::optional<Vec2>& at = std::nullopt) {
    const auto same = [&](const PointName& other) { return other.name == name; };
    if (!name.empty() && std::none_of(names_.begin(), names_.end(), same))
      names_.push_back({name, std::nullopt, at});
  }

  const Job& job_;
  const SettingOut& out_;
  std::vector<PointName> names_;
};

std::optional<PointName> cornerNear(const SettingOut& out, const Vec2& place, double reach) {
  std::optional<PointName> near;
  for (const auto& corner : out.corners) {
    const double away = glm::distance(corner.at, place);
    if (away > reach) continue;
    reach = away;
    near = {corner.letter, std::nullopt, std::nullopt};
  }
  return near;
}

// Openings may stand over one another.
std::optional<PointName> openingNear(const SettingOut& out, bool heads, const Vec3& place) {
  std::optional<PointName> near;
  double reach = 1e300;
  for (const BuiltOpening& opening : out.openings) {
    const Vec2 middle = out.walls[opening.wall].at((opening.s0 + opening.s1) / 2);
    const double away = glm::distance(Vec3(middle, heads ? opening.head : opening.sill), place);
    if (away >= reach || opening.name.empty()) continue;
    reach = away;
    near = {opening.name, std::nullopt, std::nullopt};
  }
  return near;
}

std::optional<PointName> pinNear(const Job& job, const SettingOut& out, TargetPlace where,
                                 const Vec2& place) {
  std::optional<PointName> near;
  double reach = kAtPin;
  for (const LevelPin& pin : pinsFor(levelPins(job, out), where)) {
    const double away = glm::distance(pin.at, place);
    if (away > reach) continue;
    reach = away;
    near = {"pin " + pin.name, std::nullopt, std::nullopt};
  }
  return near;
}

std::optional<PointName> wallNear(const SettingOut& out, const Vec2& place, double reach) {
  std::optional<PointName> near;
  for (const WallLine& wall : out.walls) {
    const double s = std::clamp(glm::dot(place - wall.start, wall.along), 0.0, wall.length);
    const double away = glm::distance(place, wall.at(s));
    if (away > reach) continue;
    reach = away;
    near = {wall.name, std::min(std::round(s * 100) / 100, wall.length), std::nullopt};
  }
  return near;
}

std::optional<PointName> levelNear(const Job& job, const SettingOut& out, const std::string& target,
                                   const Vec3& at) {
  const Vec2 place(at);
  const TargetPlace where = placeOf(job, target);
  if (where == TargetPlace::Openings) return openingNear(out, target == "head", at);
  if (auto pin = pinNear(job, out, where, place)) return pin;
  if (auto corner = cornerNear(out, place, kAtCorner)) return corner;
  if (auto wall = wallNear(out, place, kAtWall)) return wall;
  return PointName{"", std::nullopt,
                   Vec2{std::round(place.x * 100) / 100, std::round(place.y * 100) / 100}};
}

// The schedule's keys begin with the names of their targets.
bool isScheduled(const SettingOut& out, const std::string& target) {
  return std::any_of(out.schedule.begin(), out.schedule.end(), [&](const ScheduledLevel& level) {
    return level.key == target || level.key.starts_with(target + ":") ||
           level.key.starts_with(target + "-") || level.key.starts_with(target + "/");
  });
}

}  // namespace

std::vector<TargetName> targetNames(const Job& job, const SettingOut& settingOut,
                                    ReadingKind kind) {
  std::vector<TargetName> names;
  const TargetKind wanted = isLevel(kind) ? TargetKind::Level : TargetKind::Line;
  for (const ReadingTarget& target : readingTargets()) {
    const std::string name = target.name;
    if (target.kind != wanted || (isLevel(kind) && !isScheduled(settingOut, name))) continue;
    const size_t storeys = target.storeys == TargetStoreys::None ? 1 : job.storeys.size();
    for (size_t i = target.storeys == TargetStoreys::FromFirst ? 1 : 0; i < storeys; ++i) {
      const bool numbered = target.storeys != TargetStoreys::None && job.storeys.size() > 1;
      const std::string full = numbered ? name + ":" + std::to_string(i) : name;
      names.push_back({full, targetWords(job, full)});
    }
  }
  return names;
}

std::vector<PointName> pointNames(const Job& job, const SettingOut& settingOut, ReadingKind kind,
                                  const std::string& target) {
  Names names(job, settingOut);
  if (kind == ReadingKind::Diagonal) {
    names.diagonals();
  } else if (kind == ReadingKind::Corner) {
    names.corners();
  } else if (!isLevel(kind)) {
    names.walls();
  } else if (placeOf(job, target) == TargetPlace::Openings) {
    names.openings();
  } else {
    names.corners();
    names.walls();
    names.pins(placeOf(job, target));
    names.ownPoints();
  }
  return names.take();
}

std::optional<PointName> pointNear(const Job& job, const SettingOut& settingOut, ReadingKind kind,
                                   const std::string& target, const Vec3& at) {
  constexpr double kAnywhere = 1e6;
  if (isLevel(kind)) return levelNear(job, settingOut, target, at);
  const Vec2 place(at);
  if (kind == ReadingKind::Corner) return cornerNear(settingOut, place, kAnywhere);
  if (kind == ReadingKind::Diagonal) return std::nullopt;
  auto wall = wallNear(settingOut, place, kAnywhere);
  if (wall && kind == ReadingKind::Side) wall->along.reset();
  return wall;
}

}  // namespace model
