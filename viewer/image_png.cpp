#include <png.h>

#include <csetjmp>
#include <stdexcept>

#include "viewer/picture.h"

namespace viewer {

namespace {

void append(png_structp png, png_bytep data, png_size_t size) {
  static_cast<std::string*>(png_get_io_ptr(png))->append(reinterpret_cast<char*>(data), size);
}

void flush(png_structp) {}

// libpng leaves by longjmp; an exception keeps our destructors.
[[noreturn]] void fail(png_structp, png_const_charp what) { throw std::runtime_error(what); }

}  // namespace

std::string pngBytes(const Image& image) {
  std::string bytes;
  png_structp png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, fail, nullptr);
  png_infop info = png_create_info_struct(png);
  png_set_write_fn(png, &bytes, append, flush);
  png_set_IHDR(png, info, static_cast<png_uint_32>(image.width),
               static_cast<png_uint_32>(image.height), 8, PNG_COLOR_TYPE_RGBA, PNG_INTERLACE_NONE,
               PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  png_set_sRGB(png, info, PNG_sRGB_INTENT_RELATIVE);
  png_set_compression_level(png, 6);
  png_write_info(png, info);
  const size_t row = static_cast<size_t>(image.width) * 4;
  for (size_t y = 0; y < static_cast<size_t>(image.height); ++y)
    png_write_row(png, &image.rgba[y * row]);
  png_write_end(png, nullptr);
  png_destroy_write_struct(&png, &info);
  return bytes;
}

}  // namespace viewer
