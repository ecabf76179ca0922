#include "model/level_text.h"

#include <cmath>
#include <cstdio>

namespace model {
namespace {

// Half-millimetres are common (half a brick is 102.5) and always go up, whatever the last binary
// digits say: so to the micrometre first.
double wholeMillimetres(double metres) { return std::round(std::round(metres * 1e6) / 1e3); }

}  // namespace

std::string levelText(double metres) {
  if (!std::isfinite(metres)) return "-";
  // Rounded first: what would print as -0.000 has no sign.
  const double millimetres = wholeMillimetres(metres);
  if (millimetres == 0) return "0.000";
  char text[64];
  std::snprintf(text, sizeof text, "%+.3f", millimetres / 1000);
  return text;
}

std::string lengthText(double metres) {
  if (!std::isfinite(metres)) return "-";
  const double millimetres = wholeMillimetres(metres);
  char text[64];
  std::snprintf(text, sizeof text, "%.0f", millimetres == 0 ? 0.0 : millimetres);
  return text;
}

}  // namespace model
