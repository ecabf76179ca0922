// OpenGL without a display, through EGL: Mesa's surfaceless platform or a GPU driver's device.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace viewer {

struct Image {
  int width = 0, height = 0;
  std::vector<std::uint8_t> rgba;  // rows from the top
};

class Offscreen {
 public:
  // Makes a 3.3 core context current. Null when none can be had; then `why` says so in one line.
  static std::unique_ptr<Offscreen> create(std::string& why);
  ~Offscreen();

  // Binds a target of that size (resolved from multisamples by read()).
  void begin(int width, int height, int samples);
  Image read();

 private:
  Offscreen();
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace viewer
