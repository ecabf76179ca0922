// What bricks and blocks are called, and how many there are of each. No OpenGL.
#pragma once

#include <array>
#include <cstdint>
#include <string>

#include "model/model.h"
#include "viewer/scene.h"

namespace viewer {

// "whole brick", "half brick", "cut block 158", "split brick 30 high", "angle brick".
std::string unitName(const model::MasonryUnit& unit, bool block);

// "Wall A-B, outer leaf, course 14, cut brick 158". Courses count from 1 over the damp course, and
// down from it.
std::string unitWords(const model::Model& model, std::uint32_t element, size_t unit);

// Of the units that stand at a time, by model::Piece.
struct PieceCounts {
  std::array<long, 8> bricks{}, blocks{};
};
PieceCounts piecesStanding(const model::Model& model, const Scene& scene, double time);

}  // namespace viewer
