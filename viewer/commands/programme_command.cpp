#include "viewer/commands/programme_command.h"

#include "model/exchange/event_calendar.h"
#include "model/exchange/programme_tables.h"
#include "model/programme/calendar.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"
#include "viewer/commands/print_parts.h"

namespace viewer {
namespace {

int saveCalendar(const ProgrammeCommand& options, const model::Model& model) {
  if (model.job.programme.start.empty())
    return wrongUsage("a calendar needs dates: give the job `start` under [programme]");
  return saveOut(options.out, model::eventCalendar(model, options.stages));
}

}  // namespace

int runProgramme(const ProgrammeCommand& options) {
  if (!options.out.empty()) {
    if (auto wrong = wouldReplaceJob(options.job, options.out)) return wrongUsage(*wrong);
    if (auto wrong = otherEnding(options.out, ".ics", "a calendar")) return wrongUsage(*wrong);
  }
  std::optional<long> from;
  if (!options.from.empty()) {
    from = model::dayNumber(options.from);
    if (!from) return wrongUsage("\"" + options.from + "\" is no date; write it as 2027-04-12");
  }
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  if (!options.out.empty()) return saveCalendar(options, *model);
  if (from)
    return printParts({model::lookAheadPart(*model, *from, options.days)}, "look-ahead",
                      options.style);
  if (!options.against.empty()) {
    const auto before = loadAndTell(options.against);
    if (!before) return kProblems;
    return printParts({model::comparisonPart(*before, *model)}, "compared", options.style);
  }
  std::vector<model::TablePart> parts{model::datesPart(*model), model::eventsPart(*model)};
  if (options.part == "rates") parts = {model::ratesPart(*model)};
  // As CSV the dates, unless another table is asked for.
  const bool plain = options.part.empty() && options.style == model::TableStyle::Csv;
  return printParts(parts, plain ? "dates" : options.part, options.style);
}

}  // namespace viewer
