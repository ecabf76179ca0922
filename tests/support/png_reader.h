// Reads PNG files with a reader that shares nothing with the program's writer.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace test_support {

struct Picture {
  int width = 0, height = 0;
  std::vector<std::uint8_t> rgba;  // rows from the top; empty when the file is no whole PNG

  // 0xRRGGBB.
  std::uint32_t at(int x, int y) const {
    const std::uint8_t* p =
        &rgba[(static_cast<size_t>(y) * static_cast<size_t>(width) + static_cast<size_t>(x)) * 4];
    return static_cast<std::uint32_t>(p[0] << 16 | p[1] << 8 | p[2]);
  }
};

Picture readPng(const std::string& path);

// Where two pictures of one size differ: how many pixels, and the box round them.
struct Difference {
  int pixels = 0;
  int left = 1 << 30, top = 1 << 30, right = -1, bottom = -1;
};
Difference difference(const Picture& a, const Picture& b);

}  // namespace test_support
