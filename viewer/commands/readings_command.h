// `readings`: what was read on site, held against the drawing, and what it changes.
#pragma once

#include <string>

#include "model/exchange/tables.h"

namespace viewer {

struct ReadingsCommand {
  std::string job;
  model::TableStyle style = model::TableStyle::People;
  std::string set;   // of this name alone; empty: all
  std::string what;  // a part; empty: all, and as CSV the deviations
};

// Prints to standard output and returns the exit status. Readings that are out are no failure.
int runReadings(const ReadingsCommand& options);

}  // namespace viewer
