#include "viewer/image_jpeg.h"

#include <gtest/gtest.h>

#include <cstdio>
// Must come after cstdio.
#include <jpeglib.h>

#include <cstdlib>

#include "model/exchange/drawing_pdf.h"

namespace viewer {
namespace {

// Bands of colours, as far apart as colours are.
Image bands() {
  Image image;
  image.width = 64;
  image.height = 48;
  for (int y = 0; y < image.height; ++y)
    for (int x = 0; x < image.width; ++x) {
      const int band = x / 16;
      image.rgba.push_back(band == 1 || band == 3 ? 255 : 0);
      image.rgba.push_back(band == 2 || band == 3 ? 255 : 0);
      image.rgba.push_back(y < 24 ? 255 : 0);
      image.rgba.push_back(255);
    }
  return image;
}

// Rows from the top, three bytes a pixel.
std::vector<std::uint8_t> decoded(const model::Jpeg& jpeg) {
  jpeg_error_mgr errors;
  jpeg_decompress_struct library;
  library.err = jpeg_std_error(&errors);
  jpeg_create_decompress(&library);
  jpeg_mem_src(&library, reinterpret_cast<const unsigned char*>(jpeg.bytes.data()),
               jpeg.bytes.size());
  jpeg_read_header(&library, TRUE);
  jpeg_start_decompress(&library);
  EXPECT_EQ(int(library.output_width), jpeg.width);
  EXPECT_EQ(int(library.output_height), jpeg.height);
  std::vector<std::uint8_t> pixels(size_t(jpeg.width) * size_t(jpeg.height) * 3);
  while (library.output_scanline < library.output_height) {
    JSAMPROW row = &pixels[size_t(library.output_scanline) * size_t(jpeg.width) * 3];
    jpeg_read_scanlines(&library, &row, 1);
  }
  jpeg_finish_decompress(&library);
  jpeg_destroy_decompress(&library);
  return pixels;
}

TEST(ImageJpeg, LooksLikeTheImageTheRightWayUp) {
  const Image image = bands();
  const auto pixels = decoded(jpegOf(image, 90));
  for (int band = 0; band < 4; ++band)
    for (const int y : {8, 40}) {
      const auto at = size_t(y * image.width + band * 16 + 8);  // off the bands' edges
      for (size_t channel = 0; channel < 3; ++channel)
        EXPECT_NEAR(pixels[at * 3 + channel], image.rgba[at * 4 + channel], 12)
            << band << " " << y << " " << channel;
    }
}

TEST(ImageJpeg, GrowsWithQuality) {
  EXPECT_LT(jpegOf(bands(), 20).bytes.size(), jpegOf(bands(), 95).bytes.size());
}

TEST(ImageJpeg, IsPutIntoAPdfAsItIs) {
  model::Drawing drawing;
  drawing.sheets.resize(2);
  const model::Jpeg jpeg = jpegOf(bands());
  for (model::Sheet& sheet : drawing.sheets)
    sheet.pictures.push_back({model::Layer::Text, jpeg, {{20, 20}, {84, 68}}});
  const std::string pdf = model::pdfBytes(drawing);
  EXPECT_NE(pdf.find(jpeg.bytes), std::string::npos);
  EXPECT_EQ(pdf, model::pdfBytes(drawing));
}

}  // namespace
}  // namespace viewer
