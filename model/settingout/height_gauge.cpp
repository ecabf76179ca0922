#include "model/settingout/height_gauge.h"

#include <algorithm>
#include <cmath>

#include "model/level_text.h"

namespace model {
namespace {

constexpr double kTakenUp = 0.002;    // over the whole height, unseen: common practice, no source
constexpr double kSame = 5e-5;        // metres
constexpr double kLowestCut = 0.025;  // of a brick in height: common practice, no source

class Heights {
 public:
  Heights(const Job& job, const SettingOut& out) : job_(job), out_(out) {}

  std::vector<CourseHeight> all() {
    for (const FoundationRun& run : out_.foundations)
      add(run.onCellar ? "top of cellar wall" : "top of concrete", out_.walls[run.wall].name,
          run.top);
    for (const BuiltOpening& opening : out_.openings) {
      const std::string where = opening.name + " (" + out_.walls[opening.wall].name + ")";
      if (opening.kind == OpeningKind::Window) add("sill", where, opening.sill);
      add("head, under the lintel", where, opening.head);
    }
    for (size_t storey = 1; storey < out_.levels.joistBearing.size(); ++storey)
      add("joist bearing", job_.storeys[storey].name, out_.levels.joistBearing[storey]);
    add("bed of the wall plate", "", out_.levels.wallTop);
    std::stable_sort(
        found_.begin(), found_.end(),
        [](const CourseHeight& a, const CourseHeight& b) { return a.level < b.level; });
    return std::move(found_);
  }

 private:
  void add(const std::string& what, const std::string& where, double level) {
    for (CourseHeight& known : found_) {
      if (known.what != what || std::fabs(known.level - level) > kSame) continue;
      const bool told = (", " + known.where + ", ").find(", " + where + ", ") != std::string::npos;
      if (!told) known.where += ", " + where;
      return;
    }
    const double height = std::fabs(level - out_.levels.dampCourse);
    if (height > kSame) found_.push_back(fit({what, where, level, height, 0, 0, 0, false, 0, 0}));
  }

  CourseHeight fit(CourseHeight h) const {
    const double course = job_.walls.course(), joint = job_.walls.joint;
    h.courses = static_cast<int>(std::lround(h.height / course));
    h.over = h.height - h.courses * course;
    if (h.courses > 0) {
      h.bed = h.height / h.courses - job_.walls.brickHeight;
      h.bedWithin = h.bed > kLeastBed - 1e-6 && h.bed < kMostBed + 1e-6;
    }
    if (std::fabs(h.over) <= kTakenUp) return h;
    const int whole = static_cast<int>(std::floor(h.height / course));
    const double left = h.height - whole * course - joint;
    h.cutCourse = h.level > out_.levels.dampCourse ? whole + 1 : -(whole + 1);
    h.cutTo = left >= kLowestCut ? left : 0;
    return h;
  }

  const Job& job_;
  const SettingOut& out_;
  std::vector<CourseHeight> found_;
};

}  // namespace

std::vector<CourseHeight> courseHeights(const Job& job, const SettingOut& out) {
  return Heights(job, out).all();
}

std::string comesOutText(const CourseHeight& height) {
  if (height.cutCourse == 0) return "whole courses";
  const std::string number = std::to_string(height.cutCourse);
  if (height.cutTo > 0) return "course " + number + " cut to " + lengthText(height.cutTo);
  return "no room for course " + number + ": a thicker bed, or two courses cut";
}

}  // namespace model
