// Several stages, as the command line asks for them, and what their pictures are called.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/programme/programme.h"

namespace viewer {

// "all", or stages with commas between, each by id, number or name, and ranges of numbers:
// "3,5,8-12". Each once, in the programme's order; the last stage for an empty text. Returns
// nothing, or a message that says what there is instead.
std::optional<std::string> readStages(const std::string& text, const model::Programme& programme,
                                      std::vector<size_t>& stages);

// "07-dig-trenches.png".
std::string stagePictureName(const model::Programme& programme, size_t stage);

}  // namespace viewer
