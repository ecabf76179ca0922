// Brick by brick: which course is laid, to be pulled along, or named with its corner.
#include <imgui.h>

#include <algorithm>

#include "model/level_text.h"
#include "model/programme/course_times.h"
#include "viewer/fonts.h"
#include "viewer/panels/sheet_pages.h"
#include "viewer/panels/sheet_words.h"

namespace viewer {
namespace {

// The step under way, or the last that was ended; -1 before the first.
int stepNow(const std::vector<model::CourseStep>& steps, double time) {
  if (const model::CourseStep* now = model::courseAt(steps, time)) return int(now - steps.data());
  int last = -1;
  for (size_t i = 0; i < steps.size() && steps[i].to <= time; ++i) last = int(i);
  return last;
}

void slider(SheetsInput& input, const std::vector<model::CourseStep>& steps) {
  int at = std::max(0, stepNow(steps, input.frame.time));
  const model::CourseStep& step = steps[size_t(at)];
  const std::string words =
      "course " + std::to_string(step.number) + ", top " + model::levelText(step.top);
  ImGui::SetNextItemWidth(-1);
  if (ImGui::SliderInt("##step", &at, 0, int(steps.size()) - 1, words.c_str(),
                       ImGuiSliderFlags_NoInput))
    input.playback.goTo(steps[size_t(at)].to);
}

void cornerField(SheetsState& sheets, SheetsInput& input) {
  const float unit = letteringNow().unit;
  const model::Model& model = input.job->model;
  ImGui::AlignTextToFramePadding();
  ImGui::TextUnformatted("Course");
  ImGui::SameLine();
  ImGui::SetNextItemWidth(90 * unit);
  const bool entered =
      ImGui::InputInt("##course", &sheets.course, 1, 5, ImGuiInputTextFlags_EnterReturnsTrue);
  const bool stepped = ImGui::IsItemDeactivatedAfterEdit();
  ImGui::SameLine();
  ImGui::TextUnformatted("at corner");
  ImGui::SameLine();
  const auto& corners = model.settingOut.corners;
  sheets.courseCorner = std::min(sheets.courseCorner, corners.size() - 1);
  ImGui::SetNextItemWidth(60 * unit);
  bool chosen = false;
  if (ImGui::BeginCombo("##corner", corners[sheets.courseCorner].letter.c_str())) {
    for (size_t i = 0; i < corners.size(); ++i) {
      if (!ImGui::Selectable(corners[i].letter.c_str(), i == sheets.courseCorner)) continue;
      sheets.courseCorner = i;
      chosen = true;
    }
    ImGui::EndCombo();
  }
  ImGui::SameLine();
  const bool go = ImGui::Button("Go");
  if (!entered && !stepped && !chosen && !go) return;
  const auto time = model::timeOfCourse(model.settingOut, model.works, model.programme,
                                        sheets.courseCorner, sheets.course);
  sheets.noCourse = !time;
  if (time) input.playback.goTo(*time);
}

}  // namespace

void courseChoice(SheetsState& sheets, SheetsInput& input) {
  const auto& steps = input.job->facts.courseSteps;
  if (steps.empty()) return;
  slider(input, steps);
  cornerField(sheets, input);
  if (sheets.noCourse)
    quietWords(
        "No brick is laid in that course there. 1 is the first over the damp course, -1 the "
        "first under it.");
}

}  // namespace viewer
