// Keeps in the job file from where a stage is looked at, or forgets it, keeping everything else of
// the file's text.
#pragma once

#include <optional>
#include <string>

#include "model/model.h"

namespace viewer {

// Each reads the file as it is now and saves it in one step, and returns what is wrong in one line
// when nothing was saved. `model` is what the file said last, `stage` an index into its programme.
// A view that the stage has already is replaced.
std::optional<std::string> keepView(const std::string& path, const model::Model& model,
                                    size_t stage, model::KeptView view);
std::optional<std::string> forgetView(const std::string& path, const model::Model& model,
                                      size_t stage);

}  // namespace viewer
