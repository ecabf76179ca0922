// How many units go into a square metre, and the allowances that orders are made with.
#pragma once

namespace model {

// Bricks or blocks in a square metre of one leaf's face: 1 over the face of a unit with its joint.
// 59.26 for 215 x 65 with joints of 10. Sizes in metres; 0 when they are not positive.
double unitsPerSquareMetre(double length, double height, double joint);

// Dry parts, loose, that go into a measure of mortar: 38 cubic feet to 27 (rule 38 for mortar,
// NAVEDTRA 14043 Builder 3&2 Vol. 1, chapter 8).
inline constexpr double kDryToMortar = 38.0 / 27.0;
// Loose cement, kg in a cubic metre: a sack of 94 lb is a cubic foot, as that rule has it. Bags of
// 25 kg: common practice, no source.
inline constexpr double kCementWeight = 94 * 0.45359237 / 0.028316846592;
inline constexpr double kCementBag = 25;

// Added to a net amount when ordering.
namespace waste {
inline constexpr double kConcrete = 0.10;  // NAVEDTRA 14070 Engineering Aid, Fig. 5-2 example
inline constexpr double kMortar = 0.20;    // NAVEDTRA 14045 Builder Advanced, Table 4-5 example
// Common practice, no source:
inline constexpr double kBricks = 0.05;
inline constexpr double kBlocks = 0.05;
inline constexpr double kHardcore = 0.20;  // settles when compacted
inline constexpr double kBoards = 0.10;
inline constexpr double kBreakage = 0.05;  // of boards that are counted one by one
inline constexpr double kTimber = 0.10;
inline constexpr double kMembrane = 0.15;  // laps
inline constexpr double kCovering = 0.10;
inline constexpr double kTies = 0.05;
inline constexpr double kRender = 0.15;  // keys into the joints, drops
}  // namespace waste

}  // namespace model
