#include "viewer/utf8.h"

namespace viewer {
namespace {

constexpr char32_t kUnreadable = 0xfffd;

// How many bytes follow this first one; -1 for a byte that begins nothing.
int followers(unsigned char first) {
  if (first < 0x80) return 0;
  if (first >= 0xc2 && first < 0xe0) return 1;
  if (first >= 0xe0 && first < 0xf0) return 2;
  return first >= 0xf0 && first < 0xf5 ? 3 : -1;
}

}  // namespace

std::u32string codePoints(std::string_view text) {
  std::u32string characters;
  characters.reserve(text.size());
  for (size_t i = 0; i < text.size(); ++i) {
    const auto first = static_cast<unsigned char>(text[i]);
    const int more = followers(first);
    char32_t c = more <= 0 ? first : first & (0x3fu >> more);
    int read = 0;
    for (; read < more && i + static_cast<size_t>(read) + 1 < text.size(); ++read) {
      const auto next = static_cast<unsigned char>(text[i + static_cast<size_t>(read) + 1]);
      if ((next & 0xc0) != 0x80) break;
      c = c << 6 | (next & 0x3fu);
    }
    const bool whole = more >= 0 && read == more;
    characters.push_back(whole ? c : kUnreadable);
    if (whole) i += static_cast<size_t>(more);
  }
  return characters;
}

std::string utf8(std::u32string_view characters) {
  std::string text;
  text.reserve(characters.size());
  const auto put = [&](char32_t byte) { text.push_back(static_cast<char>(byte)); };
  for (const char32_t c : characters) {
    if (c < 0x80) {
      put(c);
    } else if (c < 0x800) {
      put(0xc0 | c >> 6), put(0x80 | (c & 0x3f));
    } else if (c < 0x10000) {
      put(0xe0 | c >> 12), put(0x80 | (c >> 6 & 0x3f)), put(0x80 | (c & 0x3f));
    } else {
      put(0xf0 | c >> 18), put(0x80 | (c >> 12 & 0x3f));
      put(0x80 | (c >> 6 & 0x3f)), put(0x80 | (c & 0x3f));
    }
  }
  return text;
}

}  // namespace viewer
