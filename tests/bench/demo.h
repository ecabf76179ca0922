// The demo job, Orchard house, in every form that the benchmarks start from; each made once.
#pragma once

#include <string>

#include "model/model.h"
#include "viewer/scene.h"

namespace bench {

// Throws std::runtime_error when the job does not read.
const std::string& demoText();
const model::Job& demoJob();
const model::Model& demo();
const viewer::Scene& demoScene();

// Copies of the demo's works side by side, in rows of 32, 40 m apart, in one model. Every element
// has an id of its own.
model::Model copies(int count);

}  // namespace bench
