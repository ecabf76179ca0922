// The set-up that a command's --set-up names.
#pragma once

#include <string>

#include "model/model.h"

namespace viewer {

struct SetUpAsked {
  const model::SetUp* setUp = nullptr;  // of the model's job; null when none is named
  std::string wrong;                    // what to say when the job has none of that name

  SetUpAsked(const model::Model& model, const std::string& name);
};

}  // namespace viewer
