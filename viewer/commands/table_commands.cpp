#include "viewer/commands/table_commands.h"

#include <algorithm>

#include "model/exchange/loading_table.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"
#include "viewer/commands/picture_options.h"
#include "viewer/commands/print_parts.h"
#include "viewer/commands/set_up_asked.h"
#include "viewer/commands/stage_words.h"

namespace viewer {
namespace {

template <typename MakeTable>
int printTable(const TableOptions& options, const MakeTable& makeTable) {
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  return printOut(model::write(makeTable(*model), options.style));
}

model::Table problemsTable(const model::Problems& problems) {
  model::Table table;
  table.title = "Problems";
  table.columns = {"severity", "file", "line", "column", "what", "instead"};
  table.numeric = {false, false, true, true, false, false};
  for (const model::Problem& p : problems) {
    const bool placed = p.place.line > 0;
    table.rows.push_back({p.severity == model::Severity::Error ? "error" : "warning", p.file,
                          placed ? std::to_string(p.place.line) : "",
                          placed ? std::to_string(p.place.column) : "", p.what, p.instead});
  }
  return table;
}

std::string counted(size_t number, const std::string& one) {
  return std::to_string(number) + " " + one + (number == 1 ? "" : "s");
}

std::string summary(const std::string& path, const LoadedJob& loaded) {
  const auto errors = static_cast<size_t>(
      std::count_if(loaded.problems.begin(), loaded.problems.end(),
                    [](const auto& p) { return p.severity == model::Severity::Error; }));
  const size_t warnings = loaded.problems.size() - errors;
  std::string text = path + ": ";
  if (!loaded.model) return text + counted(errors, "error") + ", nothing is built\n";
  text += "no errors, " + counted(warnings, "warning") + "; \"" + loaded.model->job.name + "\", " +
          counted(loaded.model->programme.stages.size(), "stage");
  const double ridge = loaded.model->settingOut.levels.ridge;
  return text + ", ridge at " + model::levelText(ridge) + "\n";
}

int tellStages(const TableOptions& options) {
  if (options.style != model::TableStyle::People)
    return wrongUsage("--stage is for reading; --csv and --json have every stage whole");
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  const model::Programme& programme = model->programme;
  if (options.stage == "all") return printOut(allStageWords(programme));
  PictureOptions moment;  // only to name a stage in the same way everywhere
  if (auto wrong = readMoment(options.stage, 0, programme, moment)) return wrongUsage(*wrong);
  if (programme.stages.empty()) return printOut("No stages.\n");
  return printOut(stageWords(programme, static_cast<size_t>(moment.time)));
}

}  // namespace

int runCheck(const TableOptions& options) {
  const LoadedJob loaded = loadJob(options.job);
  printProblems(loaded.problems);
  const std::string text = options.style == model::TableStyle::People
                               ? summary(options.job, loaded)
                               : model::write(problemsTable(loaded.problems), options.style);
  const int printed = printOut(text);
  return loaded.model ? printed : kProblems;
}

int runLevels(const TableOptions& options) {
  if (options.setUp.empty())
    return printTable(options, [](const model::Model& m) { return model::levelsTable(m); });
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  const SetUpAsked asked(*model, options.setUp);
  if (!asked.setUp) return wrongUsage(asked.wrong);
  return printOut(model::write(model::levelsTable(*model, *asked.setUp), options.style));
}

int runTakeoff(const TableOptions& options) {
  if (options.lintels && options.byStage)
    return wrongUsage("--lintels and --by-stage are two tables: ask for one");
  if (options.lintels)
    return printTable(options, [](const model::Model& m) { return model::lintelsTable(m); });
  if (options.loading) {
    const auto model = loadAndTell(options.job);
    if (!model) return kProblems;
    return printParts({model::loadingPart(*model)}, "loading", options.style);
  }
  return printTable(options,
                    [&](const model::Model& m) { return model::takeoffTable(m, options.byStage); });
}

int runStages(const TableOptions& options) {
  if (!options.stage.empty()) return tellStages(options);
  return printTable(options, [](const model::Model& m) { return model::stagesTable(m); });
}

}  // namespace viewer
