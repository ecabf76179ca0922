#include "viewer/overlays/level_columns.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cstdio>
#include <set>

namespace viewer {
namespace {

struct Case {
  SheetLayout layout;
  std::vector<LevelItem> items;
  std::vector<LevelLine> lines;
  LevelColumnWidths widths;
};

// Letters of about the sheet's shape.
MeasureLevel letters(float size) {
  return [size](const std::string& text, bool bold) {
    return size * (bold ? 0.5f : 0.44f) * float(text.size());
  };
}

std::vector<LevelItem> someItems(size_t count, float height) {
  std::vector<LevelItem> items;
  for (size_t i = 0; i < count; ++i) {
    LevelItem item;
    char text[24];
    std::snprintf(text, sizeof text, "%+.3f", *rc::gen::inRange(-9000, 30000) / 1000.0);
    item.value = text;
    const int names = *rc::gen::inRange(1, 4);
    for (int n = 0; n < names; ++n)
      item.names.push_back(std::string(size_t(*rc::gen::inRange(3, 30)), char('a' + n)) +
                           (*rc::gen::inRange(0, 2) ? ", first floor" : ""));
    item.course = std::to_string(*rc::gen::inRange(-400, 1300) / 10.0).substr(0, 5);
    item.opening = *rc::gen::inRange(0, 3) == 0;
    item.yRight = float(*rc::gen::inRange(-200, int(height) + 200));
    items.push_back(item);
  }
  std::sort(items.begin(), items.end(),
            [](const LevelItem& a, const LevelItem& b) { return a.yRight < b.yRight; });
  for (LevelItem& item : items) item.yLeft = item.yRight * 0.9f + 20;
  return items;
}

Case someCase() {
  Case c;
  const float unit = *rc::gen::element(0.8f, 1.0f, 1.5f, 3.0f);
  const float width = float(*rc::gen::inRange(800, 3840)) * std::max(1.0f, unit);
  const float height = float(*rc::gen::inRange(500, 2160)) * std::max(1.0f, unit);
  SheetParts parts;
  parts.levels = true;
  parts.rod = *rc::gen::arbitrary<bool>();
  parts.titleBlock = *rc::gen::arbitrary<bool>();
  parts.heights = size_t(*rc::gen::inRange(1, 120));
  c.layout = layOutSheet(width, height, unit, 0, parts);
  c.items = someItems(parts.heights, height);
  const MeasureLevel measure = letters(c.layout.levelPlan.text);
  c.widths = levelColumnWidths(c.items, c.layout, parts.levels ? 17 * unit : 0, measure);
  c.lines = layOutLevels(c.items, c.layout, c.widths, measure);
  return c;
}

RC_GTEST_PROP(LevelColumns, leaveNoLevelOut, ()) {
  const Case c = someCase();
  std::set<size_t> shown;
  for (const LevelLine& line : c.lines) shown.insert(line.item);
  RC_ASSERT(c.lines.size() == c.items.size());
  RC_ASSERT(shown.size() == c.items.size());
}

RC_GTEST_PROP(LevelColumns, keepLinesApartAndInTheirColumns, ()) {
  const Case c = someCase();
  for (size_t i = 0; i < c.lines.size(); ++i) {
    const LevelLine& line = c.lines[i];
    const Box& column = line.left ? c.layout.levelsLeft : c.layout.levels;
    RC_ASSERT(line.box.inside(column.grown(0.05f)));
    RC_ASSERT(line.box.top >= column.top + c.layout.levelPlan.text - 0.05f);  // under its heading
    for (size_t j = i + 1; j < c.lines.size(); ++j) {
      const Box& other = c.lines[j].box;
      RC_ASSERT(!line.box.grown(-0.02f).overlaps(other.grown(-0.02f)));
    }
  }
}

RC_GTEST_PROP(LevelColumns, keepNamesClearOfValuesAndCourses, ()) {
  const Case c = someCase();
  const MeasureLevel measure = letters(c.layout.levelPlan.text);
  for (const LevelLine& line : c.lines) {
    if (line.name.empty()) continue;
    const float from = line.box.left + c.widths.mark + c.widths.value + c.widths.gap;
    const float to = line.box.right - (line.course ? c.widths.course : 0);
    RC_ASSERT(from + line.room <= to + 0.05f);
    RC_ASSERT(measure(line.name, false) * 0.88f <= line.room + 0.05f);
  }
}

RC_GTEST_PROP(LevelColumns, standInTheOrderOfTheirHeights, ()) {
  const Case c = someCase();
  for (size_t i = 0; i + 1 < c.lines.size(); ++i) {
    const LevelLine &a = c.lines[i], &b = c.lines[i + 1];
    if (a.left == b.left) RC_ASSERT(a.box.top <= b.box.top + 0.01f);
  }
}

RC_GTEST_PROP(LevelColumns, standClearOfTheRestOfTheSheet, ()) {
  const Case c = someCase();
  const SheetLayout& l = c.layout;
  for (const LevelLine& line : c.lines) {
    RC_ASSERT(line.box.inside(l.sheet));
    RC_ASSERT(!line.box.overlaps(l.tape));
    RC_ASSERT(!line.box.overlaps(l.drawing));
    RC_ASSERT(
        !line.box.overlaps({l.captions.left, l.captions.top, l.captions.right, l.drawing.top - 1}));
  }
}

RC_GTEST_PROP(LevelColumns, keepALegibleSizeAndALineEachInAnyLikelyJob, ()) {
  const float unit = *rc::gen::element(0.8f, 1.0f);
  SheetParts parts;
  parts.levels = true;
  parts.heights = size_t(*rc::gen::inRange(1, 46));
  const SheetLayout layout = layOutSheet(float(*rc::gen::inRange(800, 2000)),
                                         float(*rc::gen::inRange(500, 1200)), unit, 0, parts);
  RC_ASSERT(layout.levelPlan.text >= 10.5f);
  RC_ASSERT(layout.levelPlan.perLine == 1u);
}

TEST(LevelColumns, NameAFullLevelSetInOneColumnOnACommonSheet) {
  SheetParts parts;
  parts.levels = true;
  parts.heights = 30;
  const SheetLayout layout = layOutSheet(1280, 720, 1, 0, parts);
  EXPECT_EQ(layout.levelPlan.left, 0u);
  EXPECT_GE(layout.levelPlan.text, 15);
}

TEST(LevelColumns, StandAtTheirOwnHeightWhereThereIsRoom) {
  SheetParts parts;
  parts.levels = true;
  parts.heights = 2;
  const SheetLayout layout = layOutSheet(1280, 720, 1, 0, parts);
  std::vector<LevelItem> items{{"+2.700", {"finished floor"}, "", "36", false, 200, 200},
                               {"0.000", {"damp course"}, "", "0", false, 400, 400}};
  const auto lines = layOutLevels(items, layout, {}, letters(16));
  ASSERT_EQ(lines.size(), 2u);
  EXPECT_FLOAT_EQ(lines[0].box.centre().y, 200);
  EXPECT_FLOAT_EQ(lines[1].box.centre().y, 400);
}

TEST(LevelColumns, SayTheLiftAfterTheRestWhereThereIsRoom) {
  SheetParts parts;
  parts.levels = true;
  parts.heights = 1;
  const SheetLayout layout = layOutSheet(1280, 720, 1, 0, parts);
  LevelItem item{"+2.100", {"lintel soffit"}, "Hall window", "28", false, 200, 200};
  item.lift = "top of lift 2";
  EXPECT_EQ(layOutLevels({item}, layout, {}, letters(16))[0].name,
            "lintel soffit, Hall window / top of lift 2");
  item.where += ", Study window, Kitchen window";
  EXPECT_EQ(layOutLevels({item}, layout, {}, letters(16))[0].name,
            "lintel soffit, Hall window, Study window + 1 more");
}

TEST(LevelColumns, PutOpeningsIntoTheSecondColumnFirst) {
  SheetLayout layout;
  layout.levels = {400, 0, 600, 500};
  layout.levelsLeft = {0, 0, 200, 500};
  layout.levelPlan = {3, 2, 1, 12};
  std::vector<LevelItem> items(5);
  for (size_t i = 0; i < 5; ++i) items[i].opening = i == 1 || i == 3;
  for (const LevelLine& line : layOutLevels(items, layout, {}, letters(12)))
    EXPECT_EQ(line.left, line.item == 1 || line.item == 3) << line.item;
}

TEST(LevelNames, AreAllSaidWhereTheyFitAndGrowShorterByWholeNames) {
  const auto measure = letters(10);
  const std::vector<std::string> names{"finished floor, ground floor", "damp course", "threshold"};
  EXPECT_EQ(levelNames(names, 1000, measure),
            "finished floor, ground floor / damp course / threshold");
  EXPECT_EQ(levelNames(names, 190, measure), "finished floor / damp course / threshold");
  EXPECT_EQ(levelNames(names, 165, measure), "finished floor / damp course + 1 more");
  EXPECT_EQ(levelNames(names, 120, measure), "finished floor + 2 more");
  EXPECT_EQ(levelNames(names, 80, measure), "finished floor +2");
  EXPECT_EQ(levelNames(names, 60, measure), "finishe... +2");
  EXPECT_EQ(levelNames({"ground, lowest at the walls"}, 100, measure), "ground, lowest at t...");
  EXPECT_EQ(levelNames({"underside of slab, first floor"}, 80, measure), "underside of slab");
  EXPECT_EQ(levelNames(names, 4, measure), "");
}

TEST(LevelNames, SayWhereAsFarAsThereIsRoom) {
  const auto measure = letters(10);
  const std::string where = "Hall window, Study window, Side window";
  EXPECT_EQ(levelNameWhere("sill", where, 300, measure),
            "sill, Hall window, Study window, Side window");
  EXPECT_EQ(levelNameWhere("sill", where, 120, measure), "sill, Hall window + 2 more");
  EXPECT_EQ(levelNameWhere("sill", where, 70, measure), "sill, 3 places");
  EXPECT_EQ(levelNameWhere("sill", where, 50, measure), "sill");
  EXPECT_EQ(levelNameWhere("eaves", "", 300, measure), "eaves");
}

TEST(LevelPlan, UsesTheSecondColumnBeforeTextGrowsTooSmall) {
  const LevelPlan plan = planLevels(40, 400, 300, 1);
  EXPECT_GT(plan.left, 0u);
  EXPECT_GT(plan.right, plan.left);
  EXPECT_EQ(plan.right + plan.left, 40u);
  EXPECT_GT(plan.text, 14);
  EXPECT_EQ(plan.perLine, 1u);
}

TEST(LevelPlan, LetsLevelsShareLinesOnlyWhenNothingElseHelps) {
  const LevelPlan plan = planLevels(200, 400, 300, 1);
  EXPECT_GT(plan.perLine, 1u);
  EXPECT_EQ(plan.right + plan.left, 200u);
  EXPECT_EQ(planLevels(40, 400, 0, 1).perLine, 2u);
}

}  // namespace
}  // namespace viewer
