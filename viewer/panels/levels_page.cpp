// The sheet of levels: the schedule, the instrument that it is read from, the level wanted.
#include <imgui.h>

#include <cstdio>

#include "model/level_text.h"
#include "viewer/fonts.h"
#include "viewer/overlays/words.h"
#include "viewer/panels/sheet_pages.h"
#include "viewer/panels/sheet_words.h"
#include "viewer/reading_order.h"

namespace viewer {
namespace {

constexpr ImGuiTableFlags kTable = ImGuiTableFlags_RowBg | ImGuiTableFlags_BordersInnerH |
                                   ImGuiTableFlags_ScrollY | ImGuiTableFlags_SizingStretchProp;

void datumWords(const model::Job& job) {
  std::string words = "0.000 is " + job.datumNote;
  if (job.ordnanceDatum)
    words += ", " + model::levelText(*job.ordnanceDatum) + " above ordnance datum";
  wrappedWords(words + ". Levels in metres, courses from the damp course.");
}

std::string setUpWords(const model::SetUp& setUp, const model::Instrument& instrument) {
  std::string words = setUp.name;
  if (!setUp.date.empty()) words += ", " + dateWords(setUp.date);
  return words + ": line " + model::levelText(instrument.collimation);
}

// One line for each set-up, to choose which is read from.
void setUpChoice(SheetsInput& input, const model::SetUp& setUp) {
  const model::Job& job = input.job->model.job;
  const auto instrument = instrumentOf(job, setUp);
  if (!instrument) return;
  ViewState& state = input.state;
  const bool chosen = state.standing && state.standing->name == setUp.name;
  const std::string words = asSeen(setUpWords(setUp, *instrument)) + "##" + setUp.name;
  if (ImGui::Selectable(words.c_str(), chosen)) state.readFrom(setUp, job);
}

// What is typed for one that was stood by hand.
void backsightField(SheetsInput& input) {
  model::SetUp setUp = *input.state.standing;
  double reading = setUp.backsight;
  ImGui::SetNextItemWidth(ImGui::GetFontSize() * 7);
  const std::string label = asSeen("read on " + setUp.mark + ", m");
  if (ImGui::InputDouble(label.c_str(), &reading, 0, 0, "%.3f") && reading >= -6 && reading <= 6) {
    setUp.backsight = reading;
    input.state.readFrom(setUp, input.job->model.job);
  }
}

// The set-ups under one line, so that the schedule keeps its room.
void setUpList(SheetsInput& input) {
  const model::Job& job = input.job->model.job;
  ViewState& state = input.state;
  const auto instrument = state.standing ? instrumentOf(job, *state.standing) : std::nullopt;
  const std::string now =
      instrument ? asSeen(setUpWords(*state.standing, *instrument)) : "no instrument";
  ImGui::SetNextItemWidth(-1);
  if (!ImGui::BeginCombo("##from", ("Read from: " + now).c_str())) return;
  if (ImGui::Selectable("no instrument", !state.standing)) state.readFrom(std::nullopt, job);
  for (const model::SetUp& setUp : job.setUps) setUpChoice(input, setUp);
  if (state.standing && state.standing->name == kByHand) setUpChoice(input, *state.standing);
  ImGui::EndCombo();
}

void instrumentChoice(SheetsInput& input) {
  const model::Job& job = input.job->model.job;
  ViewState& state = input.state;
  if (!job.site.benchMark && job.setUps.empty()) {
    quietWords("The job gives no bench mark, so no instrument can be set up.");
    return;
  }
  setUpList(input);
  if (state.standing && state.standing->name == kByHand) backsightField(input);
  if (job.site.benchMark &&
      ImGui::Button(state.placing ? "Click where it stands" : "Stand one by hand (J)"))
    state.placing = !state.placing;
  if (!state.standing || state.planeIsLine(job)) return;
  ImGui::SameLine();
  if (ImGui::Button("Laser plane")) state.readFrom(state.standing, job);
}

// What to do about a level that cannot be read from there.
void wantedWords(SheetsInput& input) {
  const ViewState& state = input.state;
  if (!state.wanted) {
    if (state.standing) quietWords("Readings with a minus: the staff held upside down.");
    quietWords("Click a line for the level wanted: the pointer then tells cut and fill.");
    return;
  }
  wrappedWords("Wanted: " + state.wanted->name + " " + model::levelText(state.wanted->level));
  if (!state.standing) return;
  for (const std::string& line : carryWords(input.job->model.job, input.job->model.settingOut,
                                            *state.standing, state.wanted->level))
    quietWords(line);
}

void scheduleLine(SheetsInput& input, const model::ScheduledLevel& line,
                  const std::optional<model::Instrument>& from) {
  ViewState& state = input.state;
  ImGui::TableNextRow();
  ImGui::TableNextColumn();
  ImGui::PushID(line.key.c_str());
  const std::string name = nameOf(line);
  const bool chosen = state.wanted && state.wanted->name == name;
  if (ImGui::Selectable("##line", chosen, ImGuiSelectableFlags_SpanAllColumns)) {
    state.wanted = chosen ? std::nullopt : std::optional(WantedLevel{name, line.level});
    if (!state.standing) {
      state.switches.levelPlane = true;
      state.switches.levelPlaneAt = float(line.level);
    }
  }
  ImGui::SameLine(0, 0);
  ImGui::PopID();
  wrappedWords(line.name);
  if (!line.where.empty()) quietWords(line.where);
  ImGui::TableNextColumn();
  boldAtRight(model::levelText(line.level));
  ImGui::TableNextColumn();
  char course[24];
  std::snprintf(course, sizeof course, line.wholeCourse ? "%.0f" : "%.1f", line.course);
  wordsAtRight(course);
  if (!from) return;
  ImGui::TableNextColumn();
  wordsAtRight(shortReading(*from, line.level));
}

}  // namespace

void levelsPage(SheetsInput& input) {
  const model::Model& m = input.job->model;
  datumWords(m.job);
  instrumentChoice(input);
  wantedWords(input);
  const auto& standing = input.state.standing;
  const auto from = standing ? instrumentOf(m.job, *standing) : std::nullopt;
  if (!ImGui::BeginTable("levels", from ? 4 : 3, kTable)) return;
  ImGui::TableSetupScrollFreeze(0, 1);
  ImGui::TableSetupColumn("", 0, from ? 2.6f : 3.2f);
  ImGui::TableSetupColumn("level", 0, 1.2f);
  ImGui::TableSetupColumn("course", 0, 1.1f);
  if (from) ImGui::TableSetupColumn("staff", 0, 1.3f);
  ImGui::TableHeadersRow();
  for (const auto& line : m.settingOut.schedule) scheduleLine(input, line, from);
  ImGui::EndTable();
}

}  // namespace viewer
