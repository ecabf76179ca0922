#include "model/asbuilt/read_points.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/job/reading_points.h"
#include "model/job/reading_targets.h"
#include "model/level_text.h"

namespace model {

std::vector<LevelPin> pinsFor(const std::vector<LevelPin>& all, TargetPlace place) {
  std::vector<LevelPin> pins;
  for (const LevelPin& pin : all) {
    const TargetPlace own = pin.concrete == PinnedConcrete::Foundation   ? TargetPlace::Pins
                            : pin.concrete == PinnedConcrete::GroundSlab ? TargetPlace::SlabPins
                                                                         : TargetPlace::CellarPins;
    if (own == place) pins.push_back(pin);
  }
  return pins;
}

std::optional<ReadAt> ReadPoints::find(const Reading& reading, std::string& why) {
  const bool level = reading.kind == ReadingKind::Level || reading.kind == ReadingKind::Staff;
  return level ? findLevel(reading, why) : findOnPlan(reading, why);
}

// Along runs from the corner that the reading names first, s from the wall's own start.
std::optional<ReadAt> ReadPoints::onWall(const Reading& reading) const {
  const auto wall = out_.wallNamed(reading.at);
  if (!wall || !reading.along) return std::nullopt;
  const WallLine& line = out_.walls[*wall];
  const std::string first = reading.at.substr(0, reading.at.find('-'));
  ReadAt place;
  place.wall = wall;
  place.s = first == out_.corners[line.from].letter ? *reading.along : line.length - *reading.along;
  place.at = line.at(place.s);
  place.words = "wall " + reading.at + " at " + lengthText(*reading.along);
  return place;
}

std::optional<ReadAt> ReadPoints::findLevel(const Reading& reading, std::string& why) {
  ReadAt place;
  place.words = reading.at;
  for (size_t i = 0; i < out_.openings.size(); ++i) {
    if (out_.openings[i].name == reading.at && !reading.at.empty()) place.opening = i;
  }
  if (reading.position) {
    place.at = *reading.position;
    if (place.words.empty()) place.words = lengthText(place.at.x) + ", " + lengthText(place.at.y);
    return place;
  }
  if (const auto corner = out_.cornerNamed(reading.at)) {
    place.corner = corner;
    place.at = out_.corners[*corner].at;
    place.words = "corner " + reading.at;
    return place;
  }
  if (const auto on = onWall(reading)) return on;
  if (place.opening) {
    const BuiltOpening& opening = out_.openings[*place.opening];
    place.wall = opening.wall;
    place.s = (opening.s0 + opening.s1) / 2;
    place.at = out_.walls[opening.wall].at(place.s);
    return place;
  }
  if (pinOf(reading.at)) return atPin(reading, why);
  why = "there is no place \"" + reading.at + "\" on the building";
  return std::nullopt;
}

std::optional<ReadAt> ReadPoints::atPin(const Reading& reading, std::string& why) {
  const PinWord word = *pinOf(reading.at);
  if (!pins_) pins_ = levelPins(job_, out_);
  const std::vector<LevelPin> pins = pinsFor(*pins_, word.place);
  const auto pin = std::find_if(pins.begin(), pins.end(),
                                [&](const LevelPin& each) { return each.name == word.name; });
  if (pin != pins.end()) {
    ReadAt place;
    place.words = reading.at;
    place.at = pin->at;
    return place;
  }
  const std::string over = word.place == TargetPlace::SlabPins     ? " over the ground slab"
                           : word.place == TargetPlace::CellarPins ? " over the cellar slab"
                                                                   : "";
  why = pins.empty()
            ? "this job has no level pins" + over
            : "the level pins" + over + " are " + pins.front().name + " to " + pins.back().name;
  return std::nullopt;
}

std::optional<ReadAt> ReadPoints::findOnPlan(const Reading& reading, std::string& why) const {
  const double inward = inwardOf(reading.target);
  const Polygon ring = out_.ring(inward);
  ReadAt place;
  if (reading.kind == ReadingKind::Face) {
    const auto on = onWall(reading);
    if (on) place = *on, place.at = out_.walls[*on->wall].at(on->s, inward);
    if (!on) why = "there is no wall \"" + reading.at + "\"";
    if (!on) return std::nullopt;
  } else if (reading.kind == ReadingKind::Corner) {
    place.corner = out_.cornerNamed(reading.at);
    if (!place.corner) why = "there is no corner \"" + reading.at + "\"";
    if (!place.corner) return std::nullopt;
    place.at = ring[*place.corner];
    place.words = "corner " + reading.at;
  } else {
    const size_t hyphen = reading.at.find('-');
    const auto first = out_.cornerNamed(reading.at.substr(0, hyphen));
    const auto second = hyphen == std::string::npos
                            ? std::nullopt
                            : out_.cornerNamed(reading.at.substr(hyphen + 1));
    if (!first || !second) why = "\"" + reading.at + "\" is not two corners";
    if (!first || !second) return std::nullopt;
    place.between = std::minmax(*first, *second);
    place.at = (ring[*first] + ring[*second]) / 2.0;
    place.words = reading.at;
  }
  const bool foundation = reading.target.starts_with("foundation");
  const auto runs = runsAt(place);
  place.level = foundation && !runs.empty() ? runs.front()->top : out_.levels.dampCourse;
  return place;
}

double ReadPoints::inwardOf(const std::string& target) const {
  const FaceDistances& in = out_.faceDistances;
  if (target == "foundation-outer") return in.foundationOuter;
  if (target == "outer-leaf-back") return in.outerLeafBack;
  if (target == "inner-leaf-front") return in.innerLeafFront;
  if (target == "inner-face") return in.innerFace;
  if (target == "foundation-inner") return in.foundationInner;
  return in.outerFace;
}

void ReadPoints::moveOnto(const std::string& target, ReadAt& place) const {
  const FaceDistances& in = out_.faceDistances;
  double inward = (in.innerLeafFront + in.innerFace) / 2;
  if (target == "plate-top")
    inward = in.innerLeafFront + job_.roof.plateWidth / 2;
  else if (target != "wall-top" && !target.starts_with("joist-bearing"))
    return;
  if (place.corner)
    place.at = out_.ring(inward)[*place.corner];
  else if (place.wall)
    place.at = out_.walls[*place.wall].at(place.s, inward);
}

size_t ReadPoints::wallNearest(const Vec2& p, double& s) const {
  const double middle = out_.faceDistances.innerFace / 2;
  size_t nearest = 0;
  double least = 1e300;
  for (size_t i = 0; i < out_.walls.size(); ++i) {
    const WallLine& wall = out_.walls[i];
    const double along = std::clamp(glm::dot(p - wall.start, wall.along), 0.0, wall.length);
    const double distance = glm::distance(p, wall.at(along, middle));
    if (distance >= least - 1e-9) continue;
    least = distance;
    nearest = i;
    s = along;
  }
  return nearest;
}

std::vector<const FoundationRun*> ReadPoints::runsAt(const ReadAt& place) const {
  std::vector<const FoundationRun*> runs;
  const auto add = [&](size_t wall, double s) {
    for (const FoundationRun& run : out_.foundations) {
      if (run.wall == wall && s >= run.from - 1e-6 && s <= run.to + 1e-6) runs.push_back(&run);
    }
  };
  if (place.corner) {
    const size_t before = (*place.corner + out_.walls.size() - 1) % out_.walls.size();
    add(before, out_.walls[before].length);
    add(*place.corner, 0);
  } else if (place.wall) {
    add(*place.wall, place.s);
  } else if (place.between) {
    add(place.between->first, 0);
  } else {
    double s = 0;
    const size_t wall = wallNearest(place.at, s);
    add(wall, s);
  }
  return runs;
}

double ReadPoints::wallLengthAt(const ReadAt& place) const {
  if (place.wall) return out_.walls[*place.wall].length;
  if (place.corner) {
    const size_t before = (*place.corner + out_.walls.size() - 1) % out_.walls.size();
    return std::max(out_.walls[before].length, out_.walls[*place.corner].length);
  }
  double s = 0;
  return out_.walls[wallNearest(place.at, s)].length;
}

}  // namespace model
