// What is said when there is nothing to draw with.
#pragma once

#include <string>

namespace viewer {

// Prints the reason and what to do; returns kNoOpenGl.
int noOpenGl(const std::string& why);

}  // namespace viewer
