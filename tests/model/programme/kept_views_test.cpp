#include <gtest/gtest.h>

#include "model/model.h"

namespace model {
namespace {

Job houseWithViews(const std::vector<std::string>& stages) {
  Job job;
  job.outline = {{0, 0}, {9, 0}, {9, 7}, {0, 7}};
  for (const std::string& stage : stages) {
    job.programme.views.emplace_back();
    job.programme.views.back().stage = stage;
  }
  return job;
}

TEST(KeptViews, AreFoundByTheirStagesKeyOrNumber) {
  const Model model = buildModel(houseWithViews({"dig-trenches", "2"}));
  const Programme& programme = model.programme;
  EXPECT_TRUE(programme.faults.empty());
  EXPECT_EQ(programme.stages[*programme.find("dig-trenches")].view, 0u);
  EXPECT_EQ(programme.stages[1].view, 1u);
  EXPECT_EQ(programme.stages[0].view, std::nullopt);
}

TEST(KeptViews, OfNoStageAreToldAndLeftOut) {
  const Model model = buildModel(houseWithViews({"dig-trenchs"}));
  ASSERT_EQ(model.programme.faults.size(), 1u);
  EXPECT_EQ(model.programme.faults[0].key, "programme.view[0].stage");
  EXPECT_NE(model.programme.faults[0].instead.find("dig-trenches"), std::string::npos);
}

TEST(KeptViews, OfOneStageAreToldAndTheLastCounts) {
  const Model model = buildModel(houseWithViews({"dig-trenches", "dig-trenches"}));
  ASSERT_EQ(model.programme.faults.size(), 1u);
  EXPECT_EQ(model.programme.faults[0].severity, Severity::Warning);
  EXPECT_EQ(model.programme.stages[*model.programme.find("dig-trenches")].view, 1u);
}

}  // namespace
}  // namespace model
