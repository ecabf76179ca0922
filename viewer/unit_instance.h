// One brick or block as the graphics card has it: 16 bytes. Lengths are whole tenths of a
// millimetre. No OpenGL.
#pragma once

#include <cstdint>

#include "model/bond/masonry_unit.h"

namespace viewer {

// As shaders/unit.vert unpacks it. Stations count from LeafFrame::s, levels from LeafFrame::z.
struct UnitInstance {
  std::uint32_t place = 0;   // station of its start, 20 bits; length's lower 12 bits
  std::uint32_t height = 0;  // level of its underside, 18 bits; height, 12; length's upper 2 bits
  float appears = 0;         // on the programme's clock
  std::uint32_t what = 0;    // element, 20 bits; the rest as below
};
static_assert(sizeof(UnitInstance) == 16);

// In UnitInstance::what.
inline constexpr std::uint32_t kElementBits = 20;
inline constexpr std::uint32_t kPieceShift = 20;  // model::Piece, 3 bits
inline constexpr std::uint32_t kDepthShift = 23;  // which of its leaf's depths, 3 bits
inline constexpr std::uint32_t kJointAtStart = 1u << 26;
inline constexpr std::uint32_t kJointAtEnd = 1u << 27;
inline constexpr std::uint32_t kThickBed = 1u << 28;
inline constexpr std::uint32_t kMitredStart = 1u << 29;
inline constexpr std::uint32_t kMitredEnd = 1u << 30;
static_assert(static_cast<int>(model::Piece::Special) < 8);

// A unit that is cut to the slope of a gable, with the levels of the slope at its two ends.
struct RakedInstance {
  UnitInstance unit;
  float rake0 = 0, rake1 = 0;
};
static_assert(sizeof(RakedInstance) == 24);

// Whole tenths of a millimetre, of lengths within a kilometre.
inline std::int32_t tenths(double metres) {
  constexpr std::int32_t kAbove = 10000000;  // so that no sign is asked for
  return static_cast<std::int32_t>(metres * 10000 + (kAbove + 0.5)) - kAbove;
}

// What a unit's tone is drawn from, with the level of its underside: another in every leaf, so that
// no two faces are alike. 20 bits.
inline std::uint32_t unitSeed(std::int32_t s0, std::uint32_t leafSeed) {
  return (static_cast<std::uint32_t>(s0) ^ leafSeed) & 0xfffffu;
}

}  // namespace viewer
