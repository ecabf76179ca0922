#include "viewer/panels/sheet_pages.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <sstream>

#include "viewer/fonts.h"
#include "viewer/overlays/words.h"
#include "viewer/reading_order.h"

namespace viewer {
namespace {

std::string lower(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = char(c - 'A' + 'a');
  return text;
}

// Words beside one another of which one holds; returns another that has been clicked.
template <size_t N>
std::optional<size_t> choice(const std::array<std::string, N>& words, size_t now) {
  std::optional<size_t> chosen;
  for (size_t i = 0; i < N; ++i) {
    ImGui::SameLine(0, ImGui::GetStyle().ItemSpacing.x * 0.6f);
    if (i == now) ImGui::PushStyleColor(ImGuiCol_Button, ImGui::GetColorU32(ImGuiCol_ButtonActive));
    if (ImGui::Button(words[i].c_str())) chosen = i;
    if (i == now) ImGui::PopStyleColor();
  }
  return chosen;
}

void speedLine(Playback& playback) {
  static constexpr std::array<double, 6> kSpeeds{0.25, 0.5, 1, 2, 4, 8};
  std::array<std::string, 6> names{"1/4", "1/2", "1", "2", "4", "8"};
  if (playback.pace() == Pace::Piece)
    for (size_t i = 0; i < names.size(); ++i)
      names[i] = std::to_string(std::lround(kSpeeds[i] * Playback::kPiecesPerSecond));
  ImGui::AlignTextToFramePadding();
  ImGui::TextUnformatted(playback.pace() == Pace::Stage ? "Speed" : "A second");
  const auto now = std::find(kSpeeds.begin(), kSpeeds.end(), playback.speed());
  if (const auto chosen = choice(names, size_t(now - kSpeeds.begin())))
    playback.setSpeed(kSpeeds[*chosen]);
}

void transport(SheetsState& sheets, Playback& playback) {
  if (ImGui::Button(playback.playing() ? "Pause" : "Play")) playback.toggle();
  ImGui::SameLine();
  if (ImGui::Button("Back")) playback.stepBack();
  ImGui::SameLine();
  if (ImGui::Button("Next")) playback.stepForward();
  ImGui::SameLine();
  bool again = playback.round() != Round::None;
  if (ImGui::Checkbox("Again and again", &again))
    playback.setRound(again ? Round::All : Round::None);
  speedLine(playback);
  ImGui::AlignTextToFramePadding();
  ImGui::TextUnformatted("Play");
  if (const auto pace =
          choice<kPaceCount>({"by stage", "by day", "by piece"}, size_t(playback.pace())))
    sheets.wantedPace = Pace(*pace);
  if (!again) return;
  ImGui::SameLine();
  bool stage = playback.round() == Round::Stage;
  if (ImGui::Checkbox("this stage", &stage)) playback.setRound(stage ? Round::Stage : Round::All);
}

// One stage of the list: its number and name, then when it is.
void stageLine(SheetsInput& input, size_t i) {
  const model::Stage& stage = input.job->model.programme.stages[i];
  ImGui::PushID(int(i));
  const bool current = int(i) == input.frame.stage;
  const std::string name = std::to_string(i + 1) + "  " + stage.name;
  if (current) ImGui::PushFont(letteringNow().bold);
  if (ImGui::Selectable(asSeen(name).c_str(), current)) input.playback.goTo(double(i + 1));
  if (current) ImGui::PopFont();
  std::string when = stage.start.empty() ? "" : dateWords(stage.start);
  if (!stage.holdPoint.empty()) when += when.empty() ? "hold point" : ", hold point";
  if (!when.empty()) {
    ImGui::Indent();
    ImGui::TextDisabled("%s", when.c_str());
    ImGui::Unindent();
  }
  ImGui::PopID();
}

}  // namespace

bool matches(const std::string& text, const std::string& filter) {
  const std::string where = lower(text);
  std::istringstream words(lower(filter));
  for (std::string word; words >> word;)
    if (where.find(word) == std::string::npos) return false;
  return true;
}

void stagesPage(SheetsState& sheets, SheetsInput& input) {
  transport(sheets, input.playback);
  courseChoice(sheets, input);
  ImGui::SetNextItemWidth(-1);
  ImGui::InputTextWithHint("##filter", "find a stage by name", sheets.filter, sizeof sheets.filter);
  ImGui::Separator();
  ImGui::BeginChild("stages");
  size_t found = 0;
  const auto& stages = input.job->model.programme.stages;
  for (size_t i = 0; i < stages.size(); ++i) {
    if (!matches(std::to_string(i + 1) + " " + stages[i].name, sheets.filter)) continue;
    stageLine(input, i);
    ++found;
  }
  if (found == 0) ImGui::TextWrapped("No stage has those words in its name.");
  ImGui::EndChild();
}

void drawPage(SheetsState& sheets, SheetsInput& input) {
  const Tab tab = sheets.shown();
  if (tab == Tab::Problems) return problemsPage(input);
  if (tab == Tab::Keys) return keysPage();
  if (!input.job) {
    ImGui::TextWrapped("Nothing to show until the job file reads without a problem.");
    return;
  }
  switch (tab) {
    case Tab::Stages:
      return stagesPage(sheets, input);
    case Tab::Dates:
      return datesPage(sheets, input);
    case Tab::Levels:
      return levelsPage(input);
    case Tab::Readings:
      return readingsPage(sheets, input);
    case Tab::Book:
      return bookPage(sheets, input);
    case Tab::Quantities:
      return quantitiesPage(sheets, input);
    case Tab::Show:
      return showPage(input);
    case Tab::View:
      return viewPage(sheets, input);
    default:
      return;
  }
}

}  // namespace viewer
