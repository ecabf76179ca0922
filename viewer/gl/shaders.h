// The GLSL files of shaders/, built into the program.
#pragma once

#include <string_view>

namespace viewer {

// The text of shaders/NAME; empty when there is no such file.
std::string_view shaderText(std::string_view name);

}  // namespace viewer
