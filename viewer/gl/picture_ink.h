// Dear ImGui without a window: lays lettering over what is drawn in the bound framebuffer.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "model/problems.h"

struct ImGuiContext;

namespace viewer {

// Needs a current OpenGL context for its whole life. The caller's Dear ImGui context, if there is
// one, is current again after every call.
class PictureInk {
 public:
  // Loads the lettering for that scale; `samples` are texts that will be shown.
  PictureInk(float scale, const std::vector<std::string>& samples);
  ~PictureInk();
  PictureInk(const PictureInk&) = delete;
  PictureInk& operator=(const PictureInk&) = delete;

  float scale() const { return scale_; }
  // What to tell when some letters of the samples cannot be had.
  const std::optional<model::Problem>& lacking() const { return lacking_; }
  // Runs `draw` inside one frame of that size and puts what it drew into the framebuffer.
  void lay(int width, int height, const std::function<void()>& draw);

 private:
  ImGuiContext* context_ = nullptr;
  float scale_ = 1;
  std::optional<model::Problem> lacking_;
};

}  // namespace viewer
