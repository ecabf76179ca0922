// The sheet of readings: what was read against what is drawn, and what it changes above.
#include <imgui.h>

#include <algorithm>

#include "model/job/reading_targets.h"
#include "model/level_text.h"
#include "viewer/fonts.h"
#include "viewer/overlays/words.h"
#include "viewer/panels/sheet_pages.h"
#include "viewer/panels/sheet_words.h"
#include "viewer/reading_order.h"

namespace viewer {
namespace {

constexpr ImGuiTableFlags kTable =
    ImGuiTableFlags_RowBg | ImGuiTableFlags_BordersInnerH | ImGuiTableFlags_SizingStretchProp;

void setList(SheetsInput& input) {
  const auto& sets = input.job->model.job.readings;
  auto& chosen = input.state.readingSet;
  if (chosen && *chosen >= sets.size()) chosen.reset();
  const std::string now = chosen ? asSeen(setWords(sets[*chosen])) : "the latest of every point";
  ImGui::SetNextItemWidth(-1);
  if (!ImGui::BeginCombo("##set", now.c_str())) return;
  if (ImGui::Selectable("the latest of every point", !chosen)) chosen.reset();
  for (size_t i = 0; i < sets.size(); ++i) {
    ImGui::PushID(int(i));
    if (ImGui::Selectable(asSeen(setWords(sets[i])).c_str(), chosen == i)) chosen = i;
    ImGui::PopID();
  }
  ImGui::EndCombo();
}

bool isLevel(const model::Deviation& d) { return d.kind == model::ReadingKind::Level; }

std::string figure(const model::Deviation& d, double value) {
  return isLevel(d) ? model::levelText(value) : model::lengthText(value);
}

// Brings the camera to where it was read.
void goThere(SheetsInput& input, const model::Deviation& d) {
  constexpr float kRound = 2.5f;  // metres
  const Scene& scene = input.job->scene;
  const glm::vec3 at = scene.local({d.place.at, d.place.level});
  input.state.overlays.readings = true;
  input.state.frame(at - kRound, at + kRound, input.layout);
}

void readingLine(SheetsInput& input, const model::Deviation& d, size_t index) {
  ImGui::TableNextRow();
  ImGui::TableNextColumn();
  ImGui::PushID(int(index));
  // As tall as its words, so that it can be hit anywhere.
  const float wrapped =
      ImGui::CalcTextSize(d.what.c_str(), nullptr, false, ImGui::GetContentRegionAvail().x).y;
  const float tall = std::max(wrapped, ImGui::GetTextLineHeightWithSpacing() * 2);
  if (ImGui::Selectable("##reading", false, ImGuiSelectableFlags_SpanAllColumns, {0, tall}))
    goThere(input, d);
  if (ImGui::IsItemHovered()) ImGui::SetTooltip("%s", d.allowed.source.c_str());
  ImGui::SameLine(0, 0);
  ImGui::PopID();
  wrappedWords(d.what);
  ImGui::TableNextColumn();
  wordsAtRight(figure(d, d.design));
  ImGui::TableNextColumn();
  wordsAtRight(figure(d, d.read));
  ImGui::TableNextColumn();
  boldAtRight(model::offText(d.kind, d.off));
  if (d.verdict == model::Verdict::Within)
    quietWords(model::nameOf(d.verdict));
  else
    wrappedWords(model::nameOf(d.verdict));
}

void changesWords(const model::AsBuilt& asBuilt) {
  ImGui::PushFont(letteringNow().bold);
  ImGui::TextUnformatted("What it changes");
  ImGui::PopFont();
  if (asBuilt.changes.empty()) quietWords("Nothing that asks for something to be done.");
  for (const model::Change& change : asBuilt.changes) {
    ImGui::Bullet();
    wrappedWords(change.words);
  }
}

// What can be typed here.
void ways(SheetsState& sheets, SheetsInput& input) {
  if (ImGui::Button("Type a reading (A)"))
    beginReading(sheets, input.state, *input.job, input.path);
  ImGui::SameLine();
  if (ImGui::Button("Level book (K)")) toggleBook(sheets, input.state);
}

// The table of a set, or of the latest of every point; while it is typed into, the last row first.
void readingsOf(SheetsInput& input, std::optional<size_t> set, bool typed) {
  const model::AsBuilt& asBuilt = input.job->asBuilt;
  ImGui::BeginChild("readings");
  if (ImGui::BeginTable("table", 4, kTable)) {
    ImGui::TableSetupColumn("", 0, 2.3f);
    ImGui::TableSetupColumn("drawn", 0, 1.1f);
    ImGui::TableSetupColumn("read", 0, 1.1f);
    ImGui::TableSetupColumn("off, mm", 0, 1.2f);
    ImGui::TableHeadersRow();
    const auto& all = asBuilt.deviations;
    for (size_t i = 0; i < all.size(); ++i) {
      const size_t at = typed ? all.size() - 1 - i : i;
      if (set ? all[at].set == *set : all[at].latest) readingLine(input, all[at], at);
    }
    ImGui::EndTable();
  }
  for (const model::Unheld& row : asBuilt.unheld)
    if (!set || row.set == *set) quietWords(row.why);
  ImGui::EndChild();
}

}  // namespace

std::string setWords(const model::ReadingSet& set) {
  std::string words = set.name;
  if (!set.date.empty()) words += ", " + dateWords(set.date);
  if (!set.by.empty()) words += ", " + set.by;
  return words;
}

void readingsPage(SheetsState& sheets, SheetsInput& input) {
  const ReadyJob& job = *input.job;
  const auto& sets = job.model.job.readings;
  if (sheets.entry.open()) {
    readingForm(sheets, input);
    const auto set = sheets.entry.set(job.model.job);
    if (!set) return;  // a new one has none yet
    ImGui::Separator();
    readingsOf(input, set, true);
    return;
  }
  ways(sheets, input);
  if (sets.empty()) {
    wrappedWords(
        "The job has no readings yet. Type them here, or write them into a table beside the job "
        "file and name it there under [[readings]]; they appear when both are saved.");
    return;
  }
  setList(input);
  ImGui::Checkbox("On the building (E)", &input.state.overlays.readings);
  // Both in sight, each with its own rolling.
  const float room = ImGui::GetContentRegionAvail().y;
  ImGui::BeginChild("changes", {0, room * 0.4f});
  changesWords(job.asBuilt);
  ImGui::EndChild();
  ImGui::Separator();
  readingsOf(input, input.state.readingSet, false);
}

}  // namespace viewer
