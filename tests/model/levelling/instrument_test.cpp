// What is read on the staff, what cannot be, and cut and fill, each with its sign.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/levelling/cut_fill.h"
#include "model/levelling/instrument.h"
#include "model/levelling/staff_text.h"

namespace {

using namespace model;

constexpr double kExact = 1e-9;

// The trade's worked example: mark at +0.250, 1.185 read on it.
const Instrument kSite = setUpInstrument(0.250, 1.185, 4);

TEST(Instrument, StandsAtTheMarkAndItsBacksight) { EXPECT_NEAR(kSite.collimation, 1.435, kExact); }

TEST(Instrument, ReadsMoreOnALowerPoint) {
  EXPECT_NEAR(readStaff(kSite, -0.975).reading, 2.410, kExact);  // top of strip
  EXPECT_NEAR(readStaff(kSite, -0.950).reading, 2.385, kExact);  // pin found
  EXPECT_NEAR(readStaff(kSite, -1.175).reading, 2.610, kExact);  // formation
  EXPECT_NEAR(readStaff(kSite, 2.100).reading, -0.665, kExact);  // soffit
  EXPECT_GT(readStaff(kSite, -1).reading, readStaff(kSite, 0).reading);
}

TEST(Instrument, SaysWhatCanBeReadAndWhatNot) {
  EXPECT_EQ(readStaff(kSite, -0.975).reach, Reach::Upright);
  EXPECT_EQ(readStaff(kSite, 2.100).reach, Reach::UpsideDown);
  EXPECT_EQ(readStaff(kSite, -3.075).reach, Reach::StaffTooShort);
  EXPECT_EQ(readStaff(kSite, 5.500).reach, Reach::TooHigh);
  EXPECT_EQ(readStaff(kSite, -0.975, 1.500).reach, Reach::LineInGround);
  EXPECT_TRUE(readStaff(kSite, 2.100).canBeRead());
  EXPECT_FALSE(readStaff(kSite, -3.075).canBeRead());
}

TEST(Instrument, TheEndsOfTheStaffCanStillBeRead) {
  EXPECT_EQ(readStaff(kSite, 1.435).reach, Reach::Upright) << "on the line";
  EXPECT_EQ(readStaff(kSite, 1.435 - 4).reach, Reach::Upright);
  EXPECT_EQ(readStaff(kSite, 1.435 - 4.001).reach, Reach::StaffTooShort);
  EXPECT_EQ(readStaff(kSite, 1.435 + 4).reach, Reach::UpsideDown);
  EXPECT_EQ(readStaff(kSite, 1.435 + 4.001).reach, Reach::TooHigh);
  EXPECT_EQ(readStaff(kSite, 0, 1.435).reach, Reach::Upright) << "ground up to the line";
}

TEST(Instrument, SaysItInWords) {
  const auto text = [](double level, std::optional<double> ground = {}) {
    return staffReadingText(kSite, readStaff(kSite, level, ground));
  };
  EXPECT_EQ(text(-0.975), "read 2.410");
  EXPECT_EQ(text(2.100),
            "above the line: staff upside down -0.665, or measure up 665 from the line");
  EXPECT_EQ(text(-3.075),
            "4.510 is past the staff by 510: carry the level down over a change point or with a "
            "tape");
  EXPECT_EQ(text(5.500), "4065 above the line, past the staff: carry the level up with a tape");
  EXPECT_EQ(text(-0.975, 1.5), "the line is below the ground there: set up higher or further on");
}

TEST(Instrument, StandsOnItsTripod) {
  EXPECT_FALSE(standingFault(kSite, 0.035));
  EXPECT_EQ(standingFault(kSite, 1.635),
            "the line runs 200 below the ground where the instrument stands");
  EXPECT_EQ(standingFault(kSite, 1.000),
            "the line is only 435 above the ground; a tripod stands at least 900 high");
  EXPECT_EQ(standingFault(kSite, -1.000),
            "the line is 2435 above the ground; a tripod reaches 1700");
}

TEST(StaffText, HasThreePlacesAndNoDust) {
  EXPECT_EQ(staffText(1.435), "1.435");
  EXPECT_EQ(staffText(0.1 + 0.2), "0.300");
  EXPECT_EQ(staffText(1.4352), "1.4352");
  EXPECT_EQ(staffText(-0.665), "-0.665");
  EXPECT_EQ(staffText(-1e-12), "0.000");
}

TEST(CutFill, SaysCutWhereItIsTooHighAndFillWhereItIsTooLow) {
  EXPECT_EQ(cutFillText(cutFill(-0.950, -0.975)), "cut 25");
  EXPECT_EQ(cutFillText(cutFill(-0.990, -0.975)), "fill 15");
  EXPECT_EQ(cutFillText(cutFill(-0.975, -0.975)), "on");
}

TEST(CutFill, ASmallerReadingThanWantedIsACut) {
  // Pin 2.385 where 2.410 is wanted: 25 high, knock it down.
  EXPECT_EQ(cutFillText(cutFillByStaff(2.385, 2.410)), "cut 25");
  EXPECT_EQ(cutFillText(cutFillByStaff(2.425, 2.410)), "fill 15");
  EXPECT_EQ(cutFillText(cutFillByStaff(2.410, 2.410)), "on");
}

TEST(CutFill, OnIsWithinTwoUnlessAskedOtherwise) {
  EXPECT_EQ(cutFillText(cutFill(0.002, 0)), "on");
  EXPECT_EQ(cutFillText(cutFill(-0.002, 0)), "on");
  EXPECT_EQ(cutFillText(cutFill(0.003, 0)), "cut 3");
  EXPECT_EQ(cutFillText(cutFill(-0.003, 0)), "fill 3");
  EXPECT_EQ(cutFillText(cutFill(0.003, 0, 0.005)), "on");
  EXPECT_EQ(cutFillText(cutFill(0.001, 0, 0)), "cut 1");
  EXPECT_EQ(cutFillText(cutFill(0.0001, 0, 0)), "on") << "never cut 0";
}

// Whole millimetres, so that nothing lies on the edge of "on" by the last bits only.
rc::Gen<double> level() {
  return rc::gen::map(rc::gen::inRange(-6000, 9000), [](int mm) { return mm / 1000.0; });
}

RC_GTEST_PROP(Instrument, ALevelComesBackFromItsReading, ()) {
  const Instrument instrument = setUpInstrument(*level(), *level());
  const double at = *level();
  RC_ASSERT(std::abs(levelRead(instrument, readStaff(instrument, at).reading) - at) < kExact);
}

RC_GTEST_PROP(CutFill, ByStaffAndByLevelAgreeWhereverTheInstrumentStands, ()) {
  const Instrument instrument = setUpInstrument(*level(), *level());
  const double found = *level(), wanted = *level();
  const CutFill byLevel = cutFill(found, wanted);
  const CutFill byStaff =
      cutFillByStaff(readStaff(instrument, found).reading, readStaff(instrument, wanted).reading);
  RC_ASSERT(byLevel.word == byStaff.word);
  RC_ASSERT(std::abs(byLevel.amount - byStaff.amount) < kExact);
  const double signedAmount = byLevel.word == CutFillWord::Cut ? byLevel.amount : -byLevel.amount;
  if (byLevel.word != CutFillWord::On) RC_ASSERT(std::abs(found - signedAmount - wanted) < kExact);
}

}  // namespace
