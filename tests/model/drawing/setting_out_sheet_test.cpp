// The whole drawing, of the demonstration jobs and of drawn ones, with the real typeface.
#include "model/drawing/setting_out_sheet.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "model/works/profile_places.h"
#include "tests/model/drawing/tidy_drawing.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

using test_support::letters;
using test_support::says;
using test_support::untidy;

SettingOutDrawing draw(const Job& job, Paper paper, std::optional<int> scale = {}) {
  return drawSettingOut(job, deriveSettingOut(job), {paper, scale, ""}, letters());
}

TEST(SettingOutDrawing, OfEveryDemoIsTidyAndSaysEveryCornerAndLength) {
  for (const std::string& name : test_support::demoNames()) {
    const Job job = test_support::demoJob(name);
    const SettingOut out = deriveSettingOut(job);
    for (const Paper paper : {Paper::A3, Paper::A4}) {
      const SettingOutDrawing drawn = draw(job, paper);
      ASSERT_TRUE(drawn.drawing) << name;
      EXPECT_EQ(untidy(*drawn.drawing), "") << name << " " << nameOf(paper);
      const Sheet& plan = drawn.drawing->sheets.front();
      for (const Corner& corner : out.corners) EXPECT_TRUE(says(plan, corner.letter)) << name;
      for (const WallLine& wall : out.walls)
        EXPECT_TRUE(says(plan, lengthText(wall.length))) << name << " " << wall.name;
    }
  }
}

TEST(SettingOutDrawing, DrawsTheOutlineToItsScale) {
  const Job job = test_support::demoJob("orchard-house");
  for (const Paper paper : {Paper::A3, Paper::A4}) {
    const SettingOutDrawing drawn = draw(job, paper);
    const Sheet& plan = drawn.drawing->sheets.front();
    EXPECT_EQ(plan.view->scale, drawn.scale);
    const auto outline = std::find_if(plan.strokes.begin(), plan.strokes.end(),
                                      [](const Stroke& s) { return s.layer == Layer::Outlines; });
    ASSERT_NE(outline, plan.strokes.end());
    ASSERT_EQ(outline->points.size(), 6u);
    EXPECT_NEAR(glm::length(outline->points[1] - outline->points[0]), 11240.0 / drawn.scale, 1e-9);
  }
}

TEST(SettingOutDrawing, TakesTheLargestStandardScaleThatFits) {
  const Job job = test_support::demoJob("orchard-house");
  EXPECT_EQ(draw(job, Paper::A3).scale, 100);
  EXPECT_EQ(draw(job, Paper::A4).scale, 200);
}

Job onAWideSite() {
  Job job;
  job.outline = {{0, 0}, {9, 0}, {9, 6}, {0, 6}};
  job.site.boundary = {{-7, -7}, {16, -7}, {16, 13}, {-7, 13}};
  return job;
}

bool anySays(const Sheet& sheet, const std::string& words) {
  return std::any_of(sheet.texts.begin(), sheet.texts.end(),
                     [&](const Text& text) { return text.text.find(words) != std::string::npos; });
}

// Where the dashed lines of limits lie, in metres: one for each.
std::vector<Stroke> limitLines(const Sheet& plan) {
  std::vector<Stroke> lines;
  for (Stroke stroke : plan.strokes) {
    if (stroke.layer != Layer::Limits || stroke.pen.type != LineType::Dashed) continue;
    for (Vec2& p : stroke.points) p = plan.view->inMetres(p);
    lines.push_back(stroke);
  }
  return lines;
}

