// The bricks and blocks of a scene made ready to draw. No OpenGL.
#pragma once

#include <span>

#include "viewer/scene.h"

namespace viewer {

// What units of one element have in common.
struct UnitsOf {
  std::uint32_t element = 0;
  std::int32_t s = 0, z = 0;  // origin of its leaf, tenths of a millimetre
  float from = 0, to = 0;     // its growth on the programme's clock
};

// Writes units in the order in which they are laid, each with the mortar towards the one before it.
void packUnits(const UnitsOf& of, std::span<const model::MasonryUnit> units,
               std::span<const std::uint8_t> depths, UnitInstance* out);

// Fills in Scene::units, raked and leaves and the elements' ranges of them, whose `placed` is set.
void addUnits(const model::Works& works, Scene& scene);

}  // namespace viewer
