#include "viewer/commands/readings_command.h"

#include "model/exchange/reading_tables.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"
#include "viewer/commands/print_parts.h"
#include "viewer/commands/reading_sets.h"

namespace viewer {

int runReadings(const ReadingsCommand& options) {
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  model::Job job = model->job;
  if (auto wrong = keepOneSet(job, options.set)) return wrongUsage(*wrong);
  const std::vector<model::ReadingPart> parts =
      model::readingParts(job, model->settingOut, model::deriveAsBuilt(job, model->settingOut));
  if (job.readings.empty() && options.style == model::TableStyle::People)
    return printOut("The job has no readings: [[readings]] names a file of them.\n");
  std::string what = options.what;
  if (what.empty() && options.style == model::TableStyle::Csv) what = "deviations";
  return printParts(parts, what, options.style);
}

}  // namespace viewer
