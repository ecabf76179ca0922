// The flat ends of what is growing or going just now: a sheet in the plane at which each stops,
// with the look and the clock of the thing itself, so that its faces' program draws it. All sheets
// lie on the graphics card where their things begin; while time is scrubbed a uniform moves them.
// OpenGL; needs a current context.
#pragma once

#include <array>
#include <map>
#include <span>
#include <utility>
#include <vector>

#include "viewer/draw_list.h"
#include "viewer/gl/program.h"
#include "viewer/scene.h"

namespace viewer {

// Directions in a plane, unit and square to each other.
struct PlaneAxes {
  glm::vec3 right, up;
};
PlaneAxes axesOf(const glm::vec4& plane);
// A point of the plane near the middle of the box.
glm::vec3 anchorOf(const glm::vec4& plane, const ElementRange& range);

// The sheet at which a thing stops growing (Placed) or going (Removed), where it begins, as a strip
// of two triangles that reaches past the thing's box. `material` is a model::Material.
std::array<Vertex, 4> frontSheet(CutFill::Kind kind, std::uint32_t element,
                                 const ElementRange& range, int material);

// How far a sheet has gone at a time: its corners, and the moments at which they appear and go.
struct SheetShift {
  glm::vec3 by{0};
  glm::vec2 times{0};
};
SheetShift sheetShift(CutFill::Kind kind, const ElementRange& range, double time);

class FrontSheets {
 public:
  FrontSheets();
  ~FrontSheets();
  FrontSheets(const FrontSheets&) = delete;
  FrontSheets& operator=(const FrontSheets&) = delete;

  // Sends the sheets of everything that grows or goes bit by bit; `materials` by element.
  void upload(const Scene& scene, const std::vector<int>& materials);
  // Draws the sheets of cuts of time with `surface`, which must be in use. All are of the same
  // kind, of things that grow and go alike. Returns the number of draw calls.
  unsigned draw(std::span<const CutFill* const> cuts, const Scene& scene, double time,
                Program& surface) const;

 private:
  unsigned array_ = 0, buffer_ = 0;
  std::map<std::pair<std::uint32_t, CutFill::Kind>, int> firstCorner_;
};

}  // namespace viewer
