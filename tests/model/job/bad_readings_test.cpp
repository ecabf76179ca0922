// The corpus of bad files of readings: each gives exactly the problems that expected.tsv lists, no
// fewer and no more, each at its place.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

#include "model/job/read_job.h"
#include "model/job/readings_csv.h"
#include "model/job/text_file.h"
#include "tests/support/folders.h"

namespace {

namespace fs = std::filesystem;

const fs::path kFolder = fs::path(test_support::sourceFolder()) / "tests/data/bad_readings";

struct Expected {
  std::string place, severity, piece;
};

std::map<std::string, std::vector<Expected>> expectations() {
  std::map<std::string, std::vector<Expected>> all;
  std::ifstream table(kFolder / "expected.tsv");
  for (std::string row; std::getline(table, row);) {
    std::istringstream cells(row);
    std::string name;
    Expected expected;
    std::getline(cells, name, '\t');
    std::getline(cells, expected.place, '\t');
    std::getline(cells, expected.severity, '\t');
    std::getline(cells, expected.piece, '\t');
    all[name].push_back(expected);
  }
  return all;
}

std::vector<std::string> files() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(kFolder)) {
    if (entry.path().extension() == ".csv") names.push_back(entry.path().stem().string());
  }
  std::sort(names.begin(), names.end());
  return names;
}

model::Job jobOfTheFolder() {
  const auto read = model::readJobFile((kFolder / "job.toml").string());
  EXPECT_TRUE(read.problems.empty());
  return read.job.value_or(model::Job{});
}

class BadReadings : public testing::TestWithParam<std::string> {};

TEST_P(BadReadings, GiveTheirProblemsAtTheirPlaces) {
  static const auto all = expectations();
  static const model::Job job = jobOfTheFolder();
  const auto found = all.find(GetParam());
  ASSERT_NE(found, all.end()) << "expected.tsv says nothing about it";
  std::string fault;
  const auto text = model::readTextFile((kFolder / (GetParam() + ".csv")).string(), fault);
  ASSERT_TRUE(text) << fault;
  const auto result = model::readReadings(*text, "readings.csv", job);
  std::string listed;
  for (const auto& problem : result.problems) listed += model::format(problem) + "\n";
  ASSERT_EQ(result.problems.size(), found->second.size()) << listed;
  for (size_t i = 0; i < result.problems.size(); ++i) {
    const model::Problem& problem = result.problems[i];
    const Expected& expected = found->second[i];
    EXPECT_EQ(std::to_string(problem.place.line) + ":" + std::to_string(problem.place.column),
              expected.place)
        << listed;
    const bool error = problem.severity == model::Severity::Error;
    EXPECT_EQ(error ? "error" : "warning", expected.severity) << listed;
    EXPECT_NE(problem.what.find(expected.piece), std::string::npos) << listed;
    EXPECT_FALSE(problem.instead.empty()) << listed;
  }
}

std::string nameOf(const testing::TestParamInfo<std::string>& row) { return row.param; }

INSTANTIATE_TEST_SUITE_P(Corpus, BadReadings, testing::ValuesIn(files()), nameOf);

TEST(BadReadings, AreAtLeastFortyAndNoneIsMissing) {
  const auto names = files();
  EXPECT_GE(names.size(), 40u);
  for (const auto& [name, rows] : expectations()) {
    EXPECT_TRUE(std::find(names.begin(), names.end(), name) != names.end()) << name;
  }
}

}  // namespace
