#include "model/job/lengths.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace {

using model::readDegrees;
using model::readLength;
using model::readPitch;

double metres(const char* text) {
  const model::ReadValue read = readLength(text);
  EXPECT_TRUE(read.value.has_value()) << text << ": " << read.fault;
  return read.value.value_or(NAN);
}

std::string fault(const char* text) {
  const model::ReadValue read = readLength(text);
  EXPECT_FALSE(read.value.has_value()) << text;
  return read.fault;
}

TEST(Lengths, MetricUnitsGiveTheSameAsTheirNumberInMillimetres) {
  EXPECT_EQ(metres("1.2 m"), 1.2);
  EXPECT_EQ(metres("1200 mm"), 1.2);
  EXPECT_EQ(metres("120 cm"), 1.2);
  EXPECT_EQ(metres("102.5mm"), 0.1025);
  EXPECT_EQ(metres(" 3 metres "), 3.0);
}

// The yard is 0.9144 m exactly (international yard and pound agreement of 1959), so that the foot
// is 0.3048 m and the inch 25.4 mm.
TEST(Lengths, FeetAndInchesFollowTheInternationalYard) {
  EXPECT_DOUBLE_EQ(metres("3 ft"), 0.9144);
  EXPECT_DOUBLE_EQ(metres("1 in"), 0.0254);
  EXPECT_DOUBLE_EQ(metres("3 ft 6 in"), 42 * 0.0254);
  EXPECT_DOUBLE_EQ(metres("3'6\""), 42 * 0.0254);
  EXPECT_DOUBLE_EQ(metres("3'-6\""), 42 * 0.0254);
  EXPECT_DOUBLE_EQ(metres("8'-3 1/2\""), 99.5 * 0.0254);
  EXPECT_DOUBLE_EQ(metres("8' 3-1/2\""), 99.5 * 0.0254);
  EXPECT_DOUBLE_EQ(metres("8\xE2\x80\xB2 3\xE2\x80\xB3"), 99 * 0.0254);
  EXPECT_DOUBLE_EQ(metres("4 1/2 in"), 4.5 * 0.0254);
  EXPECT_DOUBLE_EQ(metres("1/2 inch"), 0.5 * 0.0254);
  EXPECT_DOUBLE_EQ(metres("2 feet"), 24 * 0.0254);
}

TEST(Lengths, ASignHoldsForTheWholeValue) {
  EXPECT_EQ(metres("-0.975 m"), -0.975);
  EXPECT_DOUBLE_EQ(metres("-3'6\""), -42 * 0.0254);
  EXPECT_DOUBLE_EQ(metres("\xE2\x88\x92"
                          "150 mm"),
                   -0.15);
  EXPECT_EQ(metres("+150 mm"), 0.15);
}

TEST(Lengths, NothingNeedsNoUnit) {
  for (const char* text : {"0", "0.000", "-0", " 0 ", "+0.0"}) {
    const auto read = model::readLength(text);
    ASSERT_TRUE(read.value.has_value()) << text << ": " << read.fault;
    EXPECT_EQ(*read.value, 0) << text;
    EXPECT_FALSE(std::signbit(*read.value)) << text;
  }
}

TEST(Lengths, WhatIsNoLengthIsRefusedWithAReason) {
  EXPECT_EQ(fault(""), "it is empty");
  EXPECT_EQ(fault("1200"), "the unit is missing");
  EXPECT_EQ(fault("wide"), "it does not begin with a number");
  EXPECT_EQ(fault("1,2 m"), "it has a comma; decimals take a point");
  EXPECT_EQ(fault("4 furlongs"), "'furlongs' is no unit of length");
  EXPECT_EQ(fault("5 min"), "'min' is no unit of length");
  EXPECT_EQ(fault("3'14\""), "there are 12 or more inches after the feet");
  EXPECT_EQ(fault("3'6"), "the inches have no unit after them");
  EXPECT_EQ(fault("3' wide"), "what follows the feet is no number of inches");
  EXPECT_EQ(fault("1 m 20"), "there is something after the unit");
  EXPECT_EQ(fault("3'6\" or so"), "there is something after the inches");
  EXPECT_EQ(fault("1/0 in"), "it does not begin with a number");
  EXPECT_EQ(fault("1e3 mm"), "'e3 mm' is no unit of length");
  EXPECT_EQ(fault("nan m"), "it does not begin with a number");
  EXPECT_EQ(fault("inf m"), "it does not begin with a number");
  EXPECT_EQ(fault(std::string(100, '1').c_str()), "it is too long for a length");
}

