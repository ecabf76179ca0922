// The schedule of levels as a table: over what, and as read from a set-up.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "model/exchange/tables.h"
#include "tests/support/demo_job.h"

namespace model {
namespace {

size_t columnOf(const Table& table, const std::string& heading) {
  const auto found = std::find(table.columns.begin(), table.columns.end(), heading);
  if (found == table.columns.end()) throw std::runtime_error(heading);
  return size_t(found - table.columns.begin());
}

const std::vector<std::string>& rowOf(const Table& table, const std::string& key) {
  const size_t column = columnOf(table, "key");
  for (const auto& row : table.rows)
    if (row[column] == key) return row;
  throw std::runtime_error(key);
}

TEST(LevelsTable, IsRelativeToTheDatumToEachMarkAndToOrdnanceDatum) {
  Job job = test_support::demoJob("orchard-house");
  job.ordnanceDatum = 52.400;
  const Table table = levelsTable(buildModel(job));
  const auto& row = rowOf(table, "top-of-concrete 2");
  EXPECT_EQ(row[columnOf(table, "level m")], "-1.200");
  EXPECT_EQ(row[columnOf(table, "over Bolt in gate pier m")], "-1.385");
  EXPECT_EQ(row[columnOf(table, "above ordnance datum m")], "51.200");
  for (const BenchMark& mark : job.site.marks) {
    const size_t column = columnOf(table, "over " + mark.name + " m");
    EXPECT_EQ(row[column], levelText(-1.200 - mark.level));
    EXPECT_TRUE(table.detail[column]);
  }
  job.site.benchMark.reset();
  job.site.marks.clear();
  job.setUps.clear();
  EXPECT_EQ(levelsTable(buildModel(job)).columns[1], "above ordnance datum m");
}

TEST(LevelsTable, SaysWhatIsReadFromASetUpAndWhatToDoWhereNothingIs) {
  const Model model = buildModel(test_support::demoJob("orchard-house"));
  const Table table = levelsTable(model, model.job.setUps.at(0));
  EXPECT_NE(table.title.find("read from set-up Site of 2027-04-14, line at +1.425"),
            std::string::npos);
  const size_t staff = columnOf(table, "staff m"), words = columnOf(table, "from there");
  EXPECT_EQ(rowOf(table, "damp-course")[staff], "1.425");
  EXPECT_EQ(rowOf(table, "damp-course")[words], "");
  EXPECT_EQ(rowOf(table, "wall-top")[staff], "-3.675");
  EXPECT_NE(rowOf(table, "wall-top")[words].find("upside down"), std::string::npos);
  EXPECT_EQ(rowOf(table, "ridge")[staff], "");
  EXPECT_NE(rowOf(table, "ridge")[words].find("tape plumb up"), std::string::npos);
  EXPECT_EQ(table.rows.size(), levelsTable(model).rows.size());
}

}  // namespace
}  // namespace model
