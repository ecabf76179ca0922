#include "viewer/commands/report_command.h"

#include "model/drawing/designer_report.h"
#include "model/exchange/drawing_pdf.h"
#include "model/exchange/lettering.h"
#include "model/exchange/report_table.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"
#include "viewer/commands/reading_sets.h"

namespace viewer {

int runReport(const ReportCommand& command) {
  const bool csv = !otherEnding(command.out, ".csv", "");
  if (!csv && otherEnding(command.out, ".pdf", ""))
    return wrongUsage("\"" + command.out +
                      "\" ends in neither .pdf nor .csv: a report is written as one of these");
  const auto paper = model::paperNamed(command.paper);
  if (!paper) return wrongUsage("there is no paper \"" + command.paper + "\" here: A4 or A3");
  LoadedJob loaded = loadJob(command.job);
  // Before anything else: the readings are somebody's work.
  if (auto wrong = wouldReplaceJob(command.job, command.out)) return wrongUsage(*wrong);
  if (auto wrong = wouldReplaceReadings(loaded, command.out)) return wrongUsage(*wrong);
  printProblems(loaded.problems);
  if (!loaded.model) return kProblems;
  model::Job job = loaded.model->job;
  if (auto wrong = keepOneSet(job, command.set)) return wrongUsage(*wrong);
  const model::SettingOut& out = loaded.model->settingOut;
  const model::AsBuilt built = model::deriveAsBuilt(job, out);
  if (csv)
    return saveOut(command.out,
                   model::write(model::reportTable(job, built), model::TableStyle::Csv));
  return saveOut(command.out, model::pdfBytes(model::drawDesignerReport(
                                  job, out, built, {*paper, command.date}, model::textWidth())));
}

}  // namespace viewer
