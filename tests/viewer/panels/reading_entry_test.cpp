// Readings typed in the window, from the first letter to the file and back.
#include "viewer/panels/reading_entry.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "tests/support/folders.h"
#include "viewer/commands/load_job.h"
#include "viewer/panels/names_like.h"

namespace viewer {
namespace {

namespace fs = std::filesystem;
using Field = ReadingField;

// A job in a folder of its own, read as the window reads it.
class ReadingEntryTest : public ::testing::Test {
 protected:
  void SetUp() override {
    folder_ = fs::temp_directory_path() / ("stringcourse_entry_" + std::to_string(getpid()));
    fs::create_directories(folder_);
    for (const char* name :
         {"orchard-house.toml", "orchard-house-concrete.csv", "orchard-house-walls.csv"})
      fs::copy_file(fs::path(test_support::sourceFolder()) / "assets/jobs" / name, folder_ / name);
    path_ = (folder_ / "orchard-house.toml").string();
    load();
    entry_.begin(job_->model.job, std::nullopt, "2027-08-01");
    entry_.chooseSet(job_->model.job, 0);
  }
  void TearDown() override { fs::remove_all(folder_); }

  void load() {
    LoadedJob loaded = loadJob(path_);
    for (const auto& problem : loaded.problems)
      if (problem.severity == model::Severity::Error) ADD_FAILURE() << format(problem);
    ASSERT_TRUE(loaded.model);
    job_ = std::make_unique<ReadyJob>(std::move(*loaded.model));
    entry_.jobChanged();
  }
  std::string contents(const std::string& name) const {
    std::ifstream in(folder_ / name, std::ios::binary);
    return {(std::istreambuf_iterator<char>(in)), {}};
  }
  std::string concrete() const { return contents("orchard-house-concrete.csv"); }
  // Types a text into a field and presses Enter there.
  Field type(Field field, const std::string& text) {
    entry_.text(field) = text;
    entry_.touched();
    saved_ = false;
    return entry_.enter(field, *job_, path_, saved_);
  }
  const ReadingPreview& said() {
    entry_.refer(*job_, path_);
    return entry_.preview();
  }
  void level(const std::string& target) {
    entry_.chooseKind(model::ReadingKind::Level, job_->model.job);
    entry_.text(Field::Target) = target;
  }

