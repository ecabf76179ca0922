// Lengths along a wall, and what is left of them.
#pragma once

#include <vector>

namespace model {

struct Stretch {
  double from = 0, to = 0;  // s, metres
};

// Takes a length out of stretches; what it only touches stays whole.
void leaveOut(double from, double to, std::vector<Stretch>& stretches);

}  // namespace model
