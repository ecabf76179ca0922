#include <gtest/gtest.h>

#include "model/model.h"

namespace {

using namespace model;

double amountOf(const Model& m, const std::string& item) {
  for (const TakeoffRow& row : m.takeoff.rows)
    if (row.item == item) return row.amount;
  return 0;
}

TEST(DampCourseSteps, AreTakenOffWithTheDampCourseOfTheirWidth) {
  Job job;
  job.outline = {{0, 0}, {8.99, 0}, {8.99, 5.39}, {0, 5.39}};
  const Model plain = buildModel(job);
  job.dampCourseSteps = {{"A-B", "A", 2.5, 4.7, 3}};
  const Model stepped = buildModel(job);
  const auto more = [&](const std::string& item) {
    return amountOf(stepped, item) - amountOf(plain, item);
  };
  EXPECT_NEAR(more("Damp course, 103 wide"), 2.2 + 2 * 0.225, 1e-6);
  EXPECT_NEAR(more("Cavity trays"), 2.2, 1e-6);
  EXPECT_EQ(more("Stop ends of cavity trays"), 2);
  EXPECT_GE(more("Weep vents"), 3);
}

}  // namespace
