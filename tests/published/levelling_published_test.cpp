// Level books worked in print, against ours to the last printed digit.
#include <gtest/gtest.h>

#include "model/levelling/book_words.h"
#include "model/levelling/close_book.h"

namespace published {
namespace {

using namespace model;

constexpr BookMethod kBoth[] = {BookMethod::RiseAndFall, BookMethod::Collimation};
constexpr double kMillimetre = 0.0005;
constexpr double kHundredth = 0.005;  // of a foot

// The readings of one set-up in their order: backsight, intermediate sights, foresight.
using SetUpReadings = std::vector<double>;

LevelBook bookOf(double start, const std::vector<SetUpReadings>& setUps) {
  LevelBook book;
  book.bookings.resize(1);
  book.bookings[0].known = start;
  for (const SetUpReadings& readings : setUps) {
    book.bookings.back().backsight = readings.front();
    for (size_t i = 1; i < readings.size(); ++i) {
      Booking booking;
      (i + 1 < readings.size() ? booking.intermediate : booking.foresight) = readings[i];
      book.bookings.push_back(booking);
    }
  }
  for (size_t i = 0; i < book.bookings.size(); ++i) {
    book.bookings[i].point = "point " + std::to_string(i);
  }
  return book;
}

void expectLevels(const LevelBook& book, const std::vector<double>& levels, double within) {
  for (BookMethod method : kBoth) {
    const ReducedBook reduced = reduceBook(book, {}, method);
    ASSERT_EQ(reduced.rows.size(), levels.size() + 1);
    for (size_t i = 0; i < levels.size(); ++i) {
      EXPECT_NEAR(reduced.rows[i + 1].level, levels[i], within)
          << methodName(method) << ", " << book.bookings[i + 1].point;
    }
    for (const ArithmeticCheck& check : reduced.checks) EXPECT_TRUE(check.holds());
  }
}

struct PrintedSums {
  double backsights, foresights, rises, falls;
};

void expectSums(const LevelBook& book, const PrintedSums& printed, double difference) {
  const ReducedBook reduced = reduceBook(book, {}, BookMethod::RiseAndFall);
  EXPECT_NEAR(reduced.sums.backsights, printed.backsights, kMillimetre);
  EXPECT_NEAR(reduced.sums.foresights, printed.foresights, kMillimetre);
  EXPECT_NEAR(reduced.sums.rises, printed.rises, kMillimetre);
  EXPECT_NEAR(reduced.sums.falls, printed.falls, kMillimetre);
  // Three ways: sights, rises and falls, first and last.
  ASSERT_EQ(reduced.checks.size(), 1u);
  ASSERT_EQ(reduced.checks[0].figures.size(), 3u);
  for (double figure : reduced.checks[0].figures) EXPECT_NEAR(figure, difference, kMillimetre);
}

// NAVEDTRA 14071, Engineering Aid, chapter 7, "Level computations": the sum of the backsights less
// the sum of the foresights is the last level less the first.
TEST(PublishedLevelling, SightsAndLevelsHaveOneDifference) {
  const LevelBook book = bookOf(100, {{4.20, 2.50}, {5.15, 3.50}, {3.05, 4.10}});
  for (BookMethod method : kBoth) {
    const ReducedBook reduced = reduceBook(book, {}, method);
    EXPECT_NEAR(reduced.sums.backsights - reduced.sums.foresights,
                reduced.rows.back().level - reduced.rows.front().level, 1e-9);
  }
}

// NAVEDTRA 14071, chapter 7, "Level computations": an error of 3 minutes in the sum of three
// angles is shared as 1 minute each. Three set-ups that close 3 low are adjusted by 1 each.
TEST(PublishedLevelling, AClosingErrorIsSharedEqually) {
  LevelBook book = bookOf(0, {{1, 2}, {1, 2}, {1, 2}});
  book.bookings.back().known = 0;
  ReducedBook reduced = reduceBook(book, {}, BookMethod::RiseAndFall);
  ASSERT_NEAR(reduced.rows.back().level, -3, 1e-9);
  ASSERT_FALSE(adjustBook(book, reduced, closeBook(book, reduced, {}), Adjust::Anyway));
  for (size_t i = 1; i <= 3; ++i) {
    EXPECT_NEAR(reduced.rows[i].correction - reduced.rows[i - 1].correction, 1, 1e-9);
  }
}

// "Differential Leveling", lecture notes (scribd.com, document 282803623): mark 820.00, backsight
// 8.42, foresight 1.20 ft: height of instrument 828.42, point 827.22.
TEST(PublishedLevelling, OneSetUp) {
  const LevelBook book = bookOf(820, {{8.42, 1.20}});
  const ReducedBook reduced = reduceBook(book, {}, BookMethod::Collimation);
  EXPECT_NEAR(reduced.rows[0].collimation.value(), 828.42, kHundredth);
  expectLevels(book, {827.22}, kHundredth);
}

// FE study guide, section 7.5, "Differential leveling, height of instrument and closure"
// (open-exam-prep.com): three set-ups in feet.
TEST(PublishedLevelling, HeightsOfInstrumentOverTurningPoints) {
  const LevelBook book = bookOf(100, {{4.20, 2.50}, {5.15, 3.50}, {3.05, 4.10}});
  const ReducedBook reduced = reduceBook(book, {}, BookMethod::Collimation);
  const double lines[] = {104.20, 106.85, 106.40};
  for (size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(reduced.rows[i].collimation.value(), lines[i], kHundredth);
  }
  expectLevels(book, {101.70, 103.35, 102.30}, kHundredth);
  EXPECT_NEAR(reduced.sums.backsights, 12.40, kHundredth);
  EXPECT_NEAR(reduced.sums.foresights, 10.10, kHundredth);
  EXPECT_NEAR(reduced.checks[0].figures[0], 2.30, kHundredth);
}

// Worked exercise "Field notes for a differential leveling section" (askfilo.com): mark A at
// 100.00, mark B known at 94.91 ft, closes 0.04 high.
TEST(PublishedLevelling, FourSetUpsThatCloseHigh) {
  LevelBook book = bookOf(100, {{3.10, 9.82}, {6.44, 6.96}, {8.76, 3.27}, {7.12, 10.42}});
  expectLevels(book, {93.28, 92.76, 98.25, 94.95}, kHundredth);
  book.bookings.back().known = 94.91;
  const ReducedBook reduced = reduceBook(book, {}, BookMethod::Collimation);
  EXPECT_NEAR(reduced.sums.backsights, 25.42, kHundredth);
  EXPECT_NEAR(reduced.sums.foresights, 30.47, kHundredth);
  EXPECT_NEAR(reduced.checks[0].figures[0], -5.05, kHundredth);
  EXPECT_NEAR(closeBook(book, reduced, {})->error(), 0.04, kHundredth);
}

// "Rise and fall method" (dreamcivil.com): twelve points, the instrument moved twice.
TEST(PublishedLevelling, RiseAndFallOverTwelvePoints) {
  const LevelBook book = bookOf(100, {{0.485, 1.210, 1.635, 3.395, 3.775},
                                      {0.650, 1.400, 1.795, 2.575, 3.375, 3.895},
                                      {1.735, 0.635, 1.605}});
  expectLevels(
      book,
      {99.275, 98.850, 97.090, 96.710, 95.960, 95.565, 94.785, 93.985, 93.465, 94.565, 93.595},
      kMillimetre);
  expectSums(book, {2.870, 9.275, 1.100, 7.505}, -6.405);
}

// Worked exercise "Booking and reduced level calculations" (askfilo.com): from 49.872, closing on a
// mark known at 48.719.
LevelBook closingLow() {
  LevelBook book =
      bookOf(49.872, {{2.191, 2.507, 2.325, 1.496}, {3.019, 2.513, 2.811}, {1.752, 3.817}});
  book.bookings.back().known = 48.719;
  return book;
}

TEST(PublishedLevelling, RiseAndFallThatClosesLow) {
  const LevelBook book = closingLow();
  expectLevels(book, {49.556, 49.738, 50.567, 51.073, 50.775, 48.710}, kMillimetre);
  expectSums(book, {6.962, 8.124, 1.517, 2.679}, -1.162);
  const ReducedBook reduced = reduceBook(book, {}, BookMethod::RiseAndFall);
  EXPECT_NEAR(closeBook(book, reduced, {})->error(), -0.009, 1e-9);
}

// SKAA 1023 Surveying, supplementary reading "Levelling", part 3, precision of levelling: 5 mm
// times the root of three set-ups is 9 mm, by which 6 mm is accepted.
TEST(PublishedLevelling, AllowanceOverThreeSetUps) {
  const LevelBook book = closingLow();
  const ReducedBook reduced = reduceBook(book, {}, BookMethod::RiseAndFall);
  Closing closing = *closeBook(book, reduced, {});
  EXPECT_NEAR(closing.allowed, 0.009, 1e-9);
  closing.known = 48.710;
  closing.found = 48.704;
  EXPECT_TRUE(closing.within());
  closing.found = 48.700;
  EXPECT_FALSE(closing.within());
}

// Exercise "The following readings were taken with a level and a 4 m staff" (askfilo.com); its
// answers were worked out apart from the program.
TEST(PublishedLevelling, RiseAndFallOfTheExercise) {
  const LevelBook book = bookOf(51.362, {{0.683, 1.109, 1.838, 3.399, 3.877},
                                         {0.451, 1.405, 1.896, 2.676, 3.478, 3.999},
                                         {1.834, 0.649, 1.706}});
  expectLevels(
      book,
      {50.936, 50.207, 48.646, 48.168, 47.214, 46.723, 45.943, 45.141, 44.620, 45.805, 44.748},
      kMillimetre);
  expectSums(book, {2.968, 9.582, 1.185, 7.799}, -6.614);
}

// J. Mahun, Open Access Surveying Library, Elevations, chapter E: corrections in proportion to the
// distance. The circuit is that of "Sample problem 1, the known elevation of BM1" (askfilo.com).
TEST(PublishedLevelling, ACircuitAdjustedByDistance) {
  const double distances[] = {5245, 11271, 17718, 21964, 25247, 30500};
  const double observed[] = {783.213, 891.764, 843.195, 739.708, 702.956, 728.486};
  const double corrections[] = {0.042, 0.090, 0.142, 0.176, 0.202, 0.244};
  const double adjusted[] = {783.255, 891.854, 843.337, 739.884, 703.158, 728.730};
  std::vector<SetUpReadings> setUps;
  double level = 728.730;
  for (double next : observed) {
    setUps.push_back({0, level - next});
    level = next;
  }
  LevelBook book = bookOf(728.730, setUps);
  for (size_t i = 0; i < 6; ++i) book.bookings[i + 1].distance = distances[i];
  book.bookings.back().known = 728.730;
  ReducedBook reduced = reduceBook(book, {}, BookMethod::RiseAndFall);
  const auto closing = closeBook(book, reduced, {});
  EXPECT_NEAR(closing->error(), -0.244, 1e-9);
  ASSERT_FALSE(adjustBook(book, reduced, closing, Adjust::Anyway));
  for (size_t i = 0; i < 6; ++i) {
    EXPECT_NEAR(reduced.rows[i + 1].correction, corrections[i], kMillimetre);
    EXPECT_NEAR(reduced.rows[i + 1].adjusted(), adjusted[i], kMillimetre);
  }
}

// "Surveying, chapter 8, leveling, continued" (lecture, shakyradunn.com): 0.05 over five set-ups is
// taken out 0.01 at a time, 0.04 by the fourth point.
TEST(PublishedLevelling, ACircuitAdjustedBySetUp) {
  LevelBook book = bookOf(10, {{1, 0.99}, {1, 0.99}, {1, 0.99}, {1, 0.99}, {1, 0.99}});
  book.bookings.back().known = 10;
  ReducedBook reduced = reduceBook(book, {}, BookMethod::Collimation);
  const auto closing = closeBook(book, reduced, {});
  EXPECT_NEAR(closing->error(), 0.05, 1e-9);
  ASSERT_FALSE(adjustBook(book, reduced, closing, Adjust::Anyway));
  EXPECT_NEAR(reduced.rows[1].correction, -0.01, 1e-9);
  EXPECT_NEAR(reduced.rows[4].correction, -0.04, 1e-9);
  EXPECT_NEAR(reduced.rows[5].adjusted(), 10, 1e-9);
}

// C. D. Ghilani and P. R. Wolf, Elementary Surveying, 15th edition, problem 5.24: three-wire
// readings; the means add up to 1.5963 and 1.7087, and mark Y is 82.9847 from mark X at 83.097.
TEST(PublishedLevelling, ThreeWireMeans) {
  const auto mean = [](double upper, double middle, double lower) {
    return (upper + middle + lower) / 3;
  };
  const LevelBook book = bookOf(83.097, {{mean(1.076, 0.829, 0.573), mean(1.131, 0.858, 0.586)},
                                         {mean(0.989, 0.767, 0.555), mean(1.089, 0.851, 0.611)}});
  const ReducedBook reduced = reduceBook(book, {}, BookMethod::Collimation);
  EXPECT_NEAR(reduced.sums.backsights, 1.5963, 0.00005);
  EXPECT_NEAR(reduced.sums.foresights, 1.7087, 0.00005);
  EXPECT_NEAR(reduced.rows.back().level, 82.9847, 0.00005);
}

}  // namespace
}  // namespace published
