#include "viewer/panels/paper_style.h"

#include <imgui.h>

#include "viewer/overlays/pen.h"

namespace viewer {
namespace {

ImVec4 of(unsigned rgb, float opacity = 1) {
  return ImGui::ColorConvertU32ToFloat4(colour(rgb, opacity));
}

void setColours(ImVec4* c) {
  for (int i = 0; i < ImGuiCol_COUNT; ++i) c[i] = of(ink::kInk, 0.15f);
  c[ImGuiCol_Text] = of(ink::kInk);
  c[ImGuiCol_TextDisabled] = of(ink::kSoft);
  c[ImGuiCol_WindowBg] = c[ImGuiCol_PopupBg] = of(ink::kCard);
  c[ImGuiCol_ChildBg] = of(ink::kCard, 0);
  c[ImGuiCol_Border] = of(ink::kInk);
  c[ImGuiCol_BorderShadow] = of(ink::kInk, 0);
  c[ImGuiCol_FrameBg] = of(ink::kPaper);
  c[ImGuiCol_FrameBgHovered] = of(ink::kTape, 0.35f);
  c[ImGuiCol_FrameBgActive] = of(ink::kTape, 0.6f);
  c[ImGuiCol_Button] = of(ink::kPaper);
  c[ImGuiCol_ButtonHovered] = c[ImGuiCol_HeaderHovered] = of(ink::kTape, 0.45f);
  c[ImGuiCol_ButtonActive] = c[ImGuiCol_HeaderActive] = of(ink::kTape);
  c[ImGuiCol_Header] = of(ink::kTape, 0.75f);
  c[ImGuiCol_CheckMark] = c[ImGuiCol_SliderGrab] = c[ImGuiCol_SliderGrabActive] = of(ink::kInk);
  c[ImGuiCol_ScrollbarBg] = of(ink::kPaper, 0.5f);
  c[ImGuiCol_ScrollbarGrab] = of(ink::kFaint);
  c[ImGuiCol_ScrollbarGrabHovered] = c[ImGuiCol_ScrollbarGrabActive] = of(ink::kSoft);
  c[ImGuiCol_Separator] = of(ink::kFaint);
  c[ImGuiCol_TableHeaderBg] = of(ink::kPaper);
  c[ImGuiCol_TableBorderStrong] = of(ink::kInk, 0.6f);
  c[ImGuiCol_TableBorderLight] = of(ink::kFaint, 0.6f);
  c[ImGuiCol_TableRowBg] = of(ink::kCard, 0);
  c[ImGuiCol_TableRowBgAlt] = of(ink::kPaper, 0.6f);
  c[ImGuiCol_TextSelectedBg] = of(ink::kTape, 0.7f);
  c[ImGuiCol_NavHighlight] = of(ink::kLevels);
}

}  // namespace

void setPaperStyle(float unit) {
  ImGuiStyle style;
  // Drawn corners are square; borders are ink.
  style.WindowRounding = style.FrameRounding = style.ScrollbarRounding = style.GrabRounding =
      style.PopupRounding = style.ChildRounding = 0;
  style.WindowBorderSize = style.FrameBorderSize = 1;
  style.ChildBorderSize = 0;
  style.WindowPadding = {16, 14};
  style.FramePadding = {9, 6};
  style.ItemSpacing = {9, 7};
  style.CellPadding = {5, 4};
  style.ScrollbarSize = 12;
  style.ScaleAllSizes(unit);
  setColours(style.Colors);
  ImGui::GetStyle() = style;
}

}  // namespace viewer
