// A level is typed in metres or called by the name that the schedule gives it.
#include "viewer/read_level.h"

#include <gtest/gtest.h>

#include "model/model.h"
#include "tests/support/demo_job.h"

namespace viewer {
namespace {

class ReadLevel : public testing::Test {
 protected:
  double level(const std::string& text) const {
    const auto read = readLevel(text, out_);
    const double* value = std::get_if<double>(&read);
    return value ? *value : -1e9;
  }
  std::string why(const std::string& text) const {
    const auto read = readLevel(text, out_);
    const auto* none = std::get_if<NoLevel>(&read);
    return none ? none->why : "";
  }
  model::SettingOut out_ = model::deriveSettingOut(test_support::demoJob("orchard-house"));
};

TEST_F(ReadLevel, TakesMetresAsPeopleWriteThem) {
  EXPECT_EQ(level("1.350"), 1.35);
  EXPECT_EQ(level("+1.351 m"), 1.351);
  EXPECT_EQ(level(" -0.975"), -0.975);
  EXPECT_EQ(level("0"), 0);
}

TEST_F(ReadLevel, TakesTheNameOfEveryScheduledLevelWithItsPlace) {
  ASSERT_FALSE(out_.schedule.empty());
  for (const auto& line : out_.schedule) {
    EXPECT_NEAR(level(line.key), line.level, 1e-4) << line.key;
  }
  EXPECT_NEAR(level("Ridge"), out_.levels.ridge, 1e-4);
  EXPECT_NEAR(level("damp"), out_.levels.dampCourse, 1e-4) << "a beginning is enough";
}

TEST_F(ReadLevel, SaysWhatThereIsWhenItIsNone) {
  EXPECT_NE(why("high").find("ridge"), std::string::npos);
  EXPECT_NE(why("").find("ridge"), std::string::npos);
  EXPECT_NE(why("sill").find("say which"), std::string::npos);
  for (const char* bad : {"1e9", "nan", "inf", "1.2.3", "+-1", "--1"})
    EXPECT_FALSE(why(bad).empty()) << bad;
}

}  // namespace
}  // namespace viewer
