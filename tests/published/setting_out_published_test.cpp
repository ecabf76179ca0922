// Squaring and diagonals against published figures.
#include <gtest/gtest.h>

#include <array>

#include <glm/geometric.hpp>

#include "model/levelling/cut_fill.h"
#include "model/lines/level_sights.h"
#include "model/lines/set_out_lines.h"
#include "tests/published/rectangle_job.h"

namespace published {
namespace {

using namespace model;

SetOutLines linesOf(const Job& job) { return deriveLines(job, deriveSettingOut(job)); }

// The Carpenters' Guide, "How to square a foundation": 6 and 8 ft along two lines are square when
// the marks are 10 ft apart. In our whole hundreds: 600, 800 and 1000 on lines that take no more.
TEST(PublishedSettingOut, SixEightTen) {
  const CornerTriangle t = squareTriangle(0.6, 0.8, 30);
  EXPECT_NEAR(t.before, 0.6, 1e-12);
  EXPECT_NEAR(t.after, 0.8, 1e-12);
  EXPECT_NEAR(t.across, 1.0, 1e-12);
  EXPECT_NEAR(t.across / t.before, 10.0 / 6, 1e-12);
}

// Multiples of 3-4-5 as landscapers print them ("Checking corners"): 6-8-10, 9-12-15, 15-20-25.
TEST(PublishedSettingOut, MultiplesOfThreeFourFive) {
  for (const double times : {2.0, 3.0, 5.0}) {
    const CornerTriangle t = squareTriangle(3 * times, 4 * times, 30);
    EXPECT_EQ(t.ratio, (std::array<int, 3>{3, 4, 5}));
    EXPECT_NEAR(t.before, 3 * times, 1e-9);
    EXPECT_NEAR(t.across, 5 * times, 1e-9);
  }
}

// US Army, course EN0069A, "Squaring building lines": with four true sides the diagonals of a
// rectangle are equal, the root of the sum of the squares.
TEST(PublishedSettingOut, DiagonalsOfARectangle) {
  const SetOutLines lines = linesOf(rectangleJob(9.140, 6.100));
  ASSERT_EQ(lines.tape.diagonals.size(), 2u);
  for (const Tape& diagonal : lines.tape.diagonals)
    EXPECT_NEAR(diagonal.length, std::sqrt(9.140 * 9.140 + 6.100 * 6.100), 1e-9);
}

// The same, on correcting one: with the base fixed and the sides right, both far corners slide the
// same way along their line, and the base stays.
TEST(PublishedSettingOut, SlidingTheFarCornersEvensTheDiagonals) {
  const double a = 9.140, b = 6.100, lean = 0.012;
  const Vec2 base1{0, 0}, base2{a, 0}, far1{lean, std::sqrt(b * b - lean * lean)};
  const Vec2 far2 = far1 + Vec2{a, 0};
  const double difference = glm::length(far2 - base1) - glm::length(far1 - base2);
  const Vec2 slide{-outOfSquare(difference, a, b), 0};
  EXPECT_LT(std::abs(glm::length(far2 + slide - base1) - glm::length(far1 + slide - base2)), 5e-5);
}

// Hansen Pole Buildings, "Pythagorean theorem": a building of 50 x 84 ft has a diagonal of 97.7548
// ft, 97 ft 9 1/16 in.
TEST(PublishedSettingOut, DiagonalOfFiftyByEightyFour) {
  const SetOutLines lines = linesOf(rectangleJob(84 * kFoot, 50 * kFoot));
  const double feet = lines.tape.diagonals[0].length / kFoot;
  EXPECT_NEAR(feet, 97.7548, 5e-5);
  EXPECT_NEAR((feet - 97) * 12, 9 + 1.0 / 16, 1.0 / 32);
}

// Trigonometry, no source: 20 x 30 and 20 x 32 ft.
TEST(PublishedSettingOut, DiagonalsWorkedOut) {
  EXPECT_NEAR(linesOf(rectangleJob(30 * kFoot, 20 * kFoot)).tape.diagonals[0].length / kFoot,
              36.056, 5e-4);
  EXPECT_NEAR(linesOf(rectangleJob(32 * kFoot, 20 * kFoot)).tape.diagonals[0].length / kFoot,
              37.736, 5e-4);
}

// US Army, course EN0069A, as above: the first board is set at the high corner and the others are
// levelled from it, so that all tops are at one level.
TEST(PublishedSettingOut, BoardsAreLevelledFromTheHighCorner) {
  Job job = rectangleJob(10, 8);
  job.site.boundary = {{-8, -8}, {18, -8}, {18, 16}, {-8, 16}};
  job.site.spots = {{{-8, -8}, -0.6}, {{18, -8}, -0.6}, {{18, 16}, 0.1}, {{-8, 16}, -0.6}};
  const SettingOut out = deriveSettingOut(job);
  const BoardPlan plan = deriveBoards(job, out);
  ASSERT_EQ(plan.boards.size(), 8u);
  const auto groundAt = [&](const Board& board) {
    return out.terrain.levelAt((board.from + board.to) / 2.0);
  };
  const auto high =
      std::max_element(plan.boards.begin(), plan.boards.end(),
                       [&](const Board& x, const Board& y) { return groundAt(x) < groundAt(y); });
  EXPECT_EQ(high->corner, "C");
  for (const Board& board : plan.boards) {
    EXPECT_EQ(board.top, high->top);
    EXPECT_GT(board.top, groundAt(board));
  }
}

// C. D. Ghilani and P. R. Wolf, Elementary Surveying, 15th edition, problem 23.18 with its
// solution: mark A 1070.58 ft, 5.34 read on it, so the line is at 1075.92; batter boards 1.00 ft
// over the floor at 1069.31 stand at 1070.31, and 5.61 is read on their tops.
TEST(PublishedSettingOut, StaffReadingOnTheTopsOfBatterBoards) {
  constexpr double kHundredth = 0.005;
  const Instrument instrument = setUpInstrument(1070.58 * kFoot, 5.34 * kFoot);
  EXPECT_NEAR(instrument.collimation / kFoot, 1075.92, kHundredth);
  const double top = (1069.31 + 1.00) * kFoot;
  EXPECT_NEAR(top / kFoot, 1070.31, kHundredth);
  EXPECT_NEAR(readStaff(instrument, top).reading / kFoot, 5.61, kHundredth);
}

// The same through a job: its board tops, whose level the ground decides, have the reading that the
// line less their level gives, whatever the board.
TEST(PublishedSettingOut, StaffReadingsOnTheBoardsOfAJob) {
  Job job = rectangleJob(10, 8);
  job.site.benchMark = BenchMark{"A", {-6, -6}, 1.27 * kFoot};  // 1070.58 over a floor at 1069.31
  model::SetUp setUp;
  setUp.at = {-5, -5};
  setUp.backsight = 5.34 * kFoot;
  job.setUps = {setUp};
  const SettingOut out = deriveSettingOut(job);
  const BoardPlan plan = deriveBoards(job, out);
  ASSERT_FALSE(plan.boards.empty());
  const auto reading = [&](double level) {
    return sightOfPoint(job, out, setUp, {plan.boards[0].from, level})->reading.reading;
  };
  EXPECT_NEAR(reading(1.00 * kFoot) / kFoot, 5.61, 0.005);
  for (const Board& board : plan.boards)
    EXPECT_NEAR(reading(board.top), (1.27 + 5.34) * kFoot - board.top, 0.0006);
}

// NAVEDTRA 14070, Engineering Aid, figure 10-19 and its text: hubs at 126.94 and 127.33 ft over
// inverts at 122.87 and 121.78 are marked C 4.07 and C 5.55; the second invert lies 50 ft on at
// 2.18 percent.
TEST(PublishedSettingOut, CutsFromOffsetHubs) {
  EXPECT_NEAR(122.87 - 0.50 * 2.18, 121.78, 0.005);
  for (const auto& [hub, invert, cut] :
       {std::array{126.94, 122.87, 4.07}, std::array{127.33, 121.78, 5.55}}) {
    const CutFill difference = cutFill(hub * kFoot, invert * kFoot);
    EXPECT_EQ(difference.word, CutFillWord::Cut);
    EXPECT_NEAR(difference.amount / kFoot, cut, 0.005);
  }
}

}  // namespace
}  // namespace published
