// The bond of every leaf as a table that a fragment shader reads: which unit, or joint, is at a
// point of a face. So a flat face far off shows the very units that are drawn one by one near by.
// No OpenGL.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include <glm/vec4.hpp>

#include "model/works/element.h"

namespace viewer {

// Texels of four whole numbers, read in shaders/leaf.glsl. Of a leaf first kLeafHeader of them:
//   0  z: origin (signed), size of a cell, cells, first texel of the front's cells of height
//   1  s: origin (signed), size of a cell, cells, seed | kBackDiffers
//   2  floats: skew of mitred starts and ends; +1 when the inside lies left of the wall's way, else
//      -1; the usual bed
//   3  floats: mean length and height of a unit with its joint, mean cross joint; thickest bed
//   4  eight texels of floats: front and back of units, then of the mortar between those
// A cell of height: level of the joint nearest to it, measured at the underside of what lies over
// it, less the origin; the joint's thickness | (that level less the underside of the row below it)
// << 10; first cell of the row below; of the row above.
// A cell of length: station of the joint nearest to it, measured at the start of what comes after
// it, less the origin, 20 bits | the joint's width << 20; seed of the unit before it, 20 bits | its
// piece << 20; the same of the unit after it; level over the row's underside at which the one
// before is split, 12 bits | the same of the one after << 12 | thickness of that joint << 24.
inline constexpr std::uint32_t kLeafHeader = 12;
inline constexpr std::uint32_t kBackDiffers = 1u << 31;

struct LeafTable {
  std::vector<glm::uvec4> texels;
  std::vector<std::uint32_t> leaves;  // first texel of each of Works::frames; kNoLeaf: no units
  // Elements whose units make corners with each other, each pair both ways, sorted: where one is
  // drawn unit by unit the other must be too.
  std::vector<std::array<std::uint32_t, 2>> neighbours;
  // Units that have mortar at an end towards a unit of another element: index and kJointAt...
  std::vector<std::array<std::uint32_t, 2>> joints;
  // By unit, which of its leaf's depths it has.
  std::vector<std::uint8_t> depths;
};
inline constexpr std::uint32_t kNoLeaf = 0xffffffffu;

// Of all works that have units. Near linear in the number of units.
LeafTable buildLeafTable(const model::Works& works);

// Seed of a leaf's tones.
std::uint32_t leafSeed(std::size_t frame);

}  // namespace viewer
