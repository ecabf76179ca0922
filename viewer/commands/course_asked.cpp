#include "viewer/commands/course_asked.h"

#include <algorithm>

#include "model/programme/course_times.h"
#include "viewer/commands/corner_asked.h"

namespace viewer {
namespace {

// The clock goes to the graphics card in single precision: a little later, so that the brick is
// there.
constexpr double kLater = 2e-5;

}  // namespace

std::optional<std::string> readCourse(int number, const std::string& corner,
                                      const model::Model& model, PictureOptions& picture) {
  const auto steps = model::courseSteps(model.works, model.programme);
  std::optional<double> time;
  if (!corner.empty()) {
    const CornerAsked asked = cornerAsked(model.settingOut, corner);
    if (!asked.corner) return asked.wrong;
    time =
        model::timeOfCourse(model.settingOut, model.works, model.programme, *asked.corner, number);
  } else {
    for (const model::CourseStep& step : steps)
      if (step.number == number) time = step.to;
  }
  if (time) {
    picture.time = *time + kLater;
    return std::nullopt;
  }
  int low = 0, high = 0;
  for (const model::CourseStep& step : steps) {
    low = std::min(low, step.number);
    high = std::max(high, step.number);
  }
  return "no brick is laid in course " + std::to_string(number) +
         (corner.empty() ? "" : " at corner " + cornerAsked(model.settingOut, corner).name) +
         "; courses run from " + std::to_string(low) + " to " + std::to_string(high) +
         ", 1 the first over the damp course and -1 the first under it";
}

}  // namespace viewer
