#include "model/exchange/dxf_text.h"

#include <cstdio>

namespace model {

namespace {

// The character that starts at `at`, which is moved past it; U+FFFD for what is not UTF-8.
char32_t take(std::string_view text, size_t& at) {
  const auto lead = static_cast<unsigned char>(text[at++]);
  if (lead < 0x80) return lead;
  const int following = lead >= 0xf0 ? 3 : lead >= 0xe0 ? 2 : lead >= 0xc0 ? 1 : 0;
  if (following == 0) return 0xfffd;
  char32_t c = lead & (0x3fu >> following);
  for (int i = 0; i < following; ++i) {
    if (at >= text.size() || (static_cast<unsigned char>(text[at]) & 0xc0) != 0x80) return 0xfffd;
    c = c << 6 | (static_cast<unsigned char>(text[at++]) & 0x3fu);
  }
  return c;
}

}  // namespace

std::string dxfText(std::string_view text) {
  std::string result;
  for (size_t at = 0; at < text.size();) {
    const char32_t c = take(text, at);
    if (c < 0x20 || c == 0x7f) {
      result += ' ';
    } else if (c == '%' && !result.empty() && result.back() == '%') {
      // Two in a row begin a code, and readers do not agree on how to write them otherwise.
      result += " %";
    } else if (c == '^') {
      result += "^ ";
    } else if (c < 0x7f) {
      result += char(c);
    } else {
      char code[16];
      std::snprintf(code, sizeof code, "\\U+%04X", unsigned(c > 0xffff ? 0xfffd : c));
      result += code;
    }
  }
  return result;
}

}  // namespace model
