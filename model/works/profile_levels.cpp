#include "model/works/profile_levels.h"

#include <algorithm>

#include "model/works/ground_zones.h"

namespace model {

namespace {

// Common practice, no source:
constexpr double kOverDampCourse = 0.300, kOverGround = 0.600;
constexpr double kOff = 0.002;  // clear of the ground

}  // namespace

SettingOutGround::SettingOutGround(const Job& job, const SettingOut& settingOut)
    : job_(job), out_(settingOut), strip_(strippedArea(job, settingOut)) {}

double SettingOutGround::under(const Polygon& figure) const {
  double high = -1e300;
  for (size_t i = 0; i < figure.size(); ++i) {
    const Vec2 a = figure[i], b = figure[(i + 1) % figure.size()];
    for (const double t : {0.0, 0.25, 0.5, 0.75}) {
      high = std::max(high, out_.terrain.levelAt(a + (b - a) * t));
    }
  }
  return (holds(strip_, figure) ? high - job_.ground.topsoil : high) + kOff;
}

double profileTop(const SettingOut& settingOut, const SettingOutGround& ground,
                  const std::vector<LineEnds>& ends) {
  double top = settingOut.levels.dampCourse + kOverDampCourse;
  for (const LineEnds& line : ends) {
    for (const auto& end : {line.atStart, line.atEnd}) {
      if (end) top = std::max(top, ground.under(end->board) + kOverGround);
    }
  }
  return top;
}

}  // namespace model
