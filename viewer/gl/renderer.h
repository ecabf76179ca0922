// Draws scenes with OpenGL 3.3. The only door between the viewer and the graphics card.
#pragma once

#include <cstdint>
#include <memory>

#include "viewer/frame.h"
#include "viewer/scene.h"

namespace viewer {

struct RenderStats {
  std::uint64_t bytesUploaded = 0;  // since the renderer was made
  std::uint64_t triangles = 0;      // of the last frame
  std::uint64_t drawCalls = 0;      // of the last frame
  std::uint64_t units = 0;          // of the last frame, drawn one by one
};

// Needs a current OpenGL 3.3 context for its whole life.
class Renderer {
 public:
  Renderer();
  ~Renderer();
  Renderer(const Renderer&) = delete;
  Renderer& operator=(const Renderer&) = delete;

  // Replaces what is drawn. The only call that uploads the building.
  void setScene(const Scene& scene);
  // Draws into the framebuffer that is bound, over its whole width and height in pixels.
  void draw(const Frame& frame, int width, int height);
  const RenderStats& stats() const;

 private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace viewer
