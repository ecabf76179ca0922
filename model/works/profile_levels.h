// Heights at which setting-out stands: the ground under it, and the one level of all boards.
#pragma once

#include <vector>

#include "model/works/profile_places.h"

namespace model {

// Lines are set out after the topsoil is stripped.
class SettingOutGround {
 public:
  SettingOutGround(const Job& job, const SettingOut& settingOut);
  // The ground then, at its highest under a figure, and a hair above it.
  double under(const Polygon& figure) const;

 private:
  const Job& job_;
  const SettingOut& out_;
  Regions strip_;
};

// Of every profile board's top edge, and so of the strings. All boards are at one level, so that
// any depth is one measure down from the lines; the highest ground under a board sets it.
double profileTop(const SettingOut& settingOut, const SettingOutGround& ground,
                  const std::vector<LineEnds>& ends);

// Of the top of an offset line's stake over the ground it stands on.
inline constexpr double kOffsetStakeHeight = 0.300;  // common practice, no source

}  // namespace model
