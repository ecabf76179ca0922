#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "model/job/write_job.h"

namespace {

namespace fs = std::filesystem;

class SaveAtomically : public testing::Test {
 protected:
  void SetUp() override {
    folder = fs::path(testing::TempDir()) / ("save-" + std::to_string(::getpid()));
    fs::create_directories(folder);
  }
  void TearDown() override {
    fs::permissions(folder, fs::perms::owner_all);
    fs::remove_all(folder);
  }

  std::string path(const char* name) const { return (folder / name).string(); }
  static std::string read(const std::string& file) {
    std::ifstream stream(file, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
  }
  size_t filesInFolder() const {
    return static_cast<size_t>(std::distance(fs::directory_iterator(folder), {}));
  }

  fs::path folder;
};

TEST_F(SaveAtomically, MakesANewFileAndLeavesNothingElse) {
  EXPECT_FALSE(model::saveAtomically(path("a.toml"), std::string_view("one\0two", 7)));
  EXPECT_EQ(read(path("a.toml")), std::string("one\0two", 7));
  EXPECT_EQ(filesInFolder(), 1u);
}

TEST_F(SaveAtomically, ReplacesAFileAndKeepsItsRights) {
  std::ofstream(path("a.toml")) << "old and longer";
  ::chmod(path("a.toml").c_str(), 0640);
  EXPECT_FALSE(model::saveAtomically(path("a.toml"), "new"));
  EXPECT_EQ(read(path("a.toml")), "new");
  struct stat info {};
  ASSERT_EQ(::stat(path("a.toml").c_str(), &info), 0);
  EXPECT_EQ(info.st_mode & 07777, 0640u);
}

TEST_F(SaveAtomically, ChangesWhatALinkLeadsToAndKeepsTheLink) {
  std::ofstream(path("target.toml")) << "old";
  fs::create_symlink("target.toml", path("link.toml"));
  EXPECT_FALSE(model::saveAtomically(path("link.toml"), "new"));
  EXPECT_TRUE(fs::is_symlink(path("link.toml")));
  EXPECT_EQ(read(path("target.toml")), "new");
}

TEST_F(SaveAtomically, MakesTheFileThatALinkPointsToInVain) {
  fs::create_symlink("later.toml", path("link.toml"));
  EXPECT_FALSE(model::saveAtomically(path("link.toml"), "new"));
  EXPECT_EQ(read(path("later.toml")), "new");
}

TEST_F(SaveAtomically, RefusesLinksThatGoInACircle) {
  fs::create_symlink("b", path("a"));
  fs::create_symlink("a", path("b"));
  const auto problem = model::saveAtomically(path("a"), "new");
  ASSERT_TRUE(problem);
  EXPECT_NE(problem->what.find("leads nowhere"), std::string::npos);
}

TEST_F(SaveAtomically, SaysSoWhenTheFolderIsNotThere) {
  const auto problem = model::saveAtomically(path("no/such/a.toml"), "new");
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->file, path("no/such/a.toml"));
  EXPECT_NE(problem->what.find("was not saved"), std::string::npos);
}

TEST_F(SaveAtomically, DoesNotReplaceAFolder) {
  fs::create_directory(path("a.toml"));
  EXPECT_TRUE(model::saveAtomically(path("a.toml"), "new"));
  EXPECT_TRUE(fs::is_directory(path("a.toml")));
  EXPECT_EQ(filesInFolder(), 1u);
}

TEST_F(SaveAtomically, LeavesTheOldFileWhenTheDiskIsFull) {
  if (!fs::exists("/dev/full")) GTEST_SKIP() << "no /dev/full here";
  // A device cannot be renamed over: it is written to, and says that it is full.
  const auto problem = model::saveAtomically("/dev/full", "new");
  ASSERT_TRUE(problem);
  EXPECT_NE(problem->what.find("cannot be written"), std::string::npos);
  EXPECT_TRUE(fs::exists("/dev/full"));
}

TEST_F(SaveAtomically, LeavesTheOldFileInAFolderWithoutRights) {
  if (::geteuid() == 0) GTEST_SKIP() << "everything is allowed to this user";
  std::ofstream(path("a.toml")) << "old";
  fs::permissions(folder, fs::perms::owner_read | fs::perms::owner_exec);
  EXPECT_TRUE(model::saveAtomically(path("a.toml"), "new"));
  EXPECT_EQ(read(path("a.toml")), "old");
}

TEST_F(SaveAtomically, RefusesNamesThatCannotBe) {
  EXPECT_TRUE(model::saveAtomically("", "new"));
  EXPECT_TRUE(model::saveAtomically(std::string("a\0b", 3), "new"));
}

}  // namespace
