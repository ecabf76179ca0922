// The corpus of bad level books: each gives exactly the problems that expected.tsv lists, each at
// its place.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

#include "model/levelling/read_book.h"
#include "tests/support/folders.h"

namespace {

namespace fs = std::filesystem;

const fs::path kFolder = fs::path(test_support::sourceFolder()) / "tests/data/bad_books";

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

class BadBook : public testing::TestWithParam<std::string> {};

TEST_P(BadBook, GivesItsProblemsAtTheirPlaces) {
  static const auto all = expectations();
  const auto found = all.find(GetParam());
  ASSERT_NE(found, all.end()) << "expected.tsv says nothing about it";
  model::BookSettings settings;
  settings.marks = {{"Bench mark", 0.500}, {"Step", 0.250}};
  const auto result = model::readBookFile((kFolder / (GetParam() + ".csv")).string(), settings);
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
  EXPECT_EQ(result.book.has_value(), !model::hasErrors(result.problems));
}

std::string nameOf(const testing::TestParamInfo<std::string>& row) { return row.param; }

INSTANTIATE_TEST_SUITE_P(Corpus, BadBook, testing::ValuesIn(files()), nameOf);

TEST(BadBooks, HasAtLeastFortyFilesAndNoneIsMissing) {
  const auto names = files();
  EXPECT_GE(names.size(), 40u);
  for (const auto& [name, rows] : expectations()) {
    EXPECT_TRUE(std::find(names.begin(), names.end(), name) != names.end()) << name;
  }
}

}  // namespace
