// Readings beside a job, as a user meets them.
#include <gtest/gtest.h>

#include "tests/program/program_fixture.h"

namespace program_test {
namespace {

using Readings = InFolder;

const std::string kJob =
    "[outline]\ncorners = [[0, 0], [6740, 0], [6740, 4490], [0, 4490]]\n"
    "[[readings]]\nname = \"First\"\nfile = \"first.csv\"\n";

TEST_F(Readings, AreCheckedWithTheJobAndNamedByTheirOwnFile) {
  const std::string job = writeFile("house.toml", kJob);
  const std::string readings =
      writeFile("first.csv", "kind,target,at,value\nlevel,damp-course,A,0.002\n");
  EXPECT_EQ(stringcourse({"check", job}).exitCode, 0);
  writeFile("first.csv", "kind,target,at,value\nlevel,damp-cours,A,0.002\n");
  const ProgramRun bad = stringcourse({"check", job});
  EXPECT_EQ(bad.exitCode, 1);
  EXPECT_EQ(bad.err, readings +
                         ":2:7: error: there is no target \"damp-cours\"; did you mean "
                         "\"damp-course\"?\n");
}

TEST_F(Readings, ThatAreMissingAreNamedAtTheirKey) {
  const std::string job = writeFile("house.toml", kJob);
  const ProgramRun run = stringcourse({"check", job});
  EXPECT_EQ(run.exitCode, 1);
  EXPECT_EQ(run.err.find(job + ":5:1: error: readings \"First\": first.csv cannot be read"), 0u)
      << run.err;
}

}  // namespace
}  // namespace program_test
