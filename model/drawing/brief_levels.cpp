// Levels to hit, and the courses that lead to them.
#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "model/drawing/brief_facts.h"
#include "model/job/stair_flight.h"
#include "model/level_text.h"
#include "model/levelling/staff_text.h"
#include "model/programme/course_times.h"

namespace model {

namespace {

constexpr double kSame = 0.0005;  // metres: one to the millimetre

// Courses of one kind of leaf in one stage.
struct CourseSpan {
  int first = 0, last = 0;
  double top = -1e300;  // of the last
};

std::map<ElementKind, CourseSpan> spansOf(const Works& works,
                                          const std::vector<const Element*>& elements) {
  std::map<ElementKind, CourseSpan> spans;
  for (const Element* element : elements)
    for (size_t i = element->firstUnit; i < element->firstUnit + element->unitCount; ++i) {
      const MasonryUnit& unit = works.units[i];
      const int number = courseNumber(unit);
      const auto [at, isNew] =
          spans.try_emplace(element->kind, CourseSpan{number, number, unit.z1});
      CourseSpan& span = at->second;
      span.first = std::min(span.first, number);
      if (number > span.last) span = {span.first, number, unit.z1};
      if (number == span.last) span.top = std::max(span.top, unit.z1);
    }
  return spans;
}

// Things with a top that is made to a level.
bool isLevelled(ElementKind kind) {
  using K = ElementKind;
  static const std::set<K> kinds{K::Blinding,   K::Foundation, K::CellarSlab, K::CellarWall,
                                 K::Hardcore,   K::GroundSlab, K::BeamFloor,  K::FloorInsulation,
                                 K::Screed,     K::LevelPin,   K::GardenWall, K::Coping,
                                 K::Padstone,   K::Deck,       K::WallPlate,  K::DampCourse,
                                 K::MasonrySill};
  return kinds.count(kind) > 0;
}

bool hasLevelTop(const Element& element) {
  for (const auto& triangle : element.solid.triangles) {
    bool top = true;
    for (const auto point : triangle)
      top = top && element.solid.points[point].z > element.top - kSame;
    if (top) return true;
  }
  return false;
}

// The concrete under each corner, to be read again before walls stand on it.
std::vector<LevelToHit> concreteAtCorners(const SettingOut& out) {
  std::vector<LevelToHit> found;
  for (size_t corner = 0; corner < out.corners.size(); ++corner) {
    std::set<double> tops;
    for (const FoundationRun& run : out.foundations) {
      const WallLine& wall = out.walls[run.wall];
      if ((wall.from == corner && run.from < kSame) ||
          (wall.to == corner && run.to > wall.length - kSame))
        tops.insert(std::round(run.top * 1000) / 1000);
    }
    for (const double top : tops)
      found.push_back({"concrete at " + out.corners[corner].letter, "", top});
  }
  return found;
}

// The finished floors that a flight stands between: the rise is measured before it is fixed.
std::vector<LevelToHit> floorsOfStairs(const Job& job, int storey) {
  std::vector<LevelToHit> found;
  for (size_t i = 0; i < job.stairs.size(); ++i) {
    const auto flight = stairFlight(job, i);
    if (!flight || static_cast<int>(flight->to) != storey) continue;
    found.push_back({"floor at the top", flight->name, flight->toFloor});
    found.push_back({"floor at the foot", flight->name, flight->fromFloor});
  }
  return found;
}

std::string lowered(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = char(c - 'A' + 'a');
  return text;
}

}  // namespace

std::vector<LevelToHit> BriefFacts::levels(size_t stage) const {
  if (model_.programme.stages[stage].key.kind == StageKind::LinesBack)
    return concreteAtCorners(model_.settingOut);
  std::vector<LevelToHit> found;
  const auto has = [&](double level) {
    return std::any_of(found.begin(), found.end(), [&](const LevelToHit& each) {
      return std::abs(each.level - level) < kSame;
    });
  };
  const auto& schedule = model_.settingOut.schedule;
  for (size_t i = 0; i < schedule.size(); ++i)
    if (levelTimes_[i] > double(stage) + 1e-9 && levelTimes_[i] <= double(stage) + 1 + 1e-9)
      found.push_back({schedule[i].name, schedule[i].where, schedule[i].level});
  const StageKey& key = model_.programme.stages[stage].key;
  if (key.kind == StageKind::Stairs)
    for (const LevelToHit& floor : floorsOfStairs(model_.job, key.storey))
      if (!has(floor.level)) found.push_back(floor);
  for (const auto& [kind, span] : spansOf(model_.works, placed_[stage]))
    if (!has(span.top))
      found.push_back({"top of course " + std::to_string(span.last), nameOf(kind), span.top});
  if (found.empty()) {
    // Highest first; the walls that have it beside it.
    std::map<std::pair<double, ElementKind>, std::set<std::string>, std::greater<>> tops;
    for (const Element* element : placed_[stage])
      if (isLevelled(element->kind) && hasLevelTop(*element))
        tops[{std::round(element->top * 1000) / 1000, element->kind}].insert(element->wall);
    for (const auto& [top, walls] : tops) {
      std::string where;
      for (const std::string& wall : walls) where += (where.empty() ? "" : ", ") + wall;
      found.push_back({std::string("top of ") + nameOf(top.second), where, top.first});
    }
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const LevelToHit& a, const LevelToHit& b) { return a.level > b.level; });
  return found;
}

