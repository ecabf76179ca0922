// Level books typed row by row.
#include "model/levelling/typed_book.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/levelling/read_book.h"
#include "tests/support/random_book.h"

namespace {

using namespace model;

TypedBooking typed(const std::string& point, const std::string& back, const std::string& inter,
                   const std::string& fore, const std::string& known = "") {
  TypedBooking row;
  row[BookColumn::Point] = point;
  row[BookColumn::Backsight] = back;
  row[BookColumn::Intermediate] = inter;
  row[BookColumn::Foresight] = fore;
  row[BookColumn::Known] = known;
  return row;
}

WorkedBook worked(const TypedBook& book, BookMethod method = BookMethod::RiseAndFall,
                  bool adjust = false, const BookSettings& settings = {}) {
  return workOut(book, "book.csv", settings, method, adjust);
}

// Two set-ups from a mark and back to it, 4 mm high.
TypedBook round() {
  return {{typed("Mark", "1.500", "", "", "10.000"),
           typed("Peg", "", "1.200", ""),
           typed("TP", "1.100", "", "1.400"),
           {},
           typed("Mark", "", "", "1.196")},
          {},
          ','};
}

TEST(TypedBook, IsWorkedOutByEitherMethodAndAdjusted) {
  const WorkedBook book = worked(round(), BookMethod::RiseAndFall, true);
  ASSERT_TRUE(book.whole);
  ASSERT_EQ(book.rows.size(), 5u);
  EXPECT_NEAR(*book.rows[1].rise, 0.300, 1e-9);
  EXPECT_NEAR(*book.rows[2].fall, 0.200, 1e-9);
  EXPECT_FALSE(book.rows[3].level) << "an empty row stays one";
  EXPECT_NEAR(*book.rows[4].level, 10.004, 1e-9);
  EXPECT_TRUE(book.adjusted);
  EXPECT_NEAR(*book.rows[2].adjusted, 10.098, 1e-9);
  EXPECT_NEAR(*book.rows[4].adjusted, 10.000, 1e-9);
  const WorkedBook line = worked(round(), BookMethod::Collimation);
  EXPECT_NEAR(*line.rows[2].collimation, 11.200, 1e-9);
  EXPECT_FALSE(line.rows[2].rise);
  EXPECT_FALSE(line.adjusted);
  const auto closes = [](const std::string& s) { return s.find("closes 4 high") != s.npos; };
  EXPECT_TRUE(std::any_of(book.sentences.begin(), book.sentences.end(), closes));
}

TEST(TypedBook, HasLevelsWhileItIsUnfinished) {
  const TypedBook whole = round();
  for (size_t rows = 1; rows < whole.rows.size(); ++rows) {
    TypedBook part = whole;
    part.rows.resize(rows);
    const WorkedBook book = worked(part);
    for (size_t i = 0; i < rows; ++i) {
      if (whole.rows[i].empty()) continue;
      ASSERT_TRUE(book.rows[i].level) << rows << " rows, row " << i;
      EXPECT_NEAR(*book.rows[i].level, *worked(whole).rows[i].level, 1e-9);
    }
  }
}

TEST(TypedBook, MarksAWrongRowInTheReadersWordsAndStopsThere) {
  TypedBook book = round();
  book.rows[2][BookColumn::Foresight] = "1400";
  const WorkedBook bad = worked(book);
  EXPECT_FALSE(bad.whole);
  EXPECT_TRUE(bad.rows[1].level);
  EXPECT_FALSE(bad.rows[2].level);
  EXPECT_FALSE(bad.rows[4].level) << "what hangs on it";
  ASSERT_EQ(bad.rows[2].wrong.size(), 1u);
  const ReadBookResult read = readBook(typedBookText(book), "book.csv", {});
  ASSERT_EQ(read.problems.size(), 1u);
  EXPECT_EQ(bad.rows[2].wrong[0], read.problems[0].what + "; " + read.problems[0].instead);
  for (const size_t i : {0u, 1u, 4u}) EXPECT_TRUE(bad.rows[i].wrong.empty()) << i;
}

TEST(TypedBook, TellsWhatIsOnlyUnfinishedApartFromWhatIsWrong) {
  TypedBook one{{typed("Mark", "1.500", "", "", "10.000")}, {}, ','};
  const WorkedBook begun = worked(one);
  EXPECT_TRUE(begun.rows[0].wrong.empty());
  EXPECT_EQ(begun.rows[0].unfinished.size(), 1u) << "there is one row only";
  one.rows[0][BookColumn::Backsight] = "1500";
  EXPECT_EQ(worked(one).rows[0].wrong.size(), 1u);
  TypedBook open = round();
  open.rows.resize(2);
  EXPECT_TRUE(worked(open).rows[1].wrong.empty());
  EXPECT_EQ(worked(open).rows[1].unfinished.size(), 1u) << "it ends on an intermediate sight";
  EXPECT_FALSE(worked(open).whole);
}

TEST(TypedBook, TellsTheRowBehindAnEmptyOneApart) {
  TypedBook book = round();
  book.rows[4][BookColumn::Foresight] = "high";
  const WorkedBook bad = worked(book);
  EXPECT_EQ(bad.rows[4].wrong.size(), 1u);
  EXPECT_TRUE(bad.rows[3].wrong.empty());
}

TEST(TypedBook, DoesNotAdjustWhatClosesBadly) {
  TypedBook book = round();
  book.rows[4][BookColumn::Foresight] = "1.100";
  const WorkedBook bad = worked(book, BookMethod::RiseAndFall, true);
  EXPECT_TRUE(bad.whole);
  EXPECT_FALSE(bad.adjusted);
  EXPECT_FALSE(bad.rows[2].adjusted);
  EXPECT_FALSE(bad.closing->within());
  EXPECT_EQ(bad.sentences.back(), "Not adjusted.");
}

TEST(TypedBook, KnowsTheMarksOfTheJobAndWritesTheirLevels) {
  TypedBook book = round();
  book.rows[0][BookColumn::Known].clear();
  EXPECT_FALSE(worked(book).whole);
  BookSettings settings;
  settings.marks = {{"mark", 10.0}, {"Other", 3.0}};
  EXPECT_TRUE(worked(book, BookMethod::RiseAndFall, false, settings).whole);
  fillKnownLevels(book, settings);
  EXPECT_EQ(book.rows[0][BookColumn::Known], "10.000");
  EXPECT_EQ(book.rows[1][BookColumn::Known], "");
  EXPECT_TRUE(worked(book).whole) << "without the job";
  TypedBook comma{{typed("Mark", "1,500", "", "")}, {}, ';'};
  fillKnownLevels(comma, settings);
  EXPECT_EQ(comma.rows[0][BookColumn::Known], "10,000");
}

TEST(TypedBook, KeepsTheOwnersColumnsAndSeparator) {
  Problems problems;
  const auto book = readTypedBook(
      "weather;FS;BS;station;rise;RL\ndry;;1,5;Mark;;10,0\nwet;1,4;;\"a; b\";0,1;10,1\n", "b.csv",
      problems);
  ASSERT_TRUE(book);
  EXPECT_EQ(typedBookText(*book),
            "point;backsight;intermediate;foresight;level;weather\r\n"
            "Mark;1,5;;;10,0;dry\r\n\"a; b\";;;1,4;10,1;wet\r\n");
}

TEST(TypedBook, RefusesWhatItWouldLoseInSaving) {
  for (const char* text : {"", "a,b\n1,2\n", "point,backsight,foresight\nMark,1,,,0.5\n",
                           "point,backsight,foresight\n\"Mark,1,\n", "point,backsight\nMark,1\n",
                           "point,backsight,foresight,BS\nMark,1,,2\n"}) {
    Problems problems;
    EXPECT_FALSE(readTypedBook(text, "b.csv", problems)) << text;
    EXPECT_TRUE(hasErrors(problems)) << text;
  }
}

RC_GTEST_PROP(TypedBook, IsSavedAndReadAsTheBookItIs, (unsigned seed)) {
  const auto drawn = test_support::randomBook(seed);
  const std::string text = writeBook(drawn.book);
  Problems problems;
  const auto book = readTypedBook(text, "b.csv", problems);
  RC_ASSERT(book.has_value());
  const auto back = readBook(typedBookText(*book), "b.csv", {});
  RC_ASSERT(back.book.has_value());
  RC_ASSERT(back.book->bookings == drawn.book.bookings);
  const WorkedBook out = worked(*book);
  RC_ASSERT(out.whole);
  for (size_t i = 0; i < out.rows.size(); ++i)
    RC_ASSERT(std::abs(*out.rows[i].level - drawn.levels[i]) < 1e-6);
}

}  // namespace
