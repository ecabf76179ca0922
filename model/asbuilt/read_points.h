// Where each reading was taken, and what the drawing says there.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/deviation.h"
#include "model/job/reading_targets.h"
#include "model/works/level_pins.h"

namespace model {

// Those that a level of such a place is read at; none for walls and openings.
std::vector<LevelPin> pinsFor(const std::vector<LevelPin>& all, TargetPlace place);

class ReadPoints {
 public:
  ReadPoints(const Job& job, const SettingOut& settingOut) : job_(job), out_(settingOut) {}

  // Nothing, with the reason in `why`, for a place that the building does not have.
  std::optional<ReadAt> find(const Reading& reading, std::string& why);

  // Level of `target` there. Where two lengths of concrete of different levels meet, that of the
  // one nearer to what was read. Nothing where the building has none, with the reason in `why`.
  std::optional<double> designLevel(const std::string& target, const ReadAt& place, double read,
                                    std::string& why) const;

  // Moves the place of a level at a corner or on a wall to what is read there: the plate, the inner
  // leaf; other levels stay at the outer face.
  void moveOnto(const std::string& target, ReadAt& place) const;

  // How far the face or edge lies inward of the outer face, by its target's name.
  double inwardOf(const std::string& target) const;

  // What the wall stands on there; two at a corner.
  std::vector<const FoundationRun*> runsAt(const ReadAt& place) const;

  // Of the wall that a tolerance goes by: at a corner the longer of its two.
  double wallLengthAt(const ReadAt& place) const;

 private:
  std::optional<ReadAt> findLevel(const Reading& reading, std::string& why);
  std::optional<ReadAt> findOnPlan(const Reading& reading, std::string& why) const;
  std::optional<ReadAt> onWall(const Reading& reading) const;
  std::optional<ReadAt> atPin(const Reading& reading, std::string& why);
  size_t wallNearest(const Vec2& p, double& s) const;
  std::optional<double> buildingLevel(const std::string& family, size_t storey,
                                      const ReadAt& place) const;

  const Job& job_;
  const SettingOut& out_;
  std::optional<std::vector<LevelPin>> pins_;  // built when one is asked for
};

}  // namespace model
