#include "viewer/commands/lines_command.h"

#include "model/exchange/line_tables.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"

namespace viewer {
namespace {

std::string forPeople(const std::vector<model::LinePart>& parts) {
  std::string text;
  for (const model::LinePart& part : parts) {
    if (!text.empty()) text += "\n";
    text += model::write(part.table, model::TableStyle::People);
    for (const model::Table& more : part.more)
      text += "\n" + model::write(more, model::TableStyle::People);
    if (!part.words.empty()) text += "\n";
    for (const std::string& words : part.words) text += words + ".\n";
  }
  return text;
}

std::string asJson(const std::vector<model::LinePart>& parts) {
  std::string text = "{\n";
  for (size_t i = 0; i < parts.size(); ++i) {
    std::string rows = model::write(parts[i].table, model::TableStyle::Json);
    rows.erase(rows.find_last_not_of('\n') + 1);
    text += "\"" + parts[i].key + "\": " + rows + (i + 1 < parts.size() ? ",\n" : "\n");
  }
  return text + "}\n";
}

}  // namespace

int runLines(const TableOptions& options) {
  if (options.style == model::TableStyle::Csv && options.part.empty())
    return wrongUsage("--csv needs --part: boards, lines, tape or limits");
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  std::vector<model::LinePart> parts =
      model::lineParts(*model, model::deriveLines(model->job, model->settingOut));
  if (options.part.empty())
    return printOut(options.style == model::TableStyle::Json ? asJson(parts) : forPeople(parts));
  std::erase_if(parts, [&](const model::LinePart& part) { return part.key != options.part; });
  if (options.style == model::TableStyle::People) return printOut(forPeople(parts));
  return printOut(model::write(parts.at(0).table, options.style));
}

int runPegs(const TableOptions& options) {
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  const model::SetOutLines lines = model::deriveLines(model->job, model->settingOut);
  return printOut(model::write(model::pegsTable(*model, lines), options.style));
}

}  // namespace viewer
