// What is left out of a leaf: openings, and the lintels over them.
#pragma once

#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/settingout/stage_key.h"
#include "model/walls/corbels.h"
#include "model/walls/damp_course_steps.h"
#include "model/walls/movement_joints.h"
#include "model/walls/wall_layer.h"

namespace model {

// The damp course lies under its level; what is below ends under it.
inline constexpr double kDampCourseThickness = 0.002;

// Of a cavity closer, square to its opening: common practice, no source.
inline constexpr double kCloserWidth = 0.075;

enum class LeafSide { Outer, Inner };

struct LintelPlan {
  size_t opening = 0;  // into SettingOut::openings
  Rect rect;           // in the leaf's elevation
  StageKey stage;
  bool ownStage = false;  // laid in Lintels, when `lift` is complete; else while `lift` rises
  StageKey lift;          // of RunIn: the leaf's that brings it up to the bearing; none at gables
};

// A padstone under one end of a lintel in the inner leaf, as the drawing asks for it.
struct PadstonePlan {
  size_t lintel = 0;  // into LeafPlan::lintels
  bool atStart = true;
  Rect rect;  // a course of blocks high
};

// A sill under a window, in the outer leaf, between the jambs.
struct SillPlan {
  size_t opening = 0;  // into SettingOut::openings
  Rect rect;
};

// Where a ventilator goes through the leaf: in the place of a brick, through the inner leaf too.
struct VentPlan {
  size_t airBrick = 0;  // into Job::airBricks
  Rect rect;            // of the air brick, or of the hole for its sleeve
};

// One leaf of one wall: its layer, how far up it stands level, its holes.
struct LeafPlan {
  size_t wall = 0;
  LeafSide side = LeafSide::Outer;
  WallLayer layer;
  double levelTop = 0;  // to here all along; a gable goes on above
  std::vector<Rect> openings;
  std::vector<LintelPlan> lintels;
  std::vector<PadstonePlan> padstones;
  std::vector<SillPlan> sills;
  std::vector<VentPlan> vents;
  std::vector<MovementGap> gaps;        // in the outer leaf
  std::vector<DampStepPlan> dampSteps;  // in the outer leaf
  std::vector<CorbelPlan> corbels;      // of the outer leaf

  // All of these but the gaps, which are as high as the leaf, and the steps, which are thin.
  std::vector<Rect> cuts() const;
};

LeafPlan leafPlan(const Job& job, const SettingOut& settingOut, size_t wall, LeafSide side);

// Where a leaf stands level when a lift ends at `level`, all along but under the lintels that are
// laid next: `bearings` are what it is made up with there, from that level to theirs.
double leafStop(const Job& job, const SettingOut& settingOut, const LeafPlan& plan, double level);
std::vector<Rect> bearings(const Job& job, const SettingOut& settingOut, const LeafPlan& plan,
                           const Lift& lift);

// The openings of a wall as holes in one of its layers. One that comes within 10 mm of the layer's
// end takes the end with it.
std::vector<Rect> openingsIn(const SettingOut& settingOut, const WallLayer& layer, size_t wall);

// The level to which a layer of a wall stands level all along: at hips under the rafters, at a
// gable where the slope begins.
double levelTopOf(const Job& job, const SettingOut& settingOut, const WallLayer& layer, size_t wall,
                  bool wholeCourses);

const char* nameOf(LeafSide side);  // "outer leaf"
// An opening's name for people and ids, unique in the job: "Kitchen window", "Window 3".
std::string openingLabel(const SettingOut& settingOut, size_t opening);

}  // namespace model
