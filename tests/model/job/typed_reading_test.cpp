// Readings typed one by one, and what they leave alone.
#include "model/job/typed_reading.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/job/csv_rows.h"
#include "model/job/read_job.h"
#include "model/job/readings_csv.h"
#include "tests/support/random_readings.h"

namespace {

using namespace model;

Job house() {
  const auto read = readJob(
      "[outline]\ncorners = [[0, 0], [6740, 0], [6740, 4490], [0, 4490]]\n"
      "[site.bench_mark]\nat = [-3000, 0]\nlevel = 0.200\n"
      "[[set_up]]\nname = \"Site\"\nat = [-2000, 2000]\nbacksight = 1.200\n",
      "job.toml");
  for (const Problem& problem : read.problems) ADD_FAILURE() << format(problem);
  return read.job.value_or(Job{});
}

TypedReading concreteAt(const std::string& at, const std::string& value) {
  TypedReading typed;
  typed.target = "top-of-concrete";
  typed.at = at;
  typed.value = value;
  return typed;
}

std::string wordsOf(const AddedReading& added) {
  return added.problems.empty()
             ? ""
             : added.problems.front().what + "; " + added.problems.front().instead;
}

TEST(AddReading, BeginsAnEmptyFileWithItsHeadings) {
  for (const char* text : {"", "\xEF\xBB\xBF", "\r\n \r\n"}) {
    const AddedReading added = addReading(text, concreteAt("C", "-0.987"), "c.csv", house());
    ASSERT_TRUE(added.reading) << wordsOf(added);
    EXPECT_EQ(added.text, std::string(text) +
                              "kind,target,at,along mm,value,x mm,y mm,set-up,note,photo\r\n"
                              "level,top-of-concrete,C,,-0.987,,,,,\r\n");
  }
}

TEST(AddReading, KeepsEveryByteOfTheFile) {
  // Its own order, a column of its owner's, a quoted line break, no line end at the end.
  const std::string text =
      "at,Kind,weather,target,value,note\nC,level,\"dry, cold\",top-of-concrete,-0.98,\"a "
      "\"\"b\"\"\"\n\n"
      "D,level,wet,top-of-concrete,-0.97,";
  const AddedReading added = addReading(text, concreteAt("A", "-0.987"), "c.csv", house());
  ASSERT_TRUE(added.reading) << wordsOf(added);
  EXPECT_EQ(added.text, text + "\nA,level,,top-of-concrete,-0.987,\n");
}

TEST(AddReading, AddsTheColumnThatItNeedsBehindTheOthers) {
  const std::string text = "kind,target,at,value\r\nlevel,top-of-concrete,C,-0.98\r\n";
  TypedReading typed = concreteAt("A-B", "2.385");
  typed.kind = "staff";
  typed.along = "2400";
  typed.setUp = "Site";
  const AddedReading added = addReading(text, typed, "c.csv", house());
  ASSERT_TRUE(added.reading) << wordsOf(added);
  EXPECT_EQ(added.text,
            "kind,target,at,value,along mm,set-up\r\nlevel,top-of-concrete,C,-0.98\r\n"
            "staff,top-of-concrete,A-B,2.385,2400,Site\r\n");
  EXPECT_DOUBLE_EQ(*added.reading->along, 2.4);
}

TEST(AddReading, WritesTheFilesOwnDecimalMark) {
  const std::string comma = "kind;target;at;value\nlevel;top-of-concrete;C;-0,98\n";
  for (const char* typed : {"-0.987", "-0,987"}) {
    const AddedReading added = addReading(comma, concreteAt("A", typed), "c.csv", house());
    ASSERT_TRUE(added.reading) << wordsOf(added);
    EXPECT_EQ(added.text, comma + "level;top-of-concrete;A;-0,987\n");
    EXPECT_DOUBLE_EQ(added.reading->value, -0.987);
  }
  const std::string point = "kind,target,at,value\nlevel,top-of-concrete,C,-0.98\n";
  const AddedReading added = addReading(point, concreteAt("A", "-0,987"), "c.csv", house());
  EXPECT_EQ(added.text, point + "level,top-of-concrete,A,-0.987\n");
}

TEST(AddReading, SaysWhatIsWrongInTheWordsOfTheReader) {
  const std::string text = "kind,target,at,value\nlevel,top-of-concrete,C,-0.98\n";
  const struct {
    TypedReading typed;
    const char* words;
  } wrong[] = {
      {concreteAt("Q", "-0.987"), "there is no corner or wall \"Q\""},
      {concreteAt("A", "-987"), "levels are in metres; for -987 mm write -0.987"},
      {concreteAt("A", "low"), "\"low\" is no number"},
      {concreteAt("A", ""), "this row has no value"},
      {concreteAt("A-B", "-0.987"), "how far along wall A-B"},
      {concreteAt("C", "-0.99"), "this was read already, on line 2"},
      {concreteAt("A", "1,2,3"), "more than one point or comma"},
  };
  for (const auto& [typed, words] : wrong) {
    const AddedReading added = addReading(text, typed, "c.csv", house());
    EXPECT_FALSE(added.reading) << words;
    EXPECT_EQ(added.text, "") << words;
    EXPECT_NE(wordsOf(added).find(words), std::string::npos) << wordsOf(added);
    ASSERT_FALSE(added.problems.empty());
    EXPECT_EQ(added.problems.front().place.line, 3) << words;
  }
}

TEST(AddReading, AddsNothingToAFileThatCannotBeRead) {
  for (const char* text : {"kind,target,at,value\nlevel,top-of-concrete,Q,-0.98\n",
                           "kind,target,at,value\n\"level", "a,b,c\n1,2,3\n"}) {
    const AddedReading added = addReading(text, concreteAt("A", "-0.987"), "c.csv", house());
    EXPECT_FALSE(added.reading) << text;
    EXPECT_TRUE(hasErrors(added.problems)) << text;
  }
}

TEST(AddReading, TellsAWarningOfTheRowAndStillAdds) {
  TypedReading typed;
  typed.kind = "side";
  typed.target = "outer-face";
  typed.at = "A-B";
  typed.value = "9000";
  const AddedReading added = addReading("", typed, "c.csv", house());
  EXPECT_TRUE(added.reading);
  ASSERT_EQ(added.problems.size(), 1u);
  EXPECT_EQ(added.problems.front().severity, Severity::Warning);
}

// A row as the writer would write its cells.
TypedReading typedAs(const Reading& reading) {
  Problems none;
  const CsvRows csv = readCsvRows(writeReadings({reading}), "", "", none);
  const auto cell = [&](const char* heading) -> std::string {
    for (size_t i = 0; i < csv.rows[0].cells.size(); ++i)
      if (csv.rows[0].cells[i].text == heading) return csv.rows[1].cells[i].text;
    return {};
  };
  return {cell("kind"), cell("target"), cell("at"),     cell("along mm"), cell("value"),
          cell("x mm"), cell("y mm"),   cell("set-up"), cell("note"),     cell("photo")};
}

RC_GTEST_PROP(AddReading, TypedOneByOneIsTheSameAsReadAtOnce, (unsigned seed)) {
  const auto drawn = test_support::randomReadings(seed);
  std::string text;
  for (const Reading& reading : drawn.rows) {
    const AddedReading added = addReading(text, typedAs(reading), "r.csv", drawn.job);
    RC_ASSERT(added.reading.has_value());
    RC_ASSERT(added.text.substr(0, text.size()) == text);
    text = added.text;
  }
  if (drawn.rows.empty()) return;
  const ReadingsResult back = readReadings(text, "r.csv", drawn.job);
  RC_ASSERT(writeReadings(back.rows) == writeReadings(drawn.rows));
}

}  // namespace
