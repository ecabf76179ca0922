// The model as one GLB file that ordinary glTF viewers open and play.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "model/model.h"
#include "model/problems.h"

namespace model {

struct GlbOptions {
  double secondsPerStage = 1.5;  // of the construction animation
};

// The whole file in memory. Deterministic. Throws std::runtime_error when a coordinate is not
// finite or a text is not UTF-8.
std::string glbBytes(const Model& model, const GlbOptions& options = {});

// glbBytes, saved atomically. Returns the problem, or nothing.
std::optional<Problem> writeGlb(const Model& model, const std::string& path,
                                const GlbOptions& options = {});

}  // namespace model
