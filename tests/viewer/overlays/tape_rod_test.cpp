#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <iterator>

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

// Whatever the names and however narrow the tape.
RC_GTEST_PROP(Tape, alwaysNamesTheStageUnderWayAndThoseBeforeAndAfterIt, ()) {
  auto stages = someStages(*rc::gen::inRange(3, 81));
  const float width = float(*rc::gen::inRange(360, 1600));
  const size_t current = size_t(*rc::gen::inRange(0, int(stages.size())));
  const TapeLayout tape = layOutTape(stages, {42, 600, 42 + width, 660}, current, letters(1), 1);
  for (size_t i = current ? current - 1 : 0; i <= current + 1 && i < stages.size(); ++i) {
    const auto name = std::find_if(tape.names.begin(), tape.names.end(),
                                   [&](const TapeName& n) { return n.stage == i; });
    RC_ASSERT(name != tape.names.end());
    // Whole, or so much of it that it can be told.
    RC_ASSERT(name->text == stages[i].name || name->text.size() >= 12);
    RC_ASSERT(stages[i].name.rfind(name->text.substr(0, name->text.find("...")), 0) == 0u);
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
  const auto marks = rodMarks(schedule, true);
  ASSERT_EQ(marks.size(), 2u);
  EXPECT_EQ(marks[0].names, (std::vector<std::string>{"finished floor", "damp course"}));
  EXPECT_EQ(marks[0].priority, 2);
  EXPECT_EQ(marks[1].priority, 0);
  EXPECT_EQ(marks[1].where, "Hall");
  EXPECT_EQ(marks[0].where, "") << "two names: whose would it be?";
  EXPECT_EQ(countHeights(schedule, true), 2u);
}

TEST(Rod, KeepsTheLiftOfAHeightApartFromWhatElseLiesThere) {
  std::vector<model::ScheduledLevel> schedule(3);
  schedule[0] = {"lift:0:2", "top of lift 2", 2.1, 28, true, ""};
  schedule[1] = {"head:hall", "lintel soffit", 2.1, 28, true, "Hall"};
  schedule[2] = {"lift:0:1", "top of lift 1", 1.35, 18, true, ""};
  const auto with = rodMarks(schedule, true);
  ASSERT_EQ(with.size(), 2u);
  EXPECT_EQ(with[0].names, std::vector<std::string>{"top of lift 1"});
  EXPECT_EQ(with[0].lift, "");
  EXPECT_EQ(with[1].names, std::vector<std::string>{"lintel soffit"});
  EXPECT_EQ(with[1].where, "Hall");
  EXPECT_EQ(with[1].lift, "top of lift 2");
  EXPECT_EQ(with[1].lines, std::vector<size_t>{1});
  EXPECT_EQ(countHeights(schedule, true), 2u);
  EXPECT_EQ(countHeights(schedule, false), 1u);
  EXPECT_EQ(rodMarks(schedule, false).size(), 1u);
}

TEST(Sheet, GivesLiftsUpBeforeItCrowdsTheOthers) {
  SheetParts parts;
  parts.levels = true;
  parts.heights = 20;
  parts.withLifts = 26;
  EXPECT_TRUE(layOutSheet(1280, 720, 1, 0, parts).lifts);
  EXPECT_EQ(layOutSheet(1280, 720, 1, 0, parts).levelPlan.right, 26u);
  const SheetLayout low = layOutSheet(1280, 500, 1, 0, parts);
  EXPECT_FALSE(low.lifts);
  EXPECT_EQ(low.levelPlan.right, 20u);
  EXPECT_EQ(low.levelPlan.left, 0u);
}

RC_GTEST_PROP(Sheet, furnitureNeverOverlapsAndStaysInTheWindow, ()) {
  const float unit = *rc::gen::element(1.0f, 1.25f, 2.0f);
  const float width = float(*rc::gen::inRange(800, 4000)) * unit;
  const float height = float(*rc::gen::inRange(520, 2200)) * unit;
  SheetParts shown;
  shown.levels = *rc::gen::arbitrary<bool>();
  shown.heights = size_t(*rc::gen::inRange(0, 60));
  const SheetLayout s = layOutSheet(width, height, unit, 0, shown);
  const Box captions{s.captions.left, s.captions.top, s.captions.right, s.drawing.top - unit};
  const Box parts[] = {s.tape, s.rod, s.titleBlock, s.tabs, s.levels, captions, s.drawing};
  for (const Box& part : parts) {
    if (&part == &parts[4] && !shown.levels) continue;  // the column that is not there
    RC_ASSERT(part.inside(s.sheet));
    RC_ASSERT(part.width() > 0 && part.height() > 0);
  }
  for (size_t i = 0; i < std::size(parts); ++i)
    for (size_t j = i + 1; j < std::size(parts); ++j) RC_ASSERT(!parts[i].overlaps(parts[j]));
  if (s.levelPlan.left > 0) RC_ASSERT(!s.levelsLeft.overlaps(s.drawing));
}

TEST(Sheet, RodRunsItsFullHeightBesideTheTitleBlock) {
  SheetParts bare;
  bare.rod = false;
  const SheetLayout with = layOutSheet(1280, 720, 1), without = layOutSheet(1280, 720, 1, 0, bare);
  EXPECT_GT(with.rod.bottom, 720 - 30);
  EXPECT_LT(with.rod.top, 40);
  EXPECT_LT(with.titleBlock.right, with.rod.left);
  EXPECT_GT(without.titleBlock.right, 1280 - 30) << "no rod: the block has the corner";
}

}  // namespace
}  // namespace viewer
