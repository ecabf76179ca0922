#include "viewer/commands/print_parts.h"

#include <algorithm>

#include "viewer/commands/output.h"

namespace viewer {
namespace {

// "boards, lines or tape".
std::string keysOf(const std::vector<model::TablePart>& parts) {
  std::string text;
  for (size_t i = 0; i < parts.size(); ++i)
    text += (i == 0 ? "" : i + 1 < parts.size() ? ", " : " or ") + parts[i].key;
  return text;
}

}  // namespace

int printParts(const std::vector<model::TablePart>& parts, const std::string& only,
               model::TableStyle style) {
  if (only.empty()) {
    if (style == model::TableStyle::Csv) return wrongUsage("--csv needs --part: " + keysOf(parts));
    return printOut(style == model::TableStyle::Json ? model::writeJson(parts)
                                                     : model::writeForPeople(parts));
  }
  const auto part = std::find_if(parts.begin(), parts.end(),
                                 [&](const model::TablePart& p) { return p.key == only; });
  if (part == parts.end()) return wrongUsage("there is no part \"" + only + "\": " + keysOf(parts));
  if (style == model::TableStyle::People) return printOut(model::writeForPeople({*part}));
  return printOut(model::write(part->table, style));
}

}  // namespace viewer
