// The schedule of levels: every height that somebody on the site sets out or checks.
#include <algorithm>
#include <cctype>
#include <cmath>
#include <map>
#include <set>

#include "model/settingout/derive.h"

namespace model {

namespace {

std::string lower(std::string text) {
  for (char& c : text) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return text;
}

class Schedule {
 public:
  Schedule(SettingOut& out, double course) : out_(out), course_(course) {}

  void put(const std::string& key, const std::string& name, double level,
           const std::string& where = "") {
    std::string unique = key;
    for (int n = 2; !keys_.insert(unique).second; ++n) unique = key + " " + std::to_string(n);
    ScheduledLevel line{unique, name, level, 0, false, where};
    line.course = (level - out_.levels.dampCourse) / course_;
    line.wholeCourse = std::fabs(line.course - std::round(line.course)) * course_ <= 0.001;
    if (line.wholeCourse) line.course = std::round(line.course) + 0.0;
    out_.schedule.push_back(line);
  }

 private:
  SettingOut& out_;
  double course_;
  std::set<std::string> keys_;
};

long tenths(double level) { return std::lround(level * 1e4); }

// Openings that share a level are named on one line.
void openingLevels(const SettingOut& out, Schedule& schedule, bool heads) {
  std::map<long, std::pair<double, std::vector<const BuiltOpening*>>> byLevel;
  for (const BuiltOpening& opening : out.openings) {
    const double level = heads ? opening.head : opening.sill;
    auto& entry = byLevel[tenths(level)];
    entry.first = level;
    entry.second.push_back(&opening);
  }
  for (const auto& [key, entry] : byLevel) {
    std::string where;
    bool doors = true;
    for (const BuiltOpening* opening : entry.second) {
      where += (where.empty() ? "" : ", ") + opening->name;
      doors = doors && opening->kind != OpeningKind::Window;
    }
    const std::string name = heads ? "lintel soffit" : doors ? "threshold" : "sill";
    schedule.put((heads ? "head:" : "sill:") + lower(entry.second.front()->name), name, entry.first,
                 where);
  }
}

std::string withStorey(const Job& job, size_t storey, const std::string& what) {
  if (job.storeys.size() == 1) return what;
  return what + ", " + lower(job.storeys[storey].name);
}

// What the ground floor is built of: a slab, beams and blocks over a void, or, where the cellar is
// under all of it, the floor over the cellar.
struct GroundFloorWords {
  const char *top, *underside;
};

bool allOverCellar(const SettingOut& out) {
  return std::all_of(out.foundations.begin(), out.foundations.end(),
                     [](const FoundationRun& run) { return run.onCellar; });
}

GroundFloorWords groundFloorWords(const Job& job, const SettingOut& out) {
  if (allOverCellar(out)) return {"top of floor over cellar", "underside of floor over cellar"};
  if (job.groundFloor.kind == GroundFloorKind::Suspended)
    return {"top of beams and blocks", "underside of floor beams"};
  return {"top of slab", "underside of slab"};
}

void floorLevels(const Job& job, const SettingOut& out, Schedule& schedule) {
  const Levels& levels = out.levels;
  const GroundFloorWords ground = groundFloorWords(job, out);
  for (size_t i = 0; i < levels.finishedFloor.size(); ++i) {
    const std::string number = std::to_string(i);
    schedule.put("finished-floor:" + number, withStorey(job, i, "finished floor"),
                 levels.finishedFloor[i], job.storeys[i].name);
    schedule.put("structural-floor:" + number,
                 withStorey(job, i, i == 0 ? ground.top : "top of deck"), levels.structuralFloor[i],
                 job.storeys[i].name);
    if (i > 0) {
      schedule.put("joist-bearing:" + number, withStorey(job, i, "joist bearing"),
                   levels.joistBearing[i], job.storeys[i].name);
      schedule.put("ceiling:" + std::to_string(i - 1), withStorey(job, i - 1, "ceiling"),
                   levels.ceiling[i - 1], job.storeys[i - 1].name);
    }
  }
  schedule.put("slab-underside", ground.underside, levels.slabUnderside);
  if (!allOverCellar(out)) schedule.put("oversite", "oversite formation", levels.oversite);
}

// Where a lift's top is wanted the scaffold is lifted next.
void liftLevels(const Job& job, const SettingOut& out, Schedule& schedule) {
  for (const Lift& lift : out.lifts) {
    const std::string number = std::to_string(lift.number);
    schedule.put("lift:" + std::to_string(lift.storey) + ":" + number,
                 withStorey(job, size_t(lift.storey), "top of lift " + number), lift.top,
                 job.storeys[size_t(lift.storey)].name);
  }
}

void foundationLevels(const SettingOut& out, Schedule& schedule) {
  std::map<long, std::pair<double, std::vector<std::string>>> tops, blindings, formations;
  const auto note = [&](auto& map, double level, const FoundationRun& run) {
    auto& entry = map[-tenths(level)];
    entry.first = level;
    const std::string& name = out.walls[run.wall].name;
    if (entry.second.empty() || entry.second.back() != name) entry.second.push_back(name);
  };
  for (const FoundationRun& run : out.foundations) {
    if (run.onCellar) continue;
    note(tops, run.top, run);
    note(formations, run.formation, run);
    if (run.underside > run.formation + 5e-4) note(blindings, run.underside, run);
  }
  const auto put = [&](const auto& map, const std::string& key, const std::string& name) {
    for (const auto& [order, entry] : map) {
      std::string where;
      for (const std::string& wall : entry.second) where += (where.empty() ? "" : ", ") + wall;
      schedule.put(key, name, entry.first, map.size() == 1 ? "" : where);
    }
  };
  put(tops, "top-of-concrete", "top of concrete");
  put(blindings, "blinding", "top of blinding");
  put(formations, "formation", "formation");
}

void cellarLevels(const Job& job, const Levels& levels, Schedule& schedule) {
  if (!job.cellar) return;
  schedule.put("cellar-wall-top", "top of cellar wall", levels.cellarWallTop);
  schedule.put("cellar-floor", "cellar finished floor", levels.cellarFinishedFloor);
  schedule.put("cellar-slab-top", "top of cellar slab", levels.cellarSlabTop);
  schedule.put("cellar-slab-underside", "underside of cellar slab", levels.cellarSlabUnderside);
  if (job.cellar->blinding > 0)
    schedule.put("cellar-blinding", "top of blinding under the cellar", levels.cellarSlabUnderside);
  schedule.put("cellar-formation", "cellar formation", levels.cellarFormation);
}

}  // namespace

void deriveSchedule(const Job& job, SettingOut& out) {
  const Levels& levels = out.levels;
  Schedule schedule(out, job.walls.course());
  schedule.put("ridge", "ridge", levels.ridge);
  schedule.put("eaves", "eaves", levels.eaves);
  schedule.put("plate-top", "top of wall plate", levels.plateTop);
  schedule.put("wall-top", "top of wall, plate bed", levels.wallTop);
  schedule.put("outer-leaf-top", "top of outer leaf at eaves", levels.outerLeafTop);
  openingLevels(out, schedule, true);
  openingLevels(out, schedule, false);
  schedule.put("damp-course", "damp course", levels.dampCourse);
  floorLevels(job, out, schedule);
  liftLevels(job, out, schedule);
  schedule.put("ground-high", "ground, highest at the walls", levels.groundHigh);
  schedule.put("ground-low", "ground, lowest at the walls", levels.groundLow);
  foundationLevels(out, schedule);
  cellarLevels(job, levels, schedule);
  std::stable_sort(
      out.schedule.begin(), out.schedule.end(),
      [](const ScheduledLevel& a, const ScheduledLevel& b) { return a.level > b.level; });
}

}  // namespace model
