#include "model/asbuilt/words.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include <glm/geometric.hpp>

#include "model/job/reading_targets.h"

namespace model {

std::string millimetres(double metres) {
  const double tenths = std::round(metres * 1e4);
  char text[32];
  std::snprintf(text, sizeof text, std::fmod(tenths, 10) == 0 ? "%.0f" : "%.1f", tenths / 10 + 0.0);
  return text;
}

std::string targetWords(const Job& job, const std::string& target) {
  const ReadingTarget* known = findReadingTarget(target);
  if (!known) return target;
  const auto storey = storeyOfTarget(target, job.storeys.size());
  const bool named = known->storeys != TargetStoreys::None && job.storeys.size() > 1 && storey;
  return known->words + (named ? " of " + job.storeys[*storey].name : std::string());
}

WallProfile profileOf(const SettingOut& settingOut, const std::vector<Deviation>& deviations,
                      size_t wall, const std::string& target) {
  const WallLine& line = settingOut.walls[wall];
  WallProfile profile;
  for (const Deviation& d : deviations) {
    if (!d.latest || d.target != target || d.place.between) continue;
    if (d.place.wall == wall) profile.push_back({d.place.s, d.off});
    if (!d.place.corner || (*d.place.corner != line.from && *d.place.corner != line.to)) continue;
    double off = d.off;
    for (const CornerShift& shift : d.shifts) {
      if (d.kind == ReadingKind::Corner && shift.wall == wall) off = shift.outward;
    }
    profile.push_back({glm::dot(d.place.at - line.start, line.along), off});
  }
  std::stable_sort(profile.begin(), profile.end(),
                   [](const AlongWall& a, const AlongWall& b) { return a.s < b.s; });
  return profile;
}

WallProfile withMore(WallProfile profile, const WallProfile& more) {
  for (const AlongWall& point : more) {
    const bool there = std::any_of(profile.begin(), profile.end(), [&](const AlongWall& p) {
      return std::abs(p.s - point.s) < 0.001;
    });
    if (!there) profile.push_back(point);
  }
  std::stable_sort(profile.begin(), profile.end(),
                   [](const AlongWall& a, const AlongWall& b) { return a.s < b.s; });
  return profile;
}

std::optional<double> between(const WallProfile& profile, double s) {
  if (profile.empty() || s < profile.front().s - 1e-6 || s > profile.back().s + 1e-6)
    return std::nullopt;
  return heldAt(profile, s);
}

double heldAt(const WallProfile& profile, double s) {
  if (profile.empty()) return 0;
  if (s <= profile.front().s) return profile.front().off;
  for (size_t i = 1; i < profile.size(); ++i) {
    const AlongWall &a = profile[i - 1], &b = profile[i];
    if (s > b.s) continue;
    if (b.s - a.s < 1e-9) return b.off;
    return a.off + (b.off - a.off) * (s - a.s) / (b.s - a.s);
  }
  return profile.back().off;
}

}  // namespace model
