// What the setting-out overlay and the instrument say.
#include <algorithm>

#include "model/level_text.h"
#include "tests/support/demo_job.h"
#include "tests/viewer/overlays/overlay_fixture.h"

namespace viewer {
namespace {

class SettingOutOverlay : public OverlayTest {
 protected:
  void SetUp() override {
    OverlayTest::SetUp();
    open(test_support::demoJob("orchard-house"));
    overlays_.settingOut = overlays_.titleBlock = true;
  }
  static bool says(const std::vector<DrawnText>& all, const std::string& words) {
    return std::any_of(all.begin(), all.end(), [&](const DrawnText& text) {
      return text.text.find(words) != std::string::npos;
    });
  }
};

TEST_F(SettingOutOverlay, GivesEveryDiagonalTriangleAndDistanceLimitInPlan) {
  const auto lines = model::deriveLines(model_.job, model_.settingOut);
  const auto all = texts("plan", endOf("set-out"), 1920, 1080);
  for (const model::Tape& tape : lines.tape.diagonals)
    EXPECT_TRUE(says(all, model::lengthText(tape.length))) << tape.length;
  for (const model::CornerTriangle& triangle : lines.tape.corners) {
    if (triangle.before <= 0) continue;
    EXPECT_TRUE(says(all, "/ " + model::lengthText(triangle.across))) << triangle.corner;
  }
  size_t told = 0;
  for (const model::LimitTest& limit : lines.limits) {
    const bool distance =
        limit.kind == model::LimitKind::Boundary || limit.kind == model::LimitKind::Building;
    if (limit.verdict == model::LimitVerdict::Told) continue;
    EXPECT_EQ(says(all, model::lengthText(limit.found) + " to "), distance) << limit.what;
    EXPECT_EQ(says(all, limit.words), distance) << limit.what;
    told += distance;
  }
  EXPECT_EQ(told, 2u);
}

TEST_F(SettingOutOverlay, KeepsToHeightsFromTheSide) {
  const auto all = texts("south", endOf("completion"));
  EXPECT_TRUE(says(all, "ridge limit +7.900: clear by"));
  EXPECT_TRUE(says(all, "eaves limit +5.000: clear by"));
  EXPECT_FALSE(says(all, "A-C"));
  EXPECT_FALSE(says(all, " / "));
}

TEST_F(SettingOutOverlay, SaysWhatIsOver) {
  model::Job job = model_.job;
  for (model::Limit& limit : job.limits)
    if (limit.kind == model::LimitKind::Ridge) limit.most = 7.5;
  open(job);
  EXPECT_TRUE(says(texts("south", endOf("completion")), "ridge limit +7.500: over by"));
}

TEST_F(SettingOutOverlay, FiguresTheMarksOnABoardThatIsLargeEnough) {
  const auto lines = model::deriveLines(model_.job, model_.settingOut);
  const model::Board& board = lines.boards.boards.front();
  overlays_.lines = true;
  nearer_ = 0.1;
  at_ = scene_.local({(board.from + board.to) * 0.5, board.top});
  const auto all = texts("plan", endOf("set-out"));
  for (const model::BoardMark& mark : board.marks)
    EXPECT_TRUE(says(all, mark.name + " " + model::lengthText(mark.along))) << mark.name;
  nearer_ = 1;
  at_.reset();
  EXPECT_FALSE(says(texts("plan", endOf("set-out")),
                    board.marks.front().name + " " + model::lengthText(board.marks.front().along)));
}

TEST_F(SettingOutOverlay, WritesWhatIsReadFromTheInstrumentAtEveryLevel) {
  overlays_.levels = overlays_.rod = overlays_.instrument = true;
  standing_ = model_.job.setUps.front();
  const auto from = instrumentOf(model_.job, *standing_);
  ASSERT_TRUE(from);
  auto all = texts("south-west", endOf("set-out"));
  for (const auto& level : model_.settingOut.schedule) {
    if (level.key.rfind("lift:", 0) == 0) continue;  // in tables and on gauge rods only
    const std::string reading = shortReading(*from, level.level);
    EXPECT_TRUE(std::any_of(all.begin(), all.end(),
                            [&](const DrawnText& text) { return text.text == reading; }))
        << level.name << " " << reading;
  }
  all = texts("plan", endOf("set-out"));
  EXPECT_TRUE(says(all, "Site, line " + model::levelText(from->collimation)));
  EXPECT_TRUE(says(all, "Bolt in gate pier +0.185, read 1.240"));
  EXPECT_TRUE(says(all, "nothing to stand on yet")) << "the first floor is not there";
}

}  // namespace
}  // namespace viewer
