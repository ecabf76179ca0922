// Where a job is cut when nobody says where.
#pragma once

#include "model/model.h"
#include "viewer/frame.h"

namespace viewer {

struct Scene;

// Upright planes stand at an x or at a y of the drawing.
enum class Across { X, Y };

// Where such a cut tells most, in the drawing's metres: through the cellar where there is one,
// clear of walls that run along the cut, through as many openings as it can, then near the middle.
double tellingCut(const model::Model& model, Across across);

// The plane there, local; what is cut away lies on the greater side for +1, the lesser for -1.
Section sectionAt(const Scene& scene, Across across, double at, int remove);

// What is above a level is taken away; metres.
Section levelSection(double level);

// Looking north: what is south of the telling cut is taken away.
Section standardSection(const model::Model& model, const Scene& scene);

}  // namespace viewer
