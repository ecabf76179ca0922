// A picture of one moment from one place, with overlays, as `picture` and the stage pictures make.
#pragma once

#include <string>
#include <vector>

#include "model/model.h"
#include "viewer/frame.h"
#include "viewer/gl/offscreen.h"

namespace viewer {

// What may be laid over the building; each can be switched on its own.
struct Overlays {
  bool levels = false;      // level marks with values
  bool lines = false;       // string lines and profiles
  bool corners = false;     // corner letters
  bool dimensions = false;  // wall lengths, offsets to boundary and existing building
  bool captions = false;    // stage name, what is done, caution, hold point
  bool titleBlock = false;
  bool tape = false;
  bool rod = false;
};

struct PictureOptions {
  int width = 1280, height = 720;
  double time = 0;
  std::string view = "south-west";
  Overlays overlays;
  Frame frame;  // camera and time are set from the two above
};

// Renders with a context that is current already. Deterministic for one driver.
Image renderPicture(const model::Model& model, Offscreen& offscreen, const PictureOptions& options);

// PNG bytes, through libpng.
std::string pngBytes(const Image& image);

}  // namespace viewer
