// The corpus of bad level books: each gives exactly the problems that expected.tsv lists, each at
// its place.
#include <gtest/gtest.h>

#include "model/levelling/read_book.h"
#include "tests/support/bad_files.h"

namespace {

const test_support::BadFiles& corpus() {
  static const test_support::BadFiles files("bad_books", ".csv");
  return files;
}

class BadBook : public testing::TestWithParam<std::string> {};

TEST_P(BadBook, GivesItsProblemsAtTheirPlaces) {
  model::BookSettings settings;
  settings.marks = {{"Bench mark", 0.500}, {"Step", 0.250}};
  const auto result = model::readBookFile(corpus().path(GetParam()), settings);
  corpus().expect(GetParam(), result.problems);
  EXPECT_EQ(result.book.has_value(), !model::hasErrors(result.problems));
}

std::string nameOf(const testing::TestParamInfo<std::string>& row) { return row.param; }

INSTANTIATE_TEST_SUITE_P(Corpus, BadBook, testing::ValuesIn(corpus().names()), nameOf);

TEST(BadBooks, HasAtLeastFortyFilesAndNoneIsMissing) { corpus().expectAll(40); }

}  // namespace
