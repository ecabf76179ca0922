#include "tests/viewer/overlays/overlay_fixture.h"

namespace viewer {
namespace {

class LevelColumn : public OverlayTest {
 protected:
  LevelColumn() { overlays_ = {true, false, false, false, true, true, true, false}; }
};

TEST_F(LevelColumn, SaysWhatFilledAndOpenMarksMean) {
  open("assets/jobs/garage");
  bool made = false, toCome = false;
  for (const DrawnText& text : texts("south", 1)) {
    made = made || text.text == "made";
    toCome = toCome || text.text == "to come";
  }
  EXPECT_TRUE(made && toCome);
}

TEST(RodMarks, RememberWhichLinesOfTheScheduleTheyStandFor) {
  std::vector<model::ScheduledLevel> schedule(3);
  schedule[0].name = "eaves";
  schedule[0].level = 2;
  schedule[1].name = "damp course";
  schedule[2].name = "finished floor";
  const auto marks = rodMarks(schedule, true);
  ASSERT_EQ(marks.size(), 2u);
  EXPECT_EQ(marks[0].lines.size(), 2u);
  EXPECT_EQ(marks[1].lines, std::vector<size_t>{0});
}

}  // namespace
}  // namespace viewer
