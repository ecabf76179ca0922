#include "viewer/standing.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include <glm/geometric.hpp>
#include "model/level_text.h"

#include "model/levelling/cut_fill.h"
#include "model/levelling/level_book.h"
#include "model/levelling/staff_text.h"
#include "model/lines/level_sights.h"

namespace viewer {
namespace {

// A staff and what is seen on it are read to the millimetre.
double readable(double metres) { return std::round(metres * 1000) / 1000; }

std::string staffLength(double metres) {
  char text[32];
  std::snprintf(text, sizeof text, "%g m staff", metres);
  return text;
}

std::string staffWords(const model::Instrument& instrument, double level) {
  const model::StaffReading sight = model::readStaff(instrument, level);
  switch (sight.reach) {
    case model::Reach::StaffTooShort:
      return "too low for a " + staffLength(instrument.staff);
    case model::Reach::TooHigh:
      return "too high for a " + staffLength(instrument.staff);
    case model::Reach::UpsideDown:
      return "staff " + shortReading(instrument, level) + ", upside down";
    default:
      return "staff " + shortReading(instrument, level);
  }
}

}  // namespace

std::string nameOf(const model::ScheduledLevel& level) {
  return level.where.empty() ? level.name : level.name + ", " + level.where;
}

std::optional<model::SetUp> standByHand(const model::Job& job, const model::Vec2& at,
                                        double ground) {
  const auto& mark = job.site.benchMark;
  if (!mark) return std::nullopt;
  model::SetUp setUp;
  setUp.name = kByHand;
  setUp.at = at;
  setUp.mark = mark->name;
  setUp.backsight = readable(ground + model::Tripod{}.usual - mark->level);
  return setUp;
}

std::optional<model::SetUp> nextSetUp(const model::Job& job,
                                      const std::optional<model::SetUp>& now) {
  size_t next = 0;
  while (now && next < job.setUps.size() && job.setUps[next].name != now->name) ++next;
  if (now) ++next;
  for (; next < job.setUps.size(); ++next)
    if (instrumentOf(job, job.setUps[next])) return job.setUps[next];
  return std::nullopt;
}

std::optional<model::SetUp> sameSetUp(const model::Job& job,
                                      const std::optional<model::SetUp>& before) {
  if (!before) return std::nullopt;
  std::optional<model::SetUp> same;
  for (const model::SetUp& setUp : job.setUps)
    if (setUp.name == before->name) same = setUp;
  if (!same && before->name == kByHand) same = before;
  return same && instrumentOf(job, *same) ? same : std::nullopt;
}

std::string shortReading(const model::Instrument& instrument, double level) {
  const model::StaffReading sight = model::readStaff(instrument, level);
  switch (sight.reach) {
    case model::Reach::StaffTooShort:
      return "too low";
    case model::Reach::TooHigh:
      return "too high";
    default:
      return model::staffText(readable(sight.reading));
  }
}

std::vector<std::string> carryWords(const model::Job& job, const model::SettingOut& settingOut,
                                    const model::SetUp& setUp, double level) {
  const auto instrument = instrumentOf(job, setUp);
  if (!instrument || model::readStaff(*instrument, level).canBeRead()) return {};
  const model::Corner* nearest = nullptr;
  const auto away = [&](const model::Corner& corner) { return glm::length(corner.at - setUp.at); };
  for (const model::Corner& corner : settingOut.corners)
    if (!nearest || away(corner) < away(*nearest)) nearest = &corner;
  if (!nearest) return {};
  const auto sight = model::sightOfPoint(job, settingOut, setUp, {nearest->at, level});
  std::vector<std::string> words = model::carryTexts(sight->carry, level);
  words.insert(words.begin(), "At corner " + nearest->letter + ":");
  return words;
}

std::vector<std::string> pointWords(double level, const std::optional<model::Instrument>& from,
                                    const std::optional<WantedLevel>& wanted) {
  std::vector<std::string> words;
  const double seen = readable(level);
  if (wanted) {
    const std::string to = wanted->name.empty() ? model::levelText(wanted->level) : wanted->name;
    const model::CutFill difference = model::cutFill(seen, readable(wanted->level));
    const bool on = difference.word == model::CutFillWord::On;
    words.push_back(model::cutFillText(difference) + (on ? ": " : " to ") + to);
  }
  words.push_back("level " + model::levelText(seen));
  if (from) words.push_back(staffWords(*from, seen));
  return words;
}

}  // namespace viewer
