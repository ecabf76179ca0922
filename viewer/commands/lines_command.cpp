#include "viewer/commands/lines_command.h"

#include "model/exchange/line_tables.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"
#include "viewer/commands/print_parts.h"
#include "viewer/commands/set_up_asked.h"

namespace viewer {

int runLines(const TableOptions& options) {
  const bool pins = options.part.empty() || options.part == "pins";
  if (!options.setUp.empty() && !pins)
    return wrongUsage("--set-up goes with --part pins; `pegs --set-up` reads the boards too");
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  const SetUpAsked setUp(*model, options.setUp);
  if (!setUp.wrong.empty()) return wrongUsage(setUp.wrong);
  const model::SetOutLines lines = model::deriveLines(model->job, model->settingOut);
  return printParts(model::lineParts(*model, lines, setUp.setUp), options.part, options.style);
}

int runPegs(const TableOptions& options) {
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  const SetUpAsked setUp(*model, options.setUp);
  if (!setUp.wrong.empty()) return wrongUsage(setUp.wrong);
  const model::SetOutLines lines = model::deriveLines(model->job, model->settingOut);
  return printOut(model::write(model::pegsTable(*model, lines, setUp.setUp), options.style));
}

}  // namespace viewer
