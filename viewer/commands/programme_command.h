// `programme`: when each stage is done, what decides it, and what happens on which day.
#pragma once

#include <string>

#include "model/exchange/tables.h"

namespace viewer {

struct ProgrammeCommand {
  std::string job;
  model::TableStyle style = model::TableStyle::People;
  std::string part;     // dates, rates or events; empty: dates and events
  std::string from;     // a look-ahead from that date on
  int days = 14;        // that it is long
  std::string against;  // another job file, the plan before
  std::string out;      // FILE.ics
  bool stages = false;  // in it, the stages too
};

// Returns the exit status.
int runProgramme(const ProgrammeCommand& options);

}  // namespace viewer
