// `readings` with the real program.
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "tests/program/program_fixture.h"
#include "tests/support/csv_reader.h"

namespace program_test {
namespace {

using Rows = std::vector<std::vector<std::string>>;

const std::vector<std::string> kParts{"deviations", "changes", "beds", "walls", "rafters"};

TEST(ReadingsCommand, GivesEveryPartAsCsvAndAsJsonAndTheyAgree) {
  const std::string house = demoPath("orchard-house");
  const ProgramRun all = stringcourse({"readings", house, "--json"});
  ASSERT_EQ(all.exitCode, 0) << all.err;
  const auto whole = nlohmann::json::parse(all.out);
  ASSERT_EQ(whole.size(), kParts.size());
  for (const std::string& part : kParts) {
    const ProgramRun run = stringcourse({"readings", house, "--what", part, "--csv"});
    ASSERT_EQ(run.exitCode, 0) << part << run.err;
    EXPECT_EQ(test_support::readCsv(run.out).size(), whole.at(part).size() + 1) << part;
    EXPECT_GT(whole.at(part).size(), 0u) << part;
  }
}

TEST(ReadingsCommand, SaysWhatCornerEAsksFor) {
  const ProgramRun run = stringcourse({"readings", demoPath("orchard-house"), "--json"});
  const auto whole = nlohmann::json::parse(run.out);
  const auto& deviations = whole.at("deviations");
  const auto corner = std::find_if(deviations.begin(), deviations.end(), [](const auto& row) {
    return row.at("what") == "top of concrete, corner E";
  });
  ASSERT_NE(corner, deviations.end());
  EXPECT_EQ(corner->at("mark"), "▼ out");
  EXPECT_EQ(corner->at("off"), "12 low, 10 allowed: out");
  EXPECT_EQ(corner->at("off mm"), -12);
  EXPECT_EQ(corner->at("photo"), "concrete-corner-e.jpg");
  const auto& changes = whole.at("changes");
  EXPECT_TRUE(std::any_of(changes.begin(), changes.end(), [](const auto& row) {
    return row.at("words").template get<std::string>().find("corner E is 12 low: first bed 22") ==
           0;
  }));
}

TEST(ReadingsCommand, TakesOneSetAlone) {
  const ProgramRun run =
      stringcourse({"readings", demoPath("orchard-house"), "--set", "Concrete", "--csv"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  const Rows rows = test_support::readCsv(run.out);
  const auto set =
      static_cast<size_t>(std::find(rows[0].begin(), rows[0].end(), "set") - rows[0].begin());
  ASSERT_GT(rows.size(), 10u);
  for (size_t i = 1; i < rows.size(); ++i) EXPECT_EQ(rows[i].at(set), "Concrete");
}

TEST(ReadingsCommand, IsForPeopleWithMarksAndSources) {
  const ProgramRun run = stringcourse({"readings", demoPath("orchard-house")});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  for (const char* part : {"▼ out", "● within", "NHBC Standards 2011, 1.2", "Ridge held"})
    EXPECT_NE(run.out.find(part), std::string::npos) << part;
  const ProgramRun none = stringcourse({"readings", demoPath("smallest")});
  EXPECT_EQ(none.exitCode, 0);
  EXPECT_NE(none.out.find("has no readings"), std::string::npos);
}

TEST(ReadingsCommand, GivesARodFromTheConcreteAsBuilt) {
  const std::string house = demoPath("orchard-house");
  const ProgramRun rod = stringcourse({"rod", house, "--as-built", "--corner", "E", "--csv"});
  ASSERT_EQ(rod.exitCode, 0) << rod.err;
  EXPECT_NE(rod.out.find("-0.987"), std::string::npos);
  EXPECT_EQ(rod.out.find("-0.975"), std::string::npos);
  const ProgramRun none = stringcourse({"rod", demoPath("smallest"), "--as-built"});
  EXPECT_EQ(none.exitCode, 2);
  EXPECT_NE(none.err.find("no top of concrete"), std::string::npos);
}

TEST(ReadingsCommand, WrongUseIsSaid) {
  const ProgramRun set = stringcourse({"readings", demoPath("orchard-house"), "--set", "Tuesday"});
  EXPECT_EQ(set.exitCode, 2);
  EXPECT_NE(set.err.find("the sets are Concrete, Walls and plate"), std::string::npos);
  EXPECT_EQ(stringcourse({"readings", demoPath("orchard-house"), "--what", "pegs"}).exitCode, 2);
  EXPECT_EQ(stringcourse({"readings", "/no/such/job.toml"}).exitCode, 1);
}

}  // namespace
}  // namespace program_test
