// The sheets of figures: levels and quantities.
#include <imgui.h>

#include <cstdio>

#include "model/level_text.h"
#include "viewer/fonts.h"
#include "viewer/overlays/words.h"
#include "viewer/panels/sheet_pages.h"
#include "viewer/panels/sheet_words.h"

namespace viewer {
namespace {

constexpr ImGuiTableFlags kTable = ImGuiTableFlags_RowBg | ImGuiTableFlags_BordersInnerH |
                                   ImGuiTableFlags_ScrollY | ImGuiTableFlags_SizingStretchProp;

void rightAligned(const std::string& text) {
  const float room = ImGui::GetContentRegionAvail().x - ImGui::CalcTextSize(text.c_str()).x;
  if (room > 0) ImGui::SetCursorPosX(ImGui::GetCursorPosX() + room);
  ImGui::TextUnformatted(text.c_str());
}

void bold(const std::string& text) {
  ImGui::PushFont(letteringNow().bold);
  rightAligned(text);
  ImGui::PopFont();
}

void datumWords(const model::Job& job) {
  std::string words = "0.000 is " + job.datumNote;
  if (job.ordnanceDatum)
    words += ", " + model::levelText(*job.ordnanceDatum) + " above ordnance datum";
  wrappedWords(words + ". Levels in metres, courses from the damp course.");
}

// The staff reading on the bench mark gives the height of the sight; then every level has one.
void staffField(SheetsInput& input) {
  if (!input.job->model.job.site.benchMark) return;
  bool given = input.state.staffOnBenchMark.has_value();
  if (ImGui::Checkbox("Staff readings", &given))
    input.state.staffOnBenchMark = given ? std::optional<double>(1.5) : std::nullopt;
  if (!given) return;
  double reading = *input.state.staffOnBenchMark;
  ImGui::SetNextItemWidth(ImGui::GetFontSize() * 7);
  if (ImGui::InputDouble("staff on the bench mark, m", &reading, 0, 0, "%.3f"))
    if (reading >= 0 && reading <= 6) input.state.staffOnBenchMark = reading;
}

std::string amountText(double amount) {
  char text[32];
  std::snprintf(text, sizeof text, amount >= 100 ? "%.0f" : "%.2f", amount);
  return text;
}

}  // namespace

void levelsPage(SheetsInput& input) {
  const model::Model& m = input.job->model;
  datumWords(m.job);
  staffField(input);
  const auto& staff = input.state.staffOnBenchMark;
  const bool readings = staff && m.job.site.benchMark;
  if (!ImGui::BeginTable("levels", readings ? 4 : 3, kTable)) return;
  ImGui::TableSetupScrollFreeze(0, 1);
  ImGui::TableSetupColumn("", 0, 3.2f);
  ImGui::TableSetupColumn("level", 0, 1.3f);
  ImGui::TableSetupColumn("course", 0, 1.1f);
  if (readings) ImGui::TableSetupColumn("staff", 0, 1.1f);
  ImGui::TableHeadersRow();
  for (const auto& line : m.settingOut.schedule) {
    ImGui::TableNextRow();
    ImGui::TableNextColumn();
    ImGui::PushID(line.key.c_str());
    if (ImGui::Selectable("##line", false, ImGuiSelectableFlags_SpanAllColumns)) {
      input.state.switches.levelPlane = true;
      input.state.switches.levelPlaneAt = float(line.level);
    }
    ImGui::SameLine(0, 0);
    ImGui::PopID();
    wrappedWords(line.name);
    if (!line.where.empty()) quietWords(line.where);
    ImGui::TableNextColumn();
    bold(model::levelText(line.level));
    ImGui::TableNextColumn();
    char course[24];
    std::snprintf(course, sizeof course, line.wholeCourse ? "%.0f" : "%.1f", line.course);
    rightAligned(course);
    if (!readings) continue;
    ImGui::TableNextColumn();
    char text[24];
    std::snprintf(text, sizeof text, "%.3f", m.job.site.benchMark->level + *staff - line.level);
    rightAligned(text);
  }
  ImGui::EndTable();
}

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
    rightAligned(amountText(row.amount) + " " + row.unit);
    ImGui::TableNextColumn();
    bold(amountText(row.order) + " " + row.unit);
  }
  ImGui::EndTable();
  if (rows == 0) ImGui::TextWrapped("Nothing is built in this stage.");
}

}  // namespace viewer
