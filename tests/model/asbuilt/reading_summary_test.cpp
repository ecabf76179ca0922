// Readings counted, and the questions that follow from them.
#include "model/asbuilt/reading_summary.h"

#include <gtest/gtest.h>

#include "model/asbuilt/designer_questions.h"
#include "tests/model/asbuilt/as_built_support.h"

namespace asbuilt_test {
namespace {

// Top of concrete at four corners of a rectangle, off by so many millimetres; 15 are allowed.
Job readConcrete(const std::vector<double>& off, const std::string& date = "2027-05-19") {
  Job job = rectangle(6, 4);
  const double drawn = deriveSettingOut(job).foundations.front().top;
  std::vector<Reading> rows;
  for (size_t i = 0; i < off.size(); ++i)
    rows.push_back(
        levelAt("top-of-concrete", std::string(1, char('A' + i)), drawn + off[i] / 1000));
  addSet(job, rows, date);
  return job;
}

TEST(ReadingSummary, CountsEachReadingOnce) {
  Job job = readConcrete({3, -13, 20, -16});
  addSet(job, {job.readings[0].rows[2], levelAt("top-of-concrete", "pin 999", 0)}, "2027-05-21");
  job.readings[1].rows[0].value -= 0.020;  // made good: on
  const AsBuilt built = derive(job);
  const ReadingCount all = countReadings(built), first = countReadings(built, 0);
  EXPECT_EQ(all.within, 2u);
  EXPECT_EQ(all.atTheEdge, 1u);
  EXPECT_EQ(all.out, 1u);
  EXPECT_EQ(all.readAgain, 1u);
  EXPECT_EQ(all.unheld, 1u);
  EXPECT_EQ(all.all(), 6u);
  EXPECT_EQ(first.all(), 4u);
  EXPECT_EQ(first.readAgain, 1u);
  EXPECT_EQ(first.unheld, 0u);
}

TEST(ReadingSummary, PutsWhatIsOutBeforeWhatIsAtTheEdgeAndTheMostOffFirst) {
  const AsBuilt built = derive(readConcrete({-14, 16, 3, -30}));
  const std::vector<size_t> order = mostOff(built, 10);
  ASSERT_EQ(order, (std::vector<size_t>{3, 1, 0}));
  EXPECT_EQ(mostOff(built, 1), std::vector<size_t>{3});
}

// 6 of 5 allowed is more than 17 of 15.
TEST(ReadingSummary, GoesByWhatIsAllowed) {
  Job job = readConcrete({17});
  const double plate = deriveSettingOut(job).levels.plateTop;
  job.readings[0].rows.push_back(levelAt("plate-top", "A", plate + 0.006));
  EXPECT_EQ(mostOff(derive(job), 2), (std::vector<size_t>{1, 0}));
}

TEST(ReadingSummary, NumbersThroughAllSets) {
  Job job = readConcrete({1, 2, 3});
  addSet(job, {job.readings[0].rows[0]});
  EXPECT_EQ(readingNumber(job, 0, 0), 1u);
  EXPECT_EQ(readingNumber(job, 0, 2), 3u);
  EXPECT_EQ(readingNumber(job, 1, 0), 4u);
}

TEST(ReadingSummary, SaysWhatWasReadWithoutWhere) {
  Job job = readConcrete({1});
  job.readings[0].rows.push_back(faceAt("outer-face", "A-B", 2, 0.001));
  job.readings[0].rows.push_back(tapeOf(ReadingKind::Side, "B-C", 4));
  job.readings[0].rows.push_back(tapeOf(ReadingKind::Diagonal, "A-C", 7.2));
  const AsBuilt built = derive(job);
  ASSERT_EQ(built.deviations.size(), 4u);
  EXPECT_EQ(targetWords(built.deviations[0]), "top of concrete");
  EXPECT_EQ(targetWords(built.deviations[1]), "outer face");
  EXPECT_EQ(targetWords(built.deviations[2]), "side of the outer face");
  EXPECT_EQ(targetWords(built.deviations[3]), "diagonal of the outer face");
}

TEST(ReadingSummary, WritesMillimetresWithTheirSign) {
  EXPECT_EQ(signedMillimetres(-0.012), "-12");
  EXPECT_EQ(signedMillimetres(0.0035), "+3.5");
  EXPECT_EQ(signedMillimetres(0), "0");
  EXPECT_EQ(signedMillimetres(-0.00001), "0");
}

TEST(DesignerQuestions, FollowFromWhatIsOutWithPlainFacts) {
  const Job job = readConcrete({3, -18, 14, 20});
  const auto questions = designerQuestions(job, derive(job));
  ASSERT_EQ(questions.size(), 1u) << "one of one target in one set";
  EXPECT_FALSE(questions[0].ofJob);
  EXPECT_EQ(questions[0].about, "Top of concrete");
  EXPECT_EQ(questions[0].text,
            "Read on 2027-05-19 (Set 1) and out: corner D: 20 high, 15 allowed (reading 4); corner "
            "B: 18 low, 15 allowed (reading 2). May these stay as built; if not, what is to be "
            "done?");
}

TEST(DesignerQuestions, AreNotAskedTwice) {
  Job job = readConcrete({3, -20});
  job.questions.push_back({"TOP of concrete, corner B", "20 low: a split course?"});
  const auto questions = designerQuestions(job, derive(job));
  ASSERT_EQ(questions.size(), 1u);
  EXPECT_TRUE(questions[0].ofJob);
  EXPECT_EQ(questions[0].text, "20 low: a split course?");
}

TEST(DesignerQuestions, AreNoneWhereAllIsWithinOrReadAgain) {
  EXPECT_TRUE(designerQuestions(rectangle(6, 4), derive(rectangle(6, 4))).empty());
  Job job = readConcrete({3, -20});
  addSet(job, {job.readings[0].rows[1]}, "2027-05-21");
  job.readings[1].rows[0].value += 0.020;
  EXPECT_TRUE(designerQuestions(job, derive(job)).empty());
}

TEST(DesignerQuestions, NameAFewOfMany) {
  Job job = rectangle(6, 4);
  const double drawn = deriveSettingOut(job).foundations.front().top;
  std::vector<Reading> rows;
  for (int i = 1; i <= 9; ++i)
    rows.push_back(levelAt("top-of-concrete", "A-B", drawn - 0.030, 0.5 * i));
  addSet(job, rows);
  const auto questions = designerQuestions(job, derive(job));
  ASSERT_EQ(questions.size(), 1u);
  EXPECT_TRUE(says(questions[0].text, "; and 3 more. May these stay")) << questions[0].text;
}

TEST(DesignerQuestions, AskWhichAnswerRaftersAreCutTo) {
  Job job = rectangle(6, 4);
  const double plate = deriveSettingOut(job).levels.plateTop;
  addSet(job,
         {levelAt("plate-top", "A-B", plate - 0.004, 1), levelAt("plate-top", "A-B", plate, 5)});
  const AsBuilt built = derive(job);
  ASSERT_FALSE(built.roof.words.empty());
  const auto questions = designerQuestions(job, built);
  ASSERT_FALSE(questions.empty());
  EXPECT_EQ(questions.back().about, "Rafters");
}

}  // namespace
}  // namespace asbuilt_test
