#include <gtest/gtest.h>

#include <fstream>
#include <set>
#include <sstream>

#include "model/job/key_table.h"
#include "model/job/read_job.h"
#include "model/job/value_text.h"
#include "model/job/write_job.h"
#include "tests/support/folders.h"

namespace {

// The example of every key in a job that has one of everything.
std::string jobOfExamples() {
  std::string text;
  for (const model::TableSpec& table : model::tableTable()) {
    const bool many = table.form == model::TableForm::Many;
    text += std::string(many ? "[[" : "[") + table.path + (many ? "]]\n" : "]\n");
    for (const model::KeySpec& key : model::keyTable()) {
      if (std::string_view(key.table) == table.path) {
        text += std::string(key.name) + " = " + key.example + "\n";
      }
    }
  }
  return text;
}

TEST(JobFileReference, IsTheOneInTheAssetsFolder) {
  const std::string path = test_support::sourceFolder() + "/assets/job-file.md";
  std::ifstream stream(path);
  std::ostringstream stored;
  stored << stream.rdbuf();
  if (stored.str() == model::keyReference()) return;
  const std::string fresh = test_support::buildFolder() + "/job-file.md";
  std::ofstream(fresh) << model::keyReference();
  FAIL() << "assets/job-file.md is not what the reader's table says; copy " << fresh << " over it";
}

TEST(JobFileReference, EveryExampleIsReadAsItsKeyNeedsIt) {
  // The examples do not make one building together; only their types and ranges count here.
  const auto result = model::readJob(jobOfExamples(), "examples");
  for (const model::Problem& problem : result.problems) {
    for (const char* slip : {"there is no key", "is needed, like", "is allowed",
                             "cannot be read:", "is one of", "is not closed", "given twice"}) {
      EXPECT_EQ(model::format(problem).find(slip), std::string::npos) << model::format(problem);
    }
  }
}

TEST(JobFileReference, EveryDefaultLiesInItsRange) {
  model::Job job;
  for (const model::TableSpec& table : model::tableTable()) table.resize(job, 1);
  for (const model::KeySpec& key : model::keyTable()) {
    const model::Slot slot = key.slot(job, 0);
    if (const auto* number = std::get_if<double*>(&slot); number && !key.required) {
      EXPECT_GE(**number, key.low) << key.table << "." << key.name;
      EXPECT_LE(**number, key.high) << key.table << "." << key.name;
    }
  }
}

TEST(JobFileReference, NoKeyIsThereTwiceAndEachHasAMeaning) {
  std::set<std::string> seen;
  for (const model::KeySpec& key : model::keyTable()) {
    const std::string path = std::string(key.table) + "." + key.name;
    EXPECT_TRUE(seen.insert(path).second) << path;
    EXPECT_NE(std::string(key.meaning), "") << path;
    EXPECT_NE(std::string(key.example), "") << path;
    EXPECT_NE(model::findTable(key.table), nullptr) << path;
  }
}

TEST(StarterJob, ReadsWithoutAnyProblem) {
  const auto result = model::readJob(model::starterJob(), "starter");
  for (const auto& problem : result.problems) ADD_FAILURE() << model::format(problem);
  EXPECT_TRUE(result.job);
}

TEST(StarterJob, NamesEveryKeyAndSection) {
  const std::string text = model::starterJob();
  for (const model::KeySpec& key : model::keyTable()) {
    EXPECT_NE(text.find(std::string(key.name) + " = "), std::string::npos)
        << key.table << "." << key.name;
  }
  for (const model::TableSpec& table : model::tableTable()) {
    EXPECT_NE(text.find("[" + std::string(table.path) + "]"), std::string::npos) << table.path;
  }
}

TEST(StarterJob, SaysNothingThatDiffersFromTheDefaults) {
  auto result = model::readJob(model::starterJob(), "starter");
  ASSERT_TRUE(result.job);
  model::Job expected;
  expected.outline = result.job->outline;
  expected.openings = result.job->openings;
  EXPECT_TRUE(model::sameJob(*result.job, expected));
  EXPECT_GE(expected.openings.size(), 2u);
}

}  // namespace
