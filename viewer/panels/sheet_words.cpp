#include "viewer/panels/sheet_words.h"

#include <imgui.h>

#include "viewer/fonts.h"
#include "viewer/line_breaks.h"
#include "viewer/overlays/pen.h"
#include "viewer/reading_order.h"

namespace viewer {

void wrappedWords(const std::string& text) {
  if (seenAsWritten(text)) {
    ImGui::TextWrapped("%s", text.c_str());
    return;
  }
  // Broken before it is turned round: what is read first stands on the first line.
  const auto widthOf = [](const std::string& part) {
    return ImGui::CalcTextSize(asSeen(part).c_str()).x;
  };
  for (const std::string& line : brokenLines(text, ImGui::GetContentRegionAvail().x, widthOf))
    ImGui::TextUnformatted(asSeen(line).c_str());
}

void quietWords(const std::string& text) {
  ImGui::PushStyleColor(ImGuiCol_Text, ImGui::GetColorU32(ImGuiCol_TextDisabled));
  wrappedWords(text);
  ImGui::PopStyleColor();
}

void boldWords(const std::string& text) {
  ImGui::PushFont(letteringNow().bold);
  wrappedWords(text);
  ImGui::PopFont();
}

void cautionWords(const std::string& text) {
  ImGui::PushStyleColor(ImGuiCol_Text, colour(ink::kCaution));
  boldWords(text);
  ImGui::PopStyleColor();
}

std::string shortenedWords(const std::string& text, float width) {
  return Pen(nullptr).shortened(asSeen(text), width);
}

void wordsAtRight(const std::string& text) {
  const float room = ImGui::GetContentRegionAvail().x - ImGui::CalcTextSize(text.c_str()).x;
  if (room > 0) ImGui::SetCursorPosX(ImGui::GetCursorPosX() + room);
  ImGui::TextUnformatted(text.c_str());
}

void boldAtRight(const std::string& text) {
  ImGui::PushFont(letteringNow().bold);
  wordsAtRight(text);
  ImGui::PopFont();
}

}  // namespace viewer
