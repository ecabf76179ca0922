// What a piece is called that has just come or gone. No OpenGL.
#pragma once

#include <optional>
#include <string>

#include "model/model.h"
#include "viewer/piece_times.h"
#include "viewer/scene.h"

namespace viewer {

// The first of those of the last moment at or before the time; nothing before the first, and where
// a stage has none.
std::optional<PieceEvent> newestPiece(const PieceTimes& pieces, double time);

// "Wall A-B, outer leaf, course 14, whole brick", "Cellar slab", "Taken away: Forms for wall A-B,
// and 3 more"; empty where newestPiece has nothing.
std::string pieceWords(const model::Model& model, const Scene& scene, const PieceTimes& pieces,
                       double time);

// "piece 214 of 15230".
std::string pieceCountWords(const PieceTimes& pieces, double time);

}  // namespace viewer
