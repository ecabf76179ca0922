// Starting the real program in a folder of the test's own.
#pragma once

#include <gtest/gtest.h>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "tests/support/demo_job.h"
#include "tests/support/folders.h"
#include "tests/support/run_program.h"

namespace program_test {

using test_support::ProgramRun;
using test_support::ProgramSettings;

inline ProgramRun stringcourse(std::vector<std::string> arguments,
                               const ProgramSettings& settings = {}) {
  arguments.insert(arguments.begin(), test_support::buildFolder() + "/stringcourse");
  return test_support::runProgram(arguments, settings);
}

inline std::string demoPath(const std::string& name) {
  return test_support::sourceFolder() + "/assets/jobs/" + name + ".toml";
}

inline std::string contents(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

// The folder is gone afterwards.
class InFolder : public testing::Test {
 protected:
  void SetUp() override {
    const auto* info = testing::UnitTest::GetInstance()->current_test_info();
    folder_ = std::filesystem::temp_directory_path() /
              ("stringcourse-test-" + std::to_string(getpid()) + "-" + info->name());
    std::filesystem::create_directories(folder_);
  }
  void TearDown() override { std::filesystem::remove_all(folder_); }
  std::string inFolder(const std::string& name) const { return (folder_ / name).string(); }
  std::string writeFile(const std::string& name, const std::string& text) const {
    std::ofstream(inFolder(name), std::ios::binary) << text;
    return inFolder(name);
  }
  // The names in a folder, sorted; hidden ones too.
  static std::vector<std::string> namesIn(const std::filesystem::path& folder) {
    std::vector<std::string> names;
    if (!std::filesystem::exists(folder)) return names;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
      names.push_back(entry.path().filename().string());
    }
    std::sort(names.begin(), names.end());
    return names;
  }
  std::vector<std::string> left() const { return namesIn(folder_); }

  std::filesystem::path folder_;
};

}  // namespace program_test
