#include "viewer/overlays/rod_layout.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "viewer/overlays/stack_apart.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr float kTooFar = 2.5f;  // heights of a text

// What is asked for all over the job goes before what one opening or one support needs.
int priorityOf(const model::ScheduledLevel& level) {
  const auto begins = [&](const char* with) { return level.key.rfind(with, 0) == 0; };
  if (begins("finished-floor") || begins("damp-course") || begins("ridge") ||
      begins("top-of-concrete") || begins("formation") || begins("wall-top"))
    return 2;
  return begins("sill:") || begins("head:") ? 0 : 1;
}

std::string nameOf(const std::vector<const model::ScheduledLevel*>& group) {
  std::vector<std::string> names;
  for (const auto* level : group)
    if (std::find(names.begin(), names.end(), level->name) == names.end())
      names.push_back(level->name);
  if (names.size() > 2) return names[0] + " and " + std::to_string(names.size() - 1) + " more";
  return names.size() == 2 ? names[0] + ", " + names[1] : names[0];
}

}  // namespace

std::vector<RodMark> rodMarks(const std::vector<model::ScheduledLevel>& schedule) {
  std::map<long, std::vector<const model::ScheduledLevel*>> groups;
  for (const auto& level : schedule) groups[std::lround(level.level * 1000)].push_back(&level);
  std::vector<RodMark> marks;
  for (auto& [key, group] : groups) {
    std::stable_sort(group.begin(), group.end(),
                     [](const auto* a, const auto* b) { return priorityOf(*a) > priorityOf(*b); });
    RodMark mark;
    mark.level = group.front()->level;
    mark.name = nameOf(group);
    mark.priority = priorityOf(*group.front());
    marks.push_back(mark);
  }
  return marks;
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
  scale.perMetre = double(rod.height() - 2 * pad) / span;
  scale.level = high;
  scale.y = rod.top + pad;
  return scale;
}

namespace {

// The one to leave out: the least important; among equals, the one that its neighbours crowd most.
size_t leastWanted(const std::vector<ColumnItem>& items, const std::vector<RodLabel>& shown) {
  size_t worst = 0;
  float worstScore = 1e30f;
  for (size_t i = 0; i < shown.size(); ++i) {
    const float above = i ? shown[i].trueY - shown[i - 1].trueY : 1e4f;
    const float below = i + 1 < shown.size() ? shown[i + 1].trueY - shown[i].trueY : 1e4f;
    const float score = float(items[shown[i].mark].priority) * 1e6f + std::min(above, below);
    if (score < worstScore) worst = i, worstScore = score;
  }
  return worst;
}

// The furthest that any text stands from its own height.
float spread(std::vector<RodLabel>& shown, float textHeight, const Reach& texts) {
  std::vector<float> wanted;
  for (const RodLabel& label : shown) wanted.push_back(label.trueY);
  const auto placed = stackApart(wanted, textHeight, texts.from, texts.to);
  float furthest = 0;
  for (size_t i = 0; placed && i < shown.size(); ++i) {
    shown[i].y = (*placed)[i];
    furthest = std::max(furthest, std::abs(shown[i].y - shown[i].trueY));
  }
  return furthest;
}

}  // namespace

std::vector<RodLabel> layOutColumn(const std::vector<ColumnItem>& items, float textHeight,
                                   const Reach& seen, const Reach& texts) {
  std::vector<RodLabel> shown;
  for (size_t i = 0; i < items.size(); ++i)
    if (items[i].y >= seen.from && items[i].y <= seen.to)
      shown.push_back({i, items[i].y, items[i].y});
  std::stable_sort(shown.begin(), shown.end(),
                   [](const RodLabel& a, const RodLabel& b) { return a.trueY < b.trueY; });
  const auto room = size_t(std::max(0.0f, (texts.to - texts.from) / textHeight));
  const auto leaveOut = [&] { shown.erase(shown.begin() + long(leastWanted(items, shown))); };
  while (shown.size() > room) leaveOut();
  // What matters to one opening only is not worth long leaders for all.
  while (spread(shown, textHeight, texts) > kTooFar * textHeight) {
    const size_t least = leastWanted(items, shown);
    if (items[shown[least].mark].priority > 0) break;
    leaveOut();
  }
  return shown;
}

std::vector<RodLabel> layOutRod(const std::vector<RodMark>& marks, const RodScale& scale,
                                const Box& rod, float textHeight, float textsTo) {
  std::vector<ColumnItem> items;
  for (const RodMark& mark : marks) items.push_back({scale.yAt(mark.level), mark.priority});
  return layOutColumn(items, textHeight, {rod.top, rod.bottom}, {rod.top, textsTo});
}

}  // namespace viewer
