#include "model/levelling/staff_text.h"

#include <cmath>

#include "model/job/lengths.h"

namespace model {

std::string staffText(double reading) {
  if (!std::isfinite(reading)) return "-";
  // Readings that were worked out end in the dust of doubles; no staff is read to the micrometre.
  return levelValueText(std::round(reading * 1e6) / 1e6);
}

}  // namespace model
