#include "viewer/commands/readings_command.h"

#include "model/exchange/reading_tables.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"
#include "viewer/commands/reading_sets.h"

namespace viewer {
namespace {

std::string forPeople(const std::vector<model::ReadingPart>& parts) {
  std::string text;
  for (const model::ReadingPart& part : parts) {
    if (!text.empty()) text += "\n";
    text += part.table.rows.empty() ? part.table.title + "\n"
                                    : model::write(part.table, model::TableStyle::People);
    if (!part.words.empty()) text += "\n";
    for (const std::string& words : part.words) text += words + ".\n";
  }
  return text;
}

std::string asJson(const std::vector<model::ReadingPart>& parts) {
  std::string text = "{\n";
  for (size_t i = 0; i < parts.size(); ++i) {
    std::string rows = model::write(parts[i].table, model::TableStyle::Json);
    rows.erase(rows.find_last_not_of('\n') + 1);
    text += "\"" + parts[i].key + "\": " + rows + (i + 1 < parts.size() ? ",\n" : "\n");
  }
  return text + "}\n";
}

}  // namespace

int runReadings(const ReadingsCommand& options) {
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  model::Job job = model->job;
  if (auto wrong = keepOneSet(job, options.set)) return wrongUsage(*wrong);
  std::vector<model::ReadingPart> parts =
      model::readingParts(job, model->settingOut, model::deriveAsBuilt(job, model->settingOut));
  if (job.readings.empty() && options.style == model::TableStyle::People)
    return printOut("The job has no readings: [[readings]] names a file of them.\n");
  std::string what = options.what;
  if (what.empty() && options.style == model::TableStyle::Csv) what = "deviations";
  if (what.empty())
    return printOut(options.style == model::TableStyle::Json ? asJson(parts) : forPeople(parts));
  std::erase_if(parts, [&](const model::ReadingPart& part) { return part.key != what; });
  if (options.style == model::TableStyle::People) return printOut(forPeople(parts));
  return printOut(model::write(parts.at(0).table, options.style));
}

}  // namespace viewer
