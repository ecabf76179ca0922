// The sheets of switches and words: what to show, views, problems, keys.
#include <imgui.h>

#include <array>

#include "viewer/fonts.h"
#include "viewer/kept_view.h"
#include "viewer/overlays/words.h"
#include "viewer/panels/change_job_file.h"
#include "viewer/panels/keep_view.h"
#include "viewer/panels/sheet_pages.h"
#include "viewer/panels/sheet_words.h"

namespace viewer {
namespace {

void heading(const char* text) {
  ImGui::Spacing();
  ImGui::PushFont(letteringNow().bold);
  ImGui::TextUnformatted(text);
  ImGui::PopFont();
}

struct KeyLine {
  const char* keys;
  const char* what;
};

void keyTable(const char* name, const KeyLine* lines, size_t count) {
  heading(name);
  if (!ImGui::BeginTable(name, 2, ImGuiTableFlags_SizingStretchProp)) return;
  ImGui::TableSetupColumn("", 0, 1.25f);
  ImGui::TableSetupColumn("", 0, 2.0f);
  for (size_t i = 0; i < count; ++i) {
    ImGui::TableNextRow();
    ImGui::TableNextColumn();
    ImGui::PushFont(letteringNow().bold);
    ImGui::TextWrapped("%s", lines[i].keys);
    ImGui::PopFont();
    ImGui::TableNextColumn();
    ImGui::TextWrapped("%s", lines[i].what);
  }
  ImGui::EndTable();
}

}  // namespace

void showPage(SheetsInput& input) {
  Overlays& overlays = input.state.overlays;
  Switches& switches = input.state.switches;
  heading("Over the building");
  ImGui::Checkbox("Levels beside it (L)", &overlays.levels);
  ImGui::Checkbox("Gauge rods at the corners (U)", &overlays.gaugeRods);
  ImGui::Checkbox("String lines and profiles (T)", &overlays.lines);
  ImGui::Checkbox("Corner letters (C)", &overlays.corners);
  ImGui::Checkbox("Wall lengths and distances (D)", &overlays.dimensions);
  ImGui::Checkbox("Setting out: marks, tapes, limits (B)", &overlays.settingOut);
  ImGui::Checkbox("The instrument and its set-ups", &overlays.instrument);
  ImGui::Checkbox("Readings against the drawing (E)", &overlays.readings);
  ImGui::Checkbox("Cut bricks and blocks, marked (X)", &overlays.cutUnits);
  heading("The building");
  ImGui::TextUnformatted("Seen through (G):");
  const auto seeThrough = [&](const char* words, SeeThrough which) {
    if (ImGui::RadioButton(words, switches.seeThrough == which)) switches.seeThrough = which;
  };
  seeThrough("nothing", SeeThrough::Nothing);
  ImGui::SameLine();
  seeThrough("the ground", SeeThrough::Ground);
  ImGui::SameLine();
  seeThrough("all but this stage's work", SeeThrough::Others);
  bool section = input.state.section.on;
  if (ImGui::Checkbox("Section (S)", &section))
    input.state.toggleSection(input.job->model, input.job->scene);
  ImGui::Checkbox("Level plane, set on the rod (R)", &switches.levelPlane);
  ImGui::Checkbox("Outlines of what comes and went (N)", &switches.ghosts);
  ImGui::Checkbox("Shadows", &switches.shadows);
  heading("Measuring");
  bool measuring = input.state.measuring;
  if (ImGui::Checkbox("Measure between two clicks (M)", &measuring)) input.state.toggleMeasuring();
  quietWords("Near a corner or an edge the mark is pulled to it.");
}

namespace {

void stageViewPart(SheetsState& sheets, SheetsInput& input) {
  const model::Model& model = input.job->model;
  if (input.frame.stage < 0 || size_t(input.frame.stage) >= model.programme.stages.size()) return;
  const size_t stage = size_t(input.frame.stage);
  if (ImGui::Selectable("V   The view that suits this stage")) {
    sheets.viewNotice.clear();
    sheets.wantsOwnView = true;
  }
  ImGui::Checkbox("Follow the stages' own views", &input.state.followStages);
  if (!canChange(input.path)) return;
  const auto done = [&](const std::optional<std::string>& wrong, const std::string& what) {
    sheets.viewNotice = wrong ? *wrong : what;
    sheets.saved |= !wrong;
  };
  const std::string name = model.programme.stages[stage].name;
  if (ImGui::Button("Keep this view for this stage")) {
    const ViewState& state = input.state;
    done(keepView(
             input.path, model, stage,
             keptView(state.camera, state.section, state.switches.seeThrough, input.job->scene)),
         "Written into the job file for: " + name);
  }
  if (model.programme.stages[stage].view && ImGui::Button("Forget the view kept for it"))
    done(forgetView(input.path, model, stage), "Taken out of the job file for: " + name);
  if (!sheets.viewNotice.empty()) quietWords(sheets.viewNotice);
}

}  // namespace

void viewPage(SheetsState& sheets, SheetsInput& input) {
  quietWords(
      "Drag to turn, drag with the right button to move, wheel to come nearer. Keys: Shift and "
      "arrows, Ctrl and arrows, + and -.");
  ImGui::Spacing();
  static constexpr std::array<const char*, 9> kNames{"Plan",
                                                     "South elevation",
                                                     "East elevation",
                                                     "North elevation",
                                                     "West elevation",
                                                     "South-west corner",
                                                     "South-east corner",
                                                     "North-east corner",
                                                     "North-west corner"};
  for (size_t i = 0; i < viewOrder().size(); ++i) {
    const std::string label = std::to_string(i + 1) + "   " + kNames[i];
    if (ImGui::Selectable(label.c_str()))
      input.state.goToView(viewOrder()[i], input.job->scene, input.layout);
  }
  heading("The stage's own");
  stageViewPart(sheets, input);
  heading("Projection");
  bool parallel = input.state.camera.parallel;
  if (ImGui::Checkbox("Parallel, as on a drawing (P)", &parallel)) {
    Camera camera = input.state.camera;
    camera.parallel = parallel;
    input.state.easeTo(camera);
  }
  if (ImGui::Button("Frame the building (F)"))
    input.state.frameBuilding(input.job->scene, input.layout);
}

void problemsPage(SheetsInput& input) {
  if (input.problems.empty()) {
    ImGui::TextWrapped("The job file reads without a problem.");
    return;
  }
  const bool errors = model::hasErrors(input.problems);
  ImGui::TextWrapped("%s", !errors     ? "The building is drawn; look at these."
                           : input.job ? "The last good building is kept until these are put right "
                                         "and the file is saved."
                                       : "Put these right and save the file.");
  ImGui::Separator();
  ImGui::BeginChild("problems");
  for (const model::Problem& problem : input.problems) {
    std::string place = problem.file;
    if (problem.place.line > 0) {
      place += ":" + std::to_string(problem.place.line);
      if (problem.place.column > 0) place += ":" + std::to_string(problem.place.column);
    }
    ImGui::PushFont(letteringNow().bold);
    wrappedWords((problem.severity == model::Severity::Error ? "" : "Look at: ") + problem.what);
    ImGui::PopFont();
    if (!problem.instead.empty()) wrappedWords(problem.instead);
    quietWords(place);
    ImGui::Spacing();
  }
  ImGui::EndChild();
}

void keysPage() {
  static constexpr std::array<KeyLine, 13> kTime{{{"Space", "play, pause"},
                                                  {"Right, Left", "next stage, stage before"},
                                                  {"full stop, comma", "a course more, one less"},
                                                  {"with Shift", "a piece more, one less"},
                                                  {"] and [", "a working day on, one back"},
                                                  {"Home, End", "before work, finished"},
                                                  {"Z", "play by stage, by day, by piece"},
                                                  {"Up, Down", "faster, slower"},
                                                  {"O", "again and again: all; this stage"},
                                                  {"Y", "the stages over time"},
                                                  {"Q", "show it to a client, full screen"},
                                                  {"drag the tape", "to any moment"},
                                                  {"Esc", "stop; close; let go"}}};
  static constexpr std::array<KeyLine, 15> kView{
      {{"drag", "turn"},
       {"right drag, Shift drag", "move"},
       {"Shift arrows", "turn"},
       {"Ctrl arrows", "move"},
       {"+, -", "nearer, further"},
       {"wheel, pinch", "nearer, further, at the pointer"},
       {"W", "walk about: arrows, Shift arrows; Page Up, Page Down: storeys"},
       {"F, walking", "to the next window"},
       {"wheel sideways; with Shift", "turn; move"},
       {"double click", "fill the view with a thing"},
       {"1", "plan"},
       {"2 3 4 5", "south, east, north, west"},
       {"6 7 8 9", "from the corners, SW SE NE NW"},
       {"V", "the stage's own view"},
       {"P, F", "parallel; frame"}}};
  static constexpr std::array<KeyLine, 19> kShow{
      {{"click", "what is this?"},
       {"L, T", "levels; string lines, profiles"},
       {"C, D", "corner letters; lengths"},
       {"U", "gauge rods beside the corners"},
       {"B", "setting out: marks, tapes, limits"},
       {"I", "read from the next set-up; from none"},
       {"J", "stand the instrument by hand"},
       {"E", "readings against the drawing"},
       {"X", "cut bricks and blocks, marked"},
       {"A", "type a reading"},
       {"K", "the level book"},
       {"Ctrl S", "save the level book"},
       {"G", "see through the ground, all but the stage's work, nothing"},
       {"S", "section, pulled by its handle"},
       {"N", "outlines of what comes next, of what went"},
       {"M", "measure between two clicks"},
       {"slide on the rod", "level plane"},
       {"R", "type its level, or a level's name"},
       {"PgUp, PgDn; with Shift", "a course up, down; 1 mm"}}};
  ImGui::BeginChild("keys");
  keyTable("Time", kTime.data(), kTime.size());
  keyTable("View", kView.data(), kView.size());
  keyTable("Showing and asking", kShow.data(), kShow.size());
  ImGui::Spacing();
  quietWords("H or ? brings this sheet.");
  ImGui::EndChild();
}

}  // namespace viewer