TEST(SettingOutDrawing, DrawsLimitsToScaleWithAMarkAndWordsForEachVerdict) {
  Job job = onAWideSite();
  job.limits = {{LimitKind::Boundary, "A-B", 6.000, {}, ""},
                {LimitKind::Boundary, "B-C", 6.995, {}, ""},
                {LimitKind::Boundary, "C-D", 7.500, {}, ""}};
  for (const Paper paper : {Paper::A3, Paper::A4}) {
    const SettingOutDrawing drawn = draw(job, paper);
    const Sheet& plan = drawn.drawing->sheets.front();
    EXPECT_EQ(untidy(*drawn.drawing), "") << nameOf(paper);
    const std::vector<Stroke> lines = limitLines(plan);
    ASSERT_EQ(lines.size(), 3u);
    for (const size_t end : {0u, 1u}) {
      EXPECT_NEAR(lines[0].points[end].y, -7 + 6.000, 1e-9);
      EXPECT_NEAR(lines[1].points[end].x, 16 - 6.995, 1e-9);
      EXPECT_NEAR(lines[2].points[end].y, 13 - 7.500, 1e-9);
    }
    const auto ofLimits = [](const auto& mark) { return mark.layer == Layer::Limits; };
    EXPECT_EQ(std::count_if(plan.circles.begin(), plan.circles.end(), ofLimits), 1) << "clear";
    EXPECT_EQ(
        std::count_if(plan.strokes.begin(), plan.strokes.end(),
                      [&](const Stroke& stroke) { return ofLimits(stroke) && stroke.closed; }),
        1)
        << "at the limit";
    EXPECT_EQ(std::count_if(plan.fills.begin(), plan.fills.end(), ofLimits), 1) << "over";
    for (const char* words : {"clear by 1000", "at the limit: 5 to spare", "over by 500"})
      EXPECT_TRUE(anySays(plan, words)) << words;
  }
}

TEST(SettingOutDrawing, MarksABuildingThatPassesTheBoundary) {
  Job job = onAWideSite();
  job.site.boundary = {{-7, 0.1}, {16, 0.1}, {16, 13}, {-7, 13}};
  job.limits = {{LimitKind::Boundary, "", 1.000, {}, ""}};
  const SettingOutDrawing drawn = draw(job, Paper::A3);
  const Sheet& plan = drawn.drawing->sheets.front();
  EXPECT_TRUE(anySays(plan, "over by 1100"));
  ASSERT_EQ(limitLines(plan).size(), 1u);
  EXPECT_NEAR(limitLines(plan)[0].points[0].y, 1.1, 1e-9);
  EXPECT_EQ(untidy(*drawn.drawing), "");
}

// A limit on heights has no place on a plan.
TEST(SettingOutDrawing, LeavesLimitsOfHeightsToTheSchedule) {
  Job job = onAWideSite();
  job.limits = {{LimitKind::Ridge, "", {}, 9.0, ""}};
  const SettingOutDrawing drawn = draw(job, Paper::A3);
  const Sheet& plan = drawn.drawing->sheets.front();
  EXPECT_TRUE(limitLines(plan).empty());
  EXPECT_TRUE(anySays(plan, "clear by"));
}

TEST(SettingOutDrawing, DrawsAndNamesOffsetLinesWhereABoardHasNoRoom) {
  Job job = onAWideSite();
  StandingBuilding barn;
  barn.name = "Barn";
  barn.outline = {{9.4, -1}, {15, -1}, {15, 7}, {9.4, 7}};
  job.site.buildings.push_back(barn);
  const SettingOut out = deriveSettingOut(job);
  const auto offset = placeProfiles(job, out)[0].offset;
  ASSERT_TRUE(offset);
  const Sheet plan = draw(job, Paper::A3).drawing->sheets.front();
  EXPECT_TRUE(anySays(plan, "A-B offset"));
  EXPECT_TRUE(std::any_of(plan.strokes.begin(), plan.strokes.end(), [&](const Stroke& stroke) {
    if (stroke.layer != Layer::Strings) return false;
    return std::abs(plan.view->inMetres(stroke.points.front()).y + offset->out) < 1e-9 &&
           std::abs(plan.view->inMetres(stroke.points.back()).y + offset->out) < 1e-9;
  }));
}

