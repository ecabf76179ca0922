// Fills and outlines what time or the section has cut open, so that solids stay solid.
#pragma once

#include "viewer/draw_list.h"
#include "viewer/gl/frame_uniforms.h"
#include "viewer/gl/gpu_scene.h"
#include "viewer/gl/light_maps.h"
#include "viewer/gl/program.h"

namespace viewer {

// Each cut is counted into the stencil, an odd number of crossings being inside, and then filled at
// the plane's own depth. The framebuffer needs a stencil, which is left at zero.
class CutPass {
 public:
  CutPass();
  // Returns the number of draw calls.
  unsigned draw(const Scene& scene, const GpuScene& gpu, const DrawList& list, const Frame& frame,
                const ViewNumbers& view, const LightMaps& light, const std::vector<int>& materials);

 private:
  struct CutScene {
    const Scene& scene;
    const GpuScene& gpu;
    const Frame& frame;
    const ViewNumbers& view;
    const std::vector<int>& materials;
  };
  unsigned fill(const CutScene& of, const CutFill& cut);
  unsigned outline(const CutScene& of, const CutFill& cut, float widths);
  void giveGrowth(Program& program, const CutFill& cut, const ElementRange& range);
  void giveFill(const CutFill& cut, const ElementRange& range, const Coursing& coursing,
                int material, const Frame& frame);

  Program count_, fill_, line_;
};

}  // namespace viewer
