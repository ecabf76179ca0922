#include <gtest/gtest.h>

#include "model/model.h"
#include "tests/support/demo_job.h"

namespace {

using namespace model;

// A window and two doors in the garage, a window and a door in the garden room, worked by hand:
// both jambs of each, and its width.
TEST(CavityClosers, AreTakenOffByTheMetre) {
  const Model garage = buildModel(test_support::demoJob("garage"));
  const Model room = buildModel(test_support::demoJob("skew-corner"));
  const auto closers = [](const Model& m) {
    for (const TakeoffRow& row : m.takeoff.rows) {
      if (row.item == "Cavity closers, 100") {
        EXPECT_EQ(row.unit, "m");
        return row.amount;
      }
    }
    return 0.0;
  };
  EXPECT_NEAR(closers(garage), 2 * (2.100 + 2.100 + 1.050) + 2.485 + 0.910 + 1.2475, 1e-6);
  EXPECT_NEAR(closers(room), 2 * (2.100 + 1.050) + 2.260 + 1.2475, 1e-6);
}

}  // namespace
