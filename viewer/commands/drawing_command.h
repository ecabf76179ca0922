// The setting-out drawing, as PDF to print or as DXF for a drawing program.
#pragma once

#include <string>

namespace viewer {

struct DrawingCommand {
  std::string job;
  std::string out;  // FILE.pdf or FILE.dxf
  std::string paper = "A3";
  std::string scale;  // "1:50"; empty: the largest that fits
  std::string date;   // for the title block; empty: room to write it
};

int runDrawing(const DrawingCommand& command);

}  // namespace viewer
