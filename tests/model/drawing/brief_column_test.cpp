#include "model/drawing/brief_column.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/model/drawing/plain_letters.h"

namespace model {
namespace {

const TextWidth kLetters = test_support::plainLetters();

BriefPart tableOf(size_t rows, BriefLook look) {
  BriefPart part{"Quantities", look, {}, "takeoff", 0};
  part.table.columns = {{"item", false}, {"net", true}};
  for (size_t i = 0; i < rows; ++i)
    part.table.rows.push_back({"item " + std::to_string(i), std::to_string(i)});
  return part;
}

Sheet drawn(const BriefColumn& column, const Area& area) {
  Sheet sheet;
  column.draw(sheet, area);
  return sheet;
}

bool says(const Sheet& sheet, const std::string& words) {
  for (const Text& text : sheet.texts)
    if (text.text == words) return true;
  return false;
}

TEST(BriefColumn, SaysHowManyRowsItLeavesOutAndWhereTheyAre) {
  BriefColumn column({tableOf(30, BriefLook::Table)}, 80, 2, kLetters);
  EXPECT_FALSE(column.fit(40));
  const size_t out = column.leftOut();
  ASSERT_GT(out, 1u);
  ASSERT_LT(out, 30u);
  const Sheet sheet = drawn(column, {{0, 0}, {80, 40}});
  EXPECT_TRUE(says(sheet, "and " + std::to_string(out) + " more: `takeoff`"));
  EXPECT_TRUE(says(sheet, "item " + std::to_string(29 - out)));
  EXPECT_FALSE(says(sheet, "item " + std::to_string(30 - out)));
}

TEST(BriefColumn, NeverSaysAndOneMoreWhereTheRowItselfWouldFit) {
  for (double height = 12; height < 60; height += 0.25) {
    BriefColumn column({tableOf(8, BriefLook::Table)}, 80, 2, kLetters);
    column.fit(height);
    // A row takes a hair more than the line that says so.
    if (column.leftOut() == 1) {
      BriefColumn more({tableOf(8, BriefLook::Table)}, 80, 2, kLetters);
      EXPECT_TRUE(more.fit(height + 0.6));
    }
  }
}

TEST(BriefColumn, AddsRowsToWriteInOnlyWhereThereIsRoom) {
  BriefPart part = tableOf(2, BriefLook::Boxes);
  part.blanks = 3;
  BriefColumn column({part}, 80, 2, kLetters);
  EXPECT_TRUE(column.fit(200));
  EXPECT_LT(column.draw(*std::make_unique<Sheet>(), {{0, 0}, {80, 200}}), 200 - 5 * 6.0);
  EXPECT_TRUE(column.fit(30));
}

RC_GTEST_PROP(BriefColumn, NeverRunsOverItsHeight, ()) {
  std::vector<BriefPart> parts;
  const int count = *rc::gen::inRange(1, 8);
  for (int i = 0; i < count; ++i) {
    const auto rows = *rc::gen::inRange<size_t>(0, 25);
    switch (*rc::gen::inRange(0, 4)) {
      case 0:
        parts.push_back(briefWords("Words", std::string(rows * 20, 'x') + " end", "stages"));
        break;
      case 1:
        parts.push_back(briefList("List", std::vector<std::string>(rows, "one two three"), "", ""));
        break;
      case 2:
        parts.push_back(tableOf(rows, BriefLook::Table));
        break;
      default:
        parts.push_back(tableOf(rows, BriefLook::Boxes));
        parts.back().blanks = 4;
    }
  }
  const double height = *rc::gen::inRange(90, 200);
  BriefColumn column(parts, 84, 2, kLetters);
  const bool whole = column.fit(height);
  RC_ASSERT(whole == (column.leftOut() == 0));
  const Sheet sheet = drawn(column, {{0, 0}, {84, height}});
  for (const Text& text : sheet.texts) {
    const double width = kLetters(text.text, text.size, text.bold);
    const double left = text.across == Across::Right ? text.at.x - width : text.at.x;
    RC_ASSERT(left > -1e-6);
    RC_ASSERT(left + width < 84 + 1e-6);
    RC_ASSERT(text.at.y - text.size / 2 > -1e-6);
    RC_ASSERT(text.at.y + text.size / 2 < height + 1e-6);
  }
  for (const Stroke& stroke : sheet.strokes)
    for (const Vec2& p : stroke.points) RC_ASSERT(p.y > -1e-6);
}

}  // namespace
}  // namespace model
