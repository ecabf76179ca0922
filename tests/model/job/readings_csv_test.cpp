// Readings as people and spreadsheets save them, and back.
#include "model/job/readings_csv.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "model/job/reading_files.h"
#include "model/job/reading_points.h"
#include "model/job/reading_targets.h"
#include "tests/support/random_readings.h"

namespace {

using namespace model;

Job jobOf(const std::string& text) {
  const auto read = readJob(text, "job.toml");
  for (const Problem& problem : read.problems) ADD_FAILURE() << format(problem);
  return read.job.value_or(Job{});
}

const std::string kOutline = "[outline]\ncorners = [[0, 0], [6740, 0], [6740, 4490], [0, 4490]]\n";
const std::string kSetUp =
    "[site.bench_mark]\nat = [-3000, 0]\nlevel = 0.200\n"
    "[[set_up]]\nname = \"Site\"\nat = [-2000, 2000]\nbacksight = 1.200\n";

std::vector<Reading> readWell(const std::string& text, const Job& job) {
  const ReadingsResult result = readReadings(text, "readings.csv", job);
  for (const Problem& problem : result.problems) ADD_FAILURE() << format(problem);
  return result.rows;
}

const char* const kPlain =
    "kind,target,at,along mm,value,x mm,y mm,set-up,note,photo\n"
    "level,top-of-concrete,C,,-0.987,,,,wet,c.jpg\n"
    "staff,top-of-concrete,A-B,2400,2.385,,,Site,,\n"
    "level,oversite,middle,,-0.350,3000,2000,,,\n"
    "face,outer-face,B-A,1200,-9,,,,,\n"
    "corner,outer-face,C,,,6742,4488.5,,,\n"
    "side,outer-face,A-B,,6745,,,,,\n"
    "diagonal,outer-face,A-C,,8112.5,,,,,\n"
    "level,top-of-concrete,pin 7,,-0.970,,,,,\n";

TEST(ReadReadings, ReadsEachCellIntoItsPlaceInMetres) {
  const auto rows = readWell(kPlain, jobOf(kOutline + kSetUp));
  ASSERT_EQ(rows.size(), 8u);
  EXPECT_EQ(rows[0].kind, ReadingKind::Level);
  EXPECT_EQ(rows[0].target, "top-of-concrete");
  EXPECT_EQ(rows[0].at, "C");
  EXPECT_EQ(rows[0].value, -0.987);
  EXPECT_EQ(rows[0].note, "wet");
  EXPECT_EQ(rows[0].photo, "c.jpg");
  EXPECT_EQ(rows[0].place.line, 2);
  EXPECT_FALSE(rows[0].along || rows[0].position);
  EXPECT_EQ(rows[1].kind, ReadingKind::Staff);
  EXPECT_EQ(rows[1].along, 2.4);
  EXPECT_EQ(rows[1].value, 2.385);
  EXPECT_EQ(rows[1].setUp, "Site");
  EXPECT_EQ(rows[2].position, (Vec2{3, 2}));
  EXPECT_EQ(rows[3].value, -0.009);
  EXPECT_EQ(rows[3].at, "B-A");
  EXPECT_EQ(rows[4].position, (Vec2{6.742, 4.4885}));
  EXPECT_EQ(rows[5].value, 6.745);
  EXPECT_EQ(rows[6].value, 8.1125);
  EXPECT_EQ(rows[7].at, "pin 7");
}

class SameReadings : public testing::TestWithParam<std::string> {};

TEST_P(SameReadings, HoweverTheyAreSaved) {
  const Job job = jobOf(kOutline);
  EXPECT_EQ(writeReadings(readWell(GetParam(), job)),
            "kind,target,at,along mm,value,note\r\n"
            "level,damp-course,A,,0.003,\"wet; \"\"low\"\"\"\r\n"
            "face,outer-face,A-B,1200,-9,\r\n");
}

INSTANTIATE_TEST_SUITE_P(
    Ways, SameReadings,
    testing::Values(
        // Byte order mark, CRLF, semicolons and decimal commas, another order, capitals, a dash.
        "\xEF\xBB\xBFKind;Target;Note;At;Value;Along (mm)\r\n"
        "LEVEL;damp-course;\"wet; \"\"low\"\"\";A;0,003;-\r\n"
        "face;outer-face;;A-B;-9,0;1200\r\n",
        // Tabs, a blank row, no line end after the last, a true minus.
        "kind\ttarget\tat\talong_mm\treading\tremark\n"
        "level\tdamp-course\tA\t\t0.003\t\"wet; \"\"low\"\"\"\n\n"
        "face\touter-face\tA-B\t1200\t\xE2\x88\x92"
        "9"));

TEST(ReadReadings, TakesSillsAtOpeningsAndFloorsOfStoreys) {
  const Job job = jobOf(kOutline +
                        "[[storey]]\nname = \"G\"\nfloor = 0\n"
                        "[[storey]]\nname = \"F\"\nfloor = 2.700\n"
                        "[[opening]]\nname = \"Hall\"\nwall = \"A-B\"\nfrom = \"A\"\nat = 1340\n"
                        "width = 1360\n");
  EXPECT_EQ(readWell("kind,target,at,value\nlevel,sill,Hall,1.052\nlevel,finished-floor:1,A,2.702\n"
                     "level,joist-bearing,A,2.410\nlevel,finished-floor,A,0.001\n",
                     job)
                .size(),
            4u);
}

TEST(ReadReadings, RefusesWhatIsNoFileOfReadings) {
  const Job job = jobOf(kOutline);
  EXPECT_TRUE(hasErrors(readReadings(std::string((1 << 20) + 1, 'a'), "r.csv", job).problems));
  std::string many = "kind,target,at,value\n";
  for (int i = 0; i < 5001; ++i) many += "level,damp-course,A,0.001\n";
  EXPECT_TRUE(hasErrors(readReadings(many, "r.csv", job).problems));
  std::string wrong = "kind,target,at,value\n";
  for (int i = 0; i < 4000; ++i) wrong += "levl,damp-course,A,0.001\n";
  EXPECT_LE(readReadings(wrong, "r.csv", job).problems.size(), 201u);
}

TEST(ReadingTargets, AreFoundByNameWithAndWithoutStorey) {
  for (const ReadingTarget& target : readingTargets()) {
    EXPECT_EQ(findReadingTarget(target.name), &target);
    EXPECT_NE(std::string(target.words), "");
  }
  EXPECT_EQ(findReadingTarget("nothing"), nullptr);
  EXPECT_EQ(storeyOfTarget("finished-floor", 2), 0u);
  EXPECT_EQ(storeyOfTarget("finished-floor:1", 2), 1u);
  EXPECT_EQ(storeyOfTarget("joist-bearing", 2), 1u);
  for (const char* none : {"finished-floor:2", "joist-bearing:0", "finished-floor:", "sill:hall",
                           "finished-floor:-1", "damp-course"}) {
    EXPECT_EQ(storeyOfTarget(none, 2), std::nullopt) << none;
  }
}

// As two jobs' rows are the same, places aside.
bool same(const Reading& a, const Reading& b) {
  return a.kind == b.kind && a.target == b.target && a.at == b.at && a.along == b.along &&
         a.value == b.value && a.position == b.position && a.setUp == b.setUp && a.note == b.note &&
         a.photo == b.photo;
}

RC_GTEST_PROP(WriteReadings, GivesBackWhatWasRead, ()) {
  const auto seed = *rc::gen::inRange<unsigned>(0, 100000);
  const auto drawn = test_support::randomReadings(seed);
  const std::string text = writeReadings(drawn.rows);
  const ReadingsResult read = readReadings(text, "r.csv", drawn.job);
  for (const Problem& problem : read.problems) RC_FAIL(format(problem) + "\n" + text);
  RC_ASSERT(read.rows.size() == drawn.rows.size());
  for (size_t i = 0; i < read.rows.size(); ++i) RC_ASSERT(same(read.rows[i], drawn.rows[i]));
}

RC_GTEST_PROP(ReadReadings, AnyBytesEndInMessages, ()) {
  const Job job = jobOf(kOutline + kSetUp);
  std::string text = kPlain;
  const auto edits = *rc::gen::container<std::vector<std::pair<unsigned, unsigned char>>>(
      rc::gen::arbitrary<std::pair<unsigned, unsigned char>>());
  for (const auto& [at, byte] : edits) text[at % text.size()] = static_cast<char>(byte);
  for (const Problem& problem : readReadings(text, "r.csv", job).problems) {
    RC_ASSERT(!problem.what.empty());
    RC_ASSERT(!problem.instead.empty());
  }
}

class ReadingFiles : public testing::Test {
 protected:
  ReadingFiles()
      : folder_(std::filesystem::temp_directory_path() /
                ("stringcourse_readings_" + std::to_string(getpid()))) {
    std::filesystem::create_directories(folder_);
  }
  ~ReadingFiles() override { std::filesystem::remove_all(folder_); }
  void put(const std::string& name, const std::string& text) const {
    std::ofstream(folder_ / name) << text;
  }
  std::string path(const std::string& name) const { return (folder_ / name).string(); }

