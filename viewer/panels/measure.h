// Measuring between two points: plan distance, height and slope.
#pragma once

#include <string>
#include <vector>

#include "viewer/frame.h"
#include "viewer/overlays/sheet_layout.h"
#include "viewer/picking.h"
#include "viewer/scene.h"

struct ImDrawList;

namespace viewer {

struct Measurement {
  double plan = 0;    // level distance, metres
  double height = 0;  // of the second point over the first
  double slope = 0;   // straight from point to point
};
Measurement measure(const glm::vec3& a, const glm::vec3& b);
// "plan 4500 mm", "height +2.400 m", "slope 5100 mm".
std::vector<std::string> measureWords(const Measurement& m);

// Where the figures stand: inside the room, beside the end that is further right, else beside the
// other; clear of both by `off` where the room is wide enough.
Box measureCardPlace(const glm::vec2& from, const glm::vec2& to, const glm::vec2& size,
                     const Box& room, float off);

// The mark under the pointer (`snap`), the points clicked with the marks of what they were pulled
// to, the lines and the figures.
void drawMeasure(ImDrawList* list, const Scene& scene, const Frame& frame,
                 const SheetLayout& layout, const std::vector<Snap>& points, const Snap& snap);

}  // namespace viewer
