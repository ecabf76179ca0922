#include "viewer/commands/stage_words.h"

#include <cstdio>
#include <sstream>

#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr size_t kWide = 80, kIndent = 14;

// Letters as people count them: the first byte of each.
size_t lettersIn(const std::string& text) {
  size_t count = 0;
  for (const char c : text) count += (static_cast<unsigned char>(c) & 0xC0) != 0x80;
  return count;
}

std::string paragraph(const std::string& label, const std::string& text) {
  if (text.empty()) return {};
  std::string out = "  " + label, word;
  out.resize(kIndent, ' ');
  size_t at = kIndent;
  std::istringstream words(text);
  for (bool first = true; words >> word; first = false) {
    const size_t letters = lettersIn(word);
    if (!first && at + 1 + letters > kWide) {
      out += "\n" + std::string(kIndent, ' ');
      at = kIndent;
    } else if (!first) {
      out += ' ';
      ++at;
    }
    out += word;
    at += letters;
  }
  return out + "\n";
}

std::string dayCount(double days) {
  char text[32];
  std::snprintf(text, sizeof text, "%g working day%s", days, days == 1 ? "" : "s");
  return text;
}

std::string whenWords(const model::Stage& stage) {
  std::string text = dayCount(stage.days);
  if (stage.waitDays > 0) {
    char wait[48];
    std::snprintf(wait, sizeof wait, ", then %g to wait", stage.waitDays);
    text += wait;
  }
  if (!stage.start.empty())
    text += "; " + dateWords(stage.start) + " to " + dateWords(stage.finish);
  return text;
}

}  // namespace

std::string stageWords(const model::Programme& programme, std::size_t index) {
  const model::Stage& stage = programme.stages[index];
  std::string after;
  for (const size_t i : stage.after)
    after += (after.empty() ? "" : "; ") + std::to_string(i + 1) + " " + programme.stages[i].name;
  return std::to_string(index + 1) + "  " + stage.name + "  (" + stage.id + ")\n" +
         paragraph("When", whenWords(stage)) + paragraph("Work", stage.what) +
         paragraph("At the end", stage.atEnd) + paragraph("Caution", stage.caution) +
         paragraph("Hold point", stage.holdPoint) + paragraph("After", after) +
         paragraph("Note", stage.note);
}

std::string allStageWords(const model::Programme& programme) {
  std::string text;
  for (size_t i = 0; i < programme.stages.size(); ++i)
    text += (i ? "\n" : "") + stageWords(programme, i);
  return text;
}

}  // namespace viewer
