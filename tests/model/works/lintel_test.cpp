#include <gtest/gtest.h>

#include "tests/support/demo_job.h"
#include "tests/support/wall_works.h"

namespace {

using namespace model;
using test_support::demoJob;
using test_support::find;
using test_support::wallsOf;

TEST(Lintels, BearOneHundredAndFiftyAtEachEnd) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  const Element* lintel = find(works, "wall A-B/outer leaf/lintel over Living room window");
  ASSERT_NE(lintel, nullptr);
  const Bounds b = bounds(lintel->solid);
  // Check M20: opening 1810 and 150 mm bearing each end.
  EXPECT_NEAR(b.high.x - b.low.x, 1.810 + 0.300, 1e-9);
  EXPECT_NEAR(b.low.x, 1.340 - 0.150, 1e-9);
  EXPECT_NEAR(b.low.z, 2.100, 1e-9);
  EXPECT_NEAR(b.high.z, 2.250, 1e-9);
  EXPECT_EQ(lintel->placed.stage.kind, StageKind::Lintels);
}

TEST(Lintels, AtAHeightOfTheirOwnRiseWithTheirLift) {
  Job job = demoJob("orchard-house");
  for (Opening& o : job.openings) {
    if (o.name == "Side window") o.head = 1.950;
  }
  const Works works = wallsOf(job, deriveSettingOut(job));
  const Element* lintel = find(works, "wall D-E/inner leaf/lintel over Side window");
  ASSERT_NE(lintel, nullptr);
  EXPECT_EQ(lintel->placed.stage, (StageKey{StageKind::RunIn, 0, 2}));
  // Nothing of a corner or a reveal stands over it before it is laid.
  for (const Element& e : works.elements) {
    if (e.wall != "D-E" || e.placed.stage.kind != StageKind::RaiseCorners) continue;
    if (e.kind == ElementKind::WallTie) continue;  // those of both corners are one
    if (e.placed.stage.lift != 2 || e.placed.stage.storey != 0) continue;
    const Bounds held = bounds(lintel->solid);
    for (const Vec3& p : e.solid.points)
      EXPECT_FALSE(p.z > held.low.z + 1e-6 && p.y > held.low.y + 1e-6 && p.y < held.high.y - 1e-6)
          << e.id;
  }
}

TEST(Lintels, StayUnderTheRaftersAtTheEaves) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  const Element* outer = find(works, "wall A-B/outer leaf/lintel over Bedroom 1 window");
  ASSERT_NE(outer, nullptr);
  EXPECT_NEAR(outer->top, 4.875, 1e-9);
  const Element* inner = find(works, "wall A-B/inner leaf/lintel over Bedroom 1 window");
  ASSERT_NE(inner, nullptr);
  EXPECT_NEAR(inner->top, 4.950, 1e-9);
}

TEST(Lintels, ShareAPierThatIsTooNarrowForTwoBearings) {
  Job job = demoJob("smallest");
  Opening left;
  left.name = "Left";
  left.wall = "A-B";
  left.from = "A";
  left.at = 1.5;
  left.width = 1;
  Opening right = left;
  right.name = "Right";
  right.at = 2.7;
  job.openings = {left, right};
  const Works works = wallsOf(job, deriveSettingOut(job));
  const Bounds a = bounds(find(works, "wall A-B/outer leaf/lintel over Left")->solid);
  const Bounds b = bounds(find(works, "wall A-B/outer leaf/lintel over Right")->solid);
  EXPECT_NEAR(a.high.x, 2.6, 1e-9);
  EXPECT_NEAR(b.low.x, 2.6, 1e-9);
}

}  // namespace
