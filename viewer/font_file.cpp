#include "viewer/font_file.h"

#include <array>
#include <cstdint>
#include <fstream>
#include <string_view>

namespace viewer {
namespace {

class FontFile {
 public:
  explicit FontFile(const std::string& path) : in_(path, std::ios::binary) {
    // A collection begins with the places of its members; the first is the one that is used.
    if (tagAt(0) == "ttcf") start_ = u32(12);
  }
  // Where a table begins; 0 when there is none.
  std::uint32_t table(std::string_view tag) {
    const unsigned tables = u16(start_ + 4);
    for (unsigned i = 0; i < tables; ++i)
      if (tagAt(start_ + 12 + i * 16) == tag) return u32(start_ + 12 + i * 16 + 8);
    return 0;
  }
  unsigned u16(std::uint32_t at) {
    const auto b = bytes(at);
    return unsigned(b[0]) << 8 | b[1];
  }
  int i16(std::uint32_t at) { return static_cast<std::int16_t>(u16(at)); }

 private:
  std::array<unsigned char, 4> bytes(std::uint32_t at) {
    std::array<char, 4> read{};
    in_.clear();
    in_.seekg(at);
    in_.read(read.data(), read.size());
    std::array<unsigned char, 4> found{};
    for (size_t i = 0; i < read.size(); ++i) found[i] = static_cast<unsigned char>(read[i]);
    return found;
  }
  std::uint32_t u32(std::uint32_t at) { return u16(at) << 16 | u16(at + 2); }
  std::string tagAt(std::uint32_t at) {
    const auto b = bytes(at);
    return {b.begin(), b.end()};
  }

  std::ifstream in_;
  std::uint32_t start_ = 0;
};

}  // namespace

double lineInEms(const std::string& path) {
  FontFile file(path);
  const std::uint32_t head = file.table("head"), hhea = file.table("hhea");
  if (head == 0 || hhea == 0) return 1;
  const unsigned em = file.u16(head + 18);
  const int line = file.i16(hhea + 4) - file.i16(hhea + 6);
  return em > 0 && line > 0 ? double(line) / em : 1;
}

}  // namespace viewer
