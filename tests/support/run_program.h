// Runs a real program and keeps all that it says.
#pragma once

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace test_support {

struct ProgramRun {
  int exitCode = -1;  // 128 + the signal when one ended it
  std::string out, err;
};

struct ProgramSettings {
  std::map<std::string, std::string> environment;  // set on top of this process's own
  std::string folder;                              // to run in; empty: this process's own
  std::string outTo;                               // a file for standard output; empty: kept
  // Asked every few milliseconds while it runs; true sends it SIGINT, once.
  std::function<bool()> interruptWhen;
};

// arguments[0] is the program. Throws std::runtime_error when it cannot be started; ends it after
// two minutes.
ProgramRun runProgram(const std::vector<std::string>& arguments,
                      const ProgramSettings& settings = {});

}  // namespace test_support
