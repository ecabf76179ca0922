// What the program's exit status means.
#pragma once

namespace viewer {

enum ExitCode : int {
  kWell = 0,
  kProblems = 1,  // in the job, or a file that could not be written
  kUsage = 2,     // the command line asks for something that there is not
  kNoOpenGl = 3,  // no OpenGL 3.3 to draw with
  kStopped = 130  // by Ctrl-C
};

}  // namespace viewer
