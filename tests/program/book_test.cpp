// The real program working out level books.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/program/program_fixture.h"
#include "tests/support/csv_reader.h"

namespace program_test {
namespace {

using Book = InFolder;

// The printed example of the published tests: from 49.872, closing 9 low on 48.719.
const char* const kBook =
    "point,backsight,intermediate,foresight,known,remark\n"
    "TBM 1,2.191,,,49.872,cut in the step\n"
    "A,,2.507,,,\n"
    "B,,2.325,,,\n"
    "CP 1,3.019,,1.496,,\n"
    "C,,2.513,,,\n"
    "CP 2,1.752,,2.811,,\n"
    "TBM 2,,,3.817,48.719,\n";

bool says(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

TEST_F(Book, IsAPageThatAForemanCanRead) {
  const ProgramRun run = stringcourse({"book", writeFile("monday.csv", kBook)});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  EXPECT_EQ(run.err, "");
  EXPECT_TRUE(says(run.out, "Level book, rise and fall, 3 set-ups")) << run.out;
  for (const char* words : {"+48.710", "6.962", "8.124", "1.517", "2.679",
                            "Backsights less foresights -1.162; rises less falls -1.162",
                            "The book closes 9 low on TBM 2; 9 is allowed over 3 set-ups."}) {
    EXPECT_TRUE(says(run.out, words)) << words << "\n" << run.out;
  }
  EXPECT_FALSE(says(run.out, "adjusted"));
}

TEST_F(Book, BothMethodsGiveTheSameLevels) {
  const std::string file = writeFile("monday.csv", kBook);
  const auto rises = nlohmann::json::parse(stringcourse({"book", file, "--json"}).out);
  const auto lines =
      nlohmann::json::parse(stringcourse({"book", file, "--json", "--method", "collimation"}).out);
  ASSERT_EQ(rises.size(), 7u);
  ASSERT_EQ(lines.size(), 7u);
  for (size_t i = 0; i < 7; ++i) EXPECT_EQ(rises[i]["level m"], lines[i]["level m"]);
  EXPECT_EQ(lines[0]["collimation m"], 52.063);
  EXPECT_EQ(rises[1]["fall m"], 0.316);
  EXPECT_TRUE(rises[1]["rise m"].is_null());
}

TEST_F(Book, AdjustsOnRequestAndEndsOnTheMark) {
  const ProgramRun run =
      stringcourse({"book", writeFile("monday.csv", kBook), "--adjust", "--csv"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  const auto rows = test_support::readCsv(run.out);
  ASSERT_EQ(rows.size(), 8u);
  const auto column = std::find(rows[0].begin(), rows[0].end(), "adjusted m") - rows[0].begin();
  ASSERT_LT(static_cast<size_t>(column), rows[0].size());
  EXPECT_EQ(rows[7][static_cast<size_t>(column)], "+48.719");
  EXPECT_EQ(rows[4][static_cast<size_t>(column)], "+50.570");  // 50.567 and a third of 9
}

TEST_F(Book, ItsOwnCsvReadsBackAsTheSameBook) {
  const std::string csv =
      stringcourse({"book", writeFile("monday.csv", kBook), "--adjust", "--csv"}).out;
  const ProgramRun again = stringcourse({"book", writeFile("again.csv", csv), "--adjust", "--csv"});
  EXPECT_EQ(again.exitCode, 0);
  EXPECT_EQ(again.err, "");
  EXPECT_EQ(again.out, csv);
}

TEST_F(Book, TakesKnownLevelsFromTheJobsBenchMarks) {
  const std::string file = writeFile("site.csv",
                                     "point,backsight,intermediate,foresight\n"
                                     "bolt in gate pier,1.240,,\nPin 1,,2.625,\n"
                                     "CP,1.000,,1.285\nNail in kerb,,,2.049\n");
  const ProgramRun unknown = stringcourse({"book", file});
  EXPECT_EQ(unknown.exitCode, 1);
  const ProgramRun run = stringcourse({"book", file, "--job", demoPath("orchard-house")});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  EXPECT_EQ(run.err, "");
  for (const char* words : {"-1.200", "The book closes 4 low on Nail in kerb",
                            "Known from the job: Bolt in gate pier +0.185; Nail in kerb -0.905"}) {
    EXPECT_TRUE(says(run.out, words)) << words << "\n" << run.out;
  }
  const auto rows = nlohmann::json::parse(
      stringcourse({"book", file, "--job", demoPath("orchard-house"), "--adjust", "--json"}).out);
  EXPECT_EQ(rows[3]["adjusted m"], -0.905);
}

TEST_F(Book, NamesTheRowThatHasAnotherLevelOfTheJobsMark) {
  const std::string file = writeFile("site.csv",
                                     "point,backsight,foresight,known\n"
                                     "Bolt in gate pier,1.240,,\nNail in kerb,,2.285,-0.850\n");
  const ProgramRun run = stringcourse({"book", file, "--job", demoPath("orchard-house")});
  EXPECT_EQ(run.exitCode, 1);
  EXPECT_TRUE(says(run.err, file + ":3:")) << run.err;
  EXPECT_TRUE(says(run.err, "the job has -0.905")) << run.err;
}

TEST_F(Book, NeedsAJobThatReadsAndHasAMark) {
  const std::string file = writeFile("monday.csv", kBook);
  const ProgramRun none = stringcourse({"book", file, "--job", demoPath("smallest")});
  EXPECT_EQ(none.exitCode, 1);
  EXPECT_TRUE(says(none.err, "smallest.toml")) << none.err;
  EXPECT_TRUE(says(none.err, "no bench mark")) << none.err;
  EXPECT_EQ(stringcourse({"book", file, "--job", "/no/such/job.toml"}).exitCode, 1);
  const ProgramRun broken =
      stringcourse({"book", file, "--job", writeFile("broken.toml", "[outline]\ncorners = 3\n")});
  EXPECT_EQ(broken.exitCode, 1);
  EXPECT_TRUE(says(broken.err, "broken.toml:2:")) << broken.err;
}

TEST_F(Book, TakesLevelsFromTheCommandLine) {
  const std::string file = writeFile("site.csv",
                                     "point,backsight,intermediate,foresight\n"
                                     "TBM,1.185,,\nPin,,2.410,\nTBM,,,1.186\n");
  const ProgramRun unknown = stringcourse({"book", file});
  EXPECT_EQ(unknown.exitCode, 1);
  EXPECT_TRUE(says(unknown.err, file + ":2:1: error: the level of the first point")) << unknown.err;
  EXPECT_EQ(unknown.out, "");
  const ProgramRun run = stringcourse({"book", file, "--start", "-0.250"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  EXPECT_TRUE(says(run.out, "-1.475")) << run.out;
  EXPECT_TRUE(says(run.out, "closes 1 low on TBM")) << run.out;
  const ProgramRun closed = stringcourse({"book", file, "--start", "1", "--close", "1.020"});
  EXPECT_TRUE(says(closed.out, "closes 21 low on TBM, 5 is allowed over 1 set-up: level it again"))
      << closed.out;
}

TEST_F(Book, RefusesToAdjustPastTheAllowanceUnlessAsked) {
  const std::string file = writeFile("monday.csv", kBook);
  const ProgramRun refused = stringcourse({"book", file, "--adjust", "--allow", "3"});
  EXPECT_EQ(refused.exitCode, 1);
  EXPECT_TRUE(says(refused.err, "not adjusted")) << refused.err;
  EXPECT_TRUE(
      says(refused.err, "closes 9 low on TBM 2, 5 is allowed over 3 set-ups: level it again"))
      << refused.err;
  EXPECT_TRUE(says(refused.out, "+48.710")) << "the book as it is, all the same";
  EXPECT_FALSE(says(refused.out, "adjusted m"));
  const ProgramRun forced = stringcourse({"book", file, "--adjust", "--anyway", "--allow", "3"});
  EXPECT_EQ(forced.exitCode, 0) << forced.err;
  EXPECT_TRUE(says(forced.out, "+48.719"));
}

TEST_F(Book, EveryProblemComesAtOnceWithItsPlace) {
  const std::string file = writeFile("bad.csv",
                                     "point,backsight,intermediate,foresight,known\n"
                                     "TBM,1435,,,10\nPin,,1.2x,,\nTBM,,,1.436,\n");
  const ProgramRun run = stringcourse({"book", file});
  EXPECT_EQ(run.exitCode, 1);
  EXPECT_TRUE(says(run.err, file + ":2:5: error: backsight 1435")) << run.err;
  EXPECT_TRUE(says(run.err, file + ":3:6: error: \"1.2x\"")) << run.err;
  EXPECT_EQ(stringcourse({"book", inFolder("none.csv")}).exitCode, 1);
}

TEST_F(Book, AWrongCommandLineIsAnotherExit) {
  const std::string file = writeFile("monday.csv", kBook);
  EXPECT_EQ(stringcourse({"book"}).exitCode, 2);
  EXPECT_EQ(stringcourse({"book", file, "--method", "guess"}).exitCode, 2);
  EXPECT_EQ(stringcourse({"book", file, "--anyway"}).exitCode, 2) << "without --adjust";
  EXPECT_EQ(stringcourse({"book", file, "--start", "nan"}).exitCode, 2);
  EXPECT_EQ(stringcourse({"book", file, "--staff", "0"}).exitCode, 2);
  EXPECT_EQ(stringcourse({"book", file, "--csv", "--json"}).exitCode, 2);
  EXPECT_EQ(stringcourse({"book", "--help"}).exitCode, 0);
}

}  // namespace
}  // namespace program_test
