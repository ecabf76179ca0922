// Fills and outlines what time or the section has cut open, so that solids stay solid.
#pragma once

#include <memory>
#include <vector>

#include "viewer/draw_list.h"
#include "viewer/gl/frame_uniforms.h"
#include "viewer/gl/front_sheets.h"
#include "viewer/gl/gpu_scene.h"
#include "viewer/gl/program.h"

namespace viewer {

// Each cut is counted into the stencil, an odd number of crossings being inside, and then filled at
// the plane's own depth. The framebuffer needs a stencil, which is left at zero. What fills the
// section is compiled when there first is one.
class CutPass {
 public:
  // `depth` draws faces: depth.vert, depth_only.frag; so does `surface`: surface.vert,
  // surface.frag. Kept.
  CutPass(Program& depth, Program& surface);
  // Another scene than before; `materials` by element.
  void setScene(const Scene& scene, const std::vector<int>& materials);
  // Returns the number of draw calls. `surface` must have all its uniforms for this frame.
  unsigned draw(const Scene& scene, const GpuScene& gpu, const DrawList& list, const Frame& frame,
                const ViewNumbers& view, const std::vector<int>& materials);

 private:
  struct CutScene {
    const Scene& scene;
    const GpuScene& gpu;
    const Frame& frame;
    const ViewNumbers& view;
    const std::vector<int>& materials;
  };
  struct SectionFill {
    Program count, fill;
  };
  void begin(const CutScene& of, const DrawList& list);
  // Cuts of time in one plane, of things that grow and go alike: they are drawn together, since no
  // ray can leave two of them through that plane.
  using Front = std::vector<const CutFill*>;
  static std::vector<Front> frontsOf(const CutScene& of, const std::vector<const CutFill*>& cuts);
  unsigned fillFront(const CutScene& of, const Front& front);
  unsigned outlineFront(const CutScene& of, const Front& front);
  unsigned fillSection(const CutScene& of, const CutFill& cut);
  unsigned outline(const CutScene& of, const CutFill& cut, const Pieces& faces, float widths);
  unsigned outline(const CutScene& of, const CutFill& cut, float widths);
  void giveGrowth(Program& program, const CutFill& cut, const ElementRange& range);
  Program& depth_;
  Program& surface_;
  Program line_;
  FrontSheets sheets_;
  std::unique_ptr<SectionFill> section_;
};

}  // namespace viewer
