#include "viewer/reading_order.h"

#include <fribidi.h>

#include <algorithm>
#include <vector>

#include "viewer/utf8.h"

namespace viewer {
namespace {

// Hebrew, Arabic, Syriac, Thaana, N'Ko and the presentation forms.
bool readsFromTheRight(char32_t c) {
  return (c >= 0x0590 && c <= 0x08ff) || (c >= 0xfb1d && c <= 0xfdff) ||
         (c >= 0xfe70 && c <= 0xfefc);
}

// Marks that steer the layout and have no shape of their own.
bool isUnseen(char32_t c) {
  return (c >= 0x200b && c <= 0x200f) || (c >= 0x202a && c <= 0x202e) ||
         (c >= 0x2060 && c <= 0x2069) || c == 0xfeff || (c >= 0xfe00 && c <= 0xfe0f);
}

}  // namespace

bool seenAsWritten(const std::string& text) {
  // Most texts have no such byte, and are asked about many times a frame.
  const auto suspect = [](char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (byte >= 0xd6 && byte <= 0xdf) || byte == 0xe0 || byte == 0xe2 || byte == 0xef;
  };
  if (std::none_of(text.begin(), text.end(), suspect)) return true;
  const std::u32string characters = codePoints(text);
  return std::none_of(characters.begin(), characters.end(),
                      [](char32_t c) { return readsFromTheRight(c) || isUnseen(c); });
}

std::string asSeen(const std::string& line) {
  if (seenAsWritten(line)) return line;
  const std::u32string written = codePoints(line);
  std::vector<FriBidiChar> from(written.begin(), written.end()), to(written.size() + 1, 0);
  FriBidiParType side = FRIBIDI_PAR_ON;  // by the first letter that has a side
  std::u32string seen = written;
  if (fribidi_log2vis(from.data(), static_cast<FriBidiStrIndex>(from.size()), &side, to.data(),
                      nullptr, nullptr, nullptr) != 0)
    seen.assign(to.begin(), to.begin() + static_cast<std::ptrdiff_t>(written.size()));
  std::erase_if(seen, isUnseen);
  return utf8(seen);
}

}  // namespace viewer
