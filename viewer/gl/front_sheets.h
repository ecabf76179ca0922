// The flat ends of what is growing or going just now: a sheet in the plane at which each stops,
// with the look and the clock of the thing itself, so that its faces' program draws it. They are
// all that is sent to the graphics card while time is scrubbed, four corners each. OpenGL; needs a
// current context.
#pragma once

#include <array>
#include <vector>

#include "viewer/draw_list.h"
#include "viewer/scene.h"

namespace viewer {

// A sheet as a strip of two triangles, larger than what the plane cuts of the thing's box.
// `material` is a model::Material; the cut is one of time.
std::array<Vertex, 4> frontSheet(const CutFill& cut, const ElementRange& range, int material);

// Directions in the plane of a cut, unit and square to each other.
struct PlaneAxes {
  glm::vec3 right, up;
};
PlaneAxes axesOf(const glm::vec4& plane);
// A point of the plane near the middle of the box.
glm::vec3 anchorOf(const glm::vec4& plane, const ElementRange& range);

class FrontSheets {
 public:
  FrontSheets();
  ~FrontSheets();
  FrontSheets(const FrontSheets&) = delete;
  FrontSheets& operator=(const FrontSheets&) = delete;

  // Replaces them all: of those cuts that are of time, in their order.
  void upload(const std::vector<const CutFill*>& cuts, const Scene& scene,
              const std::vector<int>& materials);
  // Draws the nth of them with the program in use.
  void draw(int nth) const;

 private:
  unsigned array_ = 0, buffer_ = 0;
  std::vector<Vertex> corners_;
};

}  // namespace viewer