  fs::path folder_;
  std::string path_;
  std::unique_ptr<ReadyJob> job_;
  ReadingEntry entry_;
  bool saved_ = false;
};

TEST_F(ReadingEntryTest, GoesOnWithWhatWasReadLastInTheSet) {
  EXPECT_EQ(entry_.kind(), model::ReadingKind::Diagonal);
  entry_.chooseSet(job_->model.job, 1);
  EXPECT_EQ(entry_.kind(), model::ReadingKind::Staff);
  EXPECT_EQ(entry_.text(Field::Target), "top of wall plate");
  EXPECT_EQ(entry_.setUp(), "Plate");
}

TEST_F(ReadingEntryTest, LeadsFromThePointToTheValueAndIntoTheFile) {
  level("top of concrete");
  const std::string before = concrete();
  EXPECT_EQ(type(Field::Point, "c"), Field::Value);
  EXPECT_EQ(entry_.text(Field::Point), "C") << "completed";
  EXPECT_EQ(said().drawn, "drawn -0.325");
  EXPECT_FALSE(said().held);
  entry_.text(Field::Value) = "-0.330";
  ASSERT_TRUE(said().held) << said().wrong;
  EXPECT_EQ(said().held->words, "5 low, 10 allowed: within");
  EXPECT_EQ(type(Field::Value, "-0.330"), Field::Point);
  EXPECT_TRUE(saved_) << entry_.problem();
  EXPECT_EQ(concrete(), before + "level,top-of-concrete,C,,-0.330,,,,,\n");
  EXPECT_EQ(entry_.text(Field::Point) + entry_.text(Field::Value), "") << "ready for the next";
  EXPECT_EQ(entry_.text(Field::Target), "top of concrete");
  load();
  const auto& deviations = job_->asBuilt.deviations;
  EXPECT_TRUE(std::any_of(deviations.begin(), deviations.end(), [](const model::Deviation& d) {
    return d.what == "top of concrete, corner C" && d.words == "5 low, 10 allowed: within";
  }));
}

TEST_F(ReadingEntryTest, AsksForTheDistanceAlongAWallOnly) {
  level("top of concrete");
  EXPECT_EQ(type(Field::Point, "B-A"), Field::Along);
  EXPECT_TRUE(entry_.needs(Field::Along));
  EXPECT_EQ(type(Field::Along, "1200"), Field::Value);
  EXPECT_EQ(type(Field::Point, "A"), Field::Value);
  EXPECT_FALSE(entry_.needs(Field::Along));
}

TEST_F(ReadingEntryTest, SaysThatAPointIsNoneBeforeItsValueIsTyped) {
  level("top of concrete");
  entry_.text(Field::Point) = "Q";
  EXPECT_NE(said().wrongPoint.find("there is no corner or wall \"Q\""), std::string::npos);
  entry_.text(Field::Point) = "E";
  EXPECT_NE(said().wrongPoint.find("was read already"), std::string::npos);
  entry_.text(Field::Point) = "C";
  EXPECT_EQ(said().wrongPoint, "");
}

TEST_F(ReadingEntryTest, AMistypedValueIsToldAndNothingIsWritten) {
  level("top of concrete");
  const std::string before = concrete();
  type(Field::Point, "C");
  for (const auto& [value, words] : std::vector<std::pair<const char*, const char*>>{
           {"-987", "levels are in metres; for -987 mm write -0.987"},
           {"low", "\"low\" is no number"},
           {"", "this row has no value"}}) {
    EXPECT_EQ(type(Field::Value, value), Field::Value);
    EXPECT_FALSE(saved_);
    EXPECT_NE(entry_.problem().find(words), std::string::npos) << entry_.problem();
  }
  EXPECT_EQ(type(Field::Point, "E"), Field::Value) << "its value is empty";
  EXPECT_EQ(type(Field::Value, "-0.975"), Field::Value);
  EXPECT_NE(entry_.problem().find("was read already, on line 7"), std::string::npos)
      << entry_.problem();
  EXPECT_EQ(concrete(), before);
}

TEST_F(ReadingEntryTest, TakesTheLastOnesBackOneByOne) {
  level("top of concrete");
  const std::string before = concrete();
  type(Field::Point, "C");
  type(Field::Value, "-0.980");
  const std::string one = concrete();
  type(Field::Point, "A-B");
  type(Field::Along, "9000");
  type(Field::Value, "-0.970");
  ASSERT_EQ(entry_.written().size(), 2u);
  EXPECT_TRUE(entry_.takeLastBack());
  EXPECT_EQ(concrete(), one);
  EXPECT_TRUE(entry_.takeLastBack());
  EXPECT_EQ(concrete(), before);
  EXPECT_FALSE(entry_.takeLastBack());
}

TEST_F(ReadingEntryTest, TakesNothingBackFromAFileThatAnotherHandHasChanged) {
  level("top of concrete");
  type(Field::Point, "C");
  type(Field::Value, "-0.980");
  std::ofstream(folder_ / "orchard-house-concrete.csv", std::ios::app)
      << "level,top-of-concrete,pin 1,,-0.97,,,,,\n";
  const std::string now = concrete();
  EXPECT_FALSE(entry_.takeLastBack());
  EXPECT_NE(entry_.problem().find("has been changed since"), std::string::npos);
  EXPECT_EQ(concrete(), now);
}

TEST_F(ReadingEntryTest, ANewSetComesWithItsFirstReading) {
  const std::string job = contents("orchard-house.toml");
  entry_.startSet("2027-08-01");
  EXPECT_TRUE(entry_.isNew());
  level("damp course");
  EXPECT_EQ(type(Field::SetName, "Damp course, again & again"), Field::Point);
  EXPECT_EQ(contents("orchard-house.toml"), job) << "nothing yet";
  type(Field::Point, "D");
  EXPECT_EQ(type(Field::Value, "0.004"), Field::Point);
  ASSERT_TRUE(saved_) << entry_.problem();
  const std::string now = contents("orchard-house.toml");
  EXPECT_NE(now.find("name = \"Damp course, again & again\""), std::string::npos);
  EXPECT_NE(now.find("date = \"2027-08-01\""), std::string::npos);
  EXPECT_NE(contents("orchard-house-damp-course-again-again.csv").find("damp-course,D,,0.004"),
            std::string::npos);
  // Line by line the job file is what it was.
  std::istringstream was(job), is(now);
  std::string line, other;
  while (std::getline(was, line)) {
    bool found = false;
    while (!found && std::getline(is, other)) found = other == line;
    EXPECT_TRUE(found) << line;
  }
  EXPECT_FALSE(entry_.isNew());
  load();
  EXPECT_EQ(entry_.set(job_->model.job), 2u);
  ASSERT_TRUE(entry_.takeLastBack()) << entry_.problem();
  EXPECT_EQ(contents("orchard-house.toml"), job);
  EXPECT_FALSE(fs::exists(folder_ / "orchard-house-damp-course-again-again.csv"));
}

TEST_F(ReadingEntryTest, ANewSetThatTheJobFileRefusesLeavesNoFile) {
  const std::string job = contents("orchard-house.toml");
  entry_.startSet("some day");
  level("damp course");
  type(Field::SetName, "Again");
  type(Field::Point, "D");
  type(Field::Value, "0.004");
  EXPECT_FALSE(saved_);
  EXPECT_NE(entry_.problem().find("date"), std::string::npos) << entry_.problem();
  EXPECT_EQ(contents("orchard-house.toml"), job);
  EXPECT_FALSE(fs::exists(folder_ / "orchard-house-again.csv"));
}

TEST_F(ReadingEntryTest, APointOfItsOwnAndACornerNeedTheirPlace) {
  entry_.chooseKind(model::ReadingKind::Corner, job_->model.job);
  EXPECT_TRUE(entry_.needs(Field::X));
  EXPECT_FALSE(entry_.needs(Field::Value));
  EXPECT_EQ(type(Field::Point, "A"), Field::X);
  EXPECT_EQ(said().drawn, "drawn at 0, 0");
  EXPECT_EQ(type(Field::X, "3"), Field::Y);
  EXPECT_EQ(type(Field::Y, "-4"), Field::Point);
  EXPECT_TRUE(saved_) << entry_.problem();
  EXPECT_NE(concrete().find("corner,outer-face,A,,,3,-4,"), std::string::npos);
  level("oversite formation");
  entry_.text(Field::Point) = "nail in";
  entry_.refer(*job_, path_);
  EXPECT_FALSE(entry_.needs(Field::X)) << "still being typed";
  entry_.text(Field::Point) = "middle of the slab";
  EXPECT_TRUE(entry_.needs(Field::X)) << "a point of its own";
  entry_.text(Field::Point) = "Nail in kerb";  // a bench mark has a place
  entry_.refer(*job_, path_);
  entry_.complete(Field::Point);
  EXPECT_TRUE(entry_.needs(Field::X));
  EXPECT_FALSE(entry_.text(Field::X).empty());
}

TEST_F(ReadingEntryTest, AClickOnTheBuildingNamesThePoint) {
  level("top of concrete");
  entry_.refer(*job_, path_);
  const model::WallLine& wall = job_->model.settingOut.walls[0];
  entry_.pointAt(*job_, {wall.at(2.0, 0.1), -0.5});
  EXPECT_EQ(entry_.text(Field::Point), wall.name);
  EXPECT_EQ(entry_.text(Field::Along), "2000");
  EXPECT_EQ(entry_.lacking(), Field::Value);
}

TEST(NamesLike, BeginsWithThoseThatBeginSo) {
  const std::vector<std::string> names{"sill", "top of concrete", "concrete edge", "C"};
  EXPECT_EQ(namesLike(names, "CON"),
            (std::vector<std::string>{"concrete edge", "top of concrete"}));
  EXPECT_EQ(namesLike(names, "").size(), 4u);
  EXPECT_EQ(nameMeant(names, "c"), "C") << "the same but for its case goes first";
  EXPECT_EQ(nameMeant(names, "to"), "top of concrete");
  EXPECT_EQ(nameMeant({"pin 1", "pin 12"}, "pin 1"), "pin 1");
  EXPECT_EQ(nameMeant({"pin 1", "pin 12"}, "pin"), std::nullopt);
  EXPECT_EQ(nameMeant(names, ""), std::nullopt);
}

}  // namespace
}  // namespace viewer
