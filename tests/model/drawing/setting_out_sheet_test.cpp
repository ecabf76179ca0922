// The whole drawing, of the demonstration jobs and of drawn ones, with the real typeface.
#include "model/drawing/setting_out_sheet.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <glm/geometric.hpp>

#include "model/exchange/lettering.h"
#include "model/level_text.h"
#include "model/works/plan_shapes.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

const TextWidth& letters() {
  static const TextWidth width = textWidth();
  return width;
}

SettingOutDrawing draw(const Job& job, Paper paper, std::optional<int> scale = {}) {
  return drawSettingOut(job, deriveSettingOut(job), {paper, scale, ""}, letters());
}

// What the letters themselves cover, without the room left round them.
Polygon inkOf(Text text) {
  const double base = text.up == Up::Baseline ? 0
                      : text.up == Up::Middle ? -text.size / 2
                                              : -text.size;
  const double width = letters()(text.text, text.size, text.bold);
  const double left = text.across == Across::Left     ? 0
                      : text.across == Across::Centre ? -width / 2
                                                      : -width;
  const double angle = text.angle * 3.14159265358979323846 / 180;
  const Vec2 u{std::cos(angle), std::sin(angle)}, v{-u.y, u.x};
  return {text.at + u * left + v * base, text.at + u * (left + width) + v * base,
          text.at + u * (left + width) + v * (base + text.size),
          text.at + u * left + v * (base + text.size)};
}

// Empty when every mark lies in the border and no text covers another.
std::string untidy(const Drawing& drawing) {
  for (const Sheet& sheet : drawing.sheets) {
    const Area border = insideBorder(sheet);
    const auto inside = [&](const Vec2& p) {
      return p.x >= border.low.x - 1e-6 && p.x <= border.high.x + 1e-6 &&
             p.y >= border.low.y - 1e-6 && p.y <= border.high.y + 1e-6;
    };
    for (const Stroke& stroke : sheet.strokes)
      for (const Vec2& p : stroke.points)
        if (!inside(p))
          return std::string("a line of ") + nameOf(stroke.layer) + " leaves the sheet";
    std::vector<Polygon> inks;
    for (size_t i = 0; i < sheet.texts.size(); ++i) {
      inks.push_back(inkOf(sheet.texts[i]));
      for (const Vec2& p : inks.back())
        if (!inside(p)) return "\"" + sheet.texts[i].text + "\" leaves the sheet";
      for (size_t j = 0; j < i; ++j)
        if (overlapping(inks[i], inks[j]))
          return "\"" + sheet.texts[i].text + "\" covers \"" + sheet.texts[j].text + "\"";
    }
  }
  return "";
}

bool says(const Sheet& sheet, const std::string& words) {
  return std::any_of(sheet.texts.begin(), sheet.texts.end(),
                     [&](const Text& text) { return text.text == words; });
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
