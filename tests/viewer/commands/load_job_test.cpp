// A job with the files of its readings beside it.
#include "viewer/commands/load_job.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

namespace {

using viewer::LoadedJob;
using viewer::loadJob;

class LoadJob : public testing::Test {
 protected:
  LoadJob()
      : folder_(std::filesystem::temp_directory_path() /
                ("stringcourse_load_" + std::to_string(getpid()))) {
    std::filesystem::create_directories(folder_);
    put("job.toml",
        "[outline]\ncorners = [[0, 0], [6740, 0], [6740, 4490], [0, 4490]]\n"
        "[[readings]]\nname = \"First\"\nfile = \"first.csv\"\n");
  }
  ~LoadJob() override { std::filesystem::remove_all(folder_); }
  void put(const std::string& name, const std::string& text) const {
    std::ofstream(folder_ / name) << text;
  }
  std::string path(const std::string& name) const { return (folder_ / name).string(); }
  LoadedJob load() const { return loadJob(path("job.toml")); }

 private:
  std::filesystem::path folder_;
};

TEST_F(LoadJob, ReadsTheReadingsIntoTheModelsJob) {
  put("first.csv", "kind,target,at,value\nlevel,damp-course,A,0.004\n");
  const LoadedJob loaded = load();
  ASSERT_TRUE(loaded.model);
  ASSERT_EQ(loaded.model->job.readings.size(), 1u);
  ASSERT_EQ(loaded.model->job.readings[0].rows.size(), 1u);
  EXPECT_EQ(loaded.model->job.readings[0].rows[0].value, 0.004);
  EXPECT_EQ(loaded.files, (std::vector<std::string>{path("job.toml"), path("first.csv")}));
}

TEST_F(LoadJob, NamesAMistakeInThemByTheirOwnFile) {
  put("first.csv", "kind,target,at,value\nlevel,damp-course,Z,0.004\n");
  const LoadedJob loaded = load();
  EXPECT_FALSE(loaded.model);
  ASSERT_FALSE(loaded.problems.empty());
  EXPECT_EQ(loaded.problems.back().file, path("first.csv"));
  EXPECT_EQ(loaded.problems.back().place.line, 2);
  EXPECT_EQ(loaded.files.size(), 2u);  // still watched, so that putting it right is seen
}

TEST_F(LoadJob, NamesAMissingFileAtItsKey) {
  const LoadedJob loaded = load();
  EXPECT_FALSE(loaded.model);
  ASSERT_EQ(loaded.problems.size(), 1u);
  EXPECT_EQ(loaded.problems[0].file, path("job.toml"));
  EXPECT_EQ(loaded.problems[0].place.line, 5);
  EXPECT_EQ(loaded.files.size(), 2u);
}

TEST_F(LoadJob, KnowsNoFilesOfAJobThatDoesNotRead) {
  put("job.toml", "[outline]\ncorners = 3\n[[readings]]\nname = \"First\"\nfile = \"first.csv\"\n");
  EXPECT_TRUE(load().files.empty());
}

}  // namespace
