// What is built into the cavity of one wall, and where: closers, barriers, trays, ties. Insulation
// and the fill at the foot keep clear of all of them.
#pragma once

#include <vector>

#include "model/walls/gable_profile.h"
#include "model/walls/leaf_plan.h"
#include "model/works/cavity_barriers.h"
#include "model/works/cavity_closers.h"

namespace model {

// A tray: a sheet that rises from a bed of the outer leaf, over a lintel, over a level barrier or
// from where the damp course is stepped up, to a bed of the inner leaf.
struct TrayPlan {
  enum class Over { Lintel, Barrier, Step };
  Over over = Over::Lintel;
  size_t opening = 0;        // over a lintel: into SettingOut::openings
  size_t lintel = 0;         // and into CavityPlan::outer.lintels
  size_t barrier = 0;        // over a barrier: into CavityPlan::barriers
  size_t step = 0;           // from a step: into CavityPlan::outer.dampSteps
  size_t piece = 0;          // of the stretches over that barrier, along the wall
  double from = 0, to = 0;   // s: as long as the lintel, or of the stretch
  double low = 0, high = 0;  // levels of the sheet's underside at the outer and the inner leaf
  bool stopFrom = true;      // a stop end there; else it goes on round the corner, mitred
  bool stopTo = true;        // the same at the other end
  Rect rect() const;         // what it takes of the cavity's elevation
  Rect pastCorners() const;  // the same, and on past a corner where it goes round it
  double sheetAt(const WallLayer& cavity, double d) const;  // its underside, d metres into the wall
};

inline constexpr double kTrayThickness =
    0.002;  // of the sheet, upright: common practice, no source

// A wall tie. Its ends lie in a bed joint of each leaf; only what crosses the cavity is modelled.
struct TiePlan {
  enum class Part { BelowDampCourse, Lift, Gable };
  double s = 0;
  double outer = 0, inner = 0;  // levels of its middle at either face of the cavity
  Part part = Part::Lift;
  size_t lift = 0;     // into SettingOut::lifts
  bool extra = false;  // beside an opening, a verge or a movement joint
  Rect rect() const;   // what it takes of the cavity's elevation
};

// A tie's own size: common practice, no source.
inline constexpr double kTieWidth = 0.020, kTieThickness = 0.003;

struct CavityPlan {
  size_t wall = 0;
  WallLayer layer;
  LeafPlan outer, inner;
  double levelTop = 0;          // to here all along; a gable goes on above
  std::vector<FacePair> slope;  // of a gable: the line that the rafters draw over the cavity
  std::vector<Rect> openings;
  std::vector<CloserPlan> closers;
  std::vector<Rect> sleeves;  // from air bricks through to the inner leaf
  std::vector<BarrierPlan> barriers;
  std::vector<TrayPlan> trays;
  std::vector<TiePlan> ties;  // from the bottom up, along the wall in each bed

  bool empty() const { return layer.empty() || outer.layer.empty() || inner.layer.empty(); }
  // The level under which the cavity is closed by the roof, between two places along the wall.
  double topBetween(double s0, double s1) const;
  // Lengths over which a gable's slope is under a level, past the ends of the wall where it is so
  // up to them; `begins`: from the length's start on. None where there is no slope.
  struct LowSlope {
    double from = 0, to = 0;
    bool begins = true;
  };
  std::vector<LowSlope> underSlope(double level) const;
};

// Bed joints of the inner leaf: where a tie may lie, and a tray's upper edge. Levels of the
// undersides of the joints, lowest first.
struct BlockBed {
  double level = 0;
  TiePlan::Part part = TiePlan::Part::Lift;
  size_t lift = 0;
};
std::vector<BlockBed> blockBeds(const Job& job, const SettingOut& settingOut,
                                const LeafPlan& inner);

CavityPlan cavityPlan(const Job& job, const SettingOut& settingOut, size_t wall);

// Those that cavityPlan() puts together; each reads what is in the plan before it.
void planTrays(const Job& job, const SettingOut& settingOut, CavityPlan& plan);
// Over level barriers, along the wall but for openings and what is built in round them; a stop end
// at every end. meetRoundCorner() takes off those between two walls where the trays of both are at
// one level.
void planBarrierTrays(const Job& job, const SettingOut& settingOut, CavityPlan& plan);
// As long as the step, with a stop end at either end. Before the barriers' trays, which keep off.
void planStepTrays(const Job& job, const SettingOut& settingOut, CavityPlan& plan);
void meetRoundCorner(const CavityPlan& other, bool atStart, CavityPlan& plan);
void planTies(const Job& job, const SettingOut& settingOut, CavityPlan& plan);

}  // namespace model
