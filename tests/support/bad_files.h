// A folder of bad files, with expected.tsv: for each problem of each file its name, its place,
// error or warning, and words that what is said must have. Nothing else may be said.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "model/problems.h"
#include "tests/support/folders.h"

namespace test_support {

class BadFiles {
 public:
  // `ending` of the files: ".csv".
  BadFiles(const std::string& folder, std::string ending)
      : folder_(std::filesystem::path(sourceFolder()) / "tests/data" / folder),
        ending_(std::move(ending)) {
    std::ifstream table(folder_ / "expected.tsv");
    for (std::string row; std::getline(table, row);) {
      std::istringstream cells(row);
      std::string name;
      Expected expected;
      std::getline(cells, name, '\t');
      std::getline(cells, expected.place, '\t');
      std::getline(cells, expected.severity, '\t');
      std::getline(cells, expected.words, '\t');
      expected_[name].push_back(expected);
    }
  }

  // Of all its files, without their ending, by name.
  std::vector<std::string> names() const {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder_))
      if (entry.path().extension() == ending_) names.push_back(entry.path().stem().string());
    std::sort(names.begin(), names.end());
    return names;
  }

  std::string path(const std::string& name) const { return (folder_ / (name + ending_)).string(); }
  // Of another file in the folder.
  std::string beside(const std::string& file) const { return (folder_ / file).string(); }

  void expect(const std::string& name, const model::Problems& problems) const {
    const auto found = expected_.find(name);
    ASSERT_NE(found, expected_.end()) << "expected.tsv says nothing about it";
    std::string listed;
    for (const model::Problem& problem : problems) listed += model::format(problem) + "\n";
    ASSERT_EQ(problems.size(), found->second.size()) << listed;
    for (size_t i = 0; i < problems.size(); ++i) {
      const model::Problem& problem = problems[i];
      const Expected& expected = found->second[i];
      EXPECT_EQ(std::to_string(problem.place.line) + ":" + std::to_string(problem.place.column),
                expected.place)
          << listed;
      const bool error = problem.severity == model::Severity::Error;
      EXPECT_EQ(error ? "error" : "warning", expected.severity) << listed;
      EXPECT_NE(problem.what.find(expected.words), std::string::npos) << listed;
      EXPECT_FALSE(problem.instead.empty()) << listed;
    }
  }

  // So many files, and each that is spoken of is there.
  void expectAll(size_t least) const {
    const auto all = names();
    EXPECT_GE(all.size(), least);
    for (const auto& [name, rows] : expected_)
      EXPECT_TRUE(std::find(all.begin(), all.end(), name) != all.end()) << name;
  }

 private:
  struct Expected {
    std::string place, severity, words;
  };

  std::filesystem::path folder_;
  std::string ending_;
  std::map<std::string, std::vector<Expected>> expected_;
};

}  // namespace test_support
