#include "viewer/stage_views_beside.h"

#include <gtest/gtest.h>

#include "tests/support/demo_job.h"

namespace viewer {
namespace {

class Beside : public ::testing::Test {
 protected:
  model::Model model_ = model::buildModel(test_support::demoJob("orchard-house"));
  Scene scene_ = buildScene(model_);
  Picker picker_{scene_};
};

TEST_F(Beside, AreTheSameAsChosenAllTogether) {
  const std::vector<StageView> all = stageViews(model_, scene_, picker_);
  const StageViewsBeside beside(model_, scene_, picker_);
  for (int i = int(all.size()) - 1; i >= 0; --i) {
    const StageView* view = beside.waitFor(i);
    ASSERT_NE(view, nullptr);
    EXPECT_TRUE(sameView(*view, all[size_t(i)])) << i;
    EXPECT_EQ(beside.at(i), view);
  }
}

TEST_F(Beside, HasNoneForAStageThatThereIsNot) {
  const StageViewsBeside beside(model_, scene_, picker_);
  const int count = int(model_.programme.stages.size());
  for (const int none : {-1, count, count + 7}) {
    EXPECT_EQ(beside.at(none), nullptr);
    EXPECT_EQ(beside.waitFor(none), nullptr);
  }
}

TEST_F(Beside, CanBeGivenUpAtOnce) {
  for (int i = 0; i < 3; ++i) StageViewsBeside(model_, scene_, picker_);
}

TEST_F(Beside, OfAModelWithoutStagesAreNone) {
  const model::Model empty;
  const Scene scene = buildScene(empty);
  const Picker picker(scene);
  EXPECT_EQ(StageViewsBeside(empty, scene, picker).waitFor(0), nullptr);
}

}  // namespace
}  // namespace viewer
