#include <gtest/gtest.h>

#include "model/model.h"
#include "tests/support/demo_job.h"

namespace {

using namespace model;

// Two windows and two doors in the garage and the skew garden room, worked by hand: both jambs of
// each, and under the sill of each window.
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
  EXPECT_NEAR(closers(garage), 2 * (2.100 + 2.100 + 1.050) + 1.2475, 1e-6);
  EXPECT_NEAR(closers(room), 2 * (2.100 + 1.050) + 1.2475, 1e-6);
}

}  // namespace
