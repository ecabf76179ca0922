// Films and frames as files. What is in them the tests of the whole program look at, with an
// outside reader.
#include "viewer/film/film_out.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <vector>

namespace viewer {
namespace {

namespace fs = std::filesystem;

class FilmFiles : public testing::Test {
 protected:
  void SetUp() override { fs::create_directories(folder_); }
  void TearDown() override { fs::remove_all(folder_); }
  std::string in(const std::string& name) const { return (folder_ / name).string(); }
  std::string read(const std::string& name) const {
    std::ifstream file(folder_ / name, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
  }
  size_t count() const {
    return static_cast<size_t>(
        std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
  }
  // Ten frames that grow lighter.
  static std::string shoot(FilmFile& film) {
    for (int i = 0; i < 10; ++i) {
      const std::vector<std::uint8_t> rgba(64 * 64 * 4, static_cast<std::uint8_t>(i * 20));
      if (std::string wrong = film.add(rgba.data()); !wrong.empty()) return wrong;
    }
    return "";
  }

  const fs::path folder_ =
      fs::temp_directory_path() / ("stringcourse-film-" + std::to_string(getpid()) +
                                   testing::UnitTest::GetInstance()->current_test_info()->name());
  const FilmShape shape_{64, 64, 10, "A house"};
};

class Mp4Files : public FilmFiles {
 protected:
  void SetUp() override {
    FilmFiles::SetUp();
    if (const std::string why = noMp4(); !why.empty()) GTEST_SKIP() << why;
  }
};

TEST_F(Mp4Files, AreThereOnlyWhenFinished) {
  FilmOut out = openMp4(in("a.mp4"), shape_);
  ASSERT_TRUE(out.file) << out.wrong;
  EXPECT_EQ(shoot(*out.file), "");
  EXPECT_FALSE(fs::exists(in("a.mp4")));
  EXPECT_EQ(out.file->finish(), "");
  EXPECT_EQ(read("a.mp4").substr(4, 4), "ftyp");
  EXPECT_NE(read("a.mp4").find("A house"), std::string::npos);
  EXPECT_EQ(count(), 1u);
}

TEST_F(Mp4Files, AreGoneWhenLeftUnfinishedAndAnEarlierFilmStays) {
  std::ofstream(in("a.mp4")) << "an earlier film";
  {
    FilmOut out = openMp4(in("a.mp4"), shape_);
    ASSERT_TRUE(out.file) << out.wrong;
    EXPECT_EQ(shoot(*out.file), "");
  }
  EXPECT_EQ(count(), 1u);
  EXPECT_EQ(read("a.mp4"), "an earlier film");
}

TEST_F(Mp4Files, AreWrittenWithTheNextEncoderWhereOneIsLacking) {
  FilmOut out = openMp4(in("a.mp4"), shape_, "no-such-encoder,mpeg4");
  ASSERT_TRUE(out.file) << out.wrong;
  EXPECT_EQ(shoot(*out.file), "");
  EXPECT_EQ(out.file->finish(), "");
  EXPECT_NE(read("a.mp4").find("mp4v"), std::string::npos);
  out = openMp4(in("b.mp4"), shape_, "no-such-encoder");
  EXPECT_FALSE(out.file);
  EXPECT_NE(out.wrong.find("no-such-encoder"), std::string::npos) << out.wrong;
}

TEST_F(Mp4Files, FollowALinkAndKeepIt) {
  fs::create_directory(in("films"));
  fs::create_symlink("films/real.mp4", in("a.mp4"));
  FilmOut out = openMp4(in("a.mp4"), shape_);
  ASSERT_TRUE(out.file) << out.wrong;
  EXPECT_EQ(shoot(*out.file), "");
  EXPECT_EQ(out.file->finish(), "");
  EXPECT_TRUE(fs::is_symlink(in("a.mp4")));
  EXPECT_TRUE(fs::is_regular_file(in("films/real.mp4")));
}

TEST_F(Mp4Files, CannotTakeThePlaceOfAFolderNorGoIntoOneThatIsNotThere) {
  fs::create_directory(in("a.mp4"));
  EXPECT_NE(openMp4(in("a.mp4"), shape_).wrong.find("folder"), std::string::npos);
  const FilmOut nowhere = openMp4(in("none/a.mp4"), shape_);
  EXPECT_FALSE(nowhere.file);
  EXPECT_FALSE(nowhere.wrong.empty());
}

TEST_F(FilmFiles, FramesAreThereAllTogetherOrNotAtAll) {
  {
    FilmOut left = openFrames(in("frames/"), shape_);
    ASSERT_TRUE(left.file) << left.wrong;
    EXPECT_EQ(shoot(*left.file), "");
    EXPECT_FALSE(fs::exists(in("frames")));
  }
  EXPECT_EQ(count(), 0u);
  FilmOut out = openFrames(in("frames/"), shape_);
  ASSERT_TRUE(out.file) << out.wrong;
  EXPECT_EQ(shoot(*out.file), "");
  EXPECT_EQ(out.file->finish(), "");
  EXPECT_TRUE(fs::exists(in("frames/frame-00001.png")));
  EXPECT_TRUE(fs::exists(in("frames/frame-00010.png")));
  EXPECT_FALSE(fs::exists(in("frames/frame-00011.png")));
}

TEST_F(FilmFiles, FramesGoIntoAnEmptyFolderAndIntoNoOther) {
  fs::create_directory(in("frames"));
  FilmOut out = openFrames(in("frames"), shape_);
  ASSERT_TRUE(out.file) << out.wrong;
  EXPECT_EQ(shoot(*out.file), "");
  EXPECT_EQ(out.file->finish(), "");
  EXPECT_TRUE(fs::exists(in("frames/frame-00001.png")));
  const FilmOut again = openFrames(in("frames"), shape_);
  EXPECT_FALSE(again.file);
  EXPECT_NE(again.wrong.find("empty"), std::string::npos) << again.wrong;
  EXPECT_EQ(count(), 1u);
}

}  // namespace
}  // namespace viewer
