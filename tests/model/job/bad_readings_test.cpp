// The corpus of bad files of readings: each gives exactly the problems that expected.tsv lists, no
// fewer and no more, each at its place.
#include <gtest/gtest.h>

#include "model/job/read_job.h"
#include "model/job/readings_csv.h"
#include "model/job/text_file.h"
#include "tests/support/bad_files.h"

namespace {

const test_support::BadFiles& corpus() {
  static const test_support::BadFiles files("bad_readings", ".csv");
  return files;
}

model::Job jobOfTheFolder() {
  const auto read = model::readJobFile(corpus().beside("job.toml"));
  EXPECT_TRUE(read.problems.empty());
  return read.job.value_or(model::Job{});
}

class BadReadings : public testing::TestWithParam<std::string> {};

TEST_P(BadReadings, GiveTheirProblemsAtTheirPlaces) {
  static const model::Job job = jobOfTheFolder();
  std::string fault;
  const auto text = model::readTextFile(corpus().path(GetParam()), fault);
  ASSERT_TRUE(text) << fault;
  corpus().expect(GetParam(), model::readReadings(*text, "readings.csv", job).problems);
}

std::string nameOf(const testing::TestParamInfo<std::string>& row) { return row.param; }

INSTANTIATE_TEST_SUITE_P(Corpus, BadReadings, testing::ValuesIn(corpus().names()), nameOf);

TEST(BadReadings, AreAtLeastFortyAndNoneIsMissing) { corpus().expectAll(40); }

}  // namespace
