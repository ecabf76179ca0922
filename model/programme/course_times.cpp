#include "model/programme/course_times.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace model {
namespace {

constexpr double kOffTheFace = 0.003;  // metres: the hair that is left to the line
// Two moments nearer than this are one: steps must get somewhere.
constexpr double kMoment = 1e-6;

bool raisedAsCorner(const Element& leaf) {
  return leaf.placed.stage.kind == StageKind::RaiseCorners;
}

// The units of one element in one course, which follow one another.
struct CourseRun {
  size_t first = 0, last = 0;  // into Works::units, both in it
};

template <typename Take>
void eachCourse(const Works& works, const Element& leaf, const Take& take) {
  const size_t end = leaf.firstUnit + leaf.unitCount;
  for (size_t i = leaf.firstUnit; i < end;) {
    CourseRun run{i, i};
    while (run.last + 1 < end && works.units[run.last + 1].course == works.units[i].course)
      ++run.last;
    take(run);
    i = run.last + 1;
  }
}

// When the work on a unit begins: when the one before it lies.
double begunAt(const Works& works, const Programme& programme, const Element& leaf, size_t unit) {
  if (unit > leaf.firstUnit) return timeOfUnit(programme, leaf.placed, works.units[unit - 1]);
  MasonryUnit none;
  none.when = 0;
  return timeOfUnit(programme, leaf.placed, none);
}

// How far a course of a leaf reaches.
struct Reach {
  double s0 = 1e300, s1 = -1e300, top = -1e300;
};

using Reaches = std::map<std::pair<size_t, int>, Reach>;

// The face that the line is pulled at.
double fairFace(const Element& leaf, const MasonryUnit& unit) {
  return leaf.kind == ElementKind::InnerLeaf ? double(unit.d1) + kOffTheFace
                                             : double(unit.d0) - kOffTheFace;
}

Reaches reachesOf(const Works& works) {
  Reaches reaches;
  for (const Element& leaf : works.elements) {
    const bool inner = leaf.kind == ElementKind::InnerLeaf;
    eachCourse(works, leaf, [&](const CourseRun& run) {
      const UnitFrame& frame = works.frames[leaf.frame];
      Reach& reach = reaches[{leaf.frame, works.units[run.first].course}];
      for (size_t i = run.first; i <= run.last; ++i) {
        const MasonryUnit& unit = works.units[i];
        const double depth = inner ? double(unit.d1 - unit.d0) : 0;
        reach.s0 = std::min(reach.s0, unit.s0 + (unit.mitredStart ? frame.skewStart * depth : 0));
        reach.s1 = std::max(reach.s1, unit.s1 + (unit.mitredEnd ? frame.skewEnd * depth : 0));
        reach.top = std::max(reach.top, unit.z1);
      }
    });
  }
  return reaches;
}

}  // namespace

int courseNumber(const MasonryUnit& unit) {
  return unit.course < 0 ? unit.course : unit.course + 1;
}

double timeOfUnit(const Programme& programme, const Placement& placed, const MasonryUnit& unit) {
  // A thing without a direction is there, whole, from `begin`.
  Placement there = placed;
  there.begin = placed.begin + (placed.end - placed.begin) * double(unit.when);
  there.direction = {0, 0, 0};
  return timeAt(programme, there, {0, 0, 0});
}

std::vector<CourseLine> courseLines(const Works& works, const Programme& programme) {
  const Reaches reaches = reachesOf(works);
  std::vector<CourseLine> lines;
  for (const Element& leaf : works.elements) {
    if (raisedAsCorner(leaf)) continue;
    eachCourse(works, leaf, [&](const CourseRun& run) {
      const MasonryUnit& first = works.units[run.first];
      const UnitFrame& frame = works.frames[leaf.frame];
      const Reach& reach = reaches.at({leaf.frame, first.course});
      const auto at = [&](double s) {
        return Vec3(frame.start + frame.along * s + frame.inward * fairFace(leaf, first),
                    reach.top);
      };
      lines.push_back({leaf.frame, courseNumber(first), at(reach.s0), at(reach.s1),
                       begunAt(works, programme, leaf, run.first),
                       timeOfUnit(programme, leaf.placed, works.units[run.last])});
    });
  }
  std::stable_sort(lines.begin(), lines.end(),
                   [](const CourseLine& a, const CourseLine& b) { return a.from < b.from; });
  return lines;
}

