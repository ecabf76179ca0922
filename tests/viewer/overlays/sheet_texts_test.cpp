// Whole sheets, laid out without OpenGL: every text of every stage, view and size.
#include <gtest/gtest.h>
#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <set>

#include "model/level_text.h"
#include "tests/support/demo_job.h"
#include "tests/viewer/overlays/texts_apart.h"
#include "viewer/camera.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/view_state.h"

namespace viewer {
namespace {

struct Size {
  int width, height;
  float unit;
};
// As a window or a picture of that size has them.
constexpr Size kSizes[] = {{1280, 720, 1},  {800, 500, 0.8f},   {800, 500, 1},  {1920, 1080, 1.5f},
                           {1920, 1080, 1}, {900, 1600, 0.88f}, {3840, 2160, 3}};

// A Dear ImGui context with lettering and no screen.
class SheetTexts : public ::testing::TestWithParam<std::string> {
 protected:
  void SetUp() override {
    context_ = ImGui::CreateContext();
    ImGui::SetCurrentContext(context_);
    ImGui::GetIO().IniFilename = nullptr;
    model_ = model::buildModel(test_support::demoJob(GetParam()));
    scene_ = buildScene(model_);
    picker_ = std::make_unique<Picker>(scene_);
    setOut_ = model::deriveLines(model_.job, model_.settingOut);
    asBuilt_ = model::deriveAsBuilt(model_.job, model_.settingOut);
    facts_ = deriveJobFacts(model_, asBuilt_);
  }
  void TearDown() override { ImGui::DestroyContext(context_); }

  static Overlays all() {
    return {true, true, true, true, true, true, true, true, true, true, true, true};
  }

  PictureOptions options(const Size& size, const std::string& view, int stage) const {
    PictureOptions options;
    options.width = size.width;
    options.height = size.height;
    options.view = view;
    options.time = stage + 1;
    options.overlays = all();
    return options;
  }

  std::vector<DrawnText> texts(const Size& size, const std::string& view, int stage,
                               double nearer = 1) {
    PictureOptions how = options(size, view, stage);
    Frame frame = frameOf(model_, scene_, how);
    // For this size's unit, which need not be the one a picture would choose.
    const SheetLayout layout =
        sheetOf(model_, how.overlays, float(size.width), float(size.height), size.unit);
    frame.camera = *fittedView(view, scene_, layout);
    frame.camera.distance *= nearer;
    std::vector<DrawnText> record;
    OverlayOptions with;
    with.picker = picker_.get();
    with.record = &record;
    with.setOut = &setOut_;
    with.asBuilt = &asBuilt_;
    with.facts = &facts_;
    ImGui::GetIO().DisplaySize = {float(size.width), float(size.height)};
    ImGui::NewFrame();
    drawOverlays(model_, scene_, frame, how.overlays, size.width, size.height, with);
    ImGui::EndFrame();
    return record;
  }

