#include "viewer/sun.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numbers>

namespace viewer {

namespace {

constexpr double kDegree = std::numbers::pi / 180;
constexpr double kLowest = 12 * kDegree;

}  // namespace

SunPosition sunPosition(double latitude, int dayOfYear, double solarHour) {
  // Cooper's equation for the declination: P. I. Cooper, "The absorption of radiation in solar
  // stills", Solar Energy 12 (1969).
  const double declination =
      23.45 * kDegree * std::sin(2 * std::numbers::pi * (284 + dayOfYear) / 365);
  const double phi = latitude * kDegree;
  const double hour = (solarHour - 12) * 15 * kDegree;
  const double east = -std::cos(declination) * std::sin(hour);
  const double north = std::cos(phi) * std::sin(declination) -
                       std::sin(phi) * std::cos(declination) * std::cos(hour);
  const double up = std::sin(phi) * std::sin(declination) +
                    std::cos(phi) * std::cos(declination) * std::cos(hour);
  double azimuth = std::atan2(east, north) / kDegree;
  if (azimuth < 0) azimuth += 360;
  return {azimuth, std::asin(std::clamp(up, -1.0, 1.0)) / kDegree};
}

glm::vec3 sunDirection(double latitude, int dayOfYear, double solarHour, double northBearing) {
  const SunPosition sun = sunPosition(latitude, dayOfYear, solarHour);
  const double altitude = std::max(sun.altitude * kDegree, kLowest);
  const double bearing = (sun.azimuth + northBearing) * kDegree;  // from the drawing's +y
  return {std::cos(altitude) * std::sin(bearing), std::cos(altitude) * std::cos(bearing),
          std::sin(altitude)};
}

int dayOfYear(const char* isoDate) {
  static constexpr int kBefore[12] = {0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
  int year = 0, month = 0, day = 0;
  if (std::sscanf(isoDate, "%d-%d-%d", &year, &month, &day) != 3 || month < 1 || month > 12 ||
      day < 1 || day > 31)
    return 80;
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return kBefore[month - 1] + day + (leap && month > 2 ? 1 : 0);
}

}  // namespace viewer
