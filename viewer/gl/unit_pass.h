// Bricks and blocks drawn one by one, each an instance of 16 bytes, with the mortar between them.
// OpenGL; needs a current context.
#pragma once

#include <cstdint>
#include <memory>

#include "viewer/draw_list.h"
#include "viewer/gl/frame_uniforms.h"
#include "viewer/gl/gpu_scene.h"
#include "viewer/gl/program.h"
#include "viewer/scene.h"

namespace viewer {

class UnitPass {
 public:
  UnitPass();
  ~UnitPass();
  UnitPass(const UnitPass&) = delete;
  UnitPass& operator=(const UnitPass&) = delete;

  // Another scene than before. Returns the bytes sent.
  std::uint64_t upload(const Scene& scene);

  // The program that colours units, with what does not change from frame to frame; compiled when it
  // is first asked for. Its texture units are surface.vert's.
  Program& surface(const Coursing& coursing);
  // Draws units and then their mortar with surface(), which must have this frame's uniforms; units
  // are tinted as the frame says. Returns the number of draw calls.
  unsigned draw(const Frame& frame, const Pieces& plain, const Pieces& raked);
  // Units alone, into a map of depths that is bound, as `matrix` sees them.
  unsigned drawDepths(const Frame& frame, const glm::mat4& matrix, const GpuScene& gpu,
                      const Pieces& plain, const Pieces& raked);

 private:
  unsigned drawPieces(Program& program, const Pieces& pieces, bool raked, bool mortar) const;

  unsigned plain_ = 0, raked_ = 0;  // vertex arrays
  unsigned plainBuffer_ = 0, rakedBuffer_ = 0, indexBuffer_ = 0;
  std::unique_ptr<Program> surface_, depth_;
  bool looksAreOld_ = true;
};

}  // namespace viewer
