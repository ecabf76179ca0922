#include "viewer/commands/designer_command.h"

#include "model/drawing/designer_sheet.h"
#include "model/exchange/designer_table.h"
#include "model/exchange/drawing_pdf.h"
#include "model/exchange/lettering.h"
#include "viewer/commands/output.h"
#include "viewer/commands/reading_sets.h"

namespace viewer {

DesignerFiles designerFiles(const LoadedJob& loaded, const std::string& date) {
  const model::Model& model = *loaded.model;
  const model::AsBuilt built = model::deriveAsBuilt(model.job, model.settingOut);
  const model::DesignerSheetFacts facts =
      model::designerSheetFacts(model, built, loaded.places, loaded.problems);
  return {
      model::pdfBytes(model::drawDesignerSheet(model, built, facts, {date}, model::textWidth())),
      model::write(model::designerTable(model, built, facts), model::TableStyle::Csv)};
}

int runDesignerSheet(const BriefCommand& command) {
  const bool csv = !otherEnding(command.out, ".csv", "");
  if (!csv && otherEnding(command.out, ".pdf", ""))
    return wrongUsage("\"" + command.out +
                      "\" ends in neither .pdf nor .csv: a designer's sheet is written as one of "
                      "these");
  if (!command.stage.empty())
    return wrongUsage("a designer's sheet is of the whole job: leave --stage out");
  const LoadedJob loaded = loadJob(command.job);
  if (auto wrong = wouldReplaceJob(command.job, command.out)) return wrongUsage(*wrong);
  if (auto wrong = wouldReplaceReadings(loaded, command.out)) return wrongUsage(*wrong);
  printProblems(loaded.problems);
  if (!loaded.model) return kProblems;
  const DesignerFiles files = designerFiles(loaded, command.date);
  return saveOut(command.out, csv ? files.csv : files.pdf);
}

}  // namespace viewer
