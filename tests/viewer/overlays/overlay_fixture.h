// What is laid over a building, taken down without a screen.
#pragma once

#include <gtest/gtest.h>
#include <imgui.h>

#include <memory>
#include <string>
#include <vector>

#include "model/job/read_job.h"
#include "tests/support/folders.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/view_state.h"

namespace viewer {

// A Dear ImGui context with lettering of the plain size.
class OverlayTest : public ::testing::Test {
 protected:
  void SetUp() override {
    context_ = ImGui::CreateContext();
    ImGui::SetCurrentContext(context_);
    ImGui::GetIO().IniFilename = nullptr;
  }
  void TearDown() override { ImGui::DestroyContext(context_); }

  void open(const model::Job& job) {
    model_ = model::buildModel(job);
    scene_ = buildScene(model_);
    picker_ = std::make_unique<Picker>(scene_);
    setOut_ = model::deriveLines(model_.job, model_.settingOut);
    asBuilt_ = model::deriveAsBuilt(model_.job, model_.settingOut);
    facts_ = deriveJobFacts(model_, asBuilt_);
  }
  // "assets/jobs/garage", "tests/data/jobs/extension".
  void open(const std::string& path) {
    const auto read = model::readJobFile(test_support::sourceFolder() + "/" + path + ".toml");
    ASSERT_TRUE(read.job) << path;
    open(*read.job);
  }

  double endOf(const std::string& stage) const {
    const auto index = model_.programme.find(stage);
    EXPECT_TRUE(index) << stage;
    return index ? double(*index) + 1 : 0;
  }

  std::vector<DrawnText> texts(const std::string& view, double time, int width = 1280,
                               int height = 720, const Section& section = {}) {
    loadLettering(unit_);
    PictureOptions how;
    how.width = width;
    how.height = height;
    how.view = view;
    how.time = time;
    how.overlays = overlays_;
    Frame frame = frameOf(model_, scene_, how);
    frame.camera =
        *fittedView(view, scene_, sheetOf(model_, overlays_, float(width), float(height), unit_));
    if (section.on) frame.section = section;
    if (at_) frame.camera.target = *at_;
    frame.camera.distance *= nearer_;
    if (turned_ != 0 || raised_ != 0) frame.camera.orbit(turned_, raised_);
    frame.selected = selected_;
    std::vector<DrawnText> record;
    OverlayOptions with;
    with.picker = picker_.get();
    with.record = &record;
    with.standing = standing_;
    with.readingSet = readingSet_;
    with.setOut = &setOut_;
    with.asBuilt = &asBuilt_;
    with.facts = &facts_;
    ImGui::GetIO().DisplaySize = {float(width), float(height)};
    ImGui::NewFrame();
    drawOverlays(model_, scene_, frame, overlays_, width, height, with);
    ImGui::EndFrame();
    return record;
  }

  float unit_ = 1;
  double nearer_ = 1;               // of the distance of the view
  std::optional<glm::vec3> at_;     // looked at in place of the view's own point
  double turned_ = 0, raised_ = 0;  // radians from the view's own direction
  std::uint32_t selected_ = kNothing;
  std::optional<model::SetUp> standing_;
  std::optional<size_t> readingSet_;
  Overlays overlays_;
  model::Model model_;
  Scene scene_;
  std::unique_ptr<Picker> picker_;
  model::SetOutLines setOut_;
  model::AsBuilt asBuilt_;
  JobFacts facts_;
  ImGuiContext* context_ = nullptr;
};

}  // namespace viewer
