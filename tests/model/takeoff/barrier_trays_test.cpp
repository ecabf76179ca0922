#include <gtest/gtest.h>

#include "model/model.h"

namespace {

using namespace model;

double amountOf(const Model& m, const std::string& item) {
  for (const TakeoffRow& row : m.takeoff.rows)
    if (row.item == item) return row.amount;
  return 0;
}

// A ring of level barriers by hand: the sheets meet at four mitres half way across a cavity of 100
// between 102.5 and 202.5 in; with one wall left out they end 20 short of its corners.
TEST(BarrierTrays, AreTakenOffByTheMetreWithTheStopEndsThatTheyHave) {
  Job job;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  for (const char* wall : {"A-B", "B-C", "C-D", "D-A"})
    job.cavityBarriers.push_back({wall, "", std::nullopt, 1.2, 0.075});
  const Model ring = buildModel(job);
  EXPECT_NEAR(amountOf(ring, "Cavity trays"), 2 * (6.74 + 4.49) - 8 * 0.1525, 1e-6);
  EXPECT_EQ(amountOf(ring, "Stop ends of cavity trays"), 0);
  job.cavityBarriers.pop_back();
  const Model three = buildModel(job);
  EXPECT_NEAR(amountOf(three, "Cavity trays"), 2 * 6.74 + 4.49 - 4 * 0.1525 - 2 * (0.2025 + 0.020),
              1e-6);
  EXPECT_EQ(amountOf(three, "Stop ends of cavity trays"), 2);
}

}  // namespace
