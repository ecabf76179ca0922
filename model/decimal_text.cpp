#include "model/decimal_text.h"

#include <cstdio>

namespace model {

std::string decimalText(double value, int places) {
  char text[64];
  std::snprintf(text, sizeof text, "%.*f", places, value);
  const std::string written = text;
  const bool zero = written.find_first_of("123456789") == std::string::npos;
  return zero && written[0] == '-' ? written.substr(1) : written;
}

}  // namespace model
