// Keys of the window, each held to the thing that it promises.
#include <cmath>

#include "model/model.h"
#include "tests/program/window_fixture.h"
#include "tests/support/demo_job.h"

namespace window_test {
namespace {

constexpr unsigned kPaper = 0xf7f4ec, kStrings = 0xd55e00;

class WindowKeys : public WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    if (IsSkipped() || HasFatalFailure()) return;
    openCopyOf("garage.toml");
    waitForTape();
    screen_->hand("mousemove 600 60");
  }

  // To the end of a stage of the garage, counted from 1 as people see it.
  int goToEndOf(const std::string& stage) {
    const auto index = model::buildModel(test_support::demoJob("garage")).programme.find(stage);
    EXPECT_TRUE(index) << stage;
    const int number = index ? int(*index) + 1 : 0;
    press("Home");
    press("Right", number);
    settle();
    return number;
  }
};

int strings(const Shot& shot) {
  return countWhere([&](int x, int y) { return shot.at(x, y) == kStrings; });
}

TEST_F(WindowKeys, TTakesTheStringLinesAwayAndBringsThem) {
  press("c");
  goToEndOf("strip-topsoil");
  EXPECT_EQ(strings(settle()), 0) << "nothing is pulled yet";
  press("Right");
  EXPECT_TRUE(eventually([&] { return strings(screen_->shot()) > 500; }));
  settle();
  press("t");
  EXPECT_TRUE(eventually([&] { return strings(screen_->shot()) == 0; }));
  settle();
  press("t");
  EXPECT_TRUE(eventually([&] { return strings(screen_->shot()) > 500; }));
}

TEST_F(WindowKeys, NOutlinesWhatComesNextWhereItWillStand) {
  press("t");
  press("c");
  press("5");
  goToEndOf("damp-course");
  const Shot before = settle();
  const auto differs = [&](const Shot& shot) {
    return [&](int x, int y) { return shot.at(x, y) != before.at(x, y); };
  };
  press("n");
  EXPECT_TRUE(eventually([&] { return countWhere(differs(screen_->shot())) > 300; }));
  const Shot outlined = settle();
  press("n");
  EXPECT_TRUE(eventually([&] { return countWhere(differs(screen_->shot())) == 0; }));
  press("Right");
  EXPECT_TRUE(eventually([&] { return countWhere(differs(screen_->shot())) > 300; }));
  const Shot built = settle();
  const Area outline = areaWhere(differs(outlined)), corners = areaWhere(differs(built));
  EXPECT_NEAR(outline.left, corners.left, 3);
  EXPECT_NEAR(outline.right, corners.right, 3);
  EXPECT_NEAR(outline.top, corners.top, 3);
  EXPECT_GT(outline.height(), 60) << "a lift of walls";
  // On bare paper, and lines only.
  const int drawn = countWhere(differs(outlined));
  const int onPaper = countWhere(
      [&](int x, int y) { return differs(outlined)(x, y) && before.at(x, y) == kPaper; });
  EXPECT_GT(onPaper, drawn * 17 / 20);
  EXPECT_LT(drawn, countWhere(differs(built)) / 2);
}

TEST_F(WindowKeys, HBringsTheSheetOfKeysAndEscapeTakesIt) {
  const Shot before = settle();
  constexpr Area kSheet{60, 60, 420, 550}, kKeysTab{3, 560, 28, 600};
  const auto onPaper = [&](const Shot& shot) {
    return countWhere([&](int x, int y) { return shot.at(x, y) == kCard; }, kSheet);
  };
  // The tab of the sheet that is out is as yellow as the tape.
  const auto keysTab = [&](const Shot& shot) {
    return countWhere(
        [&](int x, int y) {
          const unsigned p = shot.at(x, y);
          return int(p >> 16) - int(p & 255) > 120;
        },
        kKeysTab);
  };
  EXPECT_LT(onPaper(before), 1000);
  EXPECT_EQ(keysTab(before), 0);
  press("h");
  EXPECT_TRUE(eventually([&] { return onPaper(screen_->shot()) > 120000; }));
  const Shot open = settle();
  EXPECT_GT(keysTab(open), 500);
  EXPECT_GT(countWhere([&](int x, int y) { return isInk(open.at(x, y)); }, kSheet), 1000)
      << "words";
  press("Escape");
  EXPECT_TRUE(eventually([&] { return onPaper(screen_->shot()) < 1000; }));
  EXPECT_EQ(keysTab(settle()), 0);
  press("h");
  EXPECT_TRUE(eventually([&] { return onPaper(screen_->shot()) > 120000; }));
  settle();
  press("h");
  EXPECT_TRUE(eventually([&] { return onPaper(screen_->shot()) < 1000; })) << "the same key";
}

