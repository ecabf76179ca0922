// The moment of a course, as the command line asks for it.
#pragma once

#include <optional>
#include <string>

#include "viewer/picture.h"

namespace viewer {

// Course `number` as gauge rods number them: the moment at which it lies at a corner; without one,
// at which it lies all round. Returns nothing, or a message that says what there is instead.
std::optional<std::string> readCourse(int number, const std::string& corner,
                                      const model::Model& model, PictureOptions& picture);

}  // namespace viewer