TEST(SettingOutDrawing, SaysWhereDiagonalsAreThatAreTooManyToDraw) {
  Job job = onAWideSite();
  const Sheet few = draw(job, Paper::A3).drawing->sheets.front();
  EXPECT_FALSE(says(few, "diagonals: see the schedule"));
  job.outline = {{0, 0}, {12, 0}, {12, 4}, {10, 4}, {10, 6}, {8, 6},
                 {8, 8}, {6, 8},  {6, 10}, {4, 10}, {4, 7},  {0, 7}};
  const Sheet many = draw(job, Paper::A3).drawing->sheets.front();
  EXPECT_TRUE(says(many, "diagonals: see the schedule"));
  EXPECT_TRUE(std::none_of(many.strokes.begin(), many.strokes.end(),
                           [](const Stroke& stroke) { return stroke.layer == Layer::Diagonals; }));
}

TEST(SettingOutDrawing, SaysWhenAnAskedScaleDoesNotFitAndWhichDoes) {
  const SettingOutDrawing drawn = draw(test_support::demoJob("orchard-house"), Paper::A4, 20);
  EXPECT_FALSE(drawn.drawing);
  ASSERT_TRUE(drawn.problem);
  EXPECT_NE(drawn.problem->what.find("1:20"), std::string::npos);
  EXPECT_NE(drawn.problem->what.find("A4"), std::string::npos);
  EXPECT_EQ(drawn.problem->instead, "1:100 fits; or ask for A3");
  const SettingOutDrawing fits = draw(test_support::demoJob("orchard-house"), Paper::A4, 100);
  ASSERT_TRUE(fits.drawing);
  EXPECT_TRUE(fits.siteIsCut);
  EXPECT_EQ(untidy(*fits.drawing), "");
}

TEST(SettingOutDrawing, IsTheSameEveryTime) {
  const Job job = test_support::demoJob("skew-corner");
  const auto a = draw(job, Paper::A3), b = draw(job, Paper::A3);
  ASSERT_EQ(a.drawing->sheets.size(), b.drawing->sheets.size());
  for (size_t i = 0; i < a.drawing->sheets.size(); ++i) {
    const auto &one = a.drawing->sheets[i].texts, &other = b.drawing->sheets[i].texts;
    ASSERT_EQ(one.size(), other.size());
    for (size_t k = 0; k < one.size(); ++k) {
      EXPECT_EQ(one[k].text, other[k].text);
      EXPECT_EQ(one[k].at, other[k].at);
    }
  }
}

// Thirty corners and names that no one font has.
TEST(SettingOutDrawing, OfManyCornersAndLongNamesIsTidy) {
  Job job;
  job.name =
      "Дом Ольги Петровны Преображенской-Воскресенской у старой мельницы, "
      "東京都千代田区の石造りの家";
  job.site.benchMark = BenchMark{"Болт в столбе ворот у северо-западного угла", {-5, 14}, 0.2};
  job.outline = {{0, 0}, {24, 0}, {24, 9}};
  double x = 24, y = 9;
  for (int i = 0; i < 13; ++i) {
    x -= 1.715;
    job.outline.push_back({x, y});
    y = 9 - (i % 2 == 0 ? 1.8 : 0) - (i % 4) * 0.15;
    job.outline.push_back({x, y});
  }
  job.outline.push_back({0, y});
  ASSERT_EQ(job.outline.size(), 30u);
  for (const Paper paper : {Paper::A3, Paper::A4}) {
    const SettingOutDrawing drawn = draw(job, paper);
    ASSERT_TRUE(drawn.drawing);
    EXPECT_EQ(untidy(*drawn.drawing), "") << nameOf(paper);
  }
}

RC_GTEST_PROP(SettingOutDrawing, OfAnyJobIsTidy, ()) {
  const Job job = *test_support::randomJob();
  const Paper paper = *rc::gen::elementOf(std::vector<Paper>{Paper::A3, Paper::A4});
  const SettingOutDrawing drawn = draw(job, paper);
  RC_ASSERT(drawn.drawing.has_value());
  RC_ASSERT(untidy(*drawn.drawing) == "");
}

}  // namespace
}  // namespace model
