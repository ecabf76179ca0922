// Where the sun stands.
#pragma once

#include <glm/vec3.hpp>

namespace viewer {

// Degrees; azimuth clockwise from true north, altitude above the horizon.
struct SunPosition {
  double azimuth = 180, altitude = 45;
};

// By local solar time (12 = the sun due south or north), day of the year from 1, latitude in
// degrees, north positive. To about half a degree, which is ample for shadows on a drawing.
SunPosition sunPosition(double latitude, int dayOfYear, double solarHour);

// Towards the sun in the drawing's axes. `northBearing` is degrees clockwise from the drawing's +y
// to true north. Never lower than 12 degrees, so that a drawing always has light.
glm::vec3 sunDirection(double latitude, int dayOfYear, double solarHour, double northBearing = 0);

// "2027-04-12" to 102; the spring equinox's day when the text is no date.
int dayOfYear(const char* isoDate);

}  // namespace viewer
