#include "model/exchange/tables.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "model/decimal_text.h"
#include "model/exchange/text_width.h"
#include "tests/support/csv_reader.h"

namespace model {
namespace {

using test_support::readCsv;

Table sample() {
  Table table;
  table.title = "Sample";
  table.columns = {"level m", "name", "where"};
  table.numeric = {true, false, false};
  table.rows = {{"+1.650", "sill, kitchen", "say \"here\""},
                {"0.000", "line\nend", ""},
                {"-0.975", "caf\xc3\xa9", ""}};
  return table;
}

TEST(Tables, CsvReadsBackWhateverIsInIt) {
  const Table table = sample();
  const auto rows = readCsv(write(table, TableStyle::Csv));
  ASSERT_EQ(rows.size(), 4u);
  EXPECT_EQ(rows[0], table.columns);
  for (size_t i = 0; i < table.rows.size(); ++i) EXPECT_EQ(rows[i + 1], table.rows[i]);
}

TEST(Tables, JsonHasNumbersAsNumbers) {
  const auto json = nlohmann::json::parse(write(sample(), TableStyle::Json));
  ASSERT_EQ(json.size(), 3u);
  EXPECT_EQ(json[0]["level m"], 1.65);
  EXPECT_EQ(json[2]["level m"], -0.975);
  EXPECT_EQ(json[0]["where"], "say \"here\"");
  EXPECT_TRUE(json[0]["level m"].is_number());
}

TEST(Tables, AnEmptyNumberIsNullInJson) {
  Table table = sample();
  table.rows = {{"", "a", "b"}};
  EXPECT_TRUE(nlohmann::json::parse(write(table, TableStyle::Json))[0]["level m"].is_null());
}

TEST(Tables, NoRowsAreStillATable) {
  Table table = sample();
  table.rows.clear();
  EXPECT_EQ(nlohmann::json::parse(write(table, TableStyle::Json)).size(), 0u);
  EXPECT_EQ(readCsv(write(table, TableStyle::Csv)).size(), 1u);
  EXPECT_EQ(write(table, TableStyle::People).back(), '\n');
}

TEST(Tables, ColumnsLineUpByWhatIsSeen) {
  Table table;
  table.title = "T";
  table.columns = {"name", "m"};
  table.numeric = {false, true};
  table.rows = {{"caf\xc3\xa9", "1.0"}, {"\xe6\x9d\xb1\xe4\xba\xac", "22.0"}, {"e\xcc\x81t", "3"}};
  std::istringstream lines(write(table, TableStyle::People));
  std::string line;
  std::vector<size_t> widths;
  while (std::getline(lines, line)) widths.push_back(seenWidth(line));
  ASSERT_EQ(widths.size(), 7u);  // title, blank, heading, rule, three rows
  for (size_t i = 3; i < widths.size(); ++i) EXPECT_EQ(widths[i], widths[3]) << i;
}

TEST(Tables, ColumnsThatSayNothingAreLeftOutForPeopleOnly) {
  Table table = sample();
  for (auto& row : table.rows) row[2].clear();
  EXPECT_EQ(write(table, TableStyle::People).find("where"), std::string::npos);
  EXPECT_NE(write(table, TableStyle::Csv).find("where"), std::string::npos);
}

TEST(Tables, LongTextsAreFoldedForPeopleAndNothingIsLost) {
  Table table;
  table.title = "T";
  table.columns = {"text"};
  std::string words;
  for (int i = 0; i < 60; ++i) words += "word" + std::to_string(i) + " ";
  table.rows = {{words}};
  const std::string text = write(table, TableStyle::People);
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) EXPECT_LE(line.size(), 60u);
  for (int i = 0; i < 60; ++i) EXPECT_NE(text.find("word" + std::to_string(i)), std::string::npos);
}

TEST(LevelText, LevelsHaveThreePlacesAndASign) {
  EXPECT_EQ(levelText(1.65), "+1.650");
  EXPECT_EQ(levelText(-0.975), "-0.975");
  EXPECT_EQ(levelText(0), "0.000");
}

TEST(LevelText, NothingIsNegativeNothing) {
  EXPECT_EQ(levelText(-0.0), "0.000");
  EXPECT_EQ(levelText(-0.0004), "0.000");
  EXPECT_EQ(levelText(-0.0006), "-0.001");
  EXPECT_EQ(lengthText(-0.0001), "0");
}

TEST(LevelText, LengthsAreWholeMillimetres) {
  EXPECT_EQ(lengthText(4.5), "4500");
  EXPECT_EQ(lengthText(0.1025), "103");
  EXPECT_EQ(lengthText(3.7 - 2.1525), "1548") << "halves go up whatever the last digits";
  EXPECT_EQ(lengthText(12.3456), "12346");
}

TEST(DecimalText, HasNoNegativeZero) {
  EXPECT_EQ(decimalText(12.3456, 3), "12.346");
  EXPECT_EQ(decimalText(-12.5, 1), "-12.5");
  EXPECT_EQ(decimalText(-0.0004, 3), "0.000");
  EXPECT_EQ(decimalText(-0.0, 0), "0");
}

TEST(TextWidth, MarksAndWideCharactersCountAsTheyAreSeen) {
  EXPECT_EQ(seenWidth("abc"), 3u);
  EXPECT_EQ(seenWidth("caf\xc3\xa9"), 4u);
  EXPECT_EQ(seenWidth("e\xcc\x81"), 1u);
  EXPECT_EQ(seenWidth("\xe6\x9d\xb1"), 2u);
  EXPECT_EQ(seenWidth("\xff\xc3"), 2u) << "bytes that are no text count one each";
}

TEST(Tables, LintelsAreListedByOpeningWithTheirBearings) {
  Job job;
  job.outline = {{0, 0}, {8.99, 0}, {8.99, 5.39}, {0, 5.39}};
  job.openings = {{"Bay", OpeningKind::Window, "A-B", "A", 3.6, 1.8, {}, 1.95, 0.215}};
  job.openings[0].padstone = 0.440;
  job.openings[0].sillHeight = 0.140;
  const Table table = lintelsTable(buildModel(job));
  ASSERT_EQ(table.rows.size(), 1u);
  // Check M20: 1800 and 150 at each end.
  const std::vector<std::string> row{"Bay",        "A-B",        "1800",        "+1.950",
                                     "2100 x 215", "2100 x 215", "150 and 150", "2 of 440 x 225",
                                     "1800 x 140"};
  EXPECT_EQ(table.rows[0], row);
}

}  // namespace
}  // namespace model
