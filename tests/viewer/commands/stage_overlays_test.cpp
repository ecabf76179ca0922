#include "viewer/commands/stage_overlays.h"

#include <gtest/gtest.h>

namespace viewer {
namespace {

using Kind = model::StageKind;

TEST(StageOverlays, OfStagesThatSetOutHaveLinesLettersAndDimensions) {
  for (const Kind kind : {Kind::SettingOut, Kind::LinesBack, Kind::WallsBelowDampCourse}) {
    const Overlays o = overlaysOf({kind});
    EXPECT_TRUE(o.lines && o.corners && o.dimensions);
  }
  for (const Kind kind : {Kind::TrenchDig, Kind::Rafters, Kind::Completion}) {
    const Overlays o = overlaysOf({kind});
    EXPECT_FALSE(o.lines || o.corners || o.dimensions);
  }
}

TEST(StageOverlays, AlwaysHaveTheLevelsAndTheWords) {
  for (const Kind kind : {Kind::LevelPins, Kind::FoundationPour, Kind::GroundSlab}) {
    const Overlays o = overlaysOf({kind});
    EXPECT_TRUE(o.levels && o.captions && o.titleBlock && o.tape);
  }
}

}  // namespace
}  // namespace viewer
