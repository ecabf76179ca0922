// The work on site: limits, bench marks, set-ups, the files of readings, tolerances.
#include <algorithm>

#include "model/geometry/polygon.h"
#include "model/job/nearest.h"
#include "model/job/reading_files.h"
#include "model/job/reading_targets.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

std::string item(const char* list, size_t index) {
  return std::string(list) + "[" + std::to_string(index) + "]";
}

// `set-up "Cellar"`, or its number when it has no name.
std::string called(const char* noun, const std::string& name, size_t index) {
  return noun +
         (name.empty() ? " " + std::to_string(index + 1) : " \"" + name.substr(0, 60) + "\"");
}

std::string inQuotes(const std::vector<std::string>& names) {
  std::string words;
  for (const std::string& name : names) words += (words.empty() ? "" : ", ") + ("\"" + name + "\"");
  return words;
}

// No two of a list have one name, and none is empty.
template <typename Named>
void differentNames(const Validation& v, const std::vector<Named>& all, const char* list,
                    const char* noun, const char* plural,
                    const std::vector<std::string>& taken = {}) {
  for (size_t i = 0; i < all.size(); ++i) {
    const std::string path = item(list, i) + ".name";
    if (!v.known.has(path)) continue;
    const std::string& name = all[i].name;
    if (name.empty()) {
      v.error(path, called(noun, name, i) + " has an empty name", "say what it is called");
      continue;
    }
    bool twice = std::find(taken.begin(), taken.end(), name) != taken.end();
    for (size_t k = 0; k < i && !twice; ++k)
      twice = all[k].name == name && v.known.has(item(list, k) + ".name");
    if (twice) {
      v.error(path,
              "there are two " + std::string(plural) + " called \"" + name.substr(0, 60) + "\"",
              "give each its own name");
    }
  }
}

void validateLimits(const Validation& v, const std::optional<PlanFacts>& plan) {
  for (size_t i = 0; i < v.job.limits.size(); ++i) {
    const Limit& limit = v.job.limits[i];
    const std::string path = item("limit", i), who = "limit " + std::to_string(i + 1);
    const auto has = [&](const char* key) { return v.known.has(path + "." + key); };
    if (plan && has("wall") && !limit.wall.empty())
      knownWall(v, path + ".wall", who, limit.wall, plan->corners());
    if (!has("what")) continue;
    const bool distance = limit.kind == LimitKind::Boundary || limit.kind == LimitKind::Building;
    const auto missing = [&](const char* key, const char* instead) {
      if (has(key)) v.error(path, who + " has no " + key, instead);
    };
    const auto stray = [&](const char* key, const std::string& instead) {
      v.error(path + "." + key, who + " has " + key, instead);
    };
    if (distance) {
      if (!limit.least) missing("least", "add the distance to keep, in mm: least = 1000");
      if (limit.most) stray("most", "a distance has its least; most is for ridge and eaves");
    } else {
      if (!limit.most) missing("most", "add the highest level, in metres: most = 8.200");
      if (limit.least) stray("least", "a level has its most; least is for distances");
      if (!limit.wall.empty() && has("wall"))
        stray("wall", "ridge and eaves are limited for the whole roof");
      if (limit.most) nearFloor(v, path + ".most", who, *limit.most);
    }
    const bool stands =
        std::any_of(v.job.site.buildings.begin(), v.job.site.buildings.end(),
                    [](const StandingBuilding& b) { return b.kind != BuildingKind::Demolish; });
    if (limit.kind == LimitKind::Building && !stands && v.known.hasAllOf("site.building")) {
      v.warning(path + ".what", who + " is to a building, and none is standing on or by the site",
                "add it as [[site.building]]");
    }
  }
}

// A point of the work lies on the site, when the job says how far that goes.
void onSite(const Validation& v, const std::string& path, const std::string& who, const Vec2& at) {
  if (!v.known.has(path) || v.job.site.boundary.empty() || !v.known.hasAllOf("site.boundary"))
    return;
  constexpr double kReach = 0.001;
  if (contains(v.job.site.boundary, at, kReach)) return;
  v.warning(path, who + " is outside the boundary",
            "check the point; outside it the ground and what stands in the way are not known");
}

void validateMarks(const Validation& v) {
  const Site& site = v.job.site;
  std::vector<std::string> taken;
  if (site.benchMark && v.known.has("site.bench_mark.name")) taken.push_back(site.benchMark->name);
  differentNames(v, site.marks, "site.mark", "bench mark", "bench marks", taken);
  for (size_t i = 0; i < site.marks.size(); ++i) {
    const std::string path = item("site.mark", i);
    const std::string who = called("bench mark", site.marks[i].name, i);
    nearFloor(v, path + ".level", who, site.marks[i].level);
    onSite(v, path + ".at", who, site.marks[i].at);
  }
}

