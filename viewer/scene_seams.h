// Leaves out the lines where two things of one material run on flush: the joint between one lift
// and the next, between a corner and its run, is no edge of the building.
#pragma once

#include "viewer/scene.h"

namespace viewer {

// Rewrites Scene::edges and the elements' ranges of it. A seam's line is kept for as long as only
// one of the two things stands. Linear in the number of lines, but for sorting them.
void hideSeams(Scene& scene);

}  // namespace viewer
