// Other programs of this machine, that read back what ours wrote.
#pragma once

#include <gtest/gtest.h>

#include <regex>
#include <sstream>
#include <string>
#include <vector>

#include "tests/support/run_program.h"

namespace program_test {

// What it says; it is looked for on the path.
inline std::string output(std::vector<std::string> command) {
  command.insert(command.begin(), "/usr/bin/env");
  const test_support::ProgramRun run = test_support::runProgram(command);
  EXPECT_EQ(run.exitCode, 0) << command[1] << ": " << run.err;
  return run.out;
}

inline int pagesOf(const std::string& pdf) {
  const std::string info = output({"pdfinfo", pdf});
  std::smatch found;
  EXPECT_TRUE(std::regex_search(info, found, std::regex("Pages: +([0-9]+)"))) << info;
  return found.empty() ? 0 : std::stoi(found[1]);
}

// How many fonts a PDF has; each must be inside it, cut to what is used and with its characters'
// names.
inline int fontsInside(const std::string& pdf) {
  std::istringstream lines(output({"pdffonts", pdf}));
  int count = -2;  // two lines of headings
  // Columns from the right: object number and generation, "uni", "sub", "emb".
  const std::regex inside(" yes +yes +yes +[0-9]+ +[0-9]+ *$");
  for (std::string line; std::getline(lines, line); ++count) {
    if (count < 0) continue;
    EXPECT_TRUE(std::regex_search(line, inside)) << line;
  }
  return count;
}

}  // namespace program_test
