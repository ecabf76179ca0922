#include "model/exchange/utf8.h"

#include <cstdint>

namespace model {

namespace {

// Bytes that follow a lead byte, and the least value that needs that many; -1 for no lead byte.
struct Lead {
  int following;
  std::uint32_t bits, least;
};

Lead leadOf(unsigned char c) {
  if (c < 0x80) return {0, c, 0};
  if ((c & 0xe0) == 0xc0) return {1, c & 0x1fu, 0x80};
  if ((c & 0xf0) == 0xe0) return {2, c & 0x0fu, 0x800};
  if ((c & 0xf8) == 0xf0) return {3, c & 0x07u, 0x10000};
  return {-1, 0, 0};
}

}  // namespace

bool isUtf8(std::string_view text) {
  for (size_t i = 0; i < text.size(); ++i) {
    const Lead lead = leadOf(static_cast<unsigned char>(text[i]));
    if (lead.following < 0 || i + size_t(lead.following) >= text.size()) return false;
    std::uint32_t value = lead.bits;
    for (int k = 0; k < lead.following; ++k) {
      const auto c = static_cast<unsigned char>(text[++i]);
      if ((c & 0xc0) != 0x80) return false;
      value = value << 6 | (c & 0x3fu);
    }
    const bool surrogate = value >= 0xd800 && value <= 0xdfff;
    if (value < lead.least || surrogate || value > 0x10ffff) return false;
  }
  return true;
}

}  // namespace model
