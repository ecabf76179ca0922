// Books of a job: its bench marks are known by name.
#include <gtest/gtest.h>

#include <algorithm>

#include "model/levelling/book_words.h"
#include "model/levelling/read_book.h"
#include "model/levelling/set_up.h"

namespace {

using namespace model;

Job jobWithMarks() {
  Job job;
  job.site.benchMark = BenchMark{"Gate", {-3, 0}, 0.200};
  job.site.marks = {BenchMark{"Kerb", {9, 0}, -0.860}, BenchMark{"Oak", {0, 9}, 1.500}};
  job.ordnanceDatum = 61.350;
  return job;
}

BookSettings settingsOf(const Job& job) {
  BookSettings settings;
  settings.marks = marksOf(job);
  settings.ordnanceDatum = job.ordnanceDatum;
  return settings;
}

const char* const kBook =
    "point,backsight,intermediate,foresight\n"
    "gate,1.300,,\n"
    "Pin 1,,1.725,\n"
    "CP,0.400,,1.900\n"
    "Kerb,,,0.857\n";

TEST(BookOfAJob, BeginsAndClosesOnItsMarksWhateverTheirCapitals) {
  const BookSettings settings = settingsOf(jobWithMarks());
  ASSERT_EQ(settings.marks.size(), 3u);
  const ReadBookResult read = readBook(kBook, "book.csv", settings);
  ASSERT_TRUE(read.book);
  EXPECT_TRUE(read.problems.empty());
  const ReducedBook reduced = reduceBook(*read.book, settings, BookMethod::RiseAndFall);
  EXPECT_NEAR(reduced.rows[0].level, 0.200, 1e-12);
  EXPECT_NEAR(reduced.rows[1].level, -0.225, 1e-12);
  const auto closing = closeBook(*read.book, reduced, {});
  ASSERT_TRUE(closing);
  EXPECT_NEAR(closing->error(), 0.003, 1e-9);
  EXPECT_EQ(marksText(*read.book, settings.marks), "Known from the job: Gate +0.200; Kerb -0.860");
}

TEST(BookOfAJob, NamesTheRowWhereItKnowsAMarkOtherwise) {
  const std::string text =
      "point,backsight,intermediate,foresight,known\n"
      "Gate,1.300,,,0.200\n"
      "Kerb,,,2.360,-0.850\n";
  const ReadBookResult read = readBook(text, "book.csv", settingsOf(jobWithMarks()));
  EXPECT_FALSE(read.book);
  ASSERT_EQ(read.problems.size(), 1u);
  EXPECT_EQ(read.problems[0].place.line, 3);
  EXPECT_EQ(read.problems[0].what,
            "the known level of \"Kerb\" is -0.850 here; the job has -0.860");
}

TEST(BookOfAJob, TellsALevelThatIsCountedFromOrdnanceDatum) {
  const std::string text =
      "point,backsight,intermediate,foresight,known\n"
      "Gate,1.300,,,61.550\n"
      "Gate,,,1.300,\n";
  Job job = jobWithMarks();
  const ReadBookResult read = readBook(text, "book.csv", settingsOf(job));
  ASSERT_EQ(read.problems.size(), 1u);
  EXPECT_EQ(read.problems[0].place.line, 2);
  EXPECT_NE(read.problems[0].what.find("is above ordnance datum; the job has +0.200"),
            std::string::npos)
      << read.problems[0].what;
  job.ordnanceDatum.reset();
  const ReadBookResult other = readBook(text, "book.csv", settingsOf(job));
  ASSERT_EQ(other.problems.size(), 1u);
  EXPECT_NE(other.problems[0].what.find("is +61.550 here; the job has +0.200"), std::string::npos);
}

TEST(BookOfAJob, OffersTheMarksWhereTheFirstPointIsNone) {
  const std::string text = "point,backsight,foresight\nGatte,1.3,\nPin,,1.2\n";
  const ReadBookResult read = readBook(text, "book.csv", settingsOf(jobWithMarks()));
  EXPECT_FALSE(read.book);
  const auto unknown = std::find_if(read.problems.begin(), read.problems.end(), [](const auto& p) {
    return p.what.find("first point, \"Gatte\", is not known") != std::string::npos;
  });
  ASSERT_NE(unknown, read.problems.end());
  EXPECT_NE(unknown->instead.find("or is it Gate?"), std::string::npos) << unknown->instead;
}

TEST(BookOfAJob, SaysWhenNoPointIsAMark) {
  const LevelBook book{{Booking{}}};
  EXPECT_EQ(marksText(book, marksOf(jobWithMarks())),
            "No point of the book is a bench mark of the job");
  EXPECT_TRUE(marksOf(Job{}).empty());
}

}  // namespace
