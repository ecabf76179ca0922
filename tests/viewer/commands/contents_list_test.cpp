#include "viewer/commands/contents_list.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <fstream>

namespace viewer {
namespace {

namespace fs = std::filesystem;

class ContentsLists : public testing::Test {
 protected:
  void SetUp() override { fs::create_directories(folder_); }
  void TearDown() override { fs::remove_all(outer_); }
  void put(const std::string& name, const std::string& text) const {
    std::ofstream(folder_ / name, std::ios::binary) << text;
  }
  bool has(const std::string& name) const { return fs::exists(folder_ / name); }

  const fs::path outer_ =
      fs::temp_directory_path() / ("stringcourse-contents-" + std::to_string(getpid()) +
                                   testing::UnitTest::GetInstance()->current_test_info()->name());
  const fs::path folder_ = outer_ / "in";
};

TEST_F(ContentsLists, TakeAwayWhatIsListedWithTheListAndNothingElse) {
  put("a  b.png", "1");
  put("other.png", "1");
  ContentsList list(folder_);
  ASSERT_EQ(list.note("a  b.png"), 0);
  EXPECT_TRUE(has("contents.txt"));
  ContentsList next(folder_);
  EXPECT_FALSE(next.foreign());
  EXPECT_TRUE(next.clear().empty());
  EXPECT_FALSE(has("a  b.png"));
  EXPECT_FALSE(has("contents.txt"));
  EXPECT_TRUE(has("other.png"));
}

TEST_F(ContentsLists, LeaveAndNameWhatWasChangedSince) {
  put("a.csv", "1");
  ASSERT_EQ(ContentsList(folder_).note("a.csv"), 0);
  put("a.csv", "2");
  EXPECT_EQ(ContentsList(folder_).clear(), std::vector<std::string>{"a.csv"});
  EXPECT_TRUE(has("a.csv"));
}

TEST_F(ContentsLists, LeaveALinkThatTookTheFilesPlace) {
  put("a.csv", "1");
  ASSERT_EQ(ContentsList(folder_).note("a.csv"), 0);
  fs::rename(folder_ / "a.csv", outer_ / "kept.csv");
  fs::create_symlink(outer_ / "kept.csv", folder_ / "a.csv");
  EXPECT_EQ(ContentsList(folder_).clear(), std::vector<std::string>{"a.csv"});
  EXPECT_TRUE(fs::exists(outer_ / "kept.csv"));
  EXPECT_TRUE(has("a.csv"));
}

TEST_F(ContentsLists, NeverLeadOutOfTheirFolder) {
  put("a.csv", "1");
  ASSERT_EQ(ContentsList(folder_).note("a.csv"), 0);
  std::ifstream file(folder_ / "contents.txt");
  std::string text((std::istreambuf_iterator<char>(file)), {});
  text.replace(text.find("a.csv"), 5, "../a.csv");
  put("contents.txt", text);
  fs::rename(folder_ / "a.csv", outer_ / "a.csv");
  EXPECT_TRUE(ContentsList(folder_).clear().empty());
  EXPECT_TRUE(fs::exists(outer_ / "a.csv"));
}

TEST_F(ContentsLists, KnowAFileThatIsNoneOfTheirs) {
  put("contents.txt", "shopping");
  EXPECT_TRUE(ContentsList(folder_).foreign());
  put("contents.txt", "");
  EXPECT_TRUE(ContentsList(folder_).foreign());
}

}  // namespace
}  // namespace viewer
