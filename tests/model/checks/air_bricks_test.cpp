// Air bricks against the floor that they air and the ground outside.
#include <gtest/gtest.h>

#include "model/checks/check_building.h"
#include "model/job/read_job.h"

namespace {

using namespace model;

Job airedHouse(GroundFloorKind kind, double level, double ground = -0.45) {
  Job job;
  job.outline = {{0, 0}, {8.99, 0}, {8.99, 5.39}, {0, 5.39}};
  job.site.spots = {{{-1, -1}, ground}, {{10, -1}, ground}, {{10, 6}, ground}, {{-1, 6}, ground}};
  job.groundFloor.kind = kind;
  job.airBricks = {{"A-B", "A", 2.0, level}};
  EXPECT_FALSE(hasErrors(validateJob(job, "", {})));
  return job;
}

bool warns(const Job& job, const std::string& words) {
  for (const Problem& p : checkBuilding(job, deriveSettingOut(job), "", {}))
    if (p.severity == Severity::Warning && p.what.find(words) != std::string::npos) return true;
  return false;
}

TEST(AirBricks, BesideASolidFloorAirNothing) {
  EXPECT_TRUE(warns(airedHouse(GroundFloorKind::Slab, -0.227), "airs nothing"));
  EXPECT_FALSE(warns(airedHouse(GroundFloorKind::Slab, 0.300), "airs nothing"));  // of the room
  EXPECT_FALSE(warns(airedHouse(GroundFloorKind::Suspended, -0.227), "airs nothing"));
}

TEST(AirBricks, OverTheUndersideOfTheBeamsMissTheVoid) {
  Job job = airedHouse(GroundFloorKind::Suspended, -0.227);  // the beams' underside is at -0.325
  EXPECT_TRUE(warns(job, "air brick 1, from -0.227 m to -0.152 m, lies over the underside"));
  job.groundFloor.screed = job.groundFloor.insulation = 0;  // at -0.150
  EXPECT_FALSE(warns(job, "air brick 1"));
}

TEST(AirBricks, StayClearOfTheGroundOutside) {
  const auto near = [](double ground) {
    Job job = airedHouse(GroundFloorKind::Suspended, -0.227, ground);
    job.groundFloor.screed = job.groundFloor.insulation = 0;
    return job;
  };
  EXPECT_FALSE(warns(near(-0.300), "air brick 1"));  // its clay begins at -0.217
  EXPECT_TRUE(warns(near(-0.280), "air brick 1 is only 63 mm above the ground outside, -0.280 m"));
  EXPECT_TRUE(warns(near(-0.200), "air brick 1 is in the ground outside, which is at -0.200 m"));
}

}  // namespace
