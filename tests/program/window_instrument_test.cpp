// The instrument in the window: chosen, stood by hand, read under the pointer.
#include "tests/program/window_fixture.h"

namespace window_test {
namespace {

// Where the ground in front of the house lies on the opening view.
constexpr int kGroundX = 560, kGroundY = 480;

class InstrumentWindow : public WindowTest {
 protected:
  Shot hover(int x, int y) {
    screen_->hand("mousemove " + std::to_string(x) + " " + std::to_string(y));
    return settle();
  }
};

TEST_F(InstrumentWindow, ReadsUnderThePointerFromASetUpOfTheJob) {
  openCopyOf("orchard-house.toml");
  waitForTape();
  const int before = cardPixels(hover(kGroundX, kGroundY));
  const auto reads = [&] { return cardPixels(screen_->shot()) > before + 1500; };
  press("i");
  EXPECT_TRUE(eventually(reads)) << "the card by the pointer";
  hover(kGroundX - 60, kGroundY - 120);
  EXPECT_TRUE(eventually(reads));
  press("Escape");
  EXPECT_TRUE(eventually([&] { return !reads(); })) << "let go of the instrument";
}

TEST_F(InstrumentWindow, StandsWhereTheGroundIsClicked) {
  openCopyOf("orchard-house.toml");
  waitForTape();
  const int before = cardPixels(hover(kGroundX, kGroundY));
  const auto reads = [&] { return cardPixels(screen_->shot()) > before + 1500; };
  press("j");
  EXPECT_TRUE(eventually(reads)) << "asks where";
  screen_->hand("click 1");
  settle();
  hover(kGroundX + 5, kGroundY);
  EXPECT_TRUE(eventually(reads));
  const Shot stands = settle();
  const Area tripod = areaWhere([&](int x, int y) { return stands.at(x, y) == kLevels; },
                                {kGroundX - 60, kGroundY - 160, kGroundX + 60, kGroundY + 10});
  EXPECT_GT(tripod.height(), 15) << "a tripod over the point";
}

}  // namespace
}  // namespace window_test