 private:
  std::filesystem::path folder_;
};

TEST_F(ReadingFiles, AreReadBesideTheJobAndMissingOnesNamedAtTheirKey) {
  const auto read = readJob(kOutline +
                                "[[readings]]\nname = \"First\"\nfile = \"first.csv\"\n"
                                "[[readings]]\nname = \"Second\"\nfile = \"second.csv\"\n"
                                "[[readings]]\nname = \"Third\"\nfile = \"third.csv\"\n",
                            path("job.toml"));
  ASSERT_TRUE(read.job);
  put("first.csv", "kind,target,at,value\nlevel,damp-course,A,0.001\n");
  put("third.csv", "kind,target,at,value\nlevel,damp-course,Z,0.001\nlevel,damp-course,B,0.002\n");
  Job job = *read.job;
  const Problems problems = loadReadings(job, path("job.toml"), read.places);
  ASSERT_EQ(problems.size(), 2u);
  EXPECT_EQ(problems[0].file, path("job.toml"));
  EXPECT_EQ(problems[0].place.line, 8);
  EXPECT_NE(problems[0].what.find("second.csv"), std::string::npos);
  EXPECT_EQ(problems[1].file, path("third.csv"));
  EXPECT_EQ(problems[1].place.line, 2);
  EXPECT_EQ(job.readings[0].rows.size(), 1u);
  EXPECT_EQ(job.readings[1].rows.size(), 0u);
  EXPECT_EQ(job.readings[2].rows.size(), 1u);
  EXPECT_EQ(readingPaths(job, path("job.toml"))[2], path("third.csv"));
  EXPECT_EQ(readingPaths(job, "job.toml")[0], "first.csv");
}

TEST(ReadingFileFault, KeepsFilesInTheJobsFolder) {
  for (const char* good : {"a.csv", "sets/a.csv", "..a.csv", "a..csv"})
    EXPECT_EQ(readingFileFault(good), "") << good;
  for (const char* bad :
       {"", "/a.csv", "../a.csv", "sets/../../a.csv", "C:/a.csv", "sets\\a.csv", "sets/", ".."})
    EXPECT_NE(readingFileFault(bad), "") << bad;
}

}  // namespace
