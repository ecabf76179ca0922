// Level books as people and spreadsheets save them.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/levelling/check_book.h"
#include "model/levelling/read_book.h"
#include "tests/support/random_book.h"

namespace {

using namespace model;
using test_support::bookSeed;
using test_support::Dice;
using test_support::RandomBook;
using test_support::randomBook;

// Reads well, without a warning.
LevelBook readWell(const std::string& text) {
  const ReadBookResult result = readBook(text, "book.csv", {});
  std::string listed;
  for (const Problem& problem : result.problems) listed += format(problem) + "\n";
  EXPECT_EQ(listed, "");
  return result.book.value_or(LevelBook{});
}

const char* const kPlain =
    "point,backsight,intermediate,foresight,distance,known,remark\n"
    "TBM 1,1.435,,,,10.000,kerb\n"
    "Pin 1,,1.200,,,,\n"
    "CP 1,1.500,,1.300,,,\n"
    "TBM 1,,,1.635,,,\n";

TEST(ReadBook, ReadsEachCellIntoItsPlace) {
  const LevelBook book = readWell(kPlain);
  ASSERT_EQ(book.bookings.size(), 4u);
  EXPECT_EQ(book.bookings[0].point, "TBM 1");
  EXPECT_EQ(book.bookings[0].backsight, 1.435);
  EXPECT_EQ(book.bookings[0].known, 10.0);
  EXPECT_EQ(book.bookings[0].remark, "kerb");
  EXPECT_EQ(book.bookings[1].intermediate, 1.2);
  EXPECT_FALSE(book.bookings[1].backsight || book.bookings[1].foresight);
  EXPECT_EQ(book.bookings[2].backsight, 1.5);
  EXPECT_EQ(book.bookings[2].foresight, 1.3);
  EXPECT_EQ(book.bookings[2].places.foresight.line, 4);
  EXPECT_EQ(book.bookings[2].places.foresight.column, 13);
}

class SameBook : public testing::TestWithParam<std::string> {};

TEST_P(SameBook, HoweverItIsSaved) {
  LevelBook book = readWell(GetParam());
  for (Booking& booking : book.bookings) booking.booked.reset();  // only one way has them
  EXPECT_EQ(writeBook(book), writeBook(readWell(kPlain)));
  EXPECT_TRUE(book.bookings == readWell(kPlain).bookings);
}

INSTANTIATE_TEST_SUITE_P(
    Ways, SameBook,
    testing::Values(
        // Byte order mark, CRLF, semicolons and decimal commas.
        "\xEF\xBB\xBFpoint;backsight;intermediate;foresight;distance;known;remark\r\n"
        "TBM 1;1,435;;;;10,000;kerb\r\nPin 1;;1,200;;;;\r\nCP 1;1,500;;1,300;;;\r\n"
        "TBM 1;;;1,635;;;\r\n",
        // Tabs, no line end after the last row.
        "point\tbacksight\tintermediate\tforesight\tknown\tremark\nTBM 1\t1.435\t\t\t10\tkerb\n"
        "Pin 1\t\t1.2\nCP 1\t1.5\t\t1.3\nTBM 1\t\t\t1.635",
        // Decimal commas in quotes between commas.
        "point,backsight,intermediate,foresight,known,remark\nTBM 1,\"1,435\",,,\"10,000\",kerb\n"
        "Pin 1,,\"1,200\",,,\nCP 1,\"1,500\",,\"1,300\",,\nTBM 1,,,\"1,635\",,\n",
        // Short headings in capitals and another order, blank rows, dashes for nothing.
        "Remarks,Station,BS,IS,FS,Known level\n,,,,,\nkerb, TBM 1 ,+1.435,-,\xE2\x80\x93,10\n\n"
        ",Pin 1,,1.200,,\n,CP 1,1.500,,1.300,\n,TBM 1,,,1.635,\n\n",
        // The change point in two rows.
        "point,backsight,intermediate,foresight,known,remark\nTBM 1,1.435,,,10,kerb\n"
        "Pin 1,,1.200,,,\nCP 1,,,1.300,,\nCP 1,1.500,,,,\nTBM 1,,,1.635,,\n",
        // Everything in quotes.
        "\"point\",\"backsight\",\"intermediate\",\"foresight\",\"known\",\"remark\"\n"
        "\"TBM 1\",\"1.435\",\"\",\"\",\"10.000\",\"kerb\"\n\"Pin 1\",\"\",\"1.200\"\n"
        "\"CP 1\",\"1.500\",\"\",\"1.300\"\n\"TBM 1\",\"\",\"\",\"1.635\"\n",
        // With the columns of a book that was worked out.
        "point,backsight m,intermediate m,foresight m,rise m,fall m,level m,known m,remark\n"
        "TBM 1,1.435,,,,,+10.000,10,kerb\nPin 1,,1.200,,0.235,,+10.235,,\n"
        "CP 1,1.500,,1.300,,0.100,+10.135,,\nTBM 1,,,1.635,,0.135,+10.000,,\n"));

TEST(ReadBook, TakesAMinusThatASpreadsheetWrites) {
  const LevelBook book = readWell(
      "point,backsight,intermediate,foresight,known\nTBM,1.185,,,0.250\n"
      "Soffit,,\xE2\x88\x92"
      "0.665,,\nTBM,,,1.185,\n");
  ASSERT_EQ(book.bookings.size(), 3u);
  EXPECT_EQ(book.bookings[1].intermediate, -0.665);
}

TEST(ReadBook, AChangePointInTwoRowsKeepsWhatEitherSays) {
  const LevelBook book = readWell(
      "point,backsight,intermediate,foresight,distance,known,remark\nTBM,1.185,,,,0.250,\n"
      "CP 1,,,1.200,30,,kerb\ncp 1,1.300,,,,0.235,moved here\nTBM,,,1.285,60,,\n");
  ASSERT_EQ(book.bookings.size(), 3u);
  EXPECT_EQ(book.bookings[1].foresight, 1.2);
  EXPECT_EQ(book.bookings[1].backsight, 1.3);
  EXPECT_EQ(book.bookings[1].distance, 30);
  EXPECT_EQ(book.bookings[1].known, 0.235);
  EXPECT_EQ(book.bookings[1].remark, "kerb; moved here");
}

TEST(ReadBook, CheckingTypedBookingsSaysTheSameAsReadingThem) {
  LevelBook book = readWell(kPlain);
  book.bookings[1].intermediate.reset();
  const Problems problems = checkBook(book, "book.csv", {});
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].place.line, 3);
}

