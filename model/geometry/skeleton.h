// The roof on any simple outline: every edge sends up a plane at one pitch (or stands upright, at
// a gable), and the roof is where they meet. A straight-skeleton construction with two speeds.
//
// Source of the idea: O. Aichholzer, F. Aurenhammer, D. Alberts, B. Gaertner, "A novel type of
// skeleton for polygons", J. UCS 1(12), 1995.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/geometry/polygon.h"

namespace model {

// The part of the plan that drains to one edge. `plan` is anticlockwise and begins with the edge
// itself; `run` holds, for each point of `plan`, its distance from the edge's line, square to it:
// its height is run * tan(pitch).
struct RoofFace {
  size_t edge = 0;
  Polygon plan;
  std::vector<double> run;
};

enum class RoofLineKind { Ridge, Hip, Valley, Eaves, Verge };

// Where two faces, or a face and a gable, meet. A level line, and one between slopes from nearly
// opposite sides (within 30 degrees), is a ridge. Between walls in line there is no line: their
// slopes are one plane.
struct RoofLine {
  RoofLineKind kind = RoofLineKind::Ridge;
  Vec2 a{0, 0}, b{0, 0};
  double runA = 0, runB = 0;    // heights / tan(pitch)
  size_t faceA = 0, faceB = 0;  // edges of the two faces; equal for Eaves and Verge
};

struct Skeleton {
  std::vector<RoofFace> faces;  // in edge order; gable edges have none
  std::vector<RoofLine> lines;
};

struct SkeletonResult {
  std::optional<Skeleton> skeleton;
  std::string refusal;  // when there is none: why, naming edges as {0}, {1} ... for the caller
  std::vector<size_t> edges;  // the edges that the refusal speaks of
};

// Outline anticlockwise and simple; `gable[i]` says that edge i (point i to i+1) stands upright.
// At least one edge must not be a gable. Faces tile the outline exactly and share their corner
// points exactly. Simultaneous events (walls in line, equal wings, regular polygons) are handled.
// Refused, with a reason: a gable in line with a neighbouring hip edge; a gable beside a re-entrant
// corner, past whose end a slope goes on, so that it would need a wall inside the plan; gables that
// leave part of the plan without a slope over it.
SkeletonResult roofSkeleton(const Polygon& outline, const std::vector<bool>& gable);

}  // namespace model