TEST(Lengths, DegreesNeedTheirUnitInQuotes) {
  EXPECT_EQ(readDegrees("40 deg").value, 40.0);
  EXPECT_EQ(readDegrees("-12.5 degrees").value, -12.5);
  EXPECT_EQ(readDegrees("40\xC2\xB0").value, 40.0);
  EXPECT_FALSE(readDegrees("40").value);
  EXPECT_FALSE(readDegrees("40 m").value);
  EXPECT_FALSE(readDegrees("8 in 12").value);
}

// NAVEDTRA 14044, Builder 3&2 Vol. 2, ch. 2: 12 in 12 is half pitch, 45 degrees; 8 in 12 has a
// slope line of 14.42 in 12 in of run.
TEST(Lengths, PitchIsAlsoRiseInRun) {
  EXPECT_NEAR(*readPitch("12 in 12").value, 45, 1e-12);
  const double eight = *readPitch("8 in 12").value * 3.14159265358979323846 / 180;
  EXPECT_NEAR(12 / std::cos(eight), 14.42, 0.005);
  EXPECT_NEAR(*readPitch("150 in 250").value, *readPitch("3 in 5").value, 1e-12);
  EXPECT_EQ(readPitch("40 deg").value, 40.0);
  EXPECT_FALSE(readPitch("8 in 0").value);
  EXPECT_FALSE(readPitch("8 in").value);
  EXPECT_FALSE(readPitch("8 to 12").value);
}

TEST(Lengths, WrittenTextIsTheOneAPersonWouldWrite) {
  EXPECT_EQ(model::lengthValueText(0.1025), "102.5");
  EXPECT_EQ(model::lengthValueText(6.74), "6740");
  EXPECT_EQ(model::lengthValueText(0), "0");
  EXPECT_EQ(model::lengthValueText(-4.5), "-4500");
  EXPECT_EQ(model::levelValueText(-0.975), "-0.975");
  EXPECT_EQ(model::levelValueText(0), "0.000");
  EXPECT_EQ(model::levelValueText(2.7), "2.700");
  EXPECT_EQ(model::levelValueText(-0.0), "0.000");
  EXPECT_EQ(model::numberValueText(40), "40");
  EXPECT_EQ(model::numberValueText(1.3), "1.3");
  EXPECT_EQ(model::numberValueText(1e-7), "0.0000001");
}

// Reads the text the way the reader does: quoted with a unit, or bare millimetres.
double readBack(const std::string& text) {
  if (text.front() == '"') return *readLength(text.substr(1, text.size() - 2)).value;
  return model::fromMillimetres(std::stod(text));
}

RC_GTEST_PROP(Lengths, EveryDoubleReadsBackExactly, (int numerator, int power)) {
  const double value = std::ldexp(numerator, -std::abs(power % 40));
  RC_PRE(std::abs(value) < 1e6);
  RC_ASSERT(readBack(model::lengthValueText(value)) == value);
  RC_ASSERT(std::stod(model::levelValueText(value)) == value);
  RC_ASSERT(std::stod(model::numberValueText(value)) == value);
}

RC_GTEST_PROP(Lengths, NoTextCrashesTheReader, (const std::string& text)) {
  const model::ReadValue length = readLength(text), pitch = readPitch(text);
  RC_ASSERT(length.value.has_value() == length.fault.empty());
  RC_ASSERT(pitch.value.has_value() == pitch.fault.empty());
}

}  // namespace
