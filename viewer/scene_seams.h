// Leaves out the lines where two things of one material run on flush: the joint between one lift
// and the next, between a corner and its run, is no edge of the building.
#pragma once

#include "viewer/scene.h"

namespace viewer {

// The lines of elements that follow one another in Scene::order, made apart from the others'.
struct LineStretch {
  size_t from = 0, to = 0;      // of Scene::order
  RawVector<EdgeVertex> edges;  // two by two; the elements' ranges count from its first
};

// Fills in Scene::edges, and the elements' ranges of it, with the lines of all stretches less the
// seams. A seam's line is kept for as long as only one of the two things stands. The elements'
// indices and `placed` and `removed` are set. Linear in the number of lines, but for sorting them.
void joinLines(const model::Works& works, std::vector<LineStretch> stretches, Scene& scene);

}  // namespace viewer
