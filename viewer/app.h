// The window: opens a job file, shows it, follows the file on disk until the window is closed.
#pragma once

#include <string>

namespace viewer {

// Returns the program's exit code: kNoOpenGl when no window or no OpenGL 3.3 can be had. A job
// with problems opens too: the problems are shown, and the file is read again when it changes.
int runWindow(const std::string& jobPath);

}  // namespace viewer
