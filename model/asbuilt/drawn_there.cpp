#include "model/asbuilt/drawn_there.h"

#include <utility>
#include <vector>

#include "model/asbuilt/deviations.h"
#include "model/asbuilt/words.h"
#include "model/levelling/set_up.h"

namespace model {

namespace {

// The levels that a point may have: the nearer to what is read counts, so one from far above and
// one from far below bring out both.
std::vector<double> levelsThere(const Job& job, const SettingOut& settingOut, Reading reading) {
  constexpr double kFar = 1000;  // metres
  std::vector<double> levels;
  std::string why;
  reading.kind = ReadingKind::Level;
  for (const double from : {kFar, -kFar}) {
    reading.value = from;
    const auto held = holdReading(job, settingOut, reading, why);
    if (held && (levels.empty() || levels.back() != held->design)) levels.push_back(held->design);
  }
  return levels;
}

std::string staffWords(const Job& job, const std::string& setUp, double level) {
  for (const SetUp& each : job.setUps) {
    if (each.name != setUp) continue;
    if (const auto from = instrumentOf(job, each))
      return staffReadingText(*from, readStaff(*from, level));
  }
  return {};
}

std::string drawnLevelWords(const Job& job, const SettingOut& settingOut, const Reading& reading) {
  std::string words;
  for (const double level : levelsThere(job, settingOut, reading)) {
    words += (words.empty() ? "drawn " : " or ") + levelText(level);
    const std::string staff =
        reading.kind == ReadingKind::Staff ? staffWords(job, reading.setUp, level) : "";
    if (!staff.empty()) words += ": " + staff;
  }
  return words;
}

}  // namespace

std::optional<Deviation> holdReading(const Job& job, const SettingOut& settingOut,
                                     const Reading& reading, std::string& why) {
  Job with = job;
  with.readings.assign(1, {});
  with.readings.front().rows = {reading};
  Deviations found = deriveDeviations(with, settingOut);
  if (!found.held.empty()) return std::move(found.held.front());
  if (!found.unheld.empty()) why = found.unheld.front().why;
  return std::nullopt;
}

std::string drawnThereText(const Job& job, const SettingOut& settingOut, Reading reading) {
  if (reading.kind == ReadingKind::Level || reading.kind == ReadingKind::Staff)
    return drawnLevelWords(job, settingOut, reading);
  std::string why;
  if (reading.kind == ReadingKind::Corner) reading.position = Vec2{0, 0};
  const auto held = holdReading(job, settingOut, reading, why);
  if (!held) return {};
  if (reading.kind == ReadingKind::Face) return "drawn 0, on its line";
  if (reading.kind == ReadingKind::Corner)
    return "drawn at " + millimetres(held->place.at.x) + ", " + millimetres(held->place.at.y);
  return "drawn " + millimetres(held->design);
}

}  // namespace model
