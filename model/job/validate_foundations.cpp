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
  if (!v.known.has(path) || !v.known.slabUnderside() || !v.known.dampCourse()) return true;
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
  if (!v.known.has("foundations.width") || !v.known.wallThickness()) return;
  const double total = v.job.walls.total();
  const double project = (f.width - total) / 2;
  if (project < 0.010 - kTolerance) {
    v.error(
        "foundations.width",
        "foundations.width is " + lengthWords(f.width) + " under a wall of " + lengthWords(total),
        "the concrete is wider than the wall, at least " + lengthWords(total + 0.020));
    return;
  }
  if (!v.known.has({"foundations.kind", "foundations.thickness"})) return;
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

// The step on its wall, or nothing when that is not known or wrong, which is then added.
std::optional<PlacedStep> placed(const Validation& v, size_t index, const PlanFacts& plan) {
  const FoundationStep& step = v.job.foundations.steps[index];
  const std::string path = stepPath(index), name = stepName(step);
  if (!v.known.has(path + ".wall")) return std::nullopt;
  const auto wall = knownWall(v, path + ".wall", name, step.wall, plan.corners());
  if (!wall || !v.known.has(path + ".from") || !v.known.has(path + ".to")) return std::nullopt;
  const double length = plan.length[*wall];
  const double to = step.to.value_or(length);
  if (to > length + 0.0005 || step.from > length) {
    v.error(
        path + (step.from > length ? ".from" : ".to"),
        name + " goes to " + lengthWords(std::max(to, step.from)) + ", past the end of the wall",
        "the wall is " + lengthWords(length) + " long");
    return std::nullopt;
  }
  if (to - step.from < 0.1) {
    v.error(path + (step.to ? ".to" : ".from"),
            name + " runs from " + lengthWords(step.from) + " to " + lengthWords(to),
            "it ends at least 100 mm after it begins");
    return std::nullopt;
  }
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

void validateSteps(const Validation& v, const PlanFacts& plan, const std::vector<bool>& levelFits) {
  std::vector<PlacedStep> steps;
  for (size_t i = 0; i < v.job.foundations.steps.size(); ++i) {
    if (const auto step = placed(v, i, plan)) steps.push_back(*step);
  }
  const bool sizes =
      v.job.foundations.top && v.known.has({"foundations.kind", "foundations.thickness"});
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
    if (sizes && levelFits[steps[i].index]) {
      validateStepSize(v, steps[i], *v.job.foundations.top);
    }
  }
}

}  // namespace

void validateFoundations(const Validation& v, const std::optional<PlanFacts>& plan,
                         const LevelFacts& levels) {
  validateSection(v);
  const Foundations& f = v.job.foundations;
  if (f.top) topIsUnderTheFloor(v, "foundations.top", "foundations.top", *f.top, levels);
  std::vector<bool> levelFits;
  for (size_t i = 0; i < f.steps.size(); ++i) {
    const std::string path = stepPath(i) + ".top";
    const bool fits =
        topIsUnderTheFloor(v, path, stepName(f.steps[i]) + ": top", f.steps[i].top, levels);
    levelFits.push_back(fits && v.known.has(path));
  }
  if (plan) validateSteps(v, *plan, levelFits);
}

}  // namespace model
