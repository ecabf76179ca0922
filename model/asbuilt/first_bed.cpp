#include "model/asbuilt/first_bed.h"

#include <algorithm>
#include <cmath>

#include "model/asbuilt/read_points.h"
#include "model/asbuilt/words.h"

namespace model {

namespace {

constexpr BedLimits kLimits{};
constexpr double kOn = 0.005;           // common practice, no source: any bed takes it
constexpr double kThinnestCut = 0.020;  // common practice, no source: of a brick cut lower
constexpr double kSplit = 0.030;        // thinner is a slip of slate or tile, thicker a cut brick

double inMillimetres(double metres) { return std::round(metres * 1000) / 1000; }

// Joints of `courses` that come to `height` together.
Regauge shared(const WallBuildUp& walls, double height, int courses) {
  Regauge result;
  result.courses = courses;
  if (courses < 1) return result;
  result.joint = height / courses - walls.brickHeight;
  const double joint = std::round(result.joint * 1e4) / 1e4;
  result.within = joint >= kLimits.jointLeast - 1e-9 && joint <= kLimits.jointMost + 1e-9;
  return result;
}

bool isBed(double bed) {
  return inMillimetres(bed) >= kLimits.thin && inMillimetres(bed) <= kLimits.thick;
}

// Too thick: as few more courses as bring it within, or that leave room for a cut one.
void fillUp(const WallBuildUp& walls, FirstBed& bed) {
  const double joint = walls.joint, course = walls.course();
  int more = 0;
  while (bed.bed - more * course - 2 * joint > walls.brickHeight + 1e-9) ++more;
  // A whole course rather than one cut by a hair.
  if (isBed(bed.bed - (more + 1) * course)) ++more;
  bed.wholeCourses = bed.courses + more;
  const double rest = bed.bed - more * course;
  const bool whole = isBed(rest);
  bed.bedThen = whole ? rest : joint;
  bed.unit = whole ? 0 : rest - 2 * joint;
}

void findAnswer(const WallBuildUp& walls, double off, FirstBed& bed) {
  const double b = inMillimetres(bed.bed), away = inMillimetres(std::abs(off));
  bed.bedThen = bed.bed;
  bed.wholeCourses = bed.courses;
  if (isBed(bed.bed)) {
    bed.answer = b < kLimits.normalLeast   ? BedAnswer::Thin
                 : b <= kLimits.normalMost ? BedAnswer::Normal
                                           : BedAnswer::Thick;
    return;
  }
  if (b > kLimits.thick) {
    fillUp(walls, bed);
    const bool slip = away <= kLimits.course && bed.wholeCourses == bed.courses;
    bed.answer = slip ? BedAnswer::Slip : BedAnswer::ExtraCourse;
    return;
  }
  const double cut = bed.bed + walls.brickHeight - walls.joint;
  if (away > kLimits.course || bed.courses < 1 || inMillimetres(cut) < kThinnestCut) {
    bed.answer = BedAnswer::BreakOut;
    return;
  }
  bed.answer = BedAnswer::CutCourse;
  bed.wholeCourses = bed.courses - 1;
  bed.bedThen = walls.joint;
  bed.unit = cut;
}

void findRegauge(const Job& job, const SettingOut& out, const Deviation& d, FirstBed& bed) {
  const WallBuildUp& walls = job.walls;
  const double ground = out.terrain.levelAt(d.place.at) - d.read;
  const int buried =
      std::clamp(static_cast<int>(std::floor(ground / walls.course() + 1e-6)), 0, bed.courses);
  const double height = bed.height - (bed.courses - buried) * walls.course();
  bed.regauge = shared(walls, height, buried);
  if (bed.regauge.within) return;
  for (const int more : {1, -1}) {
    const Regauge other = shared(walls, height, buried + more);
    if (buried > 0 && other.within) bed.other = other;
  }
}

std::string unitWords(const FirstBed& bed) {
  const std::string height = millimetres(inMillimetres(bed.unit));
  return bed.unit < kSplit ? "a slip of slate or tile " + height + " thick"
                           : "a split course " + height + " high";
}

std::string moreWords(const FirstBed& bed) {
  const int more = bed.wholeCourses - bed.courses;
  const std::string whole =
      "add " + (more == 1 ? std::string("a course") : std::to_string(more) + " courses");
  if (bed.unit <= 0) return whole + " on a bed of " + millimetres(inMillimetres(bed.bedThen));
  return (more > 0 ? whole + " and " : std::string("add ")) + unitWords(bed);
}

std::string answerWords(const FirstBed& bed) {
  const std::string size = millimetres(inMillimetres(bed.bed));
  switch (bed.answer) {
    case BedAnswer::Normal:
      return "first bed " + size + ", normal";
    case BedAnswer::Thin:
      return "first bed " + size + ", thin: pick straight bricks";
    case BedAnswer::Thick:
      return "first bed " + size + ", thick: stiff mix and let it firm, or use a split course";
    case BedAnswer::Slip:
      return "first bed " + size + ", too thick: use " + unitWords(bed) + " between two beds";
    case BedAnswer::CutCourse:
      return "no room for the first bed (" + size + "): cut the first course to " +
             millimetres(inMillimetres(bed.unit));
    case BedAnswer::ExtraCourse:
      return "first bed " + size + ", far too thick: " + moreWords(bed) +
             ", or have the concrete made up; ask the designer first";
    case BedAnswer::BreakOut:
      break;
  }
  return "no room for the first course: break out, or raise every level above; ask the designer";
}

// The courses below ground, as another answer.
std::string regaugeWords(const FirstBed& bed) {
  const auto courses = [](int n) { return std::to_string(n) + (n == 1 ? " course" : " courses"); };
  const Regauge& r = bed.regauge;
  if (r.courses < 1) return "; no course is below ground to take it up";
  if (r.within)
    return "; or share it over the " + courses(r.courses) + " below ground, joints " +
           millimetres(r.joint);
  if (bed.other)
    return "; or lay " + courses(bed.other->courses) + " below ground in place of " +
           std::to_string(r.courses) + ", joints " + millimetres(bed.other->joint);
  return "; the gauge cannot take it up: joints of " + millimetres(r.joint) + " in the " +
         courses(r.courses) + " below ground";
}

bool isWallSeat(const std::string& target, const ReadPoints& points, const ReadAt& place) {
  if (target == "top-of-concrete") return true;
  if (target != "cellar-wall-top") return false;
  const auto runs = points.runsAt(place);
  return std::any_of(runs.begin(), runs.end(), [](const auto* run) { return run->onCellar; });
}

}  // namespace

std::vector<FirstBed> deriveFirstBeds(const Job& job, const SettingOut& settingOut,
                                      const std::vector<Deviation>& deviations) {
  const WallBuildUp& walls = job.walls;
  const double dampCourse = settingOut.levels.dampCourse;
  const ReadPoints points(job, settingOut);
  std::vector<FirstBed> beds;
  for (size_t i = 0; i < deviations.size(); ++i) {
    const Deviation& d = deviations[i];
    if (!d.latest || !isWallSeat(d.target, points, d.place)) continue;
    FirstBed bed;
    bed.deviation = i;
    bed.height = dampCourse - d.read;
    const double drawn = dampCourse - d.design;
    bed.courses = std::max(0, static_cast<int>(std::round(drawn / walls.course())));
    bed.drawn = drawn - bed.courses * walls.course() + walls.joint;
    bed.bed = bed.height - bed.courses * walls.course() + walls.joint;
    findAnswer(walls, d.off, bed);
    FirstBed drawnBed = bed;
    drawnBed.bed = bed.drawn;
    findAnswer(walls, 0, drawnBed);
    bed.asDrawn = std::abs(d.off) < kOn + 1e-9 && drawnBed.answer == bed.answer;
    findRegauge(job, settingOut, d, bed);
    bed.words = d.place.words + " is " + offText(d.kind, d.off) + ": " + answerWords(bed);
    if (bed.answer != BedAnswer::Normal) bed.words += regaugeWords(bed);
    if (drawnBed.answer != BedAnswer::Normal)
      bed.words += " (" + millimetres(inMillimetres(bed.drawn)) + " as drawn)";
    beds.push_back(std::move(bed));
  }
  return beds;
}

}  // namespace model
