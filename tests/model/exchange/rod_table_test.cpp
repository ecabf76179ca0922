#include "model/exchange/rod_table.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/support/many_jobs.h"

namespace model {
namespace {

TEST(RodTable, HasEveryMarkAndEveryCourseLineOfEveryCornerFromTheTopDown) {
  test_support::forManyJobs([](const Model& m) {
    const auto rods = deriveGaugeRods(m.job, m.settingOut);
    const Table table = rodsTable(m, rods);
    size_t row = 0;
    for (const GaugeRod& rod : rods) {
      std::set<std::string> keys, levels;
      double before = rod.top + 1;
      const std::string& letter = m.settingOut.corners[rod.corner].letter;
      for (; row < table.rows.size() && table.rows[row][0] == letter; ++row) {
        const double level = std::stod(table.rows[row][1]);
        EXPECT_LE(level, before);
        before = level;
        EXPECT_NEAR(std::stod(table.rows[row][2]) / 1000, level - rod.dampCourse, 0.00101);
        levels.insert(table.rows[row][1]);
        if (!table.rows[row][7].empty()) keys.insert(table.rows[row][7]);
      }
      EXPECT_EQ(keys.size(), rod.marks.size()) << letter;
      for (const RodCourse& course : rod.courses)
        EXPECT_TRUE(levels.count(levelText(course.number > 0 ? course.top() : course.bottom)))
            << letter << " course " << course.number;
    }
    EXPECT_EQ(row, table.rows.size());
  });
}

TEST(RodTable, NamesTheOddCoursesWhereTheyEnd) {
  const Model m = buildModel(test_support::demoJob("orchard-house"));
  const auto rods = deriveGaugeRods(m.job, m.settingOut);
  const Table table = rodsTable(m, rods);
  // Corner B stands on the cellar wall at -0.325: 25 too little for a course.
  std::vector<std::string> odd;
  for (const auto& row : table.rows)
    if (row[0] == "B" && !row[6].empty()) odd.push_back(row[1] + " " + row[6]);
  EXPECT_EQ(odd, (std::vector<std::string>{"-0.275 course -4 cut: bricks 40 high",
                                           "-0.325 course -5 cut: bricks 40 high"}));
  EXPECT_EQ(rodWords(m.settingOut, rods).at(1).substr(0, 43),
            "Corner B: 5 courses from the foot at -0.325");
}

}  // namespace
}  // namespace model
