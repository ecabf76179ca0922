// The building keeps a useful part of the sheet whatever stands round it.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/support/demo_job.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/view_state.h"

namespace viewer {
namespace {

class SheetRoom : public testing::Test {
 protected:
  SheetLayout layout(bool levels, float pulledOut, float width = 1280) const {
    Overlays overlays = ViewState().overlays;
    overlays.levels = levels;
    return sheetOf(model_, overlays, width, 720, 1, pulledOut);
  }
  model::Model model_ = model::buildModel(test_support::demoJob("orchard-house"));
};

TEST_F(SheetRoom, WithoutLevelsThereIsNoColumn) {
  EXPECT_EQ(layout(false, 0).levels.width(), 0);
  EXPECT_GT(layout(false, 0).drawing.width(), layout(true, 0).drawing.width() + 300);
}

TEST_F(SheetRoom, AStageWithFewWordsLeavesMoreWhereOnlyItsOwnCount) {
  Overlays overlays;
  overlays.captions = true;
  const float all = sheetOf(model_, overlays, 1280, 720, 1).drawing.top;
  float least = 1e9f;
  for (size_t i = 0; i < model_.programme.stages.size(); ++i)
    least = std::min(least, sheetOf(model_, overlays, 1280, 720, 1, 0, i).drawing.top);
  EXPECT_LT(least, all - 20);
}

TEST_F(SheetRoom, TheTapeIsAsLongAsNothingBesideItAllows) {
  Overlays overlays;
  overlays.captions = overlays.tape = true;
  const SheetLayout alone = sheetOf(model_, overlays, 1920, 1080, 1);
  EXPECT_GT(alone.tape.right, 1920 - 60);
  overlays.titleBlock = true;
  const SheetLayout beside = sheetOf(model_, overlays, 1920, 1080, 1);
  EXPECT_LT(beside.tape.right, beside.titleBlock.left);
  overlays.titleBlock = false;
  overlays.rod = true;
  const SheetLayout byRod = sheetOf(model_, overlays, 1920, 1080, 1);
  EXPECT_LT(byRod.tape.right, byRod.rod.left);
}

TEST_F(SheetRoom, ASheetLeavesHalfTheWindowAndMakesTheColumnGiveWay) {
  for (const bool levels : {false, true}) {
    const SheetLayout open = layout(levels, kSheetWidth);
    EXPECT_GT(open.drawing.width(), 600) << levels;
    EXPECT_EQ(open.levelsGiveWay, levels);
    EXPECT_FALSE(open.drawing.overlaps(open.titleBlock));
  }
  EXPECT_FALSE(layout(true, kSheetWidth, 1920).levelsGiveWay) << "there is room for both";
}

TEST_F(SheetRoom, TheDrawingSlidesWithoutAJump) {
  float right = layout(true, 0).drawing.right;
  for (float pulled = 1; pulled <= kSheetWidth; pulled += 1) {
    const float now = layout(true, pulled).drawing.right;
    EXPECT_LT(std::abs(now - right), 4) << pulled;
    right = now;
  }
}

}  // namespace
}  // namespace viewer
