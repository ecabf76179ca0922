// Closing errors come back as they were put in, are held against the allowance, and are spread.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/levelling/book_words.h"
#include "model/levelling/close_book.h"
#include "tests/support/random_book.h"

namespace {

using namespace model;
using test_support::bookSeed;
using test_support::RandomBook;
using test_support::randomBook;

constexpr double kExact = 1e-9;

// Out and back over `setUps`, closing `error` high.
LevelBook loop(size_t setUps, double error) {
  LevelBook book;
  for (size_t i = 0; i <= setUps; ++i) {
    Booking booking;
    booking.point = i == 0 || i == setUps ? "TBM 1" : "CP " + std::to_string(i);
    if (i == 0) booking.known = 10;
    if (i < setUps) booking.backsight = 1.500;
    if (i > 0) booking.foresight = 1.500;
    book.bookings.push_back(booking);
  }
  *book.bookings.back().foresight -= error;  // read too small: it comes out too high
  return book;
}

Closing closingOf(const LevelBook& book, const Allowance& allowance = {}) {
  return *closeBook(book, reduceBook(book, {}, BookMethod::RiseAndFall), allowance);
}

TEST(CloseBook, SaysHighAndLowWithTheRightSign) {
  EXPECT_EQ(closingText(closingOf(loop(4, 0.008))),
            "closes 8 high on TBM 1; 10 is allowed over 4 set-ups");
  EXPECT_EQ(closingText(closingOf(loop(4, -0.008))),
            "closes 8 low on TBM 1; 10 is allowed over 4 set-ups");
  EXPECT_EQ(closingText(closingOf(loop(4, -0.038))),
            "closes 38 low on TBM 1, 10 is allowed over 4 set-ups: level it again");
  EXPECT_EQ(closingText(closingOf(loop(1, 0))),
            "closes on TBM 1 with no error; 5 is allowed over 1 set-up");
}

TEST(CloseBook, AllowsMoreOverMoreSetUpsAndIsExactAtTheLimit) {
  EXPECT_NEAR(closingOf(loop(1, 0)).allowed, 0.005, kExact);
  EXPECT_NEAR(closingOf(loop(4, 0)).allowed, 0.010, kExact);
  EXPECT_NEAR(closingOf(loop(9, 0)).allowed, 0.015, kExact);
  EXPECT_TRUE(closingOf(loop(4, 0.010)).within());
  EXPECT_TRUE(closingOf(loop(4, -0.010)).within());
  EXPECT_FALSE(closingOf(loop(4, 0.011)).within());
  EXPECT_FALSE(closingOf(loop(4, -0.011)).within());
}

TEST(CloseBook, TakesTheJobsOwnAllowanceAndDistances) {
  EXPECT_NEAR(closingOf(loop(4, 0), {0.006, 0}).allowed, 0.012, kExact);
  LevelBook book = loop(2, 0.004);
  book.bookings[1].distance = 40;
  book.bookings[2].distance = 90;
  const Closing closing = closingOf(book, {0.005, 0.020});
  EXPECT_NEAR(closing.allowed, 0.006, kExact);  // 20 mm times the root of 0.09 km
  EXPECT_EQ(closingText(closing), "closes 4 high on TBM 1; 6 is allowed over 90 m");
}

TEST(CloseBook, RefusesToAdjustPastTheAllowanceUnlessAsked) {
  const LevelBook book = loop(4, 0.038);
  ReducedBook reduced = reduceBook(book, {}, BookMethod::Collimation);
  const auto closing = closeBook(book, reduced, {});
  const auto refusal = adjustBook(book, reduced, closing, Adjust::WithinAllowance);
  ASSERT_TRUE(refusal);
  EXPECT_NE(refusal->find("level it again"), std::string::npos);
  for (const ReducedRow& row : reduced.rows) EXPECT_EQ(row.correction, 0);
  EXPECT_FALSE(adjustBook(book, reduced, closing, Adjust::Anyway));
  EXPECT_NEAR(reduced.rows.back().adjusted(), 10, kExact);
}

TEST(CloseBook, ABookThatEndsNowhereIsNotAdjusted) {
  LevelBook book = loop(2, 0);
  book.bookings.back().point = "Pin 7";
  ReducedBook reduced = reduceBook(book, {}, BookMethod::RiseAndFall);
  const auto closing = closeBook(book, reduced, {});
  EXPECT_FALSE(closing);
  const auto refusal = adjustBook(book, reduced, closing, Adjust::Anyway);
  ASSERT_TRUE(refusal);
  EXPECT_NE(refusal->find("Pin 7"), std::string::npos);
}

TEST(CloseBook, SharesByDistanceWhereThereAreDistances) {
  LevelBook book = loop(3, -0.006);
  book.bookings[1].distance = 10;
  book.bookings[2].distance = 40;
  book.bookings[3].distance = 60;
  ReducedBook reduced = reduceBook(book, {}, BookMethod::RiseAndFall);
  ASSERT_FALSE(adjustBook(book, reduced, closeBook(book, reduced, {}), Adjust::Anyway));
  EXPECT_NEAR(reduced.rows[1].correction, 0.001, kExact);
  EXPECT_NEAR(reduced.rows[2].correction, 0.004, kExact);
  EXPECT_NEAR(reduced.rows[3].correction, 0.006, kExact);
}

TEST(CloseBook, IntermediateSightsHaveTheirSetUpsCorrection) {
  LevelBook book = loop(2, 0.004);
  Booking pin;
  pin.point = "Pin";
  pin.intermediate = 1.400;
  book.bookings.insert(book.bookings.begin() + 1, pin);  // first set-up
  book.bookings.insert(book.bookings.begin() + 3, pin);  // second
  ReducedBook reduced = reduceBook(book, {}, BookMethod::RiseAndFall);
  ASSERT_FALSE(adjustBook(book, reduced, closeBook(book, reduced, {}), Adjust::WithinAllowance));
  EXPECT_NEAR(reduced.rows[0].correction, 0, kExact);
  EXPECT_NEAR(reduced.rows[1].correction, -0.002, kExact);
  EXPECT_NEAR(reduced.rows[2].correction, -0.002, kExact);
  EXPECT_NEAR(reduced.rows[3].correction, -0.004, kExact);
  EXPECT_NEAR(reduced.rows[4].correction, -0.004, kExact);
}

TEST(CloseBook, TellsOfKnownPointsOnTheWay) {
  LevelBook book = loop(3, 0);
  book.bookings[1].known = 9.997;
  const ReducedBook reduced = reduceBook(book, {}, BookMethod::RiseAndFall);
  const auto texts = knownPointTexts(book, reduced);
  ASSERT_EQ(texts.size(), 1u);
  EXPECT_EQ(texts[0], "CP 1 comes out 3 high of its known +9.997");
}

RC_GTEST_PROP(CloseBook, APerfectBookClosesAndAdjustingChangesNothing, ()) {
  const RandomBook random = randomBook(*bookSeed());
  ReducedBook reduced = reduceBook(random.book, {}, BookMethod::RiseAndFall);
  const auto closing = closeBook(random.book, reduced, {});
  RC_ASSERT(closing.has_value());
  RC_ASSERT(std::abs(closing->error()) < kExact && closing->within());
  RC_ASSERT(!adjustBook(random.book, reduced, closing, Adjust::WithinAllowance));
  for (size_t i = 0; i < random.levels.size(); ++i) {
    RC_ASSERT(std::abs(reduced.rows[i].adjusted() - random.levels[i]) < kExact);
  }
}

RC_GTEST_PROP(CloseBook, AKnownErrorComesBackAndIsTakenOutAgain, ()) {
  // Each foresight reads `error` too small, so each set-up lifts all that follows by it; an even
  // share for each set-up takes it out at every change point.
  const double error = *rc::gen::inRange(-9, 9) / 1000.0;
  RandomBook random = randomBook(*bookSeed(), error);
  for (Booking& booking : random.book.bookings) booking.distance.reset();
  for (BookMethod method : {BookMethod::RiseAndFall, BookMethod::Collimation}) {
    ReducedBook reduced = reduceBook(random.book, {}, method);
    const auto closing = closeBook(random.book, reduced, {});
    RC_ASSERT(std::abs(closing->error() - error * static_cast<double>(closing->setUps)) < kExact);
    RC_ASSERT(!adjustBook(random.book, reduced, closing, Adjust::Anyway));
    for (size_t i = 0; i < random.levels.size(); ++i) {
      if (random.book.bookings[i].intermediate) continue;
      RC_ASSERT(std::abs(reduced.rows[i].adjusted() - random.levels[i]) < kExact);
    }
  }
}

}  // namespace
