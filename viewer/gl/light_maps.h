// What the sun sees and what the sky sees: two depth maps, drawn again only when something in them
// has changed, so not while the camera moves. OpenGL; needs a current context.
#pragma once

#include <cstdint>

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
  LightMaps();
  ~LightMaps();
  LightMaps(const LightMaps&) = delete;
  LightMaps& operator=(const LightMaps&) = delete;

  void forget() { fresh_ = false; }  // after a change of scene
  // Draws the maps if the frame needs others than there are. Leaves another framebuffer bound.
  // Returns the number of draw calls.
  unsigned update(const Frame& frame, const glm::vec3& low, const glm::vec3& high,
                  const DrawList& list, const GpuScene& scene);
  // Gives the program in use the uniforms of shaders/light.glsl; the maps take two texture units.
  void give(Program& program, const Frame& frame, int firstUnit) const;

 private:
  struct Map {
    unsigned texture = 0, framebuffer = 0;
    int size = 0, used = 0;  // texels a side; of which are drawn
    glm::mat4 matrix{1};
  };
  static Map make(int size, bool compared);
  unsigned draw(const Map& map, const Frame& frame, const Pieces& still, const Pieces& moving,
                const GpuScene& scene);

  Program still_, moving_;
  Map sun_, sky_;
  glm::vec3 low_{0}, high_{0};
  float texel_ = 0;
  Frame drawn_;
  bool fresh_ = false;
};

}  // namespace viewer
