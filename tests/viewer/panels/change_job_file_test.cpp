#include "viewer/panels/change_job_file.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "model/job/read_job.h"

namespace viewer {
namespace {

constexpr const char* kText =
    "# a house\n[job]\nname = \"Old name\"  # as on the drawing\n\n"
    "[site]\nbench_mark = { name = \"Kerb\", at = [-4100, 13600], level = 0.185 }\n\n"
    "[outline]\ncorners = [[0, 0], [9000, 0], [9000, 7000], [0, 7000]]\n";

class ChangeJobFile : public ::testing::Test {
 protected:
  void SetUp() override {
    path_ = (std::filesystem::temp_directory_path() /
             ("stringcourse_change_" + std::to_string(getpid()) + ".toml"))
                .string();
    write(kText);
  }
  void TearDown() override { std::filesystem::remove(path_); }
  void write(const std::string& text) { std::ofstream(path_) << text; }
  std::string text() const {
    std::ifstream in(path_);
    return {(std::istreambuf_iterator<char>(in)), {}};
  }
  model::Job job() const { return model::readJobFile(path_).job.value(); }
  std::string path_;
};

TEST_F(ChangeJobFile, SetsTheNameAndKeepsTheComments) {
  EXPECT_EQ(changeJobFile(path_, TitleField::JobName, {"Mill cottage", ""}), std::nullopt);
  EXPECT_EQ(job().name, "Mill cottage");
  EXPECT_NE(text().find("# a house"), std::string::npos);
  EXPECT_NE(text().find("# as on the drawing"), std::string::npos);
}

TEST_F(ChangeJobFile, AddsTheDatumsWordsWhereThereWereNone) {
  EXPECT_EQ(changeJobFile(path_, TitleField::DatumNote, {"Top of step", ""}), std::nullopt);
  EXPECT_EQ(job().datumNote, "Top of step");
}

TEST_F(ChangeJobFile, SetsTheBenchMarksNameAndLevelAndLeavesItsPlace) {
  EXPECT_EQ(changeJobFile(path_, TitleField::BenchMark, {"Gate bolt", " +0.250 "}), std::nullopt);
  EXPECT_EQ(job().site.benchMark->name, "Gate bolt");
  EXPECT_DOUBLE_EQ(job().site.benchMark->level, 0.25);
  EXPECT_DOUBLE_EQ(job().site.benchMark->at.y, 13.6);
}

TEST_F(ChangeJobFile, WritesNothingThatTheReaderWouldRefuse) {
  // A level in millimetres is what the reader looks out for.
  EXPECT_NE(changeJobFile(path_, TitleField::BenchMark, {"Kerb", "18500"}), std::nullopt);
  EXPECT_NE(changeJobFile(path_, TitleField::JobName, {std::string(5000, 'a'), ""}), std::nullopt);
  for (const char* level : {"", "high", "1,5", "nan", "inf", "0x1", "1.2 m", "--1"})
    EXPECT_NE(changeJobFile(path_, TitleField::BenchMark, {"Kerb", level}), std::nullopt) << level;
  EXPECT_EQ(text(), kText);
}

TEST_F(ChangeJobFile, LeavesAFileWithProblemsOfItsOwnAlone) {
  const std::string bad = std::string(kText) + "[roof]\npitch = \"steep\"\n";
  write(bad);
  EXPECT_NE(changeJobFile(path_, TitleField::JobName, {"New", ""}), std::nullopt);
  EXPECT_EQ(text(), bad);
}

TEST_F(ChangeJobFile, IsNotOfferedWithoutAFile) {
  EXPECT_TRUE(canChange(path_));
  std::filesystem::remove(path_);
  EXPECT_FALSE(canChange(path_));
  EXPECT_NE(changeJobFile(path_, TitleField::JobName, {"New", ""}), std::nullopt);
}

}  // namespace
}  // namespace viewer
