// `rod`: the gauge rods of the corners, as a table or as strips at full size.
#pragma once

#include <string>

#include "model/exchange/tables.h"

namespace viewer {

struct RodCommand {
  std::string job;
  model::TableStyle style = model::TableStyle::People;
  std::string corner;    // "C"; empty: every corner
  bool asBuilt = false;  // from the concrete that was read
  std::string out;       // FILE.pdf; empty: the table
  std::string paper = "A4";
};

int runRod(const RodCommand& command);

}  // namespace viewer
