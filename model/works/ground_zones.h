// Where on plan the ground is stripped, dug, and built in: the outlines that buildGround works
// from.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/geometry/grown.h"
#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/garden_plan.h"

namespace model {

// A standing building's place in the ground.
struct GroundObstacle {
  std::string name;
  Polygon outline;    // anticlockwise
  double bottom = 0;  // level of its underside
  bool stays = true;  // false: taken down before the topsoil is stripped
};

// The foundation under one wall, mitred at the corners and central under the wall.
struct FoundationBand {
  Polygon band;
  double outer = 0, inner = 0;          // metres inward from the outer face; outer is negative
  double startInner = 0, endInner = 0;  // s of the mitres' inner ends
};

// A length under the end of a higher run through which the lower run goes on, so that the concrete
// laps at the step.
struct FoundationLap {
  size_t lower = 0, upper = 0;  // indices of foundation runs
  double from = 0, to = 0;      // s on the upper run's wall
};

// One side of a battered dig: over `area` the dug surface rises from the bottom's edge.
struct BatterSide {
  Polygon area;  // convex
  Plane surface;
};

struct GroundZones {
  Polygon site;
  std::vector<GroundObstacle> obstacles;
  Polygon inside;                     // inner face of the walls
  Regions strip;                      // where topsoil is stripped
  std::vector<FoundationBand> bands;  // by wall
  std::vector<FoundationLap> laps;
  // Empty without a cellar:
  Polygon cellar, cellarInside, cellarToe, cellarMembrane;
  Regions cellarBottom;  // the flat bottom of its dig, working space included
  std::vector<BatterSide> batter;
  std::vector<double> benches;        // levels from the first bench's bottom down to the formation
  std::vector<GardenGround> gardens;  // by garden wall
  double base = 0;                    // underside of the ground that is shown

  // The run of a wall at a point under or beside it.
  static size_t runAt(const SettingOut& settingOut, size_t wall, const Vec2& p);
};

FoundationBand foundationBand(const SettingOut& settingOut, size_t wall);
// The steps in the concrete, each with its lap. `bands` by wall.
std::vector<FoundationLap> foundationLaps(const Job& job, const SettingOut& settingOut,
                                          const std::vector<FoundationBand>& bands);
GroundZones deriveGroundZones(const Job& job, const SettingOut& settingOut);

// Length by which the concrete laps at a step. Approved Document A (2004 edition incorporating
// 2010 and 2013 amendments), 2E2(d): strips twice the step, the thickness or 300 mm, trench fill
// twice the step or 1 m, whichever is greater.
double lapAtStep(FoundationKind kind, double step, double thickness);

// The area over which topsoil is stripped.
Regions strippedArea(const Job& job, const SettingOut& settingOut);

}  // namespace model
