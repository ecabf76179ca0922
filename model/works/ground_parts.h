// The things that buildGround makes, each under its number in the strata.
#pragma once

#include <array>
#include <functional>
#include <vector>

#include "model/works/element.h"
#include "model/works/ground_zones.h"

namespace model {

// The dig inside the walls down to the oversite formation, which goes with the trenches' stage.
inline constexpr const char* kReducedLevelId = "spoil/reduced level";

// An element that waits for its solid; `placing` sets its times once the solid is known.
struct GroundPart {
  Element element;
  std::function<void(Element&, const Bounds&)> placing;
};

struct GroundParts {
  std::vector<GroundPart> parts;
  // Numbers into `parts`:
  std::uint32_t ground = 0, topsoilKept = 0, topsoilStripped = 0;
  std::vector<std::uint32_t> benches;
  std::uint32_t reducedLevel = 0;
  std::vector<std::uint32_t> trench, massFill, blinding, foundation;  // by foundation run
  std::uint32_t cellarBlinding = 0, cellarSlab = 0, cellarWall = 0, cellarMembrane = 0;
  std::uint32_t cellarMakeUp = 0, cellarScreed = 0;
  std::uint32_t cellarBackfill = 0, trenchBackfillOutside = 0, trenchBackfillInside = 0;
  std::vector<std::uint32_t> gardenTrench, gardenFoundation, gardenBackfill;  // by garden wall
  std::uint32_t hardcore = 0, topsoilBack = 0;
};

// The share of the digging and pouring stages in which each foundation run has its turn, lowest
// runs first: run i from turn[i] / n to (turn[i] + 1) / n.
std::vector<double> foundationTurns(const SettingOut& settingOut);

// The share of the trench stage in which the run with this turn is dug.
std::array<double, 2> trenchDigShare(double turn, double runs);

// How the fill of a backfilling stage rises. Supports that come out just ahead of it share its
// range, so that they are gone everywhere before it arrives.
Placement backfillRising(StageKind stage, const SettingOut& settingOut);
Placement supportLeaving(StageKind stage, const SettingOut& settingOut);

GroundParts makeGroundParts(const Job& job, const SettingOut& settingOut, const GroundZones& zones);

}  // namespace model