TEST(ReadBook, RefusesWhatIsNoBook) {
  EXPECT_EQ(readBook(std::string((1 << 20) + 1, 'a'), "b.csv", {}).problems.size(), 1u);
  std::string many = "point,backsight,foresight\n";
  for (int i = 0; i < 2001; ++i) many += "Pin,1.000,1.000\n";
  const auto result = readBook(many, "b.csv", {});
  EXPECT_FALSE(result.book);
  EXPECT_EQ(result.problems.size(), 1u);
  const auto missing = readBookFile("/nowhere/at/all.csv", {});
  ASSERT_EQ(missing.problems.size(), 1u);
  EXPECT_NE(missing.problems[0].what.find("cannot be read"), std::string::npos);
  EXPECT_EQ(readBookFile("/", {}).problems.size(), 1u) << "a folder";
}

RC_GTEST_PROP(ReadBook, GivesBackWhatWasWritten, ()) {
  RandomBook random = randomBook(*bookSeed());
  // Digital levels read closer than a millimetre; names are whatever people write.
  Dice dice(*bookSeed());
  const std::vector<std::string> odd = {"a,b",      "\"kerb\"", "two\nlines", ";;",
                                        "\xC3\xA0", "-",        "1,435",      "=1+1"};
  for (Booking& booking : random.book.bookings) {
    if (booking.intermediate) *booking.intermediate += dice.between(0, 9) / 1e4 / 3;
    booking.remark = dice.chance(30) ? dice.pick(odd) : booking.remark;
    if (booking.intermediate && dice.chance(30)) booking.point = dice.pick(odd);
  }
  const std::string text = writeBook(random.book);
  BookSettings loose;
  loose.staff = loose.agree = 100;  // only writing and reading are looked at here
  const ReadBookResult result = readBook(text, "book.csv", loose);
  for (const Problem& problem : result.problems) RC_LOG() << format(problem) << "\n";
  RC_ASSERT(result.book.has_value());
  RC_ASSERT(result.book->bookings == random.book.bookings);
  RC_ASSERT(writeBook(*result.book) == text);
}

RC_GTEST_PROP(ReadBook, NoBytesCrashIt, ()) {
  const auto bytes = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
  const auto result = readBook(bytes, "book.csv", {});
  RC_ASSERT(result.book.has_value() == !hasErrors(result.problems));
}

RC_GTEST_PROP(ReadBook, NoSlipCrashesItAndEachErrorHasItsPlaceAndWords, ()) {
  std::string text = writeBook(randomBook(*bookSeed()).book);
  Dice dice(*bookSeed());
  const std::string slips = "\",;\t\n\r.-0x\xC3\xFF ";
  for (int i = dice.between(1, 6); i > 0; --i) {
    const size_t at = static_cast<size_t>(dice.between(0, static_cast<int>(text.size()) - 1));
    const char c = slips[static_cast<size_t>(dice.between(0, static_cast<int>(slips.size()) - 1))];
    if (dice.chance(50)) {
      text[at] = c;
    } else {
      text.insert(at, 1, c);
    }
  }
  const auto result = readBook(text, "book.csv", {});
  RC_ASSERT(result.book.has_value() == !hasErrors(result.problems));
  for (const Problem& problem : result.problems) {
    RC_ASSERT(problem.place.line > 0 && problem.place.column > 0);
    RC_ASSERT(!problem.what.empty() && !problem.instead.empty());
  }
}

}  // namespace