std::vector<CourseStep> courseSteps(const Works& works, const Programme& programme) {
  std::map<std::pair<size_t, int>, CourseStep> found;
  for (const Element& leaf : works.elements) {
    if (leaf.kind != ElementKind::OuterLeaf || leaf.unitCount == 0) continue;
    const auto stage = programme.indexOf(leaf.placed.stage);
    if (!stage) continue;
    eachCourse(works, leaf, [&](const CourseRun& run) {
      const int number = courseNumber(works.units[run.first]);
      const double from = begunAt(works, programme, leaf, run.first);
      const double to = timeOfUnit(programme, leaf.placed, works.units[run.last]);
      const auto [at, isNew] =
          found.try_emplace({*stage, number}, CourseStep{*stage, number, 0, from, to});
      CourseStep& step = at->second;
      if (isNew) step.top = works.units[run.first].z1;
      for (size_t i = run.first; i <= run.last; ++i)
        step.top = std::max(step.top, works.units[i].z1);
      step.from = std::min(step.from, from);
      step.to = std::max(step.to, to);
    });
  }
  std::vector<CourseStep> steps;
  steps.reserve(found.size());
  for (const auto& [key, step] : found) steps.push_back(step);
  std::stable_sort(steps.begin(), steps.end(),
                   [](const CourseStep& a, const CourseStep& b) { return a.to < b.to; });
  return steps;
}

const CourseStep* courseAt(const std::vector<CourseStep>& steps, double time) {
  const CourseStep* found = nullptr;
  for (const CourseStep& step : steps) {
    const bool underWay = step.from <= time && time <= step.to + kMoment;
    if (underWay && (!found || step.from > found->from)) found = &step;
  }
  return found;
}

std::optional<double> nextCourseEnd(const std::vector<CourseStep>& steps, double time) {
  for (const CourseStep& step : steps)
    if (step.to > time + kMoment) return step.to;
  return std::nullopt;
}

std::optional<double> courseEndBefore(const std::vector<CourseStep>& steps, double time) {
  for (auto step = steps.rbegin(); step != steps.rend(); ++step)
    if (step->to < time - kMoment) return step->to;
  return std::nullopt;
}

std::optional<double> timeOfCourse(const SettingOut& settingOut, const Works& works,
                                   const Programme& programme, size_t corner, int number) {
  std::optional<double> last;
  for (size_t i = 0; i < settingOut.walls.size(); ++i) {
    const WallLine& wall = settingOut.walls[i];
    const bool atStart = wall.from == corner;
    if (!atStart && wall.to != corner) continue;
    const Element* leaf = nullptr;
    const MasonryUnit* nearest = nullptr;
    for (const Element& e : works.elements) {
      if (e.kind != ElementKind::OuterLeaf || e.wall != wall.name) continue;
      for (size_t u = e.firstUnit; u < e.firstUnit + e.unitCount; ++u) {
        const MasonryUnit& unit = works.units[u];
        if (courseNumber(unit) != number) continue;
        if (nearest && (atStart ? unit.s0 >= nearest->s0 : unit.s1 <= nearest->s1)) continue;
        nearest = &unit;
        leaf = &e;
      }
    }
    // What begins further along, as a gable's bricks do, is not at the corner.
    const double off = !nearest ? 1e9 : atStart ? nearest->s0 : wall.length - nearest->s1;
    if (off > 0.5) continue;
    last = std::max(last.value_or(-1), timeOfUnit(programme, leaf->placed, *nearest));
  }
  return last;
}

}  // namespace model
