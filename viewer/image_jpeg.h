// Pictures small enough to put thirty of them into a booklet.
#pragma once

#include "model/drawing/sheet.h"
#include "viewer/gl/offscreen.h"

namespace viewer {

// The bytes of a JPEG file, through libjpeg; `quality` 1 to 100. Throws std::runtime_error when it
// cannot be made.
model::Jpeg jpegOf(const Image& image, int quality = 75);

}  // namespace viewer
