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
