// Where the example job lies, installed or in the source tree.
#pragma once

#include <string>

namespace viewer {

// Its path; empty when there is none.
std::string exampleJob();

}  // namespace viewer
