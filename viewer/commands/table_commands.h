// `check`, `levels`, `takeoff` and `stages`: what the job says, as tables.
#pragma once

#include <string>

#include "model/exchange/tables.h"

namespace viewer {

struct TableOptions {
  std::string job;
  model::TableStyle style = model::TableStyle::People;
  bool byStage = false;  // takeoff only
  bool lintels = false;  // takeoff only
  bool loading = false;  // takeoff only: bricks and blocks to load out, in place of quantities
  std::string part;      // lines and bond: the key of one part; empty for all
  std::string setUp;     // levels, lines and pegs: a set-up's name, to read from
  std::string stage;     // stages only: one to tell of in words, "all", or empty for the table
};

// Each prints to standard output and returns the exit status.
int runCheck(const TableOptions& options);
int runLevels(const TableOptions& options);
int runTakeoff(const TableOptions& options);
int runStages(const TableOptions& options);

}  // namespace viewer
