#include <cmath>

#include "model/settingout/derive.h"

namespace model {

namespace {
constexpr double kOnCourse = 1e-6;  // metres
}

double courseNear(double level, double datum, double course) {
  return datum + course * std::round((level - datum) / course);
}

double courseAtOrUnder(double level, double datum, double course) {
  return datum + course * std::floor((level - datum + kOnCourse) / course);
}

double courseAtOrOver(double level, double datum, double course) {
  return datum + course * std::ceil((level - datum - kOnCourse) / course);
}

}  // namespace model
