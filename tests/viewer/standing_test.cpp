#include "viewer/standing.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/model.h"
#include "tests/support/demo_job.h"
#include "viewer/view_state.h"

namespace viewer {
namespace {

model::SetUp site() {
  model::SetUp setUp;
  setUp.name = "Site";
  setUp.mark = "gate PIER";
  setUp.backsight = 1.240;
  return setUp;
}

model::Job job() {
  model::Job job;
  job.site.benchMark = model::BenchMark{"Nail", {0, 0}, 0.100};
  job.site.marks = {{"Gate pier", {1, 0}, 0.185}};
  job.setUps = {site()};
  return job;
}

using Words = std::vector<std::string>;

TEST(Standing, TakesItsLineFromTheMarkThatItNames) {
  EXPECT_DOUBLE_EQ(instrumentOf(job(), site())->collimation, 0.185 + 1.240);
  model::SetUp main = site();
  main.mark.clear();
  EXPECT_DOUBLE_EQ(instrumentOf(job(), main)->collimation, 0.100 + 1.240);
  main.mark = "Post";
  EXPECT_FALSE(instrumentOf(job(), main));
}

TEST(Standing, ByHandHasItsLineATripodOverTheGround) {
  const auto setUp = standByHand(job(), {4, 5}, -0.300);
  ASSERT_TRUE(setUp);
  EXPECT_NEAR(instrumentOf(job(), *setUp)->collimation, -0.300 + 1.400, 1e-9);
  EXPECT_EQ(setUp->mark, "Nail");
  model::Job bare;
  EXPECT_FALSE(standByHand(bare, {4, 5}, 0));
}

TEST(Standing, SaysLevelStaffAndCutOrFillOfAPoint) {
  const model::Instrument line{1.425, 5};
  const WantedLevel concrete{"top of concrete", -0.900};
  EXPECT_EQ(pointWords(-0.875, line, concrete),
            (Words{"cut 25 to top of concrete", "level -0.875", "staff 2.300"}));
  EXPECT_EQ(pointWords(-0.915, line, concrete),
            (Words{"fill 15 to top of concrete", "level -0.915", "staff 2.340"}));
  EXPECT_EQ(pointWords(-0.901, line, concrete),
            (Words{"on: top of concrete", "level -0.901", "staff 2.326"}));
  EXPECT_EQ(pointWords(2.000, line, {}), (Words{"level +2.000", "staff -0.575, upside down"}));
  EXPECT_EQ(pointWords(-3.600, line, {}), (Words{"level -3.600", "too low for a 5 m staff"}));
  EXPECT_EQ(pointWords(6.500, model::Instrument{1.425, 4}, {}),
            (Words{"level +6.500", "too high for a 4 m staff"}));
  EXPECT_EQ(pointWords(0.1, {}, WantedLevel{"", 0}), (Words{"cut 100 to 0.000", "level +0.100"}));
}

RC_GTEST_PROP(Standing, ABiggerReadingIsALowerPoint, ()) {
  const double line = *rc::gen::inRange(-2000, 6000) / 1000.0;
  const double down = *rc::gen::inRange(0, 4900) / 1000.0;
  const double further = *rc::gen::inRange(1, 100) / 1000.0;
  const model::Instrument from{line, 5};
  const double high = std::stod(shortReading(from, line - down));
  const double low = std::stod(shortReading(from, line - down - further));
  RC_ASSERT(std::abs(high - down) < 0.0006);
  RC_ASSERT(low > high);
  // The lower of the two wants fill to the other, the higher cut.
  const std::string to = pointWords(line - down - further, from, WantedLevel{"it", line - down})[0];
  RC_ASSERT(to.rfind(further > 0.0021 ? "fill " : further < 0.0019 ? "on" : "", 0) == 0);
}

TEST(Standing, IsChosenOneAfterTheOtherAndThenNone) {
  model::Job two = job();
  two.setUps.push_back(site());
  two.setUps[1].name = "Cellar";
  const auto first = nextSetUp(two, std::nullopt);
  ASSERT_TRUE(first);
  EXPECT_EQ(first->name, "Site");
  EXPECT_EQ(nextSetUp(two, first)->name, "Cellar");
  EXPECT_FALSE(nextSetUp(two, nextSetUp(two, first)));
}

TEST(Standing, IsTheSameInAJobReadAgainAsThatSaysNow) {
  model::Job moved = job();
  moved.setUps[0].backsight = 1.300;
  EXPECT_EQ(sameSetUp(moved, site())->backsight, 1.300);
  moved.setUps.clear();
  EXPECT_FALSE(sameSetUp(moved, site()));
  auto hand = standByHand(moved, {0, 0}, 0);
  EXPECT_EQ(sameSetUp(moved, hand)->name, kByHand);
  moved.site.benchMark.reset();
  EXPECT_FALSE(sameSetUp(moved, hand));
}

TEST(Standing, SaysHowALevelThatIsOutOfReachIsCarried) {
  const model::Model model = model::buildModel(test_support::demoJob("orchard-house"));
  const model::SetUp& plate = model.job.setUps.back();
  const auto& out = model.settingOut;
  EXPECT_FALSE(carryWords(model.job, out, plate, out.levels.cellarFormation).empty());
  EXPECT_TRUE(carryWords(model.job, out, plate, 3.000).empty());
}

TEST(Standing, BringsThePlaneOfItsLineAndLeavesTheLevelWanted) {
  ViewState state;
  state.readFrom(site(), job());
  EXPECT_TRUE(state.switches.levelPlane);
  EXPECT_TRUE(state.planeIsLine(job()));
  EXPECT_FALSE(state.wantedNow(job())) << "nothing is cut to the line of sight";
  state.switches.levelPlaneAt = 0.5f;
  ASSERT_TRUE(state.wantedNow(job()));
  EXPECT_NEAR(state.wantedNow(job())->level, 0.5, 1e-6);
  state.wanted = WantedLevel{"top of concrete", -0.9};
  EXPECT_EQ(state.wantedNow(job())->name, "top of concrete");
  EXPECT_TRUE(state.backOut());
  EXPECT_FALSE(state.wanted);
  EXPECT_TRUE(state.backOut());
  EXPECT_FALSE(state.standing);
  EXPECT_FALSE(state.switches.levelPlane);
}

}  // namespace
}  // namespace viewer
