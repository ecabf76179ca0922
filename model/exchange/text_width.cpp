#include "model/exchange/text_width.h"

#include <algorithm>
#include <iterator>

namespace model {
namespace {

struct Range {
  char32_t first, last;
};

// The blocks that matter for names of jobs and places (Unicode Standard Annex 11 and category Mn).
constexpr Range kCombining[] = {
    {0x0300, 0x036f}, {0x0483, 0x0489}, {0x0591, 0x05bd}, {0x064b, 0x065f}, {0x0900, 0x0902},
    {0x093c, 0x093c}, {0x0941, 0x0948}, {0x094d, 0x094d}, {0x0e31, 0x0e31}, {0x0e34, 0x0e3a},
    {0x0e47, 0x0e4e}, {0x1ab0, 0x1aff}, {0x1dc0, 0x1dff}, {0x200b, 0x200f}, {0x20d0, 0x20ff},
    {0x3099, 0x309a}, {0xfe00, 0xfe0f}, {0xfe20, 0xfe2f}};
constexpr Range kWide[] = {
    {0x1100, 0x115f}, {0x2e80, 0x303e},   {0x3041, 0x33ff},  {0x3400, 0x4dbf}, {0x4e00, 0x9fff},
    {0xa000, 0xa4cf}, {0xac00, 0xd7a3},   {0xf900, 0xfaff},  {0xfe30, 0xfe6f}, {0xff00, 0xff60},
    {0xffe0, 0xffe6}, {0x1f300, 0x1faff}, {0x20000, 0x3fffd}};

template <size_t N>
bool within(const Range (&ranges)[N], char32_t c) {
  return std::any_of(std::begin(ranges), std::end(ranges),
                     [&](const Range& r) { return c >= r.first && c <= r.last; });
}

// The character that starts at `at`, which is moved past it.
char32_t nextCharacter(std::string_view text, size_t& at) {
  const auto byte = [&](size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = byte(at);
  const size_t length = lead < 0x80 ? 1 : lead >= 0xf0 ? 4 : lead >= 0xe0 ? 3 : 2;
  char32_t c = lead & (length == 1 ? 0x7f : 0xff >> (length + 1));
  if (lead >= 0x80 && lead < 0xc0) return ++at, 0xfffd;
  for (size_t i = 1; i < length; ++i) {
    if (at + i >= text.size() || (byte(at + i) & 0xc0) != 0x80) return ++at, 0xfffd;
    c = (c << 6) | (byte(at + i) & 0x3f);
  }
  at += length;
  return c;
}

}  // namespace

size_t seenWidth(std::string_view text) {
  size_t width = 0;
  for (size_t at = 0; at < text.size();) {
    const char32_t c = nextCharacter(text, at);
    width += within(kCombining, c) ? 0 : within(kWide, c) ? 2 : 1;
  }
  return width;
}

}  // namespace model
