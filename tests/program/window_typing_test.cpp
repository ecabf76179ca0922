// Readings and level books typed in the window, and the files that come of it.
#include <cmath>

#include "tests/program/window_fixture.h"
#include "tests/support/run_program.h"

namespace window_test {
namespace {

constexpr unsigned kCaution = 0x8a2f00;
// Beside a sheet of the usual width; on it, where a reading's worth is told; the sheet's own paper.
constexpr Area kBeside{460, 150, 1160, 545}, kSaid{46, 300, 420, 385}, kSheet{60, 60, 420, 550};

bool isCaution(const Shot& shot, int x, int y) { return shot.at(x, y) == kCaution; }

class TypingWindow : public WindowTest {
 protected:
  void openHouse() {
    openCopyOf("orchard-house.toml");
    waitForTape();
    screen_->hand("mousemove 600 60");
  }
  std::string walls() const { return read((folder_ / "orchard-house-walls.csv").string()); }
  void type(const std::string& text) { screen_->hand("type -- '" + text + "'"); }
  int paper(const Shot& shot) const {
    return countWhere([&](int x, int y) { return shot.at(x, y) == kCard; }, kSheet);
  }
  // The line for readings is out and its first field has the keyboard.
  void beginReading() {
    press("a");
    ASSERT_TRUE(eventually([&] { return paper(screen_->shot()) > 80000; }));
    settle();
  }
  void click(int x, int y) {
    screen_->hand("mousemove " + std::to_string(x) + " " + std::to_string(y) + " click 1");
  }
};

TEST_F(TypingWindow, AReadingGoesIntoTheFileOntoTheBuildingAndBack) {
  openHouse();
  const std::string before = walls();
  const auto marks = [&](const Shot& shot) {
    return countWhere([&](int x, int y) { return isCaution(shot, x, y); }, kBeside);
  };
  beginReading();
  EXPECT_EQ(marks(screen_->shot()), 0) << "readings are not shown yet";
  // Without a pause: every letter finds its field.
  type("c");
  press("Return");
  type("-0.992");
  ASSERT_TRUE(eventually([&] {
    const Shot shot = screen_->shot();
    return countWhere([&](int x, int y) { return isCaution(shot, x, y); }, kSaid) > 60;
  })) << "8 low, 5 allowed: out, before it is written";
  EXPECT_EQ(walls(), before);
  press("Return");
  const std::string row = "staff,plate-top,C,,-0.992,,,Plate,,\n";
  EXPECT_TRUE(eventually([&] { return walls() == before + row; })) << walls();
  EXPECT_TRUE(eventually([&] { return marks(screen_->shot()) > 150; }))
      << "its mark and its figure";
  settle();
  click(280, 399);  // Take back
  EXPECT_TRUE(eventually([&] { return walls() == before; }));
}

TEST_F(TypingWindow, AMistypedValueIsToldAndNothingIsWritten) {
  openHouse();
  const std::string before = walls(), job = read(job_);
  beginReading();
  type("c");
  press("Return");
  const Shot asked = settle();
  // Letters in the field are no keys either: these would bring levels, loops and views.
  type("low1");
  press("Return");
  EXPECT_TRUE(eventually([&] {
    const Shot shot = screen_->shot();
    return countWhere([&](int x, int y) { return isCaution(shot, x, y); }, kSaid) > 60;
  }));
  EXPECT_EQ(asked.differences(settle(), kBeside.left, kBeside.top, kBeside.right, kBeside.bottom),
            0);
  EXPECT_EQ(walls(), before);
  EXPECT_EQ(read(job_), job);
  press("Escape");
  EXPECT_TRUE(eventually([&] {
    const Shot shot = screen_->shot();
    return countWhere([&](int x, int y) { return isCaution(shot, x, y); }, kSaid) == 0;
  })) << "the line is gone";
  EXPECT_EQ(walls(), before);
}

TEST_F(TypingWindow, ALevelBookIsTypedSavedAndReadByTheCommand) {
  openHouse();
  press("k");
  ASSERT_TRUE(eventually([&] { return paper(screen_->shot()) > 80000; }));
  settle();
  const char* const rows[3][4] = {{"Bolt in gate pier", "1.240", "", ""},
                                  {"TP 1", "1.502", "", "1.330"},
                                  {"Bolt in gate pier", "", "", "1.409"}};
  // Without a pause: no letter is lost between one field and the next, or one row and the next.
  std::string typed;
  for (const auto& row : rows) {
    for (const char* cell : row) {
      if (*cell) typed += std::string(" type --delay 0 --args 1 '") + cell + "'";
      typed += " key --delay 40 Tab";  // sooner, the same key again is held for a repeat
    }
    typed += " key --delay 0 Return";
  }
  screen_->hand(typed.substr(1));
  settle();
  const std::string path = (folder_ / "level-book.csv").string();
  EXPECT_FALSE(std::filesystem::exists(path)) << "not saved yet";
  // Out of its field, then the sheet away: nothing is lost.
  press("Up");
  type("Bolt in gate pier");
  press("Escape", 2);
  ASSERT_TRUE(eventually([&] { return paper(screen_->shot()) < 20000; }));
  press("k");
  ASSERT_TRUE(eventually([&] { return paper(screen_->shot()) > 80000; }));
  press("ctrl+s");
  ASSERT_TRUE(eventually([&] { return std::filesystem::exists(path); }));
  EXPECT_EQ(read(path),
            "point,backsight,intermediate,foresight,known\r\n"
            "Bolt in gate pier,1.240,,,0.185\r\nTP 1,1.502,,1.330,\r\n"
            "Bolt in gate pier,,,1.409,0.185\r\n");
  const auto book =
      test_support::runProgram({test_support::buildFolder() + "/stringcourse", "book", path});
  EXPECT_EQ(book.exitCode, 0) << book.err;
  EXPECT_NE(book.out.find("closes 3 high on Bolt in gate pier; 7 is allowed over 2 set-ups"),
            std::string::npos)
      << book.out;
}

TEST_F(TypingWindow, ANewSetIsWrittenIntoTheJobFileWithItsFirstReading) {
  write(read(demo("garage.toml")));
  openJob(job_);
  waitForTape();
  screen_->hand("mousemove 600 60");
  const std::string before = read(job_);
  ASSERT_EQ(before.find("[[readings]]"), std::string::npos);
  beginReading();
  // Name of the set, what is read, where, how high.
  for (const char* text : {"First lift", "damp", "c"}) {
    type(text);
    press("Return");
  }
  type("0.004");
  settle();
  EXPECT_EQ(read(job_), before) << "not before the first reading";
  press("Return");
  ASSERT_TRUE(eventually([&] { return read(job_) != before; }));
  const std::string after = read(job_);
  EXPECT_EQ(after.find(before.substr(0, before.find_last_not_of("\n"))), 0u) << "kept as it was";
  EXPECT_NE(after.find("[[readings]]\nname = \"First lift\""), std::string::npos) << after;
  EXPECT_NE(read((folder_ / "house-first-lift.csv").string()).find("level,damp-course,C,,0.004"),
            std::string::npos);
}

TEST_F(TypingWindow, ABadBookingIsMarkedInItsRow) {
  openHouse();
  press("k");
  ASSERT_TRUE(eventually([&] { return paper(screen_->shot()) > 80000; }));
  settle();
  type("Bolt in gate pier");
  press("Tab");
  type("1240");
  press("Tab", 3);
  type("0");
  press("Return");
  type("Peg");
  constexpr Area kFirstRows{46, 190, 780, 245};
  EXPECT_TRUE(eventually([&] {
    const Shot shot = screen_->shot();
    return countWhere([&](int x, int y) { return isCaution(shot, x, y); }, kFirstRows) > 150;
  })) << "the sign and what is wrong";
}

// The garage with one reading, far out.
TEST_F(TypingWindow, ClickingAReadingsRowGoesToIt) {
  std::ofstream(folder_ / "one.csv") << "kind,target,at,value\nlevel,damp-course,C,0.130\n";
  write(read(demo("garage.toml")) +
        "\n[[readings]]\nname = \"One\"\ndate = \"2027-05-06\"\nfile = \"one.csv\"\n");
  openJob(job_);
  waitForTape();
  press("1");
  press("e");
  press("c");
  // By hand out of the middle.
  press("ctrl+Right", 4);
  click(16, 238);
  ASSERT_TRUE(eventually([&] { return paper(screen_->shot()) > 60000; }));
  const auto mark = [&](const Shot& shot) {
    return areaWhere([&](int x, int y) { return isCaution(shot, x, y); }, kBeside);
  };
  ASSERT_TRUE(eventually([&] { return mark(screen_->shot()).width() > 8; }));
  const Area before = mark(settle());
  const double middleX = (452 + 1168) / 2.0, middleY = (kBeside.top + kBeside.bottom) / 2.0;
  ASSERT_GT(std::hypot(before.left + 7 - middleX, before.middleY() - middleY), 90)
      << "not in the middle by itself";
  // Its row, under "What it changes" and the headings.
  click(110, 400);
  EXPECT_TRUE(eventually([&] {
    const Area now = mark(settle());
    return now.width() > 8 && std::abs(now.left + 7 - middleX) < 25 &&
           std::abs(now.middleY() - middleY) < 50;
  })) << mark(settle()).left
      << " " << mark(settle()).middleY();
}

}  // namespace
}  // namespace window_test