std::string BriefFacts::staffOf(size_t stage, double level) const {
  // Nobody holds a staff against the tiles.
  if (model_.programme.stages[stage].key.kind == StageKind::RoofCovering) return "";
  // On an upright staff where there is a choice, and nearest to the height of an eye.
  const Standing* best = nullptr;
  StaffReading read;
  const auto worth = [](const StaffReading& each) {
    return each.reach == Reach::Upright ? std::abs(each.reading - Tripod{}.usual)
                                        : 100 - each.reading;
  };
  for (const Standing& standing : standings_) {
    if (standing.from > double(stage) + 1e-9) continue;
    const StaffReading each = readStaff(standing.instrument, std::round(level * 1000) / 1000);
    if (!each.canBeRead() || (best && worth(each) >= worth(read))) continue;
    best = &standing;
    read = each;
  }
  if (!best) return "";
  return staffText(read.reading) + (standings_.size() > 1 ? " " + best->name : "") +
         (read.reach == Reach::UpsideDown ? ", upside down" : "");
}

SheetTable BriefFacts::levelsTable(size_t stage) const {
  SheetTable table;
  const bool staff = !standings_.empty();
  table.columns = {{"level", false}, {"m", true}};
  if (staff)
    table.columns.push_back(
        {standings_.size() == 1 ? "staff, from " + standings_.front().name : "staff, from", false});
  table.columns.push_back({"read", true});
  table.columns.push_back({"off mm", true});
  for (const LevelToHit& each : levels(stage)) {
    const bool told =
        each.where.empty() || lowered(each.what).find(lowered(each.where)) != std::string::npos;
    std::vector<std::string> row{each.what + (told ? "" : ": " + each.where),
                                 levelText(each.level)};
    if (staff) row.push_back(staffOf(stage, each.level));
    row.insert(row.end(), {"", ""});
    table.rows.push_back(std::move(row));
  }
  return table;
}

SheetTable BriefFacts::coursesTable(size_t stage) const {
  SheetTable table;
  table.columns = {{"leaf", false}, {"first", true}, {"last", true}, {"top m", true}};
  for (const auto& [kind, span] : spansOf(model_.works, placed_[stage]))
    table.rows.push_back(
        {nameOf(kind), std::to_string(span.first), std::to_string(span.last), levelText(span.top)});
  return table;
}

}  // namespace model
