#include "model/drawing/sheet_table.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numeric>
#include <set>

#include "model/works/plan_shapes.h"
#include "tests/model/drawing/plain_letters.h"

namespace model {
namespace {

const TextWidth kWidth = test_support::plainLetters();
const Area kColumn{{10, 10}, {100, 150}};

struct Laid {
  Drawing drawing;
  TablePlace left;
};

Laid lay(const std::vector<SheetTable>& tables, Area first = kColumn) {
  Laid laid;
  laid.drawing.sheets.resize(1);
  const auto next = [](Drawing& drawing) {
    drawing.sheets.emplace_back();
    return TablePlace{drawing.sheets.size() - 1, kColumn};
  };
  laid.left = drawTables(laid.drawing, tables, {0, first}, next, kWidth);
  return laid;
}

SheetTable drawnTable() {
  static const std::vector<std::string> words{
      "sill", "top of concrete", "東京都千代田区の石造りの家", "Преображенская-Воскресенская", "",
      "12345"};
  SheetTable table;
  table.title = *rc::gen::elementOf(words) + " schedule";
  const int columns = *rc::gen::inRange(1, 6);
  for (int i = 0; i < columns; ++i)
    table.columns.push_back({*rc::gen::elementOf(words), *rc::gen::arbitrary<bool>()});
  for (int rows = *rc::gen::inRange(1, 60); rows > 0; --rows) {
    std::vector<std::string> row;
    for (int i = 0; i < columns; ++i) row.push_back(*rc::gen::elementOf(words));
    table.rows.push_back(row);
  }
  if (*rc::gen::arbitrary<bool>()) table.note = "Measured along the outer face of the masonry.";
  return table;
}

RC_GTEST_PROP(SheetTables, NeverLeaveTheirPlacesAndNoTextCoversAnother, ()) {
  std::vector<SheetTable> tables;
  for (int i = *rc::gen::inRange(1, 5); i > 0; --i) tables.push_back(drawnTable());
  const Laid laid = lay(tables);
  for (const Sheet& sheet : laid.drawing.sheets) {
    std::vector<Polygon> boxes;
    for (const Text& text : sheet.texts) {
      // Letters with their capitals' height: lines are set closer than marks reach.
      const double width = kWidth(text.text, text.size, text.bold);
      const double left = text.across == Across::Right ? text.at.x - width : text.at.x;
      const double top = text.up == Up::Top ? text.at.y : text.at.y + text.size / 2;
      const Polygon box = Area{{left, top - text.size}, {left + width, top}}.corners();
      RC_ASSERT(left >= kColumn.low.x - 1e-6);
      RC_ASSERT(left + width <= kColumn.high.x + 1e-6);
      RC_ASSERT(top <= kColumn.high.y + 1e-6);
      RC_ASSERT(top - text.size >= kColumn.low.y - 1e-6);
      for (const Polygon& other : boxes) RC_ASSERT(!overlapping(box, other));
      boxes.push_back(box);
    }
  }
}

RC_GTEST_PROP(SheetTables, SayEverythingThatTheyAreGiven, ()) {
  const SheetTable table = drawnTable();
  std::multiset<char> given, drawn;
  for (const auto& row : table.rows)
    for (const std::string& cell : row)
      for (const char c : cell)
        if (c != ' ') given.insert(c);
  for (const Sheet& sheet : lay({table}).drawing.sheets)
    for (const Text& text : sheet.texts)
      if (!text.bold)
        for (const char c : text.text)
          if (c != ' ') drawn.insert(c);
  for (const char c : table.note)
    if (c != ' ') given.insert(c);
  RC_ASSERT(drawn == given);
}

SheetTable plainTable(size_t rows) {
  SheetTable table;
  table.title = "Levels";
  table.columns = {{"level", true}, {"what", false}};
  for (size_t i = 0; i < rows; ++i) table.rows.push_back({std::to_string(i), "row"});
  return table;
}

TEST(SheetTables, GoOnWithTitleAndHeadingsOnTheNextSheet) {
  const Laid laid = lay({plainTable(60)});
  ASSERT_GE(laid.drawing.sheets.size(), 2u);
  EXPECT_EQ(laid.drawing.sheets[1].texts[0].text, "Levels, continued");
  EXPECT_EQ(laid.drawing.sheets[1].texts[1].text, "level");
}

TEST(SheetTables, LeaveNoFewLastRowsAlone) {
  for (size_t rows = 24; rows < 70; ++rows) {
    const Laid laid = lay({plainTable(rows)});
    const auto& texts = laid.drawing.sheets.back().texts;
    EXPECT_GE(std::count_if(texts.begin(), texts.end(),
                            [](const Text& text) { return text.text == "row"; }),
              3)
        << rows;
  }
}

TEST(SheetTables, SplitARowThatIsHigherThanAPlace) {
  SheetTable table = plainTable(3);
  std::string words;
  for (int i = 0; i < 600; ++i) words += "word" + std::to_string(i) + " ";
  table.rows[1][1] = words;
  const Laid laid = lay({table});
  ASSERT_GE(laid.drawing.sheets.size(), 3u);
  std::string drawn;
  for (const Sheet& sheet : laid.drawing.sheets)
    for (const Text& text : sheet.texts) {
      EXPECT_GE(text.at.y - text.size / 2, kColumn.low.y - 1e-6) << text.text;
      if (text.text.rfind("word", 0) == 0) drawn += text.text + " ";
    }
  EXPECT_EQ(drawn, words) << "no word is lost or comes twice";
}

TEST(SheetTables, ThatAreSmallAreNotSplit) {
  const Laid laid = lay({plainTable(10)}, {{10, 130}, {100, 150}});
  ASSERT_EQ(laid.drawing.sheets.size(), 2u);
  EXPECT_TRUE(laid.drawing.sheets[0].texts.empty());
}

TEST(SheetTables, StandBesideOneAnotherWhenTheyAreNarrow) {
  const Laid laid = lay({plainTable(5), plainTable(5)});
  const auto& texts = laid.drawing.sheets[0].texts;
  const auto titles = std::count_if(texts.begin(), texts.end(), [&](const Text& text) {
    return text.text == "Levels" && text.at.y == texts[0].at.y;
  });
  EXPECT_EQ(titles, 2);
}

RC_GTEST_PROP(ColumnWidths, NeverAddUpToMoreThanThereIs, ()) {
  const double width = *rc::gen::inRange(20, 200);
  const auto widths = columnWidths(drawnTable(), width, kWidth, {});
  RC_ASSERT(std::accumulate(widths.begin(), widths.end(), 0.0) <= width + 1e-6);
  for (const double each : widths) RC_ASSERT(each > 0);
}

}  // namespace
}  // namespace model
