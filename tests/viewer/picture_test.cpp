#include "viewer/picture.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstring>

#include <png.h>

#include <glm/geometric.hpp>

#include "tests/support/demo_job.h"
#include "tests/support/sample_model.h"
#include "viewer/scene.h"
#include "viewer/section.h"

namespace {

using viewer::Image;
using viewer::PictureOptions;

model::Model modelOf(const std::string& job) {
  return model::buildModel(test_support::demoJob(job));
}

// How many pixels are not paper.
long drawn(const Image& image) {
  long n = 0;
  for (size_t i = 0; i < image.rgba.size(); i += 4)
    n += std::abs(image.rgba[i] - 0xf7) + std::abs(image.rgba[i + 2] - 0xec) > 12;
  return n;
}

long differing(const Image& a, const Image& b) {
  long n = 0;
  for (size_t i = 0; i < a.rgba.size(); i += 4) n += std::memcmp(&a.rgba[i], &b.rgba[i], 3) != 0;
  return n;
}

class PictureTest : public ::testing::Test {
 protected:
  void SetUp() override {
    std::string why;
    offscreen_ = viewer::Offscreen::create(why);
    ASSERT_TRUE(offscreen_) << why;
  }
  static PictureOptions small(double time, const char* view = "south-west") {
    PictureOptions options;
    options.width = 480;
    options.height = 300;
    options.time = time;
    options.view = view;
    return options;
  }
  std::unique_ptr<viewer::Offscreen> offscreen_;
};

TEST_F(PictureTest, HasTheSizeThatWasAskedForAndIsNotBlank) {
  const Image image = renderPicture(support::sampleModel(), *offscreen_, small(5));
  EXPECT_EQ(image.width, 480);
  EXPECT_EQ(image.height, 300);
  EXPECT_EQ(image.rgba.size(), 480u * 300 * 4);
  EXPECT_GT(drawn(image), 10000);
}

TEST_F(PictureTest, IsTheSameEachTime) {
  const auto model = support::sampleModel();
  const Image once = renderPicture(model, *offscreen_, small(2.5));
  viewer::Picturer picturer(model, *offscreen_);
  picturer.picture(small(4, "plan"));  // what went before leaves no trace
  EXPECT_EQ(differing(once, picturer.picture(small(2.5))), 0);
}

TEST_F(PictureTest, EveryViewShowsSomethingOfItsOwn) {
  const auto model = support::sampleModel();
  viewer::Picturer picturer(model, *offscreen_);
  std::vector<Image> images;
  for (const auto& view : viewer::standardViewNames()) {
    images.push_back(picturer.picture(small(5, view.c_str())));
    EXPECT_GT(drawn(images.back()), 5000) << view;
    for (size_t i = 0; i + 1 < images.size(); ++i)
      EXPECT_GT(differing(images[i], images.back()), 100) << view;
  }
}

TEST_F(PictureTest, EveryDemoJobIsSeenAtTheEndOfItsProgramme) {
  for (const std::string& job : test_support::demoNames()) {
    const auto model = modelOf(job);
    viewer::Picturer picturer(model, *offscreen_);
    const double last = picturer.scene().stageCount;
    EXPECT_GT(drawn(picturer.picture(small(last))), 20000) << job;
    EXPECT_GT(drawn(picturer.picture(small(last, "section"))), 10000) << job;
  }
}

TEST_F(PictureTest, EveryStageOfTheDemoThatBringsOrTakesSomethingChangesThePicture) {
  const auto model = modelOf("garage");
  viewer::Picturer picturer(model, *offscreen_);
  const auto& scene = picturer.scene();
  PictureOptions options = small(0);
  options.frame.seeThrough = viewer::SeeThrough::Ground;  // for what is done under ground
  for (size_t stage = 0; stage < model.programme.stages.size(); ++stage) {
    const auto s = static_cast<float>(stage);
    const bool changes =
        std::any_of(scene.elements.begin(), scene.elements.end(), [&](const auto& range) {
          return (range.appears > s && range.appears < s + 1) ||
                 (range.goes > s && range.goes <= s + 1);
        });
    if (!changes) continue;
    options.time = static_cast<double>(stage);
    const Image before = picturer.picture(options);
    options.time = static_cast<double>(stage) + 1;
    EXPECT_GT(differing(before, picturer.picture(options)), 20)
        << model.programme.stages[stage].name;
  }
}

TEST_F(PictureTest, OverlaysAreLaidOverTheBuilding) {
  const auto model = modelOf("garage");
  viewer::Picturer picturer(model, *offscreen_);
  PictureOptions options = small(1e3);
  options.width = 1280;
  options.height = 720;
  const Image plain = picturer.picture(options);
  options.overlays.captions = options.overlays.titleBlock = options.overlays.tape = true;
  const Image lettered = picturer.picture(options);
  EXPECT_GT(differing(plain, lettered), 5000);
  EXPECT_EQ(differing(lettered, picturer.picture(options)), 0);
  options.overlays = {};
  EXPECT_EQ(differing(plain, picturer.picture(options)), 0);
}

TEST_F(PictureTest, TheBuildingIsFramedInWhatTheFurnitureLeavesFree) {
  const auto model = support::sampleModel();
  const auto scene = viewer::buildScene(model);
  for (const auto& view : viewer::standardViewNames()) {
    PictureOptions options = small(5, view.c_str());
    options.width = 1280;
    options.height = 720;
    options.overlays.captions = options.overlays.tape = options.overlays.rod = true;
    const auto camera = frameOf(model, scene, options).camera;
    for (int i = 0; i < 8; ++i) {
      const glm::vec3 corner(i & 1 ? scene.buildingHigh.x : scene.buildingLow.x,
                             i & 2 ? scene.buildingHigh.y : scene.buildingLow.y,
                             i & 4 ? scene.buildingHigh.z : scene.buildingLow.z);
      const auto at = camera.project(corner, 1280.0 / 720);
      ASSERT_TRUE(at) << view;
      EXPECT_GT(at->x, 0) << view;
      EXPECT_LT(at->x * 1280, 1280 - 250) << view;
      EXPECT_GT(at->y * 720, 90) << view;
      EXPECT_LT(at->y * 720, 720 - 130) << view;
    }
  }
}

TEST_F(PictureTest, StageBuiltNowIsTheOneThatEndsAtThatMoment) {
  const auto model = support::sampleModel();
  const auto scene = viewer::buildScene(model);
  EXPECT_EQ(frameOf(model, scene, small(0)).stage, 0);
  EXPECT_EQ(frameOf(model, scene, small(1)).stage, 0);
  EXPECT_EQ(frameOf(model, scene, small(1.25)).stage, 1);
  EXPECT_EQ(frameOf(model, scene, small(99)).stage, 4);
}

TEST_F(PictureTest, SectionViewCutsTheBuildingAndLooksIntoIt) {
  const auto model = support::sampleModel();
  const auto scene = viewer::buildScene(model);
  const auto frame = frameOf(model, scene, small(5, "section"));
  ASSERT_TRUE(frame.section.on);
  const auto height = [&](glm::vec3 p) {
    return glm::dot(glm::vec3(frame.section.plane), p) + frame.section.plane.w;
  };
  EXPECT_GT(height({0, -3, 0}), 0);  // the south wall is gone
  EXPECT_LT(height({0, 3, 0}), 0);
}

// Reads PNG bytes back with libpng's simple interface.
TEST(Png, HoldsTheSamePixels) {
  Image image;
  image.width = 37;
  image.height = 11;
  for (int i = 0; i < 37 * 11; ++i) {
    for (const int c : {i * 7, i * 13, i, 255}) image.rgba.push_back(static_cast<std::uint8_t>(c));
  }
  const std::string bytes = viewer::pngBytes(image);
  png_image reader{};
  reader.version = PNG_IMAGE_VERSION;
  ASSERT_TRUE(png_image_begin_read_from_memory(&reader, bytes.data(), bytes.size()));
  reader.format = PNG_FORMAT_RGBA;
  EXPECT_EQ(reader.width, 37u);
  EXPECT_EQ(reader.height, 11u);
  std::vector<std::uint8_t> back(PNG_IMAGE_SIZE(reader));
  ASSERT_TRUE(png_image_finish_read(&reader, nullptr, back.data(), 0, nullptr));
  EXPECT_EQ(back, image.rgba);
}

TEST(Offscreen, CanBeMadeAgainAndSideBySide) {
  std::string why;
  auto first = viewer::Offscreen::create(why);
  ASSERT_TRUE(first) << why;
  EXPECT_TRUE(why.empty());
  auto second = viewer::Offscreen::create(why);
  ASSERT_TRUE(second) << why;
  first.reset();
  second->begin(16, 8, 4);
  EXPECT_EQ(second->read().rgba.size(), 16u * 8 * 4);
}

}  // namespace
