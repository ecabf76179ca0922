// The corpus of bad files: each gives exactly the problems that expected.tsv lists, no fewer and no
// more, each at its place.
#include <gtest/gtest.h>

#include "model/job/read_job.h"
#include "tests/support/bad_files.h"

namespace {

const test_support::BadFiles& corpus() {
  static const test_support::BadFiles files("bad_jobs", ".toml");
  return files;
}

class BadJob : public testing::TestWithParam<std::string> {};

TEST_P(BadJob, GivesItsProblemsAtTheirPlaces) {
  const auto result = model::readJobFile(corpus().path(GetParam()));
  corpus().expect(GetParam(), result.problems);
  EXPECT_EQ(result.job.has_value(), !model::hasErrors(result.problems));
}

std::string nameOf(const testing::TestParamInfo<std::string>& row) { return row.param; }

INSTANTIATE_TEST_SUITE_P(Corpus, BadJob, testing::ValuesIn(corpus().names()), nameOf);

TEST(BadJobs, HasAtLeastSixtyFilesAndNoneIsMissing) { corpus().expectAll(60); }

}  // namespace
