#include "model/settingout/gauge_rod.h"

#include <algorithm>
#include <cmath>

#include "model/settingout/rod_courses.h"

namespace model {

namespace {

constexpr double kSame = 5e-4;  // metres: levels that are one on a rod

bool begins(const std::string& text, const char* with) { return text.rfind(with, 0) == 0; }

void addPlace(GaugeMark& mark, const std::string& place) {
  if (!place.empty()) mark.where += (mark.where.empty() ? "" : ", ") + place;
}

// The run of a wall's foundation at its end or its start.
const FoundationRun& runAtCorner(const SettingOut& out, size_t wall, bool atEnd) {
  const FoundationRun* found = nullptr;
  for (const FoundationRun& run : out.foundations) {
    if (run.wall != wall) continue;
    found = &run;
    if (!atEnd) break;
  }
  return *found;
}

class Marks {
 public:
  Marks(const SettingOut& out, GaugeRod& rod) : out_(out), rod_(rod) {}

  void all() {
    for (const ScheduledLevel& line : out_.schedule) {
      GaugeMark mark{line.key, line.name, "", line.level};
      if (line.level < rod_.foot - kSame || line.level > rod_.top + kSame) continue;
      if (isOnRod(line, mark)) rod_.marks.push_back(mark);
    }
    // Of one height in the schedule's order: what is made there before the lift that ends there.
    std::stable_sort(rod_.marks.begin(), rod_.marks.end(),
                     [](const GaugeMark& a, const GaugeMark& b) { return a.level < b.level; });
  }

 private:
  bool isOnRod(const ScheduledLevel& line, GaugeMark& mark) const {
    if (begins(line.key, "head:") || begins(line.key, "sill:")) return openings(line, mark);
    if (begins(line.key, "top-of-concrete")) return foundations(line, mark, false);
    if (line.key == "cellar-wall-top") return foundations(line, mark, true);
    for (const char* always : {"damp-course", "finished-floor:", "joist-bearing:", "lift:",
                               "wall-top", "outer-leaf-top"})
      if (begins(line.key, always)) return true;
    return false;
  }

  bool openings(const ScheduledLevel& line, GaugeMark& mark) const {
    for (const BuiltOpening& opening : out_.openings) {
      if (opening.wall != rod_.walls[0] && opening.wall != rod_.walls[1]) continue;
      const double level = begins(line.key, "head:") ? opening.head : opening.sill;
      if (std::fabs(level - line.level) < kSame / 10)
        addPlace(mark, opening.name + " (" + out_.walls[opening.wall].name + ")");
    }
    return !mark.where.empty();
  }

  bool foundations(const ScheduledLevel& line, GaugeMark& mark, bool onCellar) const {
    bool found = false, every = true;
    for (const size_t i : {size_t(0), size_t(1)}) {
      const FoundationRun& run = runAtCorner(out_, rod_.walls[i], i == 0);
      const bool here = run.onCellar == onCellar && std::fabs(run.top - line.level) < kSame / 10;
      if (here) addPlace(mark, out_.walls[run.wall].name);
      found = found || here;
      every = every && here;
    }
    if (every) mark.where.clear();  // both walls stand at it: nothing to tell apart
    return found;
  }

  const SettingOut& out_;
  GaugeRod& rod_;
};

}  // namespace

std::vector<GaugeRod> deriveGaugeRods(const Job& job, const SettingOut& out) {
  std::vector<GaugeRod> rods;
  for (size_t i = 0; i < out.corners.size(); ++i) {
    GaugeRod rod;
    rod.corner = i;
    rod.walls = {(i + out.walls.size() - 1) % out.walls.size(), i};
    rod.foot = std::min(runAtCorner(out, rod.walls[0], true).top,
                        runAtCorner(out, rod.walls[1], false).top);
    rod.dampCourse = out.levels.dampCourse;
    rod.top = out.levels.wallTop;
    rod.courses = rodCourses(job.walls, rod.foot, rod.dampCourse, rod.top);
    Marks(out, rod).all();
    rods.push_back(std::move(rod));
  }
  return rods;
}

}  // namespace model
