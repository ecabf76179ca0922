// The corpus of bad files: each gives exactly the problems that expected.tsv lists, no fewer and no
// more, each at its place.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

#include "model/job/read_job.h"
#include "tests/support/folders.h"

namespace {

namespace fs = std::filesystem;

const fs::path kFolder = fs::path(test_support::sourceFolder()) / "tests/data/bad_jobs";

struct Expected {
  int line = 0, column = 0;
  std::string severity, piece;
};

std::map<std::string, std::vector<Expected>> expectations() {
  std::map<std::string, std::vector<Expected>> all;
  std::ifstream table(kFolder / "expected.tsv");
  for (std::string row; std::getline(table, row);) {
    std::istringstream cells(row);
    std::string name, place, severity, piece;
    std::getline(cells, name, '\t');
    std::getline(cells, place, '\t');
    std::getline(cells, severity, '\t');
    std::getline(cells, piece, '\t');
    const size_t colon = place.find(':');
    all[name].push_back(
        {std::stoi(place.substr(0, colon)), std::stoi(place.substr(colon + 1)), severity, piece});
  }
  return all;
}

std::vector<std::string> files() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(kFolder)) {
    if (entry.path().extension() == ".toml") names.push_back(entry.path().stem().string());
  }
  std::sort(names.begin(), names.end());
  return names;
}

class BadJob : public testing::TestWithParam<std::string> {};

TEST_P(BadJob, GivesItsProblemsAtTheirPlaces) {
  static const auto all = expectations();
  const auto found = all.find(GetParam());
  ASSERT_NE(found, all.end()) << "expected.tsv says nothing about it";
  const auto result = model::readJobFile((kFolder / (GetParam() + ".toml")).string());
  std::string listed;
  for (const auto& problem : result.problems) listed += model::format(problem) + "\n";
  ASSERT_EQ(result.problems.size(), found->second.size()) << listed;
  bool anyError = false;
  for (size_t i = 0; i < result.problems.size(); ++i) {
    const model::Problem& problem = result.problems[i];
    const Expected& expected = found->second[i];
    EXPECT_EQ(problem.place.line, expected.line) << listed;
    EXPECT_EQ(problem.place.column, expected.column) << listed;
    const bool error = problem.severity == model::Severity::Error;
    EXPECT_EQ(error ? "error" : "warning", expected.severity) << listed;
    EXPECT_NE(problem.what.find(expected.piece), std::string::npos) << listed;
    EXPECT_FALSE(problem.instead.empty()) << listed;
    anyError = anyError || error;
  }
  EXPECT_EQ(result.job.has_value(), !anyError);
}

std::string nameOf(const testing::TestParamInfo<std::string>& row) { return row.param; }

INSTANTIATE_TEST_SUITE_P(Corpus, BadJob, testing::ValuesIn(files()), nameOf);

TEST(BadJobs, HasAtLeastSixtyFilesAndNoneIsMissing) {
  const auto names = files();
  EXPECT_GE(names.size(), 60u);
  for (const auto& [name, rows] : expectations()) {
    EXPECT_TRUE(std::find(names.begin(), names.end(), name) != names.end()) << name;
  }
}

}  // namespace
