#include "viewer/commands/lines_command.h"

#include "model/exchange/line_tables.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"
#include "viewer/commands/set_up_asked.h"

namespace viewer {

int runLines(const TableOptions& options) {
  if (options.style == model::TableStyle::Csv && options.part.empty())
    return wrongUsage("--csv needs --part: boards, lines, tape, limits or pins");
  const bool pins = options.part.empty() || options.part == "pins";
  if (!options.setUp.empty() && !pins)
    return wrongUsage("--set-up goes with --part pins; `pegs --set-up` reads the boards too");
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  const SetUpAsked setUp(*model, options.setUp);
  if (!setUp.wrong.empty()) return wrongUsage(setUp.wrong);
  std::vector<model::LinePart> parts =
      model::lineParts(*model, model::deriveLines(model->job, model->settingOut), setUp.setUp);
  if (options.part.empty())
    return printOut(options.style == model::TableStyle::Json ? model::writeJson(parts)
                                                             : model::writeForPeople(parts));
  std::erase_if(parts, [&](const model::LinePart& part) { return part.key != options.part; });
  if (options.style == model::TableStyle::People) return printOut(model::writeForPeople(parts));
  return printOut(model::write(parts.at(0).table, options.style));
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
