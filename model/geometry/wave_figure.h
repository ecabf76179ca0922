// A loop of the wavefront at the moment of an event, as a plane figure that is taken apart.
#pragma once

#include <vector>

#include "model/geometry/wavefront.h"

namespace model {

// A part of a wave edge between two places.
struct WavePiece {
  size_t from, to;  // places
  size_t line;
};

// Corners that have come together are one place.
struct WavePlace {
  Vec2 at{0, 0};
  bool met = false;             // something happens here: it becomes a node of the roof
  std::vector<size_t> corners;  // of the loop
};

struct WaveFigure {
  std::vector<WavePlace> places;
  std::vector<WavePiece> pieces;               // what goes on moving
  std::vector<std::array<WavePiece, 2>> gone;  // pieces that lay on each other, opposite ways
};

WaveFigure figureAt(const std::vector<WaveLine>& lines, const WaveLoop& loop,
                    const WaveEvents& events);

// For each piece, the piece that follows it round the inside of the figure.
std::vector<size_t> followers(const std::vector<WaveLine>& lines, const WaveFigure& figure);

}  // namespace model
