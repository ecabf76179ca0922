// Playing by stage, by day and by piece, and stepping by piece.
#include <array>
#include <chrono>
#include <thread>

#include "model/model.h"
#include "tests/program/window_fixture.h"
#include "tests/support/demo_job.h"

namespace window_test {
namespace {

// The words for the three paces, over the middle of the tape; the one that holds is on a card.
constexpr std::array<Area, 3> kPaces{Area{308, 595, 373, 611}, Area{378, 595, 443, 611},
                                     Area{448, 595, 513, 611}};

class WindowPace : public WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    if (IsSkipped() || HasFatalFailure()) return;
    openCopyOf("garage.toml");
    waitForTape();
    screen_->hand("mousemove 900 300 key t key c");
    settle();
  }

  static int pace(const Shot& shot) {
    int found = -1;
    for (int i = 0; i < 3; ++i) {
      const auto card = [&](int x, int y) { return shot.at(x, y) == kCard; };
      if (countWhere(card, kPaces[size_t(i)]) < 300) continue;
      if (found >= 0) return -2;
      found = i;
    }
    return found;
  }
  // To where the first lift's corners are about to be raised.
  void goToBricks() {
    const auto stage = model::buildModel(test_support::demoJob("garage"))
                           .programme.find("walls-below-damp-course");
    ASSERT_TRUE(stage);
    press("Home");
    press("Right", int(*stage));
    settle();
  }
  // How far the hook gets in that time.
  double playedIn(double seconds) {
    const double from = hook(screen_->shot());
    press("space");
    std::this_thread::sleep_for(std::chrono::duration<double>(seconds));
    press("space");
    return hook(settle()) - from;
  }
};

TEST_F(WindowPace, ZAndTheWordsOverTheTapeChooseIt) {
  EXPECT_EQ(pace(settle()), 0);
  for (const int expected : {1, 2, 0}) {
    press("z");
    EXPECT_TRUE(eventually([&] { return pace(screen_->shot()) == expected; })) << expected;
    settle();
  }
  for (const int wanted : {2, 1, 0}) {
    const Area& word = kPaces[size_t(wanted)];
    screen_->hand("mousemove " + std::to_string(int(word.middleX())) + " " +
                  std::to_string(int(word.middleY())) + " click 1 mousemove 900 300");
    EXPECT_TRUE(eventually([&] { return pace(screen_->shot()) == wanted; })) << wanted;
    settle();
  }
}

TEST_F(WindowPace, StepsByPieceLayOneAndTakeItAwayAgain) {
  goToBricks();
  const Shot before = settle();
  std::vector<Shot> steps{before};
  for (int i = 0; i < 6; ++i) {
    press("shift+period");
    EXPECT_TRUE(eventually([&] { return drawingDiffers(steps.back(), screen_->shot()) > 3; })) << i;
    Shot next = settle();
    EXPECT_LT(drawingDiffers(steps.back(), next), 12000) << "a piece is small";
    steps.push_back(std::move(next));
  }
  // Its name stands in the caption, of which the stage's own words make room.
  EXPECT_GT(before.differences(steps[1], 42, 40, 600, 110), 100);
  for (int i = 5; i > 0; --i) {
    press("shift+comma");
    EXPECT_TRUE(eventually([&] { return steps[size_t(i)].rgb == screen_->shot().rgb; })) << i;
    settle();
  }
}

TEST_F(WindowPace, ByPieceAStageOfBricksTakesLongerThanByStage) {
  goToBricks();
  const double byStage = playedIn(2);
  goToBricks();
  press("z", 2);
  ASSERT_TRUE(eventually([&] { return pace(screen_->shot()) == 2; }));
  const double byPiece = playedIn(2);
  EXPECT_GT(byStage, 0.005);
  EXPECT_LT(byPiece, byStage / 2);
}

TEST_F(WindowPace, RoundAStageItComesBackToItsBegin) {
  goToBricks();
  press("Right");
  const double end = hook(settle());
  press("Left");
  const double begin = hook(settle());
  press("Right");
  press("o", 2);
  press("Up", 3);
  settle();
  press("space");
  double least = 1, most = 0;
  for (int i = 0; i < 25; ++i) {
    const double now = hook(screen_->shot());
    least = std::min(least, now);
    most = std::max(most, now);
    std::this_thread::sleep_for(std::chrono::milliseconds(60));
  }
  press("space");
  EXPECT_GE(least, begin - 0.003);
  EXPECT_LE(most, end + 0.003);
  EXPECT_GT(most - least, (end - begin) / 3);
}

}  // namespace
}  // namespace window_test