TEST_F(WindowKeys, UpAndDownChangeTheSpeed) {
  // The sheet of stages marks the speed that holds among 1/4, 1/2, 1, 2, 4 and 8.
  screen_->hand("mousemove 16 60 click 1");
  constexpr Area kSpeeds{60, 98, 300, 128};
  const auto marked = [&] {
    const Shot shot = screen_->shot();
    return areaWhere([&](int x, int y) { return shot.at(x, y) == kTape; }, kSpeeds);
  };
  ASSERT_TRUE(eventually([&] { return marked().width() > 8; }));
  settle();
  const double atFirst = marked().middleX();
  press("Up");
  EXPECT_TRUE(eventually([&] { return marked().middleX() > atFirst + 15; }));
  settle();
  const double twice = marked().middleX();
  press("Down");
  EXPECT_TRUE(eventually([&] { return std::abs(marked().middleX() - atFirst) < 2; }));
  settle();
  press("Down");
  EXPECT_TRUE(eventually([&] { return marked().middleX() < atFirst - 15; }));
  settle();
  // Held at the slowest and the fastest.
  press("Down", 4);
  settle();
  const double slowest = marked().middleX();
  press("Up", 9);
  EXPECT_TRUE(eventually([&] { return marked().middleX() > twice + 30; }));
  press("Down", 5);
  EXPECT_TRUE(eventually([&] { return std::abs(marked().middleX() - slowest) < 2; }));
}

TEST_F(WindowKeys, AFasterSpeedPullsTheHookFaster) {
  // Of the tape in a second; 32 times apart, so that no stutter of the machine turns them round.
  const auto rate = [&] {
    const double from = hook(screen_->shot());
    const auto start = std::chrono::steady_clock::now();
    std::this_thread::sleep_for(std::chrono::milliseconds(1500));
    const double gone = hook(screen_->shot()) - from;
    return gone / std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
  };
  press("Home");
  press("Down", 4);
  settle();
  press("space");
  const double slow = rate();
  press("Up", 5);
  const double fast = rate();
  EXPECT_GT(fast, 4 * slow) << slow;
  EXPECT_GT(fast, 0.01);
}

TEST_F(WindowKeys, AStageIsFoundByItsName) {
  const int number = goToEndOf("rafters");
  const Shot wanted = settle();
  press("Home");
  EXPECT_TRUE(eventually([&] { return hook(screen_->shot()) < 0.01; }));
  screen_->hand("mousemove 16 60 click 1");
  constexpr Area kList{60, 284, 400, 560}, kFirstRow{60, 284, 400, 314};
  const auto words = [](const Shot& shot, const Area& area) {
    return countWhere([&](int x, int y) { return isInk(shot.at(x, y)); }, area);
  };
  ASSERT_TRUE(eventually([&] { return words(screen_->shot(), kList) > 1500; }));
  settle();
  const Shot all = settle();
  screen_->hand("mousemove 200 264 click 1");
  settle();
  // Letters in the field are no keys: none of these opens, cuts or steps anything.
  screen_->hand("type 'the raft'");
  EXPECT_TRUE(eventually([&] { return words(screen_->shot(), kList) < words(all, kList) / 4; }))
      << "only stages with those words are left";
  EXPECT_LT(hook(settle()), 0.01);
  EXPECT_GT(words(screen_->shot(), kFirstRow), 40);
  screen_->hand("mousemove 150 300 click 1");
  EXPECT_TRUE(eventually([&] { return hook(screen_->shot()) > 0.3; }));
  EXPECT_NEAR(hook(settle()), hook(wanted), 0.003) << "stage " << number;
  press("Escape", 2);
  screen_->hand("mousemove 600 60");
  EXPECT_TRUE(eventually([&] { return drawingDiffers(wanted, screen_->shot()) < 3000; }));
}

}  // namespace
}  // namespace window_test
