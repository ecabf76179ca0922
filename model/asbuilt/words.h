// Lengths and readings along a wall, as the rest of this folder says and uses them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/deviation.h"
#include "model/level_text.h"

namespace model {

// "12", "5.5": millimetres, one place where they are not whole; a minus where negative.
std::string millimetres(double metres);

// What a target of readings is called in this job: "top of concrete", "sill", and where there is
// more than one storey "finished floor of First floor". The text itself when it is no target.
std::string targetWords(const Job& job, const std::string& target);

// What was read along one wall, in order of s.
struct AlongWall {
  double s = 0, off = 0;
};
using WallProfile = std::vector<AlongWall>;

// The latest readings of a face or level on a wall, those at its two corners too.
WallProfile profileOf(const SettingOut& settingOut, const std::vector<Deviation>& deviations,
                      size_t wall, const std::string& target);
// The first of the profiles, with those points of the second added that it does not have.
WallProfile withMore(WallProfile profile, const WallProfile& more);

// On the straight line between the two readings beside s; nothing beyond the first and last.
std::optional<double> between(const WallProfile& profile, double s);
// The same, beyond them the nearest. 0 without readings.
double heldAt(const WallProfile& profile, double s);

}  // namespace model
