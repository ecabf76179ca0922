// `brief --for designer`: the designer's sheet, as PDF or as a table.
#pragma once

#include <string>

#include "viewer/commands/brief_command.h"
#include "viewer/commands/load_job.h"

namespace viewer {

// What `brief` does when it is for the designer. Nothing is drawn with OpenGL for it.
int runDesignerSheet(const BriefCommand& command);

// The bytes of either file.
struct DesignerFiles {
  std::string pdf, csv;
};
DesignerFiles designerFiles(const LoadedJob& loaded, const std::string& date);

}  // namespace viewer
