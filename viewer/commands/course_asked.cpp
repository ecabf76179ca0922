#include "viewer/commands/course_asked.h"

#include <algorithm>

#include "model/programme/course_times.h"

namespace viewer {
namespace {

// The clock goes to the graphics card in single precision: a little later, so that the brick is
// there.
constexpr double kLater = 2e-5;

std::string upper(std::string text) {
  for (char& c : text)
    if (c >= 'a' && c <= 'z') c = char(c - 'a' + 'A');
  return text;
}

std::string letters(const model::SettingOut& out) {
  std::string text;
  for (const model::Corner& corner : out.corners)
    text += (text.empty() ? "" : ", ") + corner.letter;
  return text;
}

}  // namespace

std::optional<std::string> readCourse(int number, const std::string& corner,
                                      const model::Model& model, PictureOptions& picture) {
  const auto steps = model::courseSteps(model.works, model.programme);
  std::optional<double> time;
  if (!corner.empty()) {
    const auto at = model.settingOut.cornerNamed(upper(corner));
    if (!at)
      return "there is no corner \"" + corner + "\" in this job: " + letters(model.settingOut);
    time = model::timeOfCourse(model.settingOut, model.works, model.programme, *at, number);
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
         (corner.empty() ? "" : " at corner " + upper(corner)) + "; courses run from " +
         std::to_string(low) + " to " + std::to_string(high) +
         ", 1 the first over the damp course and -1 the first under it";
}

}  // namespace viewer
