#include <algorithm>
#include <map>

#include "model/level_text.h"
#include "model/settingout/offsets.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"
#include "tests/viewer/overlays/overlay_fixture.h"
#include "viewer/overlays/plan_dimensions.h"
#include "viewer/section.h"

namespace viewer {
namespace {

class Dimensions : public OverlayTest {
 protected:
  Dimensions() { overlays_ = {true, true, true, true, true, true, true, true}; }

  static std::map<std::string, int> counted(const std::vector<DrawnText>& all) {
    std::map<std::string, int> counts;
    for (const DrawnText& text : all) ++counts[text.text];
    return counts;
  }

  void expectAllInPlan(double time, int width, int height) {
    std::map<std::string, int> wanted;
    for (const auto& wall : model_.settingOut.walls) ++wanted[model::lengthText(wall.length)];
    for (const auto& offset : model::deriveOffsets(model_.job, model_.settingOut))
      if (offset.distance >= kTouching) ++wanted[model::lengthText(offset.distance)];
    const auto all = texts("plan", time, width, height);
    const auto said = counted(all);
    for (const auto& [length, times] : wanted) {
      const auto found = said.find(length);
      EXPECT_GE(found == said.end() ? 0 : found->second, times)
          << length << " at " << time << " on " << width << "x" << height;
    }
    for (size_t i = 0; i < all.size(); ++i)
      for (size_t j = i + 1; j < all.size(); ++j)
        EXPECT_FALSE(all[i].box.grown(-0.5f).overlaps(all[j].box.grown(-0.5f)))
            << all[i].text << " runs into " << all[j].text;
  }

  void expectAllInPlanAtEveryStage() {
    for (size_t stage = 0; stage < model_.programme.stages.size(); stage += 3)
      expectAllInPlan(double(stage) + 1, 1280, 720);
    const double setOut = endOf("set-out");
    expectAllInPlan(setOut, 1280, 720);
    unit_ = 1.5f;
    expectAllInPlan(setOut, 1920, 1080);
    unit_ = 1;
  }

  std::vector<std::string> among(const std::vector<DrawnText>& all) const {
    std::vector<std::string> lengths;
    for (const auto& wall : model_.settingOut.walls) {
      const std::string length = model::lengthText(wall.length);
      if (counted(all).count(length) &&
          std::find(lengths.begin(), lengths.end(), length) == lengths.end())
        lengths.push_back(length);
    }
    std::sort(lengths.begin(), lengths.end());
    return lengths;
  }
};

using Lengths = std::vector<std::string>;

TEST_F(Dimensions, OfEveryWallAndOffsetAreInThePlanOfEveryJob) {
  for (const std::string& name : test_support::demoNames()) {
    SCOPED_TRACE(name);
    open("assets/jobs/" + name);
    expectAllInPlanAtEveryStage();
  }
  for (const char* name : {"extension", "t-house", "skew-in-feet"}) {
    SCOPED_TRACE(name);
    open(std::string("tests/data/jobs/") + name);
    expectAllInPlanAtEveryStage();
  }
}

TEST_F(Dimensions, OfEveryWallAndOffsetAreInThePlanOfDrawnJobs) {
  for (unsigned seed = 1; seed <= 30 && !HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    open(test_support::seededJob(seed));
    expectAllInPlan(endOf("set-out"), 1280, 720);
  }
}

TEST_F(Dimensions, OfElevationsAreOfWallsSeenAtTheirLength) {
  open("tests/data/jobs/skew-in-feet");  // all but two of its walls are askew
  const double end = double(model_.programme.stages.size());
  EXPECT_EQ(among(texts("north", end)), Lengths{});
  EXPECT_EQ(among(texts("south", end)), Lengths{"11595"});  // A-B, 38'-0 1/2"
  EXPECT_EQ(among(texts("west", end)), Lengths{"7315"});    // E-A, 24'
}

TEST_F(Dimensions, OfSectionsAreOfWhatIsLeftNotOfWhatIsCutAway) {
  open("tests/data/jobs/skew-in-feet");
  const double end = double(model_.programme.stages.size());
  const double cut = tellingCut(model_, Across::Y);
  // Looking south what is left is A-B, from inside; looking north it is gone.
  EXPECT_EQ(among(texts("north", end, 1280, 720, sectionAt(scene_, Across::Y, cut, +1))),
            Lengths{"11595"});
  EXPECT_EQ(among(texts("south", end, 1280, 720, sectionAt(scene_, Across::Y, cut, -1))),
            Lengths{});
}

TEST(PlanDimensions, LineUpClearOfOneAnotherInANarrowCourt) {
  // Two walls look at each other across three metres: their lines are not one line.
  model::Job job = test_support::demoJob("smallest");
  job.outline = {{0, 0}, {11, 0}, {11, 8}, {7, 8}, {7, 4}, {4, 4}, {4, 8}, {0, 8}};
  job.openings.clear();
  const auto out = model::deriveSettingOut(job);
  const auto all = planDimensions(job, out, model::deriveOffsets(job, out), {});
  for (size_t i = 0; i < 8; ++i)
    for (size_t j = i + 1; j < 8; ++j) {
      const bool upright = std::abs(all[i].from.x - all[i].to.x) < 1e-9;
      if (upright != (std::abs(all[j].from.x - all[j].to.x) < 1e-9)) continue;
      const double apart = upright ? std::abs(all[i].from.x - all[j].from.x)
                                   : std::abs(all[i].from.y - all[j].from.y);
      const auto span = [&](const PlanDimension& d) {
        return upright ? std::minmax(d.from.y, d.to.y) : std::minmax(d.from.x, d.to.x);
      };
      const auto [a0, a1] = span(all[i]);
      const auto [b0, b1] = span(all[j]);
      if (std::min(double(a1), double(b1)) - std::max(double(a0), double(b0)) > 0.1) {
        EXPECT_GT(apart, 0.15) << out.walls[i].name << " and " << out.walls[j].name;
      }
    }
}

TEST(PlanDimensions, MoveOffsetsAlongOnlyAsFarAsBothSidesRun) {
  model::SiteOffset offset;
  offset.from = {0, 3};
  offset.at = {-2, 3};
  offset.distance = 2;
  const Slide slide = slideOf(offset, {{0, 0}, {5, 0}, {5, 4}, {0, 4}}, {{-2, 9}, {-2, 1}});
  // To the left of "west" is south.
  EXPECT_NEAR(slide.forth, 2, 1e-9);
  EXPECT_NEAR(slide.back, -1, 1e-9);
}

}  // namespace
}  // namespace viewer
