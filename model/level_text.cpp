#include "model/level_text.h"

#include <cmath>
#include <cstdio>

namespace model {

std::string levelText(double metres) {
  if (!std::isfinite(metres)) return "-";
  // Rounded first: what would print as -0.000 has no sign.
  const double millimetres = std::round(metres * 1000);
  if (millimetres == 0) return "0.000";
  char text[64];
  std::snprintf(text, sizeof text, "%+.3f", millimetres / 1000);
  return text;
}

std::string lengthText(double metres) {
  if (!std::isfinite(metres)) return "-";
  const double millimetres = std::round(metres * 1000);
  char text[64];
  std::snprintf(text, sizeof text, "%.0f", millimetres == 0 ? 0.0 : millimetres);
  return text;
}

}  // namespace model
