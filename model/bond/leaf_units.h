// What every leaf makes of the pieces that are laid in it: frame, mitres, what a piece is called.
#pragma once

#include <array>

#include "model/bond/laid_piece.h"
#include "model/bond/masonry_unit.h"
#include "model/walls/wall_layer.h"

namespace model {

// Metres: nobody cuts less; less height or length than the other is made up in mortar.
inline constexpr double kSameUnit = 0.003;
inline constexpr double kLeastUnit = 0.020;

UnitFrame frameOf(const WallLayer& layer);

// Is a unit mitred at its start and end, in a leaf whose ends are (`mitres`)?
void setMitres(const WallLayer& layer, const std::array<bool, 2>& mitres, double joint,
               const LaidPiece& piece, MasonryUnit& unit);

// Whole, half, three-quarter or cut, by its length beside that of a unit.
Piece pieceOfLength(double length, double unit, double joint);

// False where less is left at a sharp corner than its mitre takes, or no length at all.
bool canBeLaid(const UnitFrame& frame, const MasonryUnit& unit);

}  // namespace model
