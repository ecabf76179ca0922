// Every text of a job that may be lettered, so that its characters can be made sure of.
#pragma once

#include <string>
#include <vector>

#include "model/model.h"

namespace viewer {

std::vector<std::string> jobWords(const model::Model& model);

}  // namespace viewer
