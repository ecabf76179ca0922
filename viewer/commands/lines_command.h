// `lines` and `pegs`: what to set out, as tables.
#pragma once

#include <string>

#include "viewer/commands/table_commands.h"

namespace viewer {

// Each prints to standard output and returns the exit status. `lines` prints one part, or all: for
// people one below the other, as JSON an object with the parts as keys; CSV needs a part.
int runLines(const TableOptions& options);
int runPegs(const TableOptions& options);

}  // namespace viewer
