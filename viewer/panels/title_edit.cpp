#include "viewer/panels/title_edit.h"

#include <imgui.h>

#include <algorithm>
#include <cstdio>
#include <utility>

#include "model/level_text.h"
#include "viewer/overlays/overlay_sheet.h"

namespace viewer {
namespace {

TitleRow rowOf(TitleField field) {
  if (field == TitleField::JobName) return TitleRow::Job;
  return field == TitleField::DatumNote ? TitleRow::Units : TitleRow::BenchMark;
}

}  // namespace

void TitleEdit::begin(TitleField field, const std::string& text, const std::string& level) {
  field_ = field;
  std::snprintf(text_, sizeof text_, "%s", text.c_str());
  std::snprintf(level_, sizeof level_, "%s", level.c_str());
  problem_.clear();
  fresh_ = true;
  entered_ = false;
}

bool TitleEdit::openAt(const glm::vec2& at, const model::Job& job, const std::string& path,
                       const SheetLayout& layout) {
  if (!canChange(path)) return false;
  if (titleRow(layout, TitleRow::Job).contains(at)) {
    begin(TitleField::JobName, job.name, "");
  } else if (titleRow(layout, TitleRow::Units).contains(at)) {
    begin(TitleField::DatumNote, job.datumNote, "");
  } else if (titleRow(layout, TitleRow::BenchMark).contains(at) && job.site.benchMark) {
    begin(TitleField::BenchMark, job.site.benchMark->name,
          model::levelText(job.site.benchMark->level));
  } else {
    return false;
  }
  // Texts longer than a field are left to the file: nothing may be cut off unseen.
  if (job.name.size() >= sizeof text_ || job.datumNote.size() >= sizeof text_) close();
  box_ = titleRow(layout, rowOf(field_));
  return open();
}

void TitleEdit::close() {
  field_ = TitleField::None;
  problem_.clear();
}

void TitleEdit::fields(const Box& row) {
  const float gap = ImGui::GetStyle().ItemSpacing.x;
  // Asked for until it is had: the click that opened the field may take the focus away again.
  if (fresh_) ImGui::SetKeyboardFocusHere();
  constexpr auto kFlags = ImGuiInputTextFlags_AutoSelectAll;
  if (field_ == TitleField::BenchMark) {
    ImGui::SetNextItemWidth(row.width() * 0.28f);
    ImGui::InputText("##level", level_, sizeof level_, kFlags);
    if (ImGui::IsItemActive()) fresh_ = false;
    ImGui::SameLine(0, gap * 0.5f);
  }
  ImGui::SetNextItemWidth(-1);
  ImGui::InputText("##text", text_, sizeof text_, kFlags);
  if (ImGui::IsItemActive() && field_ != TitleField::BenchMark) fresh_ = false;
}

void TitleEdit::problem(const SheetLayout& layout) {
  const Pen pen(ImGui::GetForegroundDrawList());
  const float u = pen.unit(), width = layout.titleBlock.width();
  const float indent = 24 * u, inside = width - indent - 20 * u;
  const float height = pen.paragraph({0, 0}, inside, ink::kCaution, problem_, Cut::Text, true);
  const float bottom = layout.titleBlock.top - 6 * u;
  const Box card{layout.titleBlock.left, bottom - height - 16 * u, layout.titleBlock.right, bottom};
  pen.fill(card, ink::kCard);
  pen.outline(card, ink::kCaution, 1.5f);
  pen.caution({card.left + 17 * u, card.top + 17 * u}, 7.5f * u);
  pen.paragraph({card.left + 10 * u + indent, card.top + 8 * u}, inside, ink::kCaution, problem_);
}

bool TitleEdit::draw(const std::string& path, const SheetLayout& layout) {
  if (!open()) return false;
  const Box row = titleRow(layout, rowOf(field_));
  box_ = row;
  ImGui::SetNextWindowPos({row.left, row.top});
  ImGui::SetNextWindowSize({row.width(), row.height()});
  const float pad = std::max(0.0f, (row.height() - ImGui::GetFrameHeight()) / 2);
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {pad, pad});
  ImGui::PushStyleVar(ImGuiStyleVar_WindowMinSize, {1, 1});
  ImGui::Begin(
      "title field", nullptr,
      ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings);
  ImGui::PushID(tries_);
  fields(row);
  ImGui::PopID();
  ImGui::End();
  ImGui::PopStyleVar(2);
  if (!problem_.empty()) problem(layout);
  if (!std::exchange(entered_, false)) return false;
  if (auto wrong = changeJobFile(path, field_, {text_, level_})) {
    problem_ = *wrong;
    ++tries_;
    fresh_ = true;
    return false;
  }
  close();
  return true;
}

}  // namespace viewer
