// Carrying a level to where the instrument cannot read it.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <glm/geometric.hpp>

#include "model/levelling/carry_level.h"

namespace {

using namespace model;

constexpr double kExact = 1e-9;

using Ground = std::function<double(Vec2)>;

// Ground at -0.150 with a dig from x = 8 on.
Ground pit(double bottom) {
  return [bottom](Vec2 at) { return at.x >= 8 ? bottom : -0.150; };
}

Ground slope(double fall) {
  return [fall](Vec2 at) { return -0.150 - fall * at.x; };
}

// Every step hangs on the one before: readings on the staff, tripod on the ground.
void expectSound(const CarryPlan& plan, const Instrument& first, Vec2 target, double level,
                 const Ground& ground) {
  const Tripod tripod;
  double line = first.collimation;
  for (const CarryStep& step : plan.steps) {
    EXPECT_NEAR(step.changeLevel, ground(step.changePoint), kExact);
    EXPECT_NEAR(step.foresight, line - step.changeLevel, kExact);
    EXPECT_GE(step.foresight, 0);
    EXPECT_LE(step.foresight, first.staff);
    EXPECT_NEAR(step.mark, step.changeLevel + step.tape.value_or(0), kExact);
    if (!step.next) continue;
    line = step.next->collimation;
    EXPECT_NEAR(step.next->backsight, line - step.mark, kExact);
    EXPECT_GE(step.next->backsight, 0);
    EXPECT_LE(step.next->backsight, first.staff);
    const double height = line - ground(step.next->at);
    EXPECT_GE(height, tripod.least - kExact);
    EXPECT_LE(height, tripod.most + kExact);
  }
  if (!plan.reading) return;
  EXPECT_NEAR(*plan.reading, line - level, kExact);
  EXPECT_TRUE(readStaff({line, first.staff}, level, ground(target)).canBeRead());
}

TEST(CarryLevel, NeedsNothingWhereTheLevelCanBeRead) {
  const CarryPlan plan = carryLevel({1.250, 4}, {0, 0}, {10, 0}, -0.975, pit(-0.975));
  EXPECT_TRUE(plan.reached && plan.steps.empty());
  EXPECT_EQ(plan.setUps(), 1u);
  EXPECT_NEAR(plan.reading.value(), 2.225, kExact);
  EXPECT_EQ(carryTexts(plan, -0.975), (std::vector<std::string>{"read 2.225 for -0.975"}));
}

TEST(CarryLevel, SetsLowerWhereThatIsEnough) {
  // 4.325 from a line of 1.250; with the legs short it is 4.000 or less.
  const Ground ground = pit(-3.075);
  const CarryPlan plan = carryLevel({1.250, 4}, {0, 0}, {10, 0}, -3.075, ground);
  ASSERT_TRUE(plan.reached);
  EXPECT_EQ(plan.setUps(), 2u);
  EXPECT_FALSE(plan.steps[0].tape);
  expectSound(plan, {1.250, 4}, {10, 0}, -3.075, ground);
}

TEST(CarryLevel, GoesDownADeepPitWithATape) {
  const Ground ground = pit(-5.075);
  const CarryPlan plan = carryLevel({1.250, 4}, {0, 0}, {14, 0}, -5.075, ground);
  ASSERT_TRUE(plan.reached);
  ASSERT_EQ(plan.steps.size(), 1u);
  EXPECT_EQ(plan.setUps(), 2u);
  ASSERT_TRUE(plan.steps[0].tape);
  EXPECT_LT(plan.steps[0].changePoint.x, 8) << "at the edge, on the upper ground";
  EXPECT_GT(plan.steps[0].changePoint.x, 7);
  EXPECT_NEAR(plan.steps[0].mark, -4.1, kExact);
  expectSound(plan, {1.250, 4}, {14, 0}, -5.075, ground);
  const auto texts = carryTexts(plan, -5.075);
  ASSERT_EQ(texts.size(), 2u);
  EXPECT_EQ(texts[0],
            "change point 1 on the ground at -0.150: foresight 1.400; tape plumb down 3950 to "
            "-4.100 and make a mark there; set up again with the line at about -3.675, backsight "
            "about 0.425");
  EXPECT_EQ(texts[1], "then read about 1.400 for -5.075");
}

TEST(CarryLevel, GoesDownASlopeOverChangePoints) {
  const Ground ground = slope(0.2);
  const Vec2 target{60, 0};
  const CarryPlan plan = carryLevel({1.250, 4}, {0, 0}, target, ground(target), ground);
  ASSERT_TRUE(plan.reached);
  EXPECT_GE(plan.setUps(), 4u) << "12 m down, under 4 m at a time";
  EXPECT_LE(plan.setUps(), 6u);
  expectSound(plan, {1.250, 4}, target, ground(target), ground);
}

TEST(CarryLevel, GoesUpASlopeOverChangePoints) {
  const Ground ground = slope(-0.2);
  const Vec2 target{30, 0};
  const CarryPlan plan = carryLevel({1.250, 4}, {0, 0}, target, ground(target), ground);
  ASSERT_TRUE(plan.reached);
  EXPECT_GE(plan.setUps(), 3u);
  for (const CarryStep& step : plan.steps) EXPECT_GT(step.next->collimation, 1.250);
  expectSound(plan, {1.250, 4}, target, ground(target), ground);
}

TEST(CarryLevel, TapesUpToWhatIsPastTheStaff) {
  const Ground ground = slope(0);
  const CarryPlan plan = carryLevel({1.250, 3}, {0, 0}, {10, 0}, 5.150, ground);
  ASSERT_TRUE(plan.reached);
  ASSERT_EQ(plan.steps.size(), 1u);
  EXPECT_NEAR(plan.steps[0].tape.value(), 5.300, kExact);
  EXPECT_FALSE(plan.steps[0].next || plan.reading);
  EXPECT_EQ(carryTexts(plan, 5.150),
            (std::vector<std::string>{"change point 1 on the ground at -0.150: foresight 1.400; "
                                      "tape plumb up 5300 to +5.150"}));
}

TEST(CarryLevel, SaysSoWhereNoGroundCanBeRead) {
  const CarryPlan plan = carryLevel({9, 4}, {0, 0}, {10, 0}, -0.150, slope(0));
  EXPECT_FALSE(plan.reached);
  EXPECT_EQ(carryTexts(plan, -0.150).size(), 1u);
}

RC_GTEST_PROP(CarryLevel, EveryPlanIsSound, ()) {
  const double bottom = *rc::gen::inRange(-9000, -200) / 1000.0;
  const double fall = *rc::gen::inRange(-300, 300) / 1000.0;
  const double edge = *rc::gen::inRange(2, 20), length = *rc::gen::inRange(3, 40);
  const double staff = *rc::gen::element(3.0, 4.0, 5.0);
  const Ground ground = [=](Vec2 at) { return (at.x < edge ? 0 : bottom) - fall * at.x; };
  const Vec2 target{length, length / 3};
  const double level = ground(target) + *rc::gen::inRange(-200, 3000) / 1000.0;
  const Instrument instrument{ground({0, 0}) + 1.400, staff};
  const CarryPlan plan = carryLevel(instrument, {0, 0}, target, level, ground);
  expectSound(plan, instrument, target, level, ground);
  RC_ASSERT(!carryTexts(plan, level).empty());
  RC_ASSERT(plan.setUps() <= 9u);
}

}  // namespace
