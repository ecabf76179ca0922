#include "viewer/overlays/rod_layout.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr double kLongest = 2.1;  // widths of the rod to a metre, where it only lists

// What is asked for all over the job goes before what one opening or one support needs.
int priorityOf(const model::ScheduledLevel& level) {
  const auto begins = [&](const char* with) { return level.key.rfind(with, 0) == 0; };
  if (begins("finished-floor") || begins("damp-course") || begins("ridge") ||
      begins("top-of-concrete") || begins("formation") || begins("wall-top"))
    return 2;
  return begins("sill:") || begins("head:") || begins("lift:") ? 0 : 1;
}

bool isLift(const model::ScheduledLevel& level) { return level.key.rfind("lift:", 0) == 0; }

std::vector<std::string> namesOf(const std::vector<const model::ScheduledLevel*>& group) {
  std::vector<std::string> names;
  for (const auto* level : group)
    if (std::find(names.begin(), names.end(), level->name) == names.end())
      names.push_back(level->name);
  return names;
}

}  // namespace

namespace {

std::string lowered(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = char(c - 'A' + 'a');
  return text;
}

// "Hall window, Study window"; nothing that the name says already.
std::string whereOf(const std::vector<const model::ScheduledLevel*>& group) {
  std::string where;
  for (const auto* level : group) {
    if (level->name != group.front()->name) return {};
    if (level->where.empty() ||
        lowered(level->name).find(lowered(level->where)) != std::string::npos)
      continue;
    where += (where.empty() ? "" : ", ") + level->where;
  }
  return where;
}

// Parts the lift from the others; nothing where it is alone. It is the last of its height.
std::string takeLift(std::vector<const model::ScheduledLevel*>& group) {
  std::string lift;
  while (group.size() > 1 && isLift(*group.back()) && !isLift(*group.front())) {
    lift = group.back()->name;
    group.pop_back();
  }
  return lift;
}

}  // namespace

std::vector<RodMark> rodMarks(const std::vector<model::ScheduledLevel>& schedule, bool lifts) {
  std::map<long, std::vector<const model::ScheduledLevel*>> groups;
  for (const auto& level : schedule)
    if (lifts || !isLift(level)) groups[std::lround(level.level * 1000)].push_back(&level);
  std::vector<RodMark> marks;
  for (auto& [key, group] : groups) {
    std::stable_sort(group.begin(), group.end(),
                     [](const auto* a, const auto* b) { return priorityOf(*a) > priorityOf(*b); });
    std::stable_partition(group.begin(), group.end(),
                          [](const auto* level) { return !isLift(*level); });
    RodMark mark;
    mark.level = group.front()->level;
    mark.lift = takeLift(group);
    mark.names = namesOf(group);
    mark.where = whereOf(group);
    mark.priority = priorityOf(*group.front());
    for (const auto* level : group) mark.lines.push_back(size_t(level - schedule.data()));
    marks.push_back(mark);
  }
  return marks;
}

size_t countHeights(const std::vector<model::ScheduledLevel>& schedule, bool lifts) {
  std::set<long> heights;
  for (const auto& level : schedule)
    if (lifts || !isLift(level)) heights.insert(std::lround(level.level * 1000));
  return heights.size();
}

RodScale rodScale(const Camera& camera, const Box& rod, float height, double low, double high) {
  RodScale scale;
  if (isElevation(camera)) {
    // The height of a parallel view is that of the perspective one at the target.
    const double metres = 2 * camera.distance * std::tan(camera.fieldOfView / 2);
    scale.level = camera.target.z;
    scale.y = height * 0.5f;
    scale.perMetre = double(height) / metres;
    return scale;
  }
  const double span = std::max(0.5, high - low);
  const float pad = 14;
  // On a tall sheet no longer than can be taken in at once, in the middle.
  scale.perMetre = std::min(double(rod.height() - 2 * pad) / span, double(rod.width()) * kLongest);
  scale.level = (low + high) / 2;
  scale.y = rod.centre().y;
  return scale;
}

}  // namespace viewer