void validateMarkOf(const Validation& v, const std::string& path, const std::string& who,
                    const SetUp& setUp) {
  const Site& site = v.job.site;
  std::vector<std::string> marks;
  if (site.benchMark) marks.push_back(site.benchMark->name);
  for (const BenchMark& mark : site.marks) marks.push_back(mark.name);
  const bool all = v.known.has("site.bench_mark.name") &&
                   v.known.hasOfEach("site.mark", site.marks.size(), "name");
  if (!all || !v.known.has(path + ".mark")) return;
  if (marks.empty()) {
    v.error(setUp.mark.empty() ? path : path + ".mark",
            who + " has a backsight, but the job has no bench mark",
            "add the mark: [site.bench_mark] with its name, at and level");
    return;
  }
  if (setUp.mark.empty() || std::find(marks.begin(), marks.end(), setUp.mark) != marks.end())
    return;
  const auto near = nearest(setUp.mark, marks);
  v.error(path + ".mark", who + ": there is no bench mark \"" + setUp.mark.substr(0, 60) + "\"",
          near ? "did you mean \"" + *near + "\"?" : "the marks are " + inQuotes(marks));
}

void validateFloorOf(const Validation& v, const std::string& path, const std::string& who,
                     const SetUp& setUp) {
  if (setUp.floor.empty() || !v.known.has(path + ".floor") ||
      !v.known.hasOfEach("storey", v.job.storeys.size(), "name"))
    return;
  std::vector<std::string> floors;
  for (const Storey& storey : v.job.storeys) floors.push_back(storey.name);
  if (v.job.cellar) floors.emplace_back(kCellarFloor);
  if (std::find(floors.begin(), floors.end(), setUp.floor) != floors.end()) return;
  const auto near = nearest(setUp.floor, floors);
  v.error(path + ".floor", who + ": there is no floor \"" + setUp.floor.substr(0, 60) + "\"",
          near ? "did you mean \"" + *near + "\"?"
               : "the floors are " + inQuotes(floors) + "; leave it out on the ground");
}

void validateSetUps(const Validation& v) {
  differentNames(v, v.job.setUps, "set_up", "set-up", "set-ups");
  for (size_t i = 0; i < v.job.setUps.size(); ++i) {
    const SetUp& setUp = v.job.setUps[i];
    const std::string path = item("set_up", i), who = called("set-up", setUp.name, i);
    validateMarkOf(v, path, who, setUp);
    validateFloorOf(v, path, who, setUp);
    onSite(v, path + ".at", who, setUp.at);
    if (v.known.has(path + ".backsight") && v.known.has(path + ".staff") &&
        setUp.backsight > setUp.staff) {
      v.error(path + ".backsight",
              who + ": backsight " + metresWords(setUp.backsight) +
                  " is past the end of the staff, " + metresWords(setUp.staff),
              "check the reading, or give the staff's length");
    }
  }
}

void validateReadingSets(const Validation& v) {
  const auto& sets = v.job.readings;
  differentNames(v, sets, "readings", "set of readings", "sets of readings");
  for (size_t i = 0; i < sets.size(); ++i) {
    const std::string path = item("readings", i) + ".file";
    if (!v.known.has(path)) continue;
    const std::string who = called("readings", sets[i].name, i);
    const std::string fault = readingFileFault(sets[i].file);
    if (!fault.empty()) {
      v.error(path, who + ": " + fault,
              "name a CSV file in the job file's own folder, such as \"concrete-readings.csv\"");
      continue;
    }
    for (size_t k = 0; k < i; ++k) {
      if (sets[k].file != sets[i].file || !v.known.has(item("readings", k) + ".file")) continue;
      v.error(path, who + ": its file is also that of " + called("readings", sets[k].name, k),
              "give each set a file of its own");
      break;
    }
  }
}

void validateTolerances(const Validation& v) {
  const auto& all = v.job.tolerances;
  for (size_t i = 0; i < all.size(); ++i) {
    const std::string path = item("tolerance", i);
    if (!v.known.has(path + ".of")) continue;
    const std::string& of = all[i].of;
    const ReadingTarget* target = findReadingTarget(of);
    if (!target || of != target->name) {
      const auto near = nearest(of, readingTargetNames());
      v.error(path + ".of", "nothing is read as \"" + of.substr(0, 60) + "\"",
              near ? "did you mean \"" + *near + "\"?"
                   : "it is one of " + inQuotes(readingTargetNames()));
      continue;
    }
    const auto sameBefore = [&](size_t k) {
      return all[k].of == of && v.known.has(item("tolerance", k) + ".of");
    };
    bool twice = false;
    for (size_t k = 0; k < i && !twice; ++k) twice = sameBefore(k);
    if (twice) {
      v.error(path + ".of", "there are two tolerances of " + of, "keep one of them");
    } else if (v.known.has(path + ".over") && v.known.has(path + ".under") && all[i].over == 0 &&
               all[i].under == 0) {
      v.error(path, "the tolerance of " + of + " is nothing at all",
              "give over, under or both; nobody builds to 0");
    }
  }
}

void validateQuestions(const Validation& v) {
  for (size_t i = 0; i < v.job.questions.size(); ++i) {
    const std::string path = item("question", i) + ".text";
    if (v.known.has(path) && v.job.questions[i].text.empty())
      v.error(path, "question " + std::to_string(i + 1) + " asks nothing", "write the question");
  }
}

}  // namespace

void validateSiteWork(const Validation& v, const std::optional<PlanFacts>& plan) {
  validateLimits(v, plan);
  validateMarks(v);
  validateSetUps(v);
  validateReadingSets(v);
  validateTolerances(v);
  validateQuestions(v);
}

}  // namespace model
