#include "viewer/point_sight.h"

#include <gtest/gtest.h>

#include "model/lines/level_sights.h"
#include "model/settingout/setting_out.h"
#include "tests/support/demo_job.h"

namespace viewer {
namespace {

using Words = std::vector<std::string>;

TEST(PointSight, SaysWhatTheScheduleOfLevelsSays) {
  const model::Job job = test_support::demoJob("orchard-house");
  const model::SettingOut out = model::deriveSettingOut(job);
  PointSight points;
  size_t carried = 0;
  for (model::SetUp setUp : job.setUps) {
    setUp.staff = 3;
    const auto sights = model::sightsOfLevels(job, out, setUp);
    for (size_t i = 0; i < sights.size(); ++i) {
      const auto& words = points.words(job, out, setUp, {sights[i].at, out.schedule[i].level});
      if (sights[i].reading.canBeRead()) {
        EXPECT_TRUE(words.empty()) << out.schedule[i].name;
      } else {
        EXPECT_EQ(words, Words(sights[i].words.begin() + 1, sights[i].words.end()))
            << out.schedule[i].name;
        ++carried;
      }
    }
  }
  EXPECT_GT(carried, 5u);
}

TEST(PointSight, RemembersOnlyTheSamePointFromTheSameInstrument) {
  const model::Job job = test_support::demoJob("orchard-house");
  const model::SettingOut out = model::deriveSettingOut(job);
  const model::SetUp site = job.setUps.front();
  const model::Vec3 high{1, 1, 9}, low{1, 1, 0};
  PointSight points;
  const Words first = points.words(job, out, site, high);
  EXPECT_FALSE(first.empty());
  EXPECT_TRUE(points.words(job, out, site, low).empty());
  EXPECT_EQ(points.words(job, out, site, high), first);
  EXPECT_EQ(&points.words(job, out, site, high), &points.words(job, out, site, high));
  model::SetUp raised = site;
  raised.backsight += 3;  // the line is now near enough to what is high
  const Words fromRaised = points.words(job, out, raised, high);
  EXPECT_NE(fromRaised, first);
  EXPECT_EQ(points.words(job, out, site, high), first);
}

}  // namespace
}  // namespace viewer
