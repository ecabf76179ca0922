// A book worked out by either method gives back the levels that it was read from.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/levelling/check_book.h"
#include "model/levelling/reduce_book.h"
#include "tests/support/random_book.h"

namespace {

using namespace model;
using test_support::bookSeed;
using test_support::RandomBook;
using test_support::randomBook;

constexpr double kExact = 1e-9;
constexpr BookMethod kMethods[] = {BookMethod::RiseAndFall, BookMethod::Collimation};

Booking sight(const std::string& point, std::optional<double> back, std::optional<double> between,
              std::optional<double> fore) {
  Booking booking;
  booking.point = point;
  booking.backsight = back;
  booking.intermediate = between;
  booking.foresight = fore;
  return booking;
}

TEST(ReduceBook, ABiggerReadingIsALowerPoint) {
  LevelBook book{{sight("Mark", 1.000, {}, {}), sight("High", {}, 0.400, {}),
                  sight("Low", {}, 2.400, {}), sight("Mark", {}, {}, 1.000)}};
  book.bookings[0].known = 10;
  for (BookMethod method : kMethods) {
    const ReducedBook reduced = reduceBook(book, {}, method);
    EXPECT_NEAR(reduced.rows[1].level, 10.600, kExact);
    EXPECT_NEAR(reduced.rows[2].level, 8.600, kExact);
    EXPECT_NEAR(reduced.rows[3].level, 10.000, kExact);
  }
}

TEST(ReduceBook, AStaffUpsideDownIsAboveTheLine) {
  // The trade's worked example: mark +0.250, backsight 1.185, soffit +2.100 reads -0.665.
  LevelBook book{{sight("Mark", 1.185, {}, {}), sight("Lintel soffit", {}, -0.665, {}),
                  sight("Mark", {}, {}, 1.185)}};
  book.bookings[0].known = 0.250;
  for (BookMethod method : kMethods) {
    const ReducedBook reduced = reduceBook(book, {}, method);
    EXPECT_NEAR(reduced.rows[1].level, 2.100, kExact);
    for (const ArithmeticCheck& check : reduced.checks) EXPECT_TRUE(check.holds());
  }
}

TEST(ReduceBook, EachMethodFillsItsOwnColumns) {
  const RandomBook random = randomBook(7);
  const ReducedBook rises = reduceBook(random.book, {}, BookMethod::RiseAndFall);
  const ReducedBook lines = reduceBook(random.book, {}, BookMethod::Collimation);
  for (size_t i = 0; i < rises.rows.size(); ++i) {
    EXPECT_EQ(rises.rows[i].rise.has_value() + rises.rows[i].fall.has_value(), i > 0 ? 1 : 0);
    EXPECT_FALSE(rises.rows[i].collimation);
    EXPECT_EQ(lines.rows[i].collimation.has_value(), random.book.bookings[i].backsight.has_value());
    EXPECT_FALSE(lines.rows[i].rise || lines.rows[i].fall);
  }
}

TEST(ReduceBook, AWrongSumDoesNotHold) {
  ArithmeticCheck check{{"a", "b"}, {1.000, 1.000}};
  EXPECT_TRUE(check.holds());
  check.figures[1] = 1.001;
  EXPECT_FALSE(check.holds());
}

TEST(ReduceBook, TheStartIsTheSettingsThenTheBookThenTheMark) {
  LevelBook book{{sight("TBM", 1.000, {}, {}), sight("TBM", {}, {}, 1.000)}};
  BookSettings settings;
  settings.marks = {{"tbm", 3.000}};
  EXPECT_NEAR(reduceBook(book, settings, BookMethod::RiseAndFall).rows[1].level, 3, kExact);
  book.bookings[0].known = 4;
  EXPECT_NEAR(reduceBook(book, settings, BookMethod::RiseAndFall).rows[1].level, 4, kExact);
  settings.start = 5;
  const ReducedBook reduced = reduceBook(book, settings, BookMethod::RiseAndFall);
  EXPECT_NEAR(reduced.rows[1].level, 5, kExact);
  EXPECT_EQ(reduced.rows[1].known, 5) << "it comes back to the same point";
}

RC_GTEST_PROP(ReduceBook, GivesTheLevelsThatWereRead, ()) {
  const RandomBook random = randomBook(*bookSeed());
  RC_ASSERT(!hasErrors(checkBook(random.book, "", {})));
  const ReducedBook rises = reduceBook(random.book, {}, BookMethod::RiseAndFall);
  const ReducedBook lines = reduceBook(random.book, {}, BookMethod::Collimation);
  RC_ASSERT(rises.rows.size() == random.levels.size());
  for (size_t i = 0; i < random.levels.size(); ++i) {
    RC_ASSERT(std::abs(rises.rows[i].level - random.levels[i]) < kExact);
    RC_ASSERT(std::abs(lines.rows[i].level - random.levels[i]) < kExact);
    RC_ASSERT(rises.rows[i].setUp == lines.rows[i].setUp);
  }
  for (const ReducedBook* reduced : {&rises, &lines}) {
    RC_ASSERT(!reduced->checks.empty());
    for (const ArithmeticCheck& check : reduced->checks) RC_ASSERT(check.holds());
  }
}

RC_GTEST_PROP(ReduceBook, AllLevelsMoveWithTheMark, ()) {
  const RandomBook random = randomBook(*bookSeed());
  const double by = *rc::gen::inRange(-5000, 5000) / 1000.0;
  BookSettings settings;
  settings.start = *random.book.bookings[0].known + by;
  for (BookMethod method : kMethods) {
    const ReducedBook moved = reduceBook(random.book, settings, method);
    for (size_t i = 0; i < random.levels.size(); ++i) {
      RC_ASSERT(std::abs(moved.rows[i].level - random.levels[i] - by) < kExact);
    }
  }
}

RC_GTEST_PROP(ReduceBook, RaisingTheInstrumentChangesNoLevel, ()) {
  // Every reading of one set-up bigger by the same: the instrument stood higher.
  RandomBook random = randomBook(*bookSeed());
  const double higher = *rc::gen::inRange(1, 900) / 1000.0;
  Booking* row = random.book.bookings.data();
  *row->backsight += higher;
  do {
    ++row;
    if (row->intermediate) *row->intermediate += higher;
  } while (!row->foresight);
  *row->foresight += higher;
  for (BookMethod method : kMethods) {
    const ReducedBook reduced = reduceBook(random.book, {}, method);
    for (size_t i = 0; i < random.levels.size(); ++i) {
      RC_ASSERT(std::abs(reduced.rows[i].level - random.levels[i]) < kExact);
    }
  }
}

}  // namespace
