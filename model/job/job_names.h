// Names that follow from a job's outline: corners carry letters, walls the letters of their ends.
#pragma once

#include <optional>
#include <string>

#include "model/job/job.h"

namespace model {

// Letters for corner `index` in the file's order: A, B, ... Z, AA, AB ...
std::string letterOfCorner(size_t index);

// "A-B" for wall 0, which runs from corner 0 to corner 1 in the file's order.
std::string nameOfWall(size_t index, size_t corners);

// Index of the wall with this name, written either way round; nothing if there is none.
std::optional<size_t> wallNamed(const std::string& name, size_t corners);

}  // namespace model
