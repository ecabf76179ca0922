// `share` and `new`: commands that write one file and draw nothing.
#pragma once

#include <string>

namespace viewer {

int runShare(const std::string& job, const std::string& out);
// Writes a commented starter job; never over a file that is there.
int runNew(const std::string& out);

}  // namespace viewer
