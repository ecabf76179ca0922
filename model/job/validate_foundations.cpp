// Foundations against the walls on them, the ground floor over them, and each other.
#include <algorithm>
#include <cmath>

#include "model/job/job_names.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kTolerance = 1e-6;
constexpr double kDeepest = 15;              // metres under the ground floor
constexpr double kDefaultThickness = 0.200;  // of a strip; as deriveSettingOut() has it

const char* kAskTheDesigner = "; the drawing decides";

// A step measured along its wall in the file's direction.
struct PlacedStep {
  size_t index = 0;
  size_t wall = 0;
  double from = 0, to = 0;
  double top = 0;
};

std::string stepPath(size_t index) { return "foundations.step[" + std::to_string(index) + "]"; }
std::string stepName(const FoundationStep& step) { return "step \"" + step.wall + "\""; }

double stripThickness(const Job& job) {
  return job.foundations.thickness.value_or(kDefaultThickness);
}

// True when a level for the top of concrete can be one.
bool topIsUnderTheFloor(const Validation& v, const std::string& path, const std::string& who,
                        double top, const LevelFacts& levels) {
  const double most = std::min(levels.slabUnderside, levels.dampCourse - 0.15);
  if (top > most + kTolerance) {
    const bool mm = top > 10 || top < -kDeepest;
    v.error(path, who + " is " + levelWords(top) + ", above the underside of the ground floor",
            mm ? "levels are in metres"
               : "the top of concrete is at " + levelWords(most) + " or lower");
    return false;
  }
  if (top < levels.floor - kDeepest) {
    v.error(path,
            who + " is " + levelWords(top) + ", " + lengthWords(levels.floor - top) +
                " under the ground floor",
            "levels are in metres; 15 m under the floor is the deepest");
    return false;
  }
  return true;
}

void validateSection(const Validation& v) {
  const Foundations& f = v.job.foundations;
  const double total = v.job.walls.total();
  const double project = (f.width - total) / 2;
  if (project < 0.010 - kTolerance) {
    v.error(
        "foundations.width",
        "foundations.width is " + lengthWords(f.width) + " under a wall of " + lengthWords(total),
        "the concrete is wider than the wall, at least " + lengthWords(total + 0.020));
    return;
  }
  if (f.kind != FoundationKind::Strip) return;
  // Approved Document A (2004, with amendments), section 2E2(c).
  const double least = std::max(0.150, project);
  if (stripThickness(v.job) < least - kTolerance) {
    v.warning("foundations.thickness",
              "the strip is " + lengthWords(stripThickness(v.job)) + " thick and goes " +
                  lengthWords(project) + " beyond the wall on each side",
              "plain strips are " + lengthWords(std::ceil(least * 1000 - kTolerance) / 1000) +
                  " thick or more then (Approved Document A, 2E2(c))" + kAskTheDesigner);
  }
}

// The step on its wall, or nothing with the problems added.
std::optional<PlacedStep> placed(const Validation& v, size_t index, const PlanFacts& plan,
                                 const LevelFacts& levels) {
  const FoundationStep& step = v.job.foundations.steps[index];
  const std::string path = stepPath(index), name = stepName(step);
  const auto wall = knownWall(v, path + ".wall", name, step.wall, plan.corners());
  if (!wall) return std::nullopt;
  const double length = plan.length[*wall];
  const double to = step.to.value_or(length);
  bool good = topIsUnderTheFloor(v, path + ".top", name + ": top", step.top, levels);
  if (to > length + 0.0005 || step.from > length) {
    v.error(
        path + (step.from > length ? ".from" : ".to"),
        name + " goes to " + lengthWords(std::max(to, step.from)) + ", past the end of the wall",
        "the wall is " + lengthWords(length) + " long");
    good = false;
  } else if (to - step.from < 0.1) {
    v.error(path + (step.to ? ".to" : ".from"),
            name + " runs from " + lengthWords(step.from) + " to " + lengthWords(to),
            "it ends at least 100 mm after it begins");
    good = false;
  }
  if (!good) return std::nullopt;
  const bool forward = step.wall == nameOfWall(*wall, plan.corners());
  PlacedStep result{index, *wall, step.from, std::min(to, length), step.top};
  if (!forward) {
    result.from = length - std::min(to, length);
    result.to = length - step.from;
  }
  return result;
}

// Approved Document A, section 2E2: (d) the lap at a step, (e) its height.
void validateStepSize(const Validation& v, const PlacedStep& step, double neighbourTop) {
  const Foundations& f = v.job.foundations;
  const std::string path = stepPath(step.index), name = stepName(f.steps[step.index]);
  const double height = std::abs(step.top - neighbourTop);
  const bool strip = f.kind == FoundationKind::Strip;
  if (strip && height > stripThickness(v.job) + kTolerance) {
    v.warning(path + ".top",
              name + " is " + lengthWords(height) + " high and the concrete " +
                  lengthWords(stripThickness(v.job)) + " thick",
              std::string("steps are no higher than the concrete is thick (Approved Document A, "
                          "2E2(e))") +
                  kAskTheDesigner);
  }
  const double lap =
      strip ? std::max({2 * height, stripThickness(v.job), 0.3}) : std::max(2 * height, 1.0);
  if (height > kTolerance && step.to - step.from < lap - kTolerance) {
    v.warning(path, name + " is " + lengthWords(step.to - step.from) + " long",
              "at a step the concrete laps " + lengthWords(lap) + " (Approved Document A, 2E2(d))" +
                  kAskTheDesigner);
  }
}

void validateSteps(const Validation& v, const PlanFacts& plan, const LevelFacts& levels) {
  std::vector<PlacedStep> steps;
  for (size_t i = 0; i < v.job.foundations.steps.size(); ++i) {
    if (!v.readable(stepPath(i))) continue;
    if (const auto step = placed(v, i, plan, levels)) steps.push_back(*step);
  }
  for (size_t i = 0; i < steps.size(); ++i) {
    for (size_t j = 0; j < i; ++j) {
      if (steps[i].wall != steps[j].wall || steps[i].from > steps[j].to - kTolerance ||
          steps[j].from > steps[i].to - kTolerance) {
        continue;
      }
      v.error(stepPath(steps[i].index),
              "two steps of wall " + plan.wallName(steps[i].wall) + " lie over each other",
              "a length of wall has one top of concrete");
      break;
    }
    if (v.job.foundations.top) validateStepSize(v, steps[i], *v.job.foundations.top);
  }
}

}  // namespace

void validateFoundations(const Validation& v, const PlanFacts& plan, const LevelFacts& levels) {
  if (!v.readable("foundations") || !v.readable("walls")) return;
  validateSection(v);
  if (!v.readable("storey") || !v.readable("ground_floor")) return;
  const Foundations& f = v.job.foundations;
  if (f.top) topIsUnderTheFloor(v, "foundations.top", "foundations.top", *f.top, levels);
  validateSteps(v, plan, levels);
}

}  // namespace model
