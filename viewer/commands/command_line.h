// The command line: which commands there are, what each takes, and what its help says.
#pragma once

namespace viewer {

// Returns the exit status (see exit_code.h).
int runCommandLine(int argc, const char* const* argv);

}  // namespace viewer
