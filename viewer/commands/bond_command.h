// `bond`: the outer leaf laid dry, as tables.
#pragma once

#include "viewer/commands/table_commands.h"

namespace viewer {

// Prints one part, or all, to standard output and returns the exit status.
int runBond(const TableOptions& options);

}  // namespace viewer
