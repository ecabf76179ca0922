// The sheet of quantities.
#include <imgui.h>

#include <cstdio>

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

}  // namespace

void quantitiesPage(SheetsState& sheets, SheetsInput& input) {
  ImGui::TextWrapped("Measured from what is drawn. Orders are rounded up the way things are sold.");
  ImGui::Checkbox("Only the stage that is shown", &sheets.byStage);
  const auto& takeoff = input.job->model.takeoff;
  const auto& stages = input.job->model.programme.stages;
  const std::string stage = stages.empty() ? "" : stages[size_t(input.frame.stage)].name;
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

}  // namespace viewer
