// `walkthrough`: the whole job as files: a picture of every stage, the booklets, the
// tables, the GLB.
#pragma once

#include <string>

namespace viewer {

struct WalkthroughCommand {
  std::string job;
  std::string out = "out";
  std::string size = "1280x720";
  std::string view;  // empty: the corner that sees most
  std::string show;  // empty: what each stage needs
};

// Ctrl-C stops it between two files: what is there then is whole, and of this job. The files of an
// earlier walkthrough are taken away before the first is written.
int runWalkthrough(const WalkthroughCommand& command);

}  // namespace viewer
