#include "viewer/image_jpeg.h"

#include <cstdio>
// Must come after cstdio.
#include <jpeglib.h>

#include <cstdlib>
#include <stdexcept>

namespace viewer {
namespace {

// Without this the library ends the program at an error.
[[noreturn]] void fail(j_common_ptr library) {
  char why[JMSG_LENGTH_MAX];
  (*library->err->format_message)(library, why);
  throw std::runtime_error(std::string("the picture cannot be made a JPEG: ") + why);
}

// Frees what the library keeps, whether or not it came to the end.
struct Compressor {
  jpeg_error_mgr errors{};
  jpeg_compress_struct state{};
  unsigned char* bytes = nullptr;
  unsigned long size = 0;

  Compressor() {
    state.err = jpeg_std_error(&errors);
    errors.error_exit = fail;
    jpeg_create_compress(&state);
    jpeg_mem_dest(&state, &bytes, &size);
  }
  ~Compressor() {
    jpeg_destroy_compress(&state);
    std::free(bytes);
  }
  Compressor(const Compressor&) = delete;
  Compressor& operator=(const Compressor&) = delete;
};

}  // namespace

model::Jpeg jpegOf(const Image& image, int quality) {
  Compressor compressor;
  jpeg_compress_struct& state = compressor.state;
  state.image_width = static_cast<JDIMENSION>(image.width);
  state.image_height = static_cast<JDIMENSION>(image.height);
  state.input_components = 3;
  state.in_color_space = JCS_RGB;
  jpeg_set_defaults(&state);
  jpeg_set_quality(&state, quality, TRUE);
  state.optimize_coding = TRUE;
  jpeg_start_compress(&state, TRUE);
  std::vector<JSAMPLE> row(static_cast<size_t>(image.width) * 3);
  while (state.next_scanline < state.image_height) {
    const std::uint8_t* from = &image.rgba[size_t{state.next_scanline} * row.size() / 3 * 4];
    for (size_t x = 0; x < row.size() / 3; ++x)
      for (size_t channel = 0; channel < 3; ++channel) row[3 * x + channel] = from[4 * x + channel];
    JSAMPROW rows[] = {row.data()};
    jpeg_write_scanlines(&state, rows, 1);
  }
  jpeg_finish_compress(&state);
  return {std::string(reinterpret_cast<const char*>(compressor.bytes), compressor.size),
          image.width, image.height};
}

}  // namespace viewer
