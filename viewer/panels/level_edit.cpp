#include "viewer/panels/level_edit.h"

#include <imgui.h>

#include <algorithm>
#include <cstdio>
#include <utility>

#include "model/level_text.h"
#include "viewer/fonts.h"
#include "viewer/overlays/pen.h"
#include "viewer/read_level.h"

namespace viewer {

void LevelEdit::begin(double level) {
  std::snprintf(text_, sizeof text_, "%s", model::levelText(level).c_str());
  at_ = level;
  open_ = fresh_ = true;
  entered_ = false;
  problem_.clear();
}

void LevelEdit::problem() const {
  const Pen pen(ImGui::GetForegroundDrawList());
  const float u = pen.unit(), width = 250 * u, inside = width - 44 * u;
  // The first line says what is wrong; the whole schedule would not fit here.
  const std::string words = problem_.substr(0, problem_.find('\n'));
  const float height = pen.paragraph({0, 0}, inside, ink::kCaution, words, Cut::Text, true);
  const float top = box_.top > height + 24 * u ? box_.top - height - 22 * u : box_.bottom + 6 * u;
  const Box card{box_.right - width, top, box_.right, top + height + 16 * u};
  pen.fill(card, ink::kCard);
  pen.outline(card, ink::kCaution, 1.5f);
  pen.caution({card.left + 17 * u, card.top + 17 * u}, 7.5f * u);
  pen.paragraph({card.left + 34 * u, card.top + 8 * u}, inside, ink::kCaution, words);
}

std::optional<double> LevelEdit::draw(const model::SettingOut& settingOut,
                                      const SheetLayout& layout, const RodScale& scale) {
  const float u = letteringNow().unit, width = 190 * u;
  const float y = std::clamp(scale.yAt(at_), layout.rod.top, layout.rod.bottom - 30 * u);
  const float right = layout.rod.left - 14 * u;
  box_ = {right - width, y - 15 * u, right, y + 15 * u};
  ImGui::SetNextWindowPos({box_.left, box_.top});
  ImGui::SetNextWindowSize({box_.width(), box_.height()});
  const float pad = std::max(0.0f, (box_.height() - ImGui::GetFrameHeight()) / 2);
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {pad, pad});
  ImGui::PushStyleVar(ImGuiStyleVar_WindowMinSize, {1, 1});
  ImGui::Begin(
      "level field", nullptr,
      ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings);
  ImGui::PushID(tries_);
  if (fresh_) ImGui::SetKeyboardFocusHere();
  ImGui::SetNextItemWidth(-1);
  ImGui::InputText("##level", text_, sizeof text_, ImGuiInputTextFlags_AutoSelectAll);
  if (ImGui::IsItemActive()) fresh_ = false;
  ImGui::PopID();
  ImGui::End();
  ImGui::PopStyleVar(2);
  if (!problem_.empty()) problem();
  if (!std::exchange(entered_, false)) return std::nullopt;
  const auto read = readLevel(text_, settingOut);
  if (const double* level = std::get_if<double>(&read)) {
    close();
    return *level;
  }
  problem_ = std::get<NoLevel>(read).why;
  ++tries_;
  fresh_ = true;
  return std::nullopt;
}

}  // namespace viewer
