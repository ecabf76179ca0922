#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "viewer/overlays/rod_layout.h"
#include "viewer/overlays/sheet_layout.h"
#include "viewer/overlays/tape_layout.h"

namespace viewer {
namespace {

// Every letter 9 units wide and 16 high: about what the sheet's lettering is.
MeasureText letters(float unit) {
  return [unit](const std::string& text) {
    return glm::vec2(9 * unit * float(text.size()), 16 * unit);
  };
}

std::vector<TapeStage> someStages(int count) {
  std::vector<TapeStage> stages;
  for (int i = 0; i < count; ++i) {
    TapeStage stage;
    const int words = *rc::gen::inRange(1, 9);
    for (int w = 0; w < words; ++w)
      stage.name += (w ? " " : "") + std::string(size_t(*rc::gen::inRange(1, 14)), char('a' + w));
    stage.days = 0.5 * *rc::gen::inRange(1, 30);
    stage.waitDays = *rc::gen::inRange(0, 8);
    stages.push_back(stage);
  }
  return stages;
}

RC_GTEST_PROP(Tape, namesNeverOverlapNorLeaveIt, ()) {
  const float unit = *rc::gen::element(1.0f, 1.5f, 2.0f);
  const float width = float(*rc::gen::inRange(1000, 3841));
  const auto stages = someStages(*rc::gen::inRange(10, 81));
  const SheetLayout sheet = layOutSheet(width, 720 * unit, unit);
  const size_t current = size_t(*rc::gen::inRange(0, int(stages.size())));
  const TapeLayout tape = layOutTape(stages, sheet.tape, current, letters(unit), unit);
  for (size_t i = 0; i < tape.names.size(); ++i) {
    RC_ASSERT(tape.names[i].box.inside(sheet.tape.grown(0.01f)));
    RC_ASSERT(std::abs(tape.names[i].box.width() - letters(unit)(tape.names[i].text).x) < 0.1f);
    for (size_t j = i + 1; j < tape.names.size(); ++j)
      RC_ASSERT(!tape.names[i].box.overlaps(tape.names[j].box));
  }
}

RC_GTEST_PROP(Tape, clockAndPlaceAreOneAnothersInverse, ()) {
  const auto stages = someStages(*rc::gen::inRange(1, 81));
  const TapeLayout tape = layOutTape(stages, {40, 600, 1000, 666}, 0, letters(1), 1);
  const double time = *rc::gen::inRange(0, int(stages.size()) * 1000 + 1) / 1000.0;
  RC_ASSERT(std::abs(tape.timeAt(tape.xAt(time)) - time) < 2e-3);
}

RC_GTEST_PROP(Tape, stagesFollowEachOtherAndEachCanBeTakenHoldOf, ()) {
  const auto stages = someStages(*rc::gen::inRange(10, 81));
  const TapeLayout tape = layOutTape(stages, {40, 600, 1000, 666}, 0, letters(1), 1);
  RC_ASSERT(tape.edges.size() == stages.size() + 1);
  for (size_t i = 0; i < stages.size(); ++i) {
    RC_ASSERT(tape.edges[i + 1] - tape.edges[i] > 3.0f);
    RC_ASSERT(tape.waitFrom[i] > tape.edges[i] && tape.waitFrom[i] <= tape.edges[i + 1] + 0.01f);
    RC_ASSERT(tape.stageAt((tape.edges[i] + tape.edges[i + 1]) / 2) == i);
  }
}

TEST(Tape, AlwaysHasRoomForTheCurrentNameInTheMiddleOfAWideTape) {
  std::vector<TapeStage> stages(40, TapeStage{"Raise the corners, first lift", 2, 0, false});
  const TapeLayout tape = layOutTape(stages, {40, 600, 1000, 666}, 17, letters(1), 1);
  EXPECT_TRUE(std::any_of(tape.names.begin(), tape.names.end(), [](const TapeName& name) {
    return name.stage == 17 && name.text == "Raise the corners, first lift";
  }));
}

TEST(Tape, HoldsTheClockToItsEnds) {
  const std::vector<TapeStage> stages(5, TapeStage{"Dig", 1, 0, false});
  const TapeLayout tape = layOutTape(stages, {100, 0, 600, 60}, 0, letters(1), 1);
  EXPECT_EQ(tape.timeAt(-50), 0);
  EXPECT_EQ(tape.timeAt(9000), 5);
  EXPECT_FALSE(tape.stageAt(99).has_value());
  EXPECT_FALSE(tape.stageAt(600).has_value());
}

TEST(Tape, WithoutStagesIsEmptyAndAnswers) {
  const TapeLayout tape = layOutTape({}, {100, 0, 600, 60}, 0, letters(1), 1);
  EXPECT_TRUE(tape.names.empty());
  EXPECT_EQ(tape.timeAt(300), 0);
  EXPECT_EQ(tape.xAt(3), 100);
}

RC_GTEST_PROP(Rod, textsNeverOverlapAndStayOnTheRod, ()) {
  std::vector<RodMark> marks;
  const int count = *rc::gen::inRange(0, 90);
  for (int i = 0; i < count; ++i)
    marks.push_back({*rc::gen::inRange(-4000, 9000) / 1000.0, "sill", *rc::gen::inRange(0, 3)});
  const Box rod{1140, 34, 1170, float(*rc::gen::inRange(120, 1800))};
  Camera camera;
  const auto labels = layOutRod(marks, rodScale(camera, rod, 720, -4, 9), rod, 19, rod.bottom);
  for (size_t i = 0; i < labels.size(); ++i) {
    RC_ASSERT(labels[i].y - 9.5f >= rod.top - 0.01f && labels[i].y + 9.5f <= rod.bottom + 0.01f);
    if (i) RC_ASSERT(labels[i].y - labels[i - 1].y >= 19 - 0.01f);
  }
}

TEST(Rod, LeavesOutSillsBeforeFloors) {
  std::vector<RodMark> marks;
  for (int i = 0; i < 30; ++i) marks.push_back({i * 0.1, "sill", 0});
  marks.push_back({1.55, "finished floor", 2});
  const Box rod{0, 0, 30, 200};
  const auto labels = layOutRod(marks, rodScale(Camera(), rod, 720, 0, 3), rod, 20, rod.bottom);
  EXPECT_EQ(labels.size(), 10u);
  EXPECT_TRUE(std::any_of(labels.begin(), labels.end(),
                          [](const RodLabel& label) { return label.mark == 30; }));
}

TEST(Rod, LeavesOutSillsThatWouldPushTextsFarFromTheirHeights) {
  std::vector<ColumnItem> items;
  for (int i = 0; i < 12; ++i) items.push_back({300.0f + float(i), 0});
  items.push_back({305, 2});
  const auto labels = layOutColumn(items, 20, {0, 600}, {0, 600});
  EXPECT_LT(labels.size(), items.size());
  for (const RodLabel& label : labels) EXPECT_LE(std::abs(label.y - label.trueY), 50.0f);
  EXPECT_TRUE(std::any_of(labels.begin(), labels.end(),
                          [](const RodLabel& label) { return label.mark == 12; }));
}

TEST(Rod, KeepsTextsAboveWhatStandsBesideItsFootAndMarksTrue) {
  const auto labels = layOutColumn({{100, 2}, {560, 2}, {590, 1}}, 20, {0, 600}, {0, 500});
  ASSERT_EQ(labels.size(), 3u);
  for (const RodLabel& label : labels) EXPECT_LE(label.y + 10, 500.01f);
  EXPECT_EQ(labels[2].trueY, 590);
}

TEST(Rod, LinesUpWithAnElevationToThePixel) {
  const auto camera = standardView("south", {0, 0, -3}, {11, 9, 8}, 16.0 / 9);
  ASSERT_TRUE(camera);
  const RodScale scale = rodScale(*camera, {1140, 34, 1170, 500}, 720, -3, 8);
  for (const double level : {-2.5, 0.0, 2.7, 5.1}) {
    const auto at = camera->project({3, 1, float(level)}, 16.0 / 9);
    ASSERT_TRUE(at);
    EXPECT_NEAR(scale.yAt(level), at->y * 720, 0.5) << level;
    EXPECT_NEAR(scale.levelAt(scale.yAt(level)), level, 1e-4);
  }
}

TEST(Rod, ShowsTheWholeRangeWhereItOnlyLists) {
  const Box rod{0, 34, 30, 500};
  const RodScale scale = rodScale(Camera(), rod, 720, -3.075, 7.757);
  EXPECT_GE(scale.yAt(7.757), rod.top);
  EXPECT_LE(scale.yAt(-3.075), rod.bottom);
}

TEST(Rod, JoinsLevelsThatAreEqual) {
  std::vector<model::ScheduledLevel> schedule(3);
  schedule[0] = {"sill:hall", "sill", 1.05, 14, true, "Hall"};
  schedule[1] = {"finished-floor:0", "finished floor", 0, 0, true, ""};
  schedule[2] = {"damp-course", "damp course", 0.0001, 0, true, ""};
  const auto marks = rodMarks(schedule);
  ASSERT_EQ(marks.size(), 2u);
  EXPECT_EQ(marks[0].name, "finished floor, damp course");
  EXPECT_EQ(marks[0].priority, 2);
  EXPECT_EQ(marks[1].priority, 0);
}

RC_GTEST_PROP(Sheet, furnitureNeverOverlapsAndStaysInTheWindow, ()) {
  const float unit = *rc::gen::element(1.0f, 1.25f, 2.0f);
  const float width = float(*rc::gen::inRange(800, 4000)) * unit;
  const float height = float(*rc::gen::inRange(520, 2200)) * unit;
  const SheetLayout s = layOutSheet(width, height, unit);
  const Box parts[] = {s.tape, s.rod, s.titleBlock, s.tabs};
  for (const Box& part : parts) {
    RC_ASSERT(part.inside(s.sheet));
    RC_ASSERT(part.width() > 0 && part.height() > 0);
  }
  for (size_t i = 0; i < 4; ++i)
    for (size_t j = i + 1; j < 4; ++j) RC_ASSERT(!parts[i].overlaps(parts[j]));
  RC_ASSERT(s.drawing.width() > 0 && s.drawing.height() > 0);
}

TEST(Sheet, RodRunsItsFullHeightBesideTheTitleBlock) {
  const SheetLayout with = layOutSheet(1280, 720, 1), without = layOutSheet(1280, 720, 1, 0, false);
  EXPECT_GT(with.rod.bottom, 720 - 30);
  EXPECT_LT(with.rod.top, 40);
  EXPECT_LT(with.titleBlock.right, with.rod.left);
  EXPECT_GT(without.titleBlock.right, 1280 - 30) << "no rod: the block has the corner";
}

}  // namespace
}  // namespace viewer
