#include "viewer/playback.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

#include "tests/support/demo_job.h"
#include "viewer/opening_pace.h"
#include "viewer/scene.h"

namespace viewer {
namespace {

Playback withStages(int count) {
  Playback playback;
  playback.setStageCount(count);
  return playback;
}

TEST(Playback, TakesFourSecondsForAStage) {
  Playback playback = withStages(10);
  playback.play();
  EXPECT_TRUE(playback.advance(4));
  EXPECT_NEAR(playback.time(), 1, 1e-9);
  playback.setSpeed(8);
  playback.advance(1);
  EXPECT_NEAR(playback.time(), 3, 1e-9);
}

TEST(Playback, StandsStillWhilePaused) {
  Playback playback = withStages(10);
  EXPECT_FALSE(playback.advance(100));
  EXPECT_EQ(playback.time(), 0);
}

TEST(Playback, StopsAtTheEndAndStartsAgainFromTheFront) {
  Playback playback = withStages(2);
  playback.play();
  playback.advance(1000);
  EXPECT_EQ(playback.time(), 2);
  EXPECT_FALSE(playback.playing());
  playback.play();
  EXPECT_EQ(playback.time(), 0);
  EXPECT_TRUE(playback.playing());
}

TEST(Playback, GoesRoundWhenLooping) {
  Playback playback = withStages(2);
  playback.setRound(Round::All);
  playback.play();
  playback.advance(9);
  EXPECT_NEAR(playback.time(), 0.25, 1e-9);
  EXPECT_TRUE(playback.playing());
}

TEST(Playback, StepsToTheEndsOfStages) {
  Playback playback = withStages(5);
  playback.goTo(2.4);
  playback.stepForward();
  EXPECT_EQ(playback.time(), 3);
  playback.stepForward();
  EXPECT_EQ(playback.time(), 4);
  playback.goTo(2.4);
  playback.stepBack();
  EXPECT_EQ(playback.time(), 2);
  playback.stepBack();
  EXPECT_EQ(playback.time(), 1);
}

TEST(Playback, AHandOnTheTapePauses) {
  Playback playback = withStages(5);
  playback.play();
  playback.goTo(3);
  EXPECT_FALSE(playback.playing());
}

TEST(Playback, KeepsItsTimeInAShorterProgramme) {
  Playback playback = withStages(40);
  playback.goTo(12.5);
  playback.setStageCount(38);
  EXPECT_EQ(playback.time(), 12.5);
  playback.setStageCount(6);
  EXPECT_EQ(playback.time(), 6);
}

// Half a stage in half a second, the rest of it in two; a rest of one second; then two stages in
// two more seconds.
std::shared_ptr<const Beats> someBeats() {
  auto beats = std::make_shared<Beats>();
  beats->add(0.5, 0.5);
  beats->add(1, 2);
  beats->add(1, 1);
  beats->add(3, 2);
  return beats;
}

TEST(Playback, KeepsItsTimeFromPaceToPace) {
  Playback playback = withStages(3);
  playback.setBeats(Pace::Day, someBeats());
  playback.goTo(0.75);
  for (const Pace pace : {Pace::Day, Pace::Piece, Pace::Stage, Pace::Day}) {
    playback.setPace(pace);
    EXPECT_EQ(playback.time(), 0.75);
  }
  playback.play();
  playback.advance(0.5);
  EXPECT_NEAR(playback.time(), 0.875, 1e-9);
  playback.setPace(Pace::Stage);
  playback.advance(0.5);
  EXPECT_NEAR(playback.time(), 1, 1e-9);
}

TEST(Playback, RestsOverAWaitAndGoesOn) {
  Playback playback = withStages(3);
  playback.setBeats(Pace::Day, someBeats());
  playback.setPace(Pace::Day);
  playback.play();
  playback.advance(2.5);
  EXPECT_EQ(playback.time(), 1);
  EXPECT_TRUE(playback.waits());
  for (int i = 0; i < 9; ++i) {
    playback.advance(0.1);
    EXPECT_EQ(playback.time(), 1);
  }
  playback.advance(0.35);
  EXPECT_FALSE(playback.waits());
  EXPECT_NEAR(playback.time(), 1.25, 1e-6);
  // From a standstill there it goes on at once.
  playback.goTo(1);
  playback.play();
  playback.advance(0.5);
  EXPECT_NEAR(playback.time(), 1.5, 1e-9);
}

TEST(Playback, OfAnotherJobForgetsItsBeats) {
  Playback playback = withStages(3);
  playback.setBeats(Pace::Day, someBeats());
  playback.setPace(Pace::Day);
  playback.setStageCount(5);
  EXPECT_FALSE(playback.hasBeats(Pace::Day));
  playback.play();
  playback.advance(4);
  EXPECT_NEAR(playback.time(), 1, 1e-9) << "by stage until there are others";
}

// Round the stage that is shown, in every pace, and never out of it.
RC_GTEST_PROP(Playback, goesRoundOneStage, ()) {
  const int stages = *rc::gen::inRange(1, 8);
  Playback playback = withStages(stages);
  auto days = std::make_shared<Beats>();
  for (int i = 0; i < stages; ++i) {
    days->add(i + 0.3, *rc::gen::inRange(1, 30) / 10.0);
    if (*rc::gen::arbitrary<bool>()) days->add(i + 0.8, 1);
    if (*rc::gen::arbitrary<bool>()) days->add(i + 1, 1), days->add(i + 1, 0.4);
  }
  if (days->ends().back() < float(stages)) days->add(stages, 0.7);
  playback.setBeats(Pace::Day, days);
  playback.setPace(*rc::gen::element(Pace::Stage, Pace::Day));
  playback.goTo(*rc::gen::inRange(0, stages * 10 + 1) / 10.0);
  const int shown = std::max(0, int(std::ceil(playback.time() - 1e-6)) - 1);
  playback.setRound(Round::Stage);
  playback.play();
  double least = 1e9, most = 0;
  for (int i = 0; i < 300; ++i) {
    playback.advance(*rc::gen::inRange(1, 10) / 20.0);
    RC_ASSERT(playback.playing());
    RC_ASSERT(playback.time() > shown && playback.time() <= shown + 1);
    least = std::min(least, playback.time());
    most = std::max(most, playback.time());
  }
  RC_ASSERT(most - least > 0.5);
}

RC_GTEST_PROP(Playback, neverLeavesTheProgrammeWhateverIsDone, (int stages)) {
  Playback playback = withStages(std::abs(stages % 60));
  const int moves = *rc::gen::inRange(0, 60);
  for (int i = 0; i < moves; ++i) {
    switch (*rc::gen::inRange(0, 9)) {
      case 0:
        playback.toggle();
        break;
      case 1:
        playback.advance(*rc::gen::inRange(0, 100));
        break;
      case 2:
        playback.stepForward();
        break;
      case 3:
        playback.stepBack();
        break;
      case 4:
        playback.goTo(*rc::gen::inRange(-100, 100));
        break;
      case 5:
        playback.faster();
        break;
      case 6:
        playback.slower();
        break;
      case 7:
        playback.setRound(Round(*rc::gen::inRange(0, kRoundCount)));
        break;
      default:
        playback.goTo(std::numeric_limits<double>::quiet_NaN());
    }
    RC_ASSERT(playback.time() >= 0 && playback.time() <= playback.stageCount());
    RC_ASSERT(playback.speed() >= Playback::kSlowest && playback.speed() <= Playback::kFastest);
  }
}

TEST(Playback, KeepsToThePaceOfEachStage) {
  Playback playback;
  playback.setStageCount(3);
  playback.setStageSeconds({0.5, 2});
  playback.play();
  playback.advance(0.25);
  EXPECT_NEAR(playback.time(), 0.5, 1e-9);
  playback.advance(1.25);  // the rest of the first and half of the second
  EXPECT_NEAR(playback.time(), 1.5, 1e-9);
  playback.advance(1 + Playback::kSecondsPerStage / 2);
  EXPECT_NEAR(playback.time(), 2.5, 1e-9);
  playback.advance(100);
  EXPECT_EQ(playback.time(), 3);
  EXPECT_FALSE(playback.playing());
}

// However the job begins: what changes first is seen to change within the first second, and most of
// the time goes to stages where there is something to see.
TEST(OpeningPace, ShowsSomethingWithinASecond) {
  for (const std::string& name : test_support::demoNames()) {
    const model::Model model = model::buildModel(test_support::demoJob(name));
    const std::vector<double> pace = openingPace(model);
    ASSERT_EQ(pace.size(), model.programme.stages.size());
    const Scene scene = buildScene(model);
    double first = 1e9;  // on the programme's clock
    for (const ElementRange& range : scene.elements) {
      if (range.appears > 0) first = std::min(first, double(range.appears));
      if (range.fades < double(pace.size())) first = std::min(first, double(range.fades));
    }
    Playback playback;
    playback.setStageCount(int(pace.size()));
    playback.setStageSeconds(pace);
    playback.play();
    playback.advance(1);
    EXPECT_GT(playback.time(), first) << name;
    double whole = 0;
    for (const double seconds : pace) whole += seconds;
    EXPECT_LT(whole, 100) << name << ": nobody waits longer";
    EXPECT_EQ(playback.round(), Round::None);
  }
}

}  // namespace
}  // namespace viewer
