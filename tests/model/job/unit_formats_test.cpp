// Bricks and blocks by name, in the table, read and written back.
#include "model/job/unit_formats.h"

#include <gtest/gtest.h>

#include "model/job/key_table.h"
#include "model/job/read_job.h"
#include "model/job/write_job.h"

namespace model {
namespace {

const std::string kOutline = "[outline]\ncorners = [[0, 0], [8990, 0], [8990, 6740], [0, 6740]]\n";

Job read(const std::string& walls) {
  const ReadResult result = readJob(kOutline + "[walls]\n" + walls, "test.toml");
  for (const Problem& problem : result.problems)
    EXPECT_NE(problem.severity, Severity::Error) << format(problem);
  return result.job.value_or(Job{});
}

TEST(UnitFormats, HaveTheNamesOfTheirKeysInOrder) {
  const auto bricks = choicesOf(*findKey("walls", "bricks"));
  for (size_t i = 0; i < bricks.size(); ++i)
    EXPECT_EQ(bricks[i], sizesOf(static_cast<BrickFormat>(i)).name);
  const auto blocks = choicesOf(*findKey("walls", "blocks"));
  for (size_t i = 0; i < blocks.size(); ++i)
    EXPECT_EQ(blocks[i], sizesOf(static_cast<BlockFormat>(i)).name);
  EXPECT_EQ(static_cast<size_t>(BrickFormat::IndianModular) + 1, bricks.size());
  EXPECT_EQ(static_cast<size_t>(BlockFormat::TwelveDf) + 1, blocks.size());
}

// A bed is never thinner than 4 mm nor thicker than 16, whatever whole courses ask.
TEST(UnitFormats, MakeCoursesOfTheUnitAndItsBed) {
  for (size_t i = 0; i < choicesOf(*findKey("walls", "bricks")).size(); ++i) {
    const BrickFormatSizes& sizes = sizesOf(static_cast<BrickFormat>(i));
    EXPECT_GT(sizes.course - sizes.height, 0.004) << sizes.name;
    EXPECT_LT(sizes.course - sizes.height, 0.016) << sizes.name;
    EXPECT_GT(sizes.length, sizes.width) << sizes.name;
  }
}

// The first of each is what holds when nothing is said, to the last digit.
TEST(UnitFormats, OfAJobThatNamesNoneAreTheDefaults) {
  Job named;
  takeBrickSizes(named.walls, BrickFormat::Uk);
  takeBlockSizes(named.walls, BlockFormat::Uk100);
  EXPECT_TRUE(sameJob(named, Job{}));
}

TEST(UnitFormats, GiveTheSizesThatTheFileLeavesOut) {
  const Job job = read("brick_height = 60\nbricks = \"NF\"\nblocks = \"UK 140\"\n");
  EXPECT_DOUBLE_EQ(job.walls.brickLength, 0.240);
  EXPECT_DOUBLE_EQ(job.walls.outerLeaf, 0.115);
  EXPECT_DOUBLE_EQ(job.walls.brickHeight, 0.060);
  EXPECT_DOUBLE_EQ(job.walls.innerLeaf, 0.140);
}

TEST(UnitFormats, AreNamedWhenTheNameIsWrongAndNothingElseIsMadeUp) {
  const ReadResult result =
      readJob(kOutline +
                  "[walls]\nbricks = \"brick\"\n[[opening]]\nname = \"Door\"\nwall = "
                  "\"A-B\"\nfrom = \"A\"\nat = 1790\n",
              "test.toml");
  ASSERT_EQ(result.problems.size(), 1u);
  const std::string said = format(result.problems[0]);
  EXPECT_NE(said.find("walls.bricks is \"brick\""), std::string::npos) << said;
  EXPECT_NE(said.find("US engineer"), std::string::npos) << said;
  const auto near = readJob(kOutline + "[walls]\nbricks = \"us modullar\"\n", "test.toml");
  ASSERT_EQ(near.problems.size(), 1u);
  EXPECT_NE(format(near.problems[0]).find("did you mean \"US modular\"?"), std::string::npos);
}

TEST(UnitFormats, ChangedByNameAreWrittenWithoutTheirSizes) {
  const std::string text =
      kOutline + "[walls]\nbricks = \"UK\"  # as delivered\nbrick_height = 60\n";
  Job job = *readJob(text, "test.toml").job;
  const double own = job.walls.brickHeight;
  takeBrickSizes(job.walls, BrickFormat::Danish);
  job.walls.brickHeight = own;
  const std::string written = writeJob(text, job);
  EXPECT_EQ(written,
            kOutline + "[walls]\nbricks = \"Danish\"  # as delivered\nbrick_height = 60\n");
}

// 10 is what joints are when nothing is said, but not of Danish bricks.
TEST(UnitFormats, WrittenAnewKeepASizeThatIsOnlyTheDefaultOfOthers) {
  Job job;
  job.outline = {{0, 0}, {8.990, 0}, {8.990, 6.740}, {0, 6.740}};
  takeBrickSizes(job.walls, BrickFormat::Danish);
  job.walls.joint = 0.010;
  const ReadResult again = readJob(writeJob("", job), "test.toml");
  ASSERT_TRUE(again.job);
  EXPECT_TRUE(sameJob(*again.job, job));
}

std::string saidOf(const std::string& joint) {
  std::string said;
  for (const Problem& problem :
       readJob(kOutline +
                   "[[opening]]\nname = \"Door\"\nwall = \"A-B\"\nfrom = \"A\"\nat = 1790\n" +
                   "[[movement_joint]]\n" + joint,
               "test.toml")
           .problems)
    said += format(problem) + "\n";
  return said;
}

TEST(MovementJoints, LieInTheirWallClearOfOpenings) {
  EXPECT_EQ(saidOf("wall = \"A-B\"\nfrom = \"A\"\nat = 4500\n"), "");
  EXPECT_NE(
      saidOf("wall = \"A-B\"\nfrom = \"A\"\nat = 2000\n").find("runs through opening \"Door\""),
      std::string::npos);
  // Measured from the other end it is the same place.
  EXPECT_NE(
      saidOf("wall = \"A-B\"\nfrom = \"B\"\nat = 6990\n").find("runs through opening \"Door\""),
      std::string::npos);
  EXPECT_NE(saidOf("wall = \"A-B\"\nfrom = \"A\"\nat = 8900\n").find("at least a brick"),
            std::string::npos);
  EXPECT_NE(saidOf("wall = \"A-B\"\nfrom = \"C\"\nat = 4500\n").find("is no end of wall A-B"),
            std::string::npos);
  EXPECT_NE(saidOf("wall = \"A-B\"\nfrom = \"A\"\nat = 4500\n[[movement_joint]]\nwall = "
                   "\"A-B\"\nfrom = \"B\"\nat = 4490\n")
                .find("less than a brick from movement joint 1"),
            std::string::npos);
}

}  // namespace
}  // namespace model
