// The level book of the window and its file.
#include "viewer/panels/book_entry.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "model/levelling/read_book.h"

namespace viewer {
namespace {

namespace fs = std::filesystem;
using model::BookColumn;

class BookEntryTest : public ::testing::Test {
 protected:
  void SetUp() override {
    folder_ = fs::temp_directory_path() / ("stringcourse_book_" + std::to_string(getpid()));
    fs::create_directories(folder_);
    job_ = (folder_ / "house.toml").string();
    settings_.marks = {{"Kerb", 0.185}};
  }
  void TearDown() override { fs::remove_all(folder_); }

  void type(size_t row, const char* point, const char* back, const char* fore) {
    book_.keepEmptyRow();
    book_.rows().at(row)[BookColumn::Point] = point;
    book_.rows().at(row)[BookColumn::Backsight] = back;
    book_.rows().at(row)[BookColumn::Foresight] = fore;
    book_.touched();
  }
  void typeThree() {
    type(0, "Kerb", "1.500", "");
    type(1, "TP", "1.200", "1.400");
    type(2, "Kerb", "", "1.301");
    book_.keepEmptyRow();
  }
  std::string contents(const std::string& name) const {
    std::ifstream in(folder_ / name, std::ios::binary);
    return {(std::istreambuf_iterator<char>(in)), {}};
  }

  fs::path folder_;
  std::string job_;
  model::BookSettings settings_;
  BookEntry book_;
};

TEST_F(BookEntryTest, IsSavedWithTheLevelsOfItsMarksAndReadByItself) {
  EXPECT_FALSE(book_.unsaved());
  typeThree();
  EXPECT_TRUE(book_.unsaved());
  EXPECT_TRUE(book_.worked(settings_).whole);
  book_.file = "monday";
  ASSERT_TRUE(book_.save(job_, settings_)) << book_.notice();
  EXPECT_FALSE(book_.unsaved());
  const auto read = model::readBookFile((folder_ / "monday.csv").string(), {});
  ASSERT_TRUE(read.book);
  EXPECT_EQ(read.book->bookings.size(), 3u);
  EXPECT_EQ(levelBooksBeside(job_), std::vector<std::string>{"monday.csv"});
}

TEST_F(BookEntryTest, WritesOverNoFileThatItDoesNotKnow) {
  std::ofstream(folder_ / "level-book.csv") << "mine";
  typeThree();
  EXPECT_FALSE(book_.save(job_, settings_));
  EXPECT_EQ(contents("level-book.csv"), "mine");
  EXPECT_TRUE(book_.noticeWarns());
  book_.touched();
  EXPECT_FALSE(book_.save(job_, settings_)) << "typing in between asks again";
  EXPECT_TRUE(book_.save(job_, settings_)) << "asked again at once";
  EXPECT_NE(contents("level-book.csv"), "mine");
  book_.rows()[1][BookColumn::Remark] = "wet";
  EXPECT_TRUE(book_.save(job_, settings_)) << "its own file";
  std::ofstream(folder_ / "level-book.csv") << "another hand";
  book_.rows()[1][BookColumn::Remark] = "dry";
  EXPECT_FALSE(book_.save(job_, settings_));
  EXPECT_EQ(contents("level-book.csv"), "another hand");
}

TEST_F(BookEntryTest, RefusesNamesOutsideTheFolderAndEmptyBooks) {
  EXPECT_FALSE(book_.save(job_, settings_)) << "nothing in it";
  typeThree();
  for (const char* name : {"", "../up.csv", "/tmp/x.csv", "a/b.csv", "c:\\x.csv"}) {
    book_.file = name;
    EXPECT_FALSE(book_.save(job_, settings_)) << name;
  }
  EXPECT_TRUE(fs::is_empty(folder_));
  EXPECT_TRUE(book_.unsaved());
}

TEST_F(BookEntryTest, LeavesAnUnsavedBookOnlyWhenAskedTwice) {
  typeThree();
  ASSERT_TRUE(book_.save(job_, settings_));
  EXPECT_TRUE(book_.mayClose());
  type(2, "Kerb", "", "1.299");
  EXPECT_FALSE(book_.openFile(job_, "level-book.csv"));
  EXPECT_EQ(book_.rows()[2][BookColumn::Foresight], "1.299");
  EXPECT_TRUE(book_.openFile(job_, "level-book.csv"));
  EXPECT_EQ(book_.rows()[2][BookColumn::Foresight], "1.301");
  type(2, "Kerb", "", "1.300");
  EXPECT_FALSE(book_.mayClose());
  type(2, "Kerb", "", "1.302");
  EXPECT_FALSE(book_.mayClose()) << "other rows";
  EXPECT_TRUE(book_.mayClose());
  EXPECT_FALSE(book_.startAnew());
  EXPECT_TRUE(book_.startAnew());
  EXPECT_FALSE(book_.unsaved());
}

TEST_F(BookEntryTest, OpensABookWithMistakesAndRefusesWhatIsNone) {
  std::ofstream(folder_ / "bad.csv")
      << "point,BS,IS,FS,known\nKerb,1.5,,,0.185\nPeg,,low,,\nKerb,,,1.5,\n";
  std::ofstream(folder_ / "other.csv") << "kind,target,at,value\nlevel,sill,A,1\n";
  EXPECT_EQ(levelBooksBeside(job_), std::vector<std::string>{"bad.csv"});
  ASSERT_TRUE(book_.openFile(job_, "bad.csv")) << book_.notice();
  EXPECT_FALSE(book_.unsaved());
  const model::WorkedBook& worked = book_.worked(settings_);
  EXPECT_FALSE(worked.whole);
  EXPECT_EQ(worked.rows[1].wrong.size(), 1u);
  EXPECT_FALSE(book_.openFile(job_, "other.csv"));
  EXPECT_EQ(book_.file, "bad.csv") << "the book stays";
  EXPECT_EQ(book_.rows().size(), 4u);
}

TEST_F(BookEntryTest, RowsComeAndGoAndOneIsAlwaysEmpty) {
  typeThree();
  book_.insertRow(1);
  EXPECT_TRUE(book_.rows()[1].empty());
  EXPECT_EQ(book_.rows()[2][BookColumn::Point], "TP");
  EXPECT_TRUE(book_.worked(settings_).whole) << "an empty row says nothing";
  book_.takeOut(2);
  EXPECT_NE(book_.rows()[2][BookColumn::Point], "TP");
  ASSERT_TRUE(book_.canPutBack());
  book_.putBack();
  EXPECT_EQ(book_.rows()[2][BookColumn::Point], "TP");
  EXPECT_TRUE(book_.worked(settings_).whole) << "as it was";
  EXPECT_FALSE(book_.canPutBack());
  book_.takeOut(2);
  while (book_.rows().size() > 1) book_.takeOut(0);
  book_.takeOut(0);
  EXPECT_EQ(book_.rows().size(), 1u);
  EXPECT_TRUE(book_.rows()[0].empty());
}

TEST_F(BookEntryTest, FieldsAreNumberedRowByRow) {
  typeThree();
  const int field = BookEntry::fieldOf(1, 3);
  EXPECT_EQ(BookEntry::rowOf(field), 1u);
  EXPECT_EQ(book_.fieldInRow(field, 1), BookEntry::fieldOf(2, 3));
  EXPECT_EQ(book_.fieldInRow(field, -1), BookEntry::fieldOf(0, 3));
  EXPECT_EQ(book_.fieldInRow(field, -2), 0);
  EXPECT_EQ(book_.fieldInRow(field, 3), 0);
}

}  // namespace
}  // namespace viewer
