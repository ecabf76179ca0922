#include "viewer/panels/keep_view.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "model/job/read_job.h"

namespace viewer {
namespace {

constexpr const char* kText =
    "# a house\n[outline]\ncorners = [[0, 0], [9000, 0], [9000, 7000], [0, 7000]]  # metres\n\n"
    "[walls]\ncavity = 100 # clear\n";

class KeepView : public ::testing::Test {
 protected:
  void SetUp() override {
    path_ = (std::filesystem::temp_directory_path() /
             ("stringcourse_view_" + std::to_string(getpid()) + ".toml"))
                .string();
    std::ofstream(path_) << kText;
  }
  void TearDown() override { std::filesystem::remove(path_); }
  std::string text() const {
    std::ifstream in(path_);
    return {(std::istreambuf_iterator<char>(in)), {}};
  }
  model::Model model() const { return model::buildModel(model::readJobFile(path_).job.value()); }
  static model::KeptView view(double eyeLevel) {
    model::KeptView view;
    view.eye = {-6, -9.5};
    view.eyeLevel = eyeLevel;
    view.target = {3.4, 2.2};
    view.targetLevel = 1.2;
    return view;
  }
  std::string path_;
};

TEST_F(KeepView, WritesItForTheStageAndKeepsTheComments) {
  model::KeptView wanted = view(11.4);
  wanted.cutAway = model::CutAway::Above;
  wanted.cutLevel = 1.5;
  wanted.seeThrough = model::SeeThrough::Others;
  wanted.projection = model::ViewProjection::Parallel;
  ASSERT_EQ(keepView(path_, model(), 3, wanted), std::nullopt);
  EXPECT_NE(text().find("# a house"), std::string::npos);
  EXPECT_NE(text().find("# clear"), std::string::npos);
  const model::Model is = model();
  ASSERT_EQ(is.job.programme.views.size(), 1u);
  EXPECT_EQ(is.programme.stages[3].view, 0u);
  const model::KeptView& kept = is.job.programme.views[0];
  EXPECT_EQ(kept.stage, is.programme.stages[3].id);
  EXPECT_DOUBLE_EQ(kept.eye.x, -6);
  EXPECT_DOUBLE_EQ(kept.eyeLevel, 11.4);
  EXPECT_EQ(kept.cutAway, model::CutAway::Above);
  EXPECT_DOUBLE_EQ(kept.cutLevel.value_or(0), 1.5);
  EXPECT_EQ(kept.seeThrough, model::SeeThrough::Others);
  EXPECT_EQ(kept.projection, model::ViewProjection::Parallel);
}

TEST_F(KeepView, ReplacesWhatTheStageHad) {
  ASSERT_EQ(keepView(path_, model(), 3, view(11.4)), std::nullopt);
  ASSERT_EQ(keepView(path_, model(), 4, view(12)), std::nullopt);
  ASSERT_EQ(keepView(path_, model(), 3, view(13)), std::nullopt);
  const model::Model is = model();
  ASSERT_EQ(is.job.programme.views.size(), 2u);
  EXPECT_DOUBLE_EQ(is.job.programme.views[*is.programme.stages[3].view].eyeLevel, 13);
}

TEST_F(KeepView, ForgetsItWithoutATrace) {
  ASSERT_EQ(keepView(path_, model(), 3, view(11.4)), std::nullopt);
  ASSERT_EQ(forgetView(path_, model(), 3), std::nullopt);
  EXPECT_TRUE(model().job.programme.views.empty());
  EXPECT_EQ(text().find("programme.view"), std::string::npos);
}

TEST_F(KeepView, SaysWhyWhenTheFileHasErrors) {
  const model::Model was = model();
  std::ofstream(path_) << "[outline]\ncorners = 7\n";
  EXPECT_NE(keepView(path_, was, 3, view(11.4)), std::nullopt);
  EXPECT_EQ(text(), "[outline]\ncorners = 7\n");
}

}  // namespace
}  // namespace viewer
