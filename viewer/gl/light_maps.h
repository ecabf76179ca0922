// What the sun sees and what the sky sees: two depth maps, drawn again only when something in them
// has changed, so not while the camera moves. What stands still is kept in a map of its own, so
// that while time is scrubbed only what grows is drawn. OpenGL; needs a current context.
#pragma once

#include <cstdint>
#include <functional>

#include <glm/mat4x4.hpp>
#include <glm/vec3.hpp>
#include <glm/vec4.hpp>

#include "viewer/draw_list.h"
#include "viewer/frame.h"
#include "viewer/gl/gpu_scene.h"
#include "viewer/gl/program.h"

namespace viewer {

class LightMaps {
 public:
  // `depth` draws the faces: depth.vert, depth_only.frag. Kept.
  explicit LightMaps(Program& depth);
  ~LightMaps();
  LightMaps(const LightMaps&) = delete;
  LightMaps& operator=(const LightMaps&) = delete;

  void forget();  // after a change of scene
  // Draws what is being laid unit by unit into the map that is bound, as the matrix sees it.
  using DrawUnits = std::function<unsigned(const glm::mat4& matrix)>;
  // Draws the maps if the frame needs others than there are. Leaves another framebuffer bound.
  // Returns the number of draw calls.
  unsigned update(const Frame& frame, const glm::vec3& low, const glm::vec3& high,
                  const DrawList& list, const GpuScene& scene, const DrawUnits& units);
  // Gives the program in use the uniforms of shaders/light.glsl; the maps take two texture units.
  void give(Program& program, const Frame& frame, int firstUnit) const;

 private:
  struct Depths {
    unsigned texture = 0, framebuffer = 0;
  };
  struct Map {
    explicit Map(bool isCompared) : compared(isCompared) {}
    Depths still, all;  // without what moves, and with it; made when first drawn
    bool compared;
    int size = 0;  // texels a side
    glm::mat4 matrix{1};
    Pieces drawn;         // in `still`, if that is fresh
    bool fresh = false;   // whether `still` shows `drawn` by `matrix`
    bool moving = false;  // whether `all` is to be used
    unsigned texture() const { return moving ? all.texture : still.texture; }
  };
  static void look(Map& map, const glm::mat4& matrix, int size);
  unsigned draw(Map& map, const Frame& frame, const Pieces& still, const Pieces& moving,
                const GpuScene& scene, const DrawUnits& units);

  Program& depth_;
  Map sun_, sky_;
  glm::vec3 low_{0}, high_{0};
  float texel_ = 0;
  Frame drawn_;
  bool fresh_ = false;
};

}  // namespace viewer
