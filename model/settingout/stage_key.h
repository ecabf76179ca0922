// The stages of the work, by name: what a crew is told to do next.
#pragma once

#include <compare>

namespace model {

// Kinds of stage in the order a builder works. A storey's lifts interleave: the programme sorts
// StageKeys with `stageOrder`, not by this enum alone.
enum class StageKind {
  Existing,  // there before work starts; never a stage
  SiteSetUp,
  Demolition,
  TopsoilStrip,
  SettingOut,
  CellarDig,
  CellarBlinding,
  CellarSlab,
  CellarForms,
  CellarWalls,
  CellarMembrane,
  TrenchDig,
  TrenchBlinding,
  LevelPins,
  FoundationPour,
  LinesBack,
  WallsBelowDampCourse,
  CavityFill,
  FloorOverCellar,
  CellarBackfill,
  TrenchBackfill,
  Oversite,
  GroundSlab,
  DampCourse,
  ScaffoldLift,  // storey, lift: put up before that lift is built
  RaiseCorners,  // storey, lift
  RunIn,         // storey, lift
  Lintels,       // storey
  UpperFloor,    // storey: joists and deck of that storey's floor
  ScaffoldRoof,  // rails or a platform at the eaves, platforms up the gables
  WallPlate,
  Gables,
  Rafters,
  Fascia,  // fascia and barge boards
  RoofCovering,
  WindowsAndDoors,
  Render,
  StrikeScaffold,
  FloorFinish,  // insulation and screed
  Stairs,       // storey: the stair that lands on that storey's floor
  GardenFoundations,
  GardenWalls,
  OutsideWorks,
  Completion,
  Own,  // the job's own, by `lift`: its place in ProgrammeInput::ownStages
};

struct StageKey {
  StageKind kind = StageKind::Existing;
  int storey = 0;
  int lift = 0;
  int part = 0;  // 0: all of it, or what is left; else which of ProgrammeInput::splits, from 1
  auto operator<=>(const StageKey&) const = default;
};

}  // namespace model
