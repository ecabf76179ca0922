// How the walls go up: heights raised from one standing.
#include <algorithm>
#include <cmath>

#include "model/settingout/derive.h"

namespace model {

namespace {

// Six blocks or eighteen bricks (common practice, no source).
constexpr double kUsualRise = 1.350;
constexpr double kLeastRise = 0.450;
constexpr double kSliver = 0.075;  // a break nearer than this to another is not worth a lift

// The rise of most lifts: the usual one, or as many whole blocks as the day's limit allows.
double riseOf(const Job& job) {
  if (job.laying.dayRise >= kUsualRise) return kUsualRise;
  const double block = job.walls.blockHeight + job.walls.joint;
  const double blocks = std::floor(job.laying.dayRise / block + 1e-6);
  return blocks > 0 ? blocks * block : job.laying.dayRise;
}

// Breaks between two levels, whole courses above the damp course, both ends left out.
std::vector<double> breaksBetween(double bottom, double top, double datum, double course,
                                  double usual, double most) {
  std::vector<double> breaks;
  double at = bottom;
  while (top - at > most + 1e-6) {
    double rise = usual;
    if (top - at - rise < kLeastRise) rise = (top - at) / 2;
    double next = courseAtOrUnder(at + rise, datum, course);
    // Thick courses: better one high course than none.
    if (next < at + 1e-6) next = at + course;
    if (next > top - 1e-6) break;
    breaks.push_back(next);
    at = next;
  }
  return breaks;
}

std::vector<double> levelsOfStorey(const Job& job, const SettingOut& out, size_t storey,
                                   double bottom, double top) {
  const double datum = out.levels.dampCourse, course = job.walls.course();

  std::vector<double> marks{bottom};
  const auto head = out.levels.commonHead[storey];
  if (head && *head > bottom + kSliver && *head < top - kSliver) marks.push_back(*head);
  marks.push_back(top);
  std::vector<double> levels{bottom};
  for (size_t i = 0; i + 1 < marks.size(); ++i) {
    for (const double z :
         breaksBetween(marks[i], marks[i + 1], datum, course, riseOf(job), job.laying.dayRise)) {
      levels.push_back(z);
    }
    levels.push_back(marks[i + 1]);
  }
  return levels;
}

}  // namespace

void deriveLifts(const Job& job, SettingOut& out) {
  const Levels& levels = out.levels;
  double bottom = levels.dampCourse;
  const size_t storeys = levels.finishedFloor.size();
  for (size_t storey = 0; storey < storeys; ++storey) {
    const double top = storey + 1 < storeys
                           ? std::min(levels.joistBearing[storey + 1], levels.wallTop)
                           : levels.wallTop;
    if (top <= bottom + 1e-6) continue;
    const auto marks = levelsOfStorey(job, out, storey, bottom, top);
    for (size_t i = 0; i + 1 < marks.size(); ++i) {
      out.lifts.push_back(
          {static_cast<int>(storey), static_cast<int>(i) + 1, marks[i], marks[i + 1]});
    }
    bottom = top;
  }
}

}  // namespace model
