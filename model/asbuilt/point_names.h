// The points of a building that a reading may name, and the one that a finger points at.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

struct TargetName {
  std::string name;   // as the file of readings has it: "finished-floor:1"
  std::string words;  // as it is said: "finished floor of First floor"
};

// What readings of a kind can be held against in this building; levels that it does not have are
// left out.
std::vector<TargetName> targetNames(const Job& job, const SettingOut& settingOut, ReadingKind kind);

struct PointName {
  std::string name;             // as the file of readings has it
  std::optional<double> along;  // metres; of a wall that was pointed at
  std::optional<Vec2> at;       // of a point that is no corner, wall, opening or pin
};

// Those that a reading of this kind and target may be taken at, the likeliest first: corners,
// walls, openings, level pins, pairs of corners; of levels also points of earlier readings that
// have a position, and the bench marks.
std::vector<PointName> pointNames(const Job& job, const SettingOut& settingOut, ReadingKind kind,
                                  const std::string& target);

// What a reading near a place would name: a corner within half a metre, a pin within a
// quarter, else a wall with the distance along it in whole 10 mm; a level further than a metre
// inside or outside is read at a point of its own. Nothing where no such thing is.
std::optional<PointName> pointNear(const Job& job, const SettingOut& settingOut, ReadingKind kind,
                                   const std::string& target, const Vec3& place);

}  // namespace model
