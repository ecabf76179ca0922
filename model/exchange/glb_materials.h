// What the materials of the model look like in a GLB file.
#pragma once

#include <array>

#include "model/asbuilt/deviation.h"
#include "model/works/element.h"

namespace model {

struct GlbColour {
  std::array<double, 4> linear;  // red, green, blue and cover, in linear light as glTF wants
};

// Quiet natural colours. Only glass lets something through.
GlbColour colourOf(Material material);
// Of string lines: one strong hue, seen against earth, brick and concrete alike.
GlbColour stringLineColour();
// Of the marker of a reading; told apart by most who do not tell red from green.
GlbColour markerColour(Verdict verdict);

}  // namespace model
