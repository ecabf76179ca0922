// `report`: what was read against the drawing, and the questions, for the designer.
#pragma once

#include <string>

namespace viewer {

struct ReportCommand {
  std::string job;
  std::string out;  // FILE.pdf or FILE.csv
  std::string paper = "A4";
  std::string set;   // of this name alone; empty: all
  std::string date;  // for the title block; empty: room to write it
};

// Returns the exit status. Readings that are out are no failure.
int runReport(const ReportCommand& command);

}  // namespace viewer
