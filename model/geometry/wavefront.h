// The outline on its way inward: every edge of a roof plan moves square to itself, hips at speed 1
// and gables not at all, and where edges vanish or run into each other the roof's lines meet.
//
// Events are not taken one by one. At the time of the next one, everything that has come together
// within a tolerance is joined: corners become one node, a corner that has reached an edge divides
// it, edges that lie on each other go. What is left is walked round again into loops. So any number
// of events at one moment - walls in line, equal wings, regular plans - are one and the same case.
#pragma once

#include <string>
#include <vector>

#include "model/geometry/polygon.h"

namespace model {

// Nearer than this, metres, things have met. Far below what can be built or drawn, far above the
// rounding of coordinates in metres.
inline constexpr double kMet = 1e-9;
// Directions whose cross product is smaller are parallel.
inline constexpr double kParallel = 1e-9;

struct WaveLine {
  Vec2 from{0, 0}, direction{1, 0}, inward{0, 1};
  double speed = 1;  // 1 for a hip, 0 for a gable
};

struct RoofNode {
  Vec2 at{0, 0};
  double run = 0;  // time = distance gone = height / tan(pitch)
};

// A line of the roof. The face of `ahead` goes along it from `from` to `to` when it is walked
// anticlockwise, the face of `back` the other way.
struct RoofArc {
  size_t from, to;  // nodes
  size_t ahead, back;
};

struct WaveCorner {
  size_t left = 0, right = 0;  // lines before and after it
  size_t birth = 0;            // node
  Vec2 base{0, 0}, velocity{0, 0};
  double since = 0;
  bool reflex = false;

  Vec2 at(double time) const { return base + velocity * (time - since); }
};

using WaveLoop = std::vector<WaveCorner>;  // edge k runs from corner k on line loop[k].right

// What happens next in a loop.
struct WaveEvents {
  double time = 0;
  bool any = false;
  std::vector<size_t> vanishing;            // edges
  std::vector<std::array<size_t, 2>> hits;  // corner, edge
};

WaveEvents nextEvents(const std::vector<WaveLine>& lines, const WaveLoop& loop, double now);

struct WaveResult {
  std::vector<RoofNode> nodes;  // the first are the outline's points
  std::vector<RoofArc> arcs;    // without those of the outline itself
  std::string refusal;
  std::vector<size_t> edges;
};

WaveResult runWavefront(const Polygon& outline, const std::vector<WaveLine>& lines);

}  // namespace model
