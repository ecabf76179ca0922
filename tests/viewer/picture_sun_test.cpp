#include "viewer/sun.h"

#include <gtest/gtest.h>

#include <cmath>

#include <glm/geometric.hpp>

namespace {

using viewer::dayOfYear;
using viewer::sunDirection;
using viewer::sunPosition;

TEST(Sun, StandsDueSouthAtNoonAtNinetyLessLatitudePlusDeclination) {
  for (const double latitude : {30.0, 45.0, 52.4, 60.0}) {
    const auto equinox = sunPosition(latitude, 81, 12);
    EXPECT_NEAR(equinox.azimuth, 180, 1e-6);
    EXPECT_NEAR(equinox.altitude, 90 - latitude, 0.5);
    EXPECT_NEAR(sunPosition(latitude, 172, 12).altitude, 90 - latitude + 23.45, 0.1);
    EXPECT_NEAR(sunPosition(latitude, 355, 12).altitude, 90 - latitude - 23.45, 0.1);
  }
}

// Worked example, Brian Williams's collection "Solar Energy", page "Example aiw",
// https://www.briangwilliams.us/solar-energy/example-aiw.html: 40 degrees north, 15 June, 2 h after
// local solar noon; altitude 59.75 degrees, sine of the azimuth 0.911 (here from north, in the
// afternoon: 180 + 65.6).
TEST(Sun, AgreesWithAPublishedExampleForJune) {
  const auto sun = sunPosition(40, dayOfYear("2027-06-15"), 14);
  EXPECT_NEAR(sun.altitude, 59.75, 0.1);
  EXPECT_NEAR(sun.azimuth, 180 + std::asin(0.911) * 180 / std::acos(-1.0), 0.2);
}

// University of Illinois, ECE 333 Homework 6 solutions, spring 2010, problem 1 a and b,
// https://www.coursehero.com/file/6165056/HW6-solutions/: azimuths there from south, east positive.
TEST(Sun, AgreesWithPublishedAnswersForMarchAndJuly) {
  const auto march = sunPosition(30, dayOfYear("2027-03-01"), 10);
  EXPECT_NEAR(march.altitude, 42.1, 0.1);
  EXPECT_NEAR(march.azimuth, 180 - 41.8, 0.3);
  const auto july = sunPosition(38, dayOfYear("2027-07-01"), 17);
  EXPECT_NEAR(july.altitude, 25.4, 0.1);
  // Measured from south to the west, which the source prints as 79.6 after an arcsine: the sun is
  // past due west, as the same source's test cos H >= tan(declination) / tan(latitude) says.
  EXPECT_NEAR(july.azimuth, 180 + (180 - 79.6), 0.3);
}

TEST(Sun, RisesDueEastAndSetsDueWestAtTheEquinox) {
  EXPECT_NEAR(sunPosition(52, 81, 6).azimuth, 90, 0.5);
  EXPECT_NEAR(sunPosition(52, 81, 6).altitude, 0, 0.5);
  EXPECT_NEAR(sunPosition(52, 81, 18).azimuth, 270, 0.5);
}

TEST(Sun, MorningMirrorsAfternoon) {
  for (double h = 0.5; h < 6; h += 0.5) {
    const auto before = sunPosition(52, 200, 12 - h), after = sunPosition(52, 200, 12 + h);
    EXPECT_NEAR(before.altitude, after.altitude, 1e-9);
    EXPECT_NEAR(before.azimuth, 360 - after.azimuth, 1e-6);
  }
}

TEST(Sun, StandsInTheNorthAtNoonOnTheSouthernHalf) {
  const double azimuth = sunPosition(-35, 1, 12).azimuth;
  EXPECT_NEAR(std::abs(std::remainder(azimuth, 360)), 0, 1e-6);
}

TEST(Sun, DirectionIsAUnitVectorThatIsNeverLow) {
  for (int hour = 0; hour < 24; ++hour) {
    const auto d = sunDirection(52, 355, hour);
    EXPECT_NEAR(glm::length(d), 1, 1e-5);
    EXPECT_GE(d.z, 0.2);
  }
}

TEST(Sun, TurnsWithTheDrawingsNorth) {
  const auto straight = sunDirection(52, 81, 12);
  EXPECT_NEAR(straight.x, 0, 1e-6);
  EXPECT_LT(straight.y, 0);
  // True north at the drawing's right: the noon sun, due south, comes from its left.
  const auto turned = sunDirection(52, 81, 12, 90);
  EXPECT_NEAR(turned.y, 0, 1e-6);
  EXPECT_LT(turned.x, 0);
}

TEST(Sun, CountsDaysOfTheYear) {
  EXPECT_EQ(dayOfYear("2027-01-01"), 1);
  EXPECT_EQ(dayOfYear("2027-12-31"), 365);
  EXPECT_EQ(dayOfYear("2028-12-31"), 366);
  EXPECT_EQ(dayOfYear("2027-04-12"), 102);
  EXPECT_EQ(dayOfYear(""), 80);
}

}  // namespace
