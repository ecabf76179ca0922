// What can be read on site and held against the drawing, by the names that readings and tolerances
// use.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace model {

enum class TargetKind {
  Level,     // of the schedule of levels; for level and staff readings
  Line,      // of a face or an edge on plan; for face, corner, side and diagonal readings
  Distance,  // between two corners, of whichever line: only tolerances name it
};

// Where on the building a level is taken. Every level may also be taken at a point of its own.
enum class TargetPlace {
  Walls,       // at a corner, or along a wall
  Openings,    // at an opening
  Pins,        // as Walls, or at a level pin in a trench
  SlabPins,    // as Walls, or on the lowest storey at a level pin over the ground slab
  CellarPins,  // as Walls, or at a level pin over the cellar slab
};

// Of targets that every storey has: the lowest storey with one. Readings of another storey name it
// as the schedule of levels does, "finished-floor:1".
enum class TargetStoreys { None, FromGround, FromFirst };

struct ReadingTarget {
  const char* name;  // "top-of-concrete": also how the keys of the schedule of levels begin
  TargetKind kind;
  const char* words;  // "top of concrete"
  TargetPlace place = TargetPlace::Walls;
  TargetStoreys storeys = TargetStoreys::None;
};

const std::vector<ReadingTarget>& readingTargets();

// Nothing when there is none of this name. A storey behind a colon is not looked at.
const ReadingTarget* findReadingTarget(const std::string& name);

// The storey of "finished-floor:1", or the lowest when none is named; nothing when what stands
// behind the colon is no storey of a job with `storeys` of them, or the target has none.
std::optional<size_t> storeyOfTarget(const std::string& name, size_t storeys);

// The names of a kind, or of all.
std::vector<std::string> readingTargetNames(std::optional<TargetKind> kind = std::nullopt);

}  // namespace model
