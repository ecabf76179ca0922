// The sheet of quantities, and of what to load out for each lift.
#include <imgui.h>

#include <cstdio>

#include "model/exchange/loading_table.h"
#include "viewer/panels/sheet_pages.h"
#include "viewer/panels/sheet_words.h"

namespace viewer {
namespace {

constexpr ImGuiTableFlags kTable = ImGuiTableFlags_RowBg | ImGuiTableFlags_BordersInnerH |
                                   ImGuiTableFlags_ScrollY | ImGuiTableFlags_SizingStretchProp;

std::string amountText(double amount) {
  char text[32];
  std::snprintf(text, sizeof text, amount >= 100 ? "%.0f" : "%.2f", amount);
  return text;
}

std::string stageNow(const SheetsInput& input) {
  const auto& stages = input.job->model.programme.stages;
  return stages.empty() ? "" : stages[size_t(input.frame.stage)].name;
}

void takeoffTable(const SheetsState& sheets, const SheetsInput& input) {
  const auto& takeoff = input.job->model.takeoff;
  const std::string stage = stageNow(input);
  if (!ImGui::BeginTable("takeoff", 3, kTable)) return;
  ImGui::TableSetupScrollFreeze(0, 1);
  ImGui::TableSetupColumn("", 0, 2.6f);
  ImGui::TableSetupColumn("net", 0, 1.4f);
  ImGui::TableSetupColumn("order", 0, 1.4f);
  ImGui::TableHeadersRow();
  size_t rows = 0;
  for (const auto& row : sheets.byStage ? takeoff.byStage : takeoff.rows) {
    if (sheets.byStage && row.stage != stage) continue;
    ++rows;
    ImGui::TableNextRow();
    ImGui::TableNextColumn();
    wrappedWords(row.item);
    if (ImGui::IsItemHovered() && !row.basis.empty()) ImGui::SetTooltip("%s", row.basis.c_str());
    ImGui::TableNextColumn();
    wordsAtRight(amountText(row.amount) + " " + row.unit);
    ImGui::TableNextColumn();
    boldAtRight(amountText(row.order) + " " + row.unit);
  }
  ImGui::EndTable();
  if (rows == 0) ImGui::TextWrapped("Nothing is built in this stage.");
}

// Corners and the run between them are one lift.
bool isNow(const model::LiftLoad& lift, const SheetsInput& input) {
  const auto& stages = input.job->model.programme.stages;
  if (stages.empty()) return false;
  model::StageKey now = stages[size_t(input.frame.stage)].key;
  const bool ofLift =
      now.kind == model::StageKind::RaiseCorners || now.kind == model::StageKind::ScaffoldLift;
  if (ofLift) now.kind = model::StageKind::RunIn;
  return lift.stage == now;
}

void cells(const std::string& name, int bricks, double brickPacks, int blocks, double blockPacks,
           bool bold) {
  const auto number = [&](double value) {
    ImGui::TableNextColumn();
    if (value == 0) return;
    char text[32];
    std::snprintf(text, sizeof text, "%g", value);
    bold ? boldAtRight(text) : wordsAtRight(text);
  };
  ImGui::TableNextRow();
  ImGui::TableNextColumn();
  bold ? boldWords(name) : wrappedWords(name);
  number(bricks);
  number(brickPacks);
  number(blocks);
  number(blockPacks);
}

void loadingTable(const SheetsState& sheets, const SheetsInput& input) {
  cautionWords(std::string(model::kLoadingCaution) + ".");
  if (!ImGui::BeginTable("loading", 5, kTable)) return;
  ImGui::TableSetupScrollFreeze(0, 1);
  ImGui::TableSetupColumn("", 0, 2.2f);
  for (const char* heading : {"bricks", "packs", "blocks", "packs##blocks"})
    ImGui::TableSetupColumn(heading, 0, 1);
  ImGui::TableHeadersRow();
  const auto& walls = input.job->model.settingOut.walls;
  for (const model::LiftLoad& lift : input.job->facts.loading) {
    if (sheets.byStage && !isNow(lift, input)) continue;
    cells(lift.name, lift.bricks, lift.brickPacks, lift.blocks, lift.blockPacks, true);
    for (const model::RunLoad& run : lift.runs)
      cells("  " + walls[run.wall].name, run.bricks, run.brickPacks, run.blocks, run.blockPacks,
            false);
  }
  ImGui::EndTable();
}

}  // namespace

void quantitiesPage(SheetsState& sheets, SheetsInput& input) {
  ImGui::TextWrapped("Measured from what is drawn. Orders are rounded up the way things are sold.");
  ImGui::Checkbox("Only the stage that is shown", &sheets.byStage);
  ImGui::Checkbox("What to load out, lift by lift", &sheets.loading);
  if (sheets.loading)
    loadingTable(sheets, input);
  else
    takeoffTable(sheets, input);
}

}  // namespace viewer