  model::Model model_;
  Scene scene_;
  std::unique_ptr<Picker> picker_;
  model::SetOutLines setOut_;
  model::AsBuilt asBuilt_;
  JobFacts facts_;
  ImGuiContext* context_ = nullptr;
};

std::string place(const Size& size, const std::string& view, int stage) {
  return std::to_string(size.width) + "x" + std::to_string(size.height) + " at " +
         std::to_string(size.unit) + ", " + view + ", stage " + std::to_string(stage + 1);
}

void expectLevels(const std::vector<DrawnText>& all, const model::SettingOut& out,
                  const std::string& where) {
  std::set<std::string> said;
  for (const DrawnText& text : all) said.insert(text.text);
  for (const auto& level : out.schedule)
    // Lifts yield where there is no room for them.
    if (level.key.rfind("lift:", 0) != 0 && !said.count(model::levelText(level.level)))
      ADD_FAILURE() << level.name << " is left out: " << where;
}

TEST_P(SheetTexts, GiveEveryLevelAndStandLegiblyApartAtEveryStageViewAndSize) {
  const int stages = int(model_.programme.stages.size());
  for (const Size& size : kSizes) {
    loadLettering(size.unit);
    // All stages on the commonest sheet, every fourth and the last on others.
    const int step = size.height == 720 ? 1 : 4;
    const Box sheet{0, 0, float(size.width), float(size.height)};
    for (const std::string& view : standardViewNames())
      for (int stage = (stages - 1) % step; stage < stages && !HasFailure(); stage += step) {
        const auto all = texts(size, view, stage);
        expectApart(all, sheet, place(size, view, stage));
        expectLevels(all, model_.settingOut, place(size, view, stage));
      }
  }
}

TEST_P(SheetTexts, KeepEveryLevelWithinTheSheetHoweverNearTheEyeComes) {
  loadLettering(1);
  for (const std::string view : {"section", "south-west"})
    for (const double nearer : {0.5, 0.2, 0.05}) {
      const auto all = texts(kSizes[0], view, 3, nearer);
      const std::string where = view + " from " + std::to_string(nearer);
      expectApart(all, {0, 0, 1280, 720}, where);
      expectLevels(all, model_.settingOut, where);
    }
}

TEST_P(SheetTexts, LeaveTheBuildingItsOwnPlaceInEveryStandardView) {
  for (const Size& size : kSizes)
    for (const std::string& view : standardViewNames()) {
      const PictureOptions how = options(size, view, 0);
      const SheetLayout layout =
          sheetOf(model_, how.overlays, float(size.width), float(size.height), size.unit);
      const bool plan = view == "plan";
      const glm::vec3 low = plan ? scene_.low : scene_.buildingLow;
      const glm::vec3 high = plan ? scene_.high : scene_.buildingHigh;
      const Camera camera = *fittedView(view, scene_, layout);
      // From a corner what is seen over the ground, else all of it.
      std::vector<glm::vec3> points = scene_.silhouette;
      if (camera.parallel) points.clear();
      for (int i = 0; i < 8 && camera.parallel; ++i)
        points.push_back({i & 1 ? high.x : low.x, i & 2 ? high.y : low.y, i & 4 ? high.z : low.z});
      float widest = 0;
      Box seen{1e9f, 1e9f, -1e9f, -1e9f};
      for (const glm::vec3& point : points) {
        const auto at = camera.project(point, double(size.width) / size.height);
        ASSERT_TRUE(at);
        const glm::vec2 p{at->x * float(size.width), at->y * float(size.height)};
        EXPECT_TRUE(layout.drawing.grown(1.5f * size.unit).contains(p))
            << view << " " << size.width << "x" << size.height;
        seen = {std::min(seen.left, p.x), std::min(seen.top, p.y), std::max(seen.right, p.x),
                std::max(seen.bottom, p.y)};
      }
      widest =
          std::max(seen.width() / layout.drawing.width(), seen.height() / layout.drawing.height());
      EXPECT_GT(widest, 0.5f) << view << " " << size.width << "x" << size.height;
    }
}

INSTANTIATE_TEST_SUITE_P(Jobs, SheetTexts, ::testing::ValuesIn(test_support::demoNames()),
                         [](const auto& job) {
                           std::string name = job.param;
                           name.erase(std::remove(name.begin(), name.end(), '-'), name.end());
                           return name;
                         });

// Of two colours, by WCAG 2.1, "relative luminance" and "contrast ratio" (definitions).
double contrast(unsigned a, unsigned b) {
  const auto luminance = [](unsigned rgb) {
    const auto part = [&](int shift) {
      const double c = ((rgb >> shift) & 255) / 255.0;
      return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * part(16) + 0.7152 * part(8) + 0.0722 * part(0);
  };
  const double la = luminance(a), lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

TEST(SheetColours, OfWordsStandOutFromPaperByTheStricterRule) {
  for (const unsigned rgb :
       {ink::kInk, ink::kSoft, ink::kLevelWords, ink::kStringWords, ink::kCaution})
    EXPECT_GE(contrast(rgb, ink::kPaper), 7) << std::hex << rgb;  // WCAG 2.1, criterion 1.4.6
  EXPECT_GE(contrast(ink::kInk, ink::kTapeDone), 7);
}

}  // namespace
}  // namespace viewer
