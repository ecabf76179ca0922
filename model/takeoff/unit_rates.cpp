#include "model/takeoff/unit_rates.h"

namespace model {

double unitsPerSquareMetre(double length, double height, double joint) {
  const double face = (length + joint) * (height + joint);
  return length > 0 && height > 0 && joint >= 0 ? 1 / face : 0;
}

}  // namespace model
