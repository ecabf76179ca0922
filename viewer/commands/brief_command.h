// `brief`: the booklets of the programme, for the crew or for the client, and the designer's sheet.
#pragma once

#include <string>

namespace viewer {

struct BriefCommand {
  std::string job;
  std::string out;
  std::string reader = "crew";  // "client" or "designer"
  std::string stage;            // by id, number or name; empty: all
  std::string date;             // for the title block; empty: room to write it
};

// Without OpenGL the sheets are written without pictures, with a warning. Ctrl-C stops it and
// leaves no file.
int runBrief(const BriefCommand& command);

}  // namespace viewer
