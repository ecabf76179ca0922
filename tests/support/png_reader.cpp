#include "tests/support/png_reader.h"

#include <algorithm>

#define STB_IMAGE_IMPLEMENTATION
#define STB_IMAGE_STATIC
#define STBI_ONLY_PNG
#include <stb/stb_image.h>

namespace test_support {

Picture readPng(const std::string& path) {
  Picture picture;
  int channels = 0;
  stbi_uc* pixels = stbi_load(path.c_str(), &picture.width, &picture.height, &channels, 4);
  if (pixels == nullptr) return {};
  const auto bytes = static_cast<size_t>(picture.width) * static_cast<size_t>(picture.height) * 4;
  picture.rgba.assign(pixels, pixels + bytes);
  stbi_image_free(pixels);
  return picture;
}

Difference difference(const Picture& a, const Picture& b) {
  Difference d;
  for (int y = 0; y < a.height; ++y) {
    for (int x = 0; x < a.width; ++x) {
      if (a.at(x, y) == b.at(x, y)) continue;
      ++d.pixels;
      d.left = std::min(d.left, x);
      d.right = std::max(d.right, x);
      d.top = std::min(d.top, y);
      d.bottom = std::max(d.bottom, y);
    }
  }
  return d;
}

}  // namespace test_support
