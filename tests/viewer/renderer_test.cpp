#include "viewer/gl/renderer.h"

#include <epoxy/gl.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "tests/support/sample_model.h"
#include "viewer/gl/offscreen.h"
#include "viewer/gl/shaders.h"
#include "viewer/palette.h"
#include "viewer/picking.h"

namespace {

using namespace support;
using viewer::Frame;
using viewer::Image;

constexpr int kWidth = 640, kHeight = 400;
constexpr double kAspect = static_cast<double>(kWidth) / kHeight;

using Colour = std::array<int, 3>;

int lightness(const Colour& c) { return (c[0] * 3 + c[1] * 6 + c[2]) / 10; }

// One context for all tests of the file: making one takes longer than any of them.
class RendererTest : public ::testing::Test {
 protected:
  static void SetUpTestSuite() { offscreen_ = viewer::Offscreen::create(why_); }
  static void TearDownTestSuite() { offscreen_.reset(); }

  void SetUp() override {
    ASSERT_TRUE(offscreen_) << why_;
    while (glGetError() != GL_NO_ERROR) {
    }
    renderer_ = std::make_unique<viewer::Renderer>();
    renderer_->setScene(scene_);
  }
  void TearDown() override {
    EXPECT_EQ(glGetError(), static_cast<GLenum>(GL_NO_ERROR));
    renderer_.reset();
  }

  Frame frameAt(double time, const char* view = "south-west") {
    Frame frame;
    frame.time = time;
    frame.stage = std::max(0, static_cast<int>(std::ceil(time)) - 1);
    frame.camera = *viewer::standardView(view, scene_.low, scene_.high, kAspect);
    frame.sun = {-0.36f, -0.48f, 0.8f};
    return frame;
  }
  Image draw(const Frame& frame, int samples = 1) {
    offscreen_->begin(kWidth, kHeight, samples);
    renderer_->draw(frame, kWidth, kHeight);
    return offscreen_->read();
  }
  static Colour at(const Image& image, int x, int y) {
    const size_t i =
        (static_cast<size_t>(y) * static_cast<size_t>(image.width) + static_cast<size_t>(x)) * 4;
    return {image.rgba[i], image.rgba[i + 1], image.rgba[i + 2]};
  }
  // Pixels round the place where a point of the model falls.
  static std::vector<Colour> around(const Image& image, const Frame& frame, glm::vec3 p,
                                    int reach) {
    const auto where = frame.camera.project(p, kAspect);
    const int cx = static_cast<int>(where->x * kWidth), cy = static_cast<int>(where->y * kHeight);
    std::vector<Colour> colours;
    for (int y = cy - reach; y <= cy + reach; ++y)
      for (int x = cx - reach; x <= cx + reach; ++x)
        if (x >= 0 && y >= 0 && x < kWidth && y < kHeight) colours.push_back(at(image, x, y));
    return colours;
  }
  static Colour mean(const std::vector<Colour>& colours) {
    std::array<long, 3> sum{};
    for (const Colour& c : colours)
      for (size_t k = 0; k < 3; ++k) sum[k] += c[k];
    Colour m{};
    for (size_t k = 0; k < 3; ++k)
      m[k] = static_cast<int>(sum[k] / static_cast<long>(colours.size()));
    return m;
  }
  static long differing(const Image& a, const Image& b, int tolerance = 0) {
    long n = 0;
    for (size_t i = 0; i < a.rgba.size(); i += 4) {
      int most = 0;
      for (size_t k = 0; k < 3; ++k) most = std::max(most, std::abs(a.rgba[i + k] - b.rgba[i + k]));
      n += most > tolerance;
    }
    return n;
  }
  static bool isBrick(const Colour& c) { return c[0] > c[1] + 40 && c[1] > c[2]; }

  static inline std::unique_ptr<viewer::Offscreen> offscreen_;
  static inline std::string why_;
  model::Model model_ = sampleModel();
  viewer::Scene scene_ = viewer::buildScene(model_);
  std::unique_ptr<viewer::Renderer> renderer_;
};

TEST_F(RendererTest, PaperIsTheGroundAndTheBuildingStandsOnIt) {
  const Image image = draw(frameAt(5));
  EXPECT_EQ(at(image, 2, 2), (Colour{0xf7, 0xf4, 0xec}));
  EXPECT_GT(differing(image, draw(frameAt(5, "plan"))), 1000);
}

TEST_F(RendererTest, WhatStandsKeepsMostOfItsColourAndAllOfItWhenTheJobIsDone) {
  const auto redness = [&](int stage) {
    Frame frame = frameAt(scene_.stageCount);
    frame.edges = false;
    frame.stage = stage;
    const Image image = draw(frame);
    long sum = 0;
    for (int y = 0; y < kHeight; ++y)
      for (int x = 0; x < kWidth; ++x)
        if (const Colour c = at(image, x, y); isBrick(c)) sum += c[0] - c[2];
    return static_cast<double>(sum);
  };
  const int last = static_cast<int>(scene_.stageCount) - 1;
  const double full = redness(0), standing = redness(last - 1), done = redness(last);
  EXPECT_GT(full, 0);
  EXPECT_EQ(done, full);
  EXPECT_LT(standing, 0.99 * full);
  EXPECT_GT(standing, 0.75 * full);
}

TEST_F(RendererTest, TheSameFrameGivesTheSamePicture) {
  EXPECT_EQ(differing(draw(frameAt(2.5)), draw(frameAt(2.5))), 0);
}

// Shadows of what stands are kept between frames; none may be kept too long.
TEST_F(RendererTest, AFrameDoesNotDependOnTheFramesBeforeIt) {
  const auto cutFrame = [&](double time) {
    Frame frame = frameAt(time);
    frame.samples = 1;
    frame.section.on = std::fmod(time, 1.0) > 0.6;
    frame.section.plane = {-1, 0, 0, static_cast<float>(time) - 2};
    frame.sun = time < 3 ? glm::vec3(-0.36f, -0.48f, 0.8f) : glm::vec3(0.48f, -0.36f, 0.8f);
    return frame;
  };
  const std::vector<double> times{0, 4.7, 4.2, 1.3, 1.35, 3.8, 2.5, 2.9, 5, 1.3, 0};
  std::vector<Image> scrubbed;
  for (const double time : times) scrubbed.push_back(draw(cutFrame(time)));
  for (size_t i = 0; i < times.size(); ++i) {
    renderer_ = std::make_unique<viewer::Renderer>();
    renderer_->setScene(scene_);
    EXPECT_EQ(differing(scrubbed[i], draw(cutFrame(times[i]))), 0) << times[i];
  }
}

TEST_F(RendererTest, ABrickWallIsBrickRedWithPaleJoints) {
  const Frame frame = frameAt(3, "south");
  const auto colours = around(draw(frame), frame, {0, -3, 1}, 12);
  EXPECT_TRUE(isBrick(mean(colours)));
  int palest = 0, darkest = 255;
  for (const Colour& c : colours) {
    palest = std::max(palest, lightness(c));
    darkest = std::min(darkest, lightness(c));
  }
  EXPECT_GT(palest - darkest, 25);
}

// The south wall as a pane: through it the brick of the north wall's inside, dimmed by the tint.
TEST_F(RendererTest, GlassShowsWhatIsBehindItAndIsSeenItself) {
  const auto looked = [&](double time, bool glass) {
    model_.works.elements[kSouthWall].material =
        glass ? model::Material::Glass : model::Material::Brick;
    scene_ = viewer::buildScene(model_);
    renderer_->setScene(scene_);
    Frame frame = frameAt(time, "south");
    frame.edges = false;
    return mean(around(draw(frame), frame, {0, -3, 1}, 12));
  };
  const auto redness = [](const Colour& c) { return c[0] - c[2]; };
  // In front of nothing but paper; in front of the north wall; the brick wall itself.
  const Colour through = looked(3, true), brick = looked(3, false);
  EXPECT_GT(redness(through), 15) << "the brick behind it";
  EXPECT_LT(redness(through), redness(brick) - 15) << "not as red as brick in the open";
  EXPECT_GT(through[2], brick[2] + 10) << "the sky in it";
}

TEST_F(RendererTest, GlassThrowsNoShadow) {
  const auto ground = [&](model::Material material) {
    for (const auto i : {kSouthWall, kNorthWall, kWestWall, kEastWall, kRoof})
      model_.works.elements[i].material = material;
    scene_ = viewer::buildScene(model_);
    renderer_->setScene(scene_);
    Frame frame = frameAt(4, "plan");
    frame.edges = false;
    return lightness(mean(around(draw(frame), frame, {4.6f, 3.6f, 0}, 2)));
  };
  EXPECT_GT(ground(model::Material::Glass), ground(model::Material::Tile) + 20);
}

TEST_F(RendererTest, CoursesLieAtTheGaugeOfTheJob) {
  model_.settingOut.levels.dampCourse = 0.15;
  scene_ = viewer::buildScene(model_);
  renderer_->setScene(scene_);
  Frame frame = frameAt(3, "south");
  frame.camera.distance = 1.2;
  frame.camera.target = {0, -3, 1.05f};  // 12 courses of 75 above the damp course
  frame.edges = false;
  const Image image = draw(frame);
  const auto lightnessAt = [&](float z) {
    return lightness(mean(around(image, frame, {0.05f, -3, z}, 1)));
  };
  for (int course = -2; course <= 2; ++course) {
    const float bed = 1.05f + 0.075f * static_cast<float>(course);
    EXPECT_GT(lightnessAt(bed), lightnessAt(bed + 0.0375f) + 15) << course;
  }
}

TEST_F(RendererTest, ShowsAThingExactlyWhenItStands) {
  for (std::uint32_t e = 0; e < scene_.elements.size(); ++e) {
    for (int stage = 0; stage < 5; ++stage) {
      Frame frame = frameAt(stage + 1.0);
      const Image before = draw(frame);
      frame.selected = e;  // tints it, and it alone
      const long changed = differing(before, draw(frame));
      const auto standing = model::standingAt(model_.programme, model_.works, frame.time);
      const bool stands = std::find(standing.begin(), standing.end(), e) != standing.end();
      if (!stands) {
        EXPECT_EQ(changed, 0) << model_.works.elements[e].name << " after stage " << stage;
      } else if (e != kConcrete && e != kNorthWall && e != kEastWall) {  // which others may hide
        EXPECT_GT(changed, 50) << model_.works.elements[e].name << " after stage " << stage;
      }
    }
  }
}

TEST_F(RendererTest, AGrowingWallIsClosedAtItsTop) {
  const Frame frame = frameAt(2.5, "plan");
  const auto top = mean(around(draw(frame), frame, {0, -2.85f, 1}, 1));
  EXPECT_TRUE(isBrick(top)) << top[0] << " " << top[1] << " " << top[2];
}

TEST_F(RendererTest, TheTopOfAGrowingWallHidesWhatIsBehindIt) {
  // From low in the south the wall's top edge must not show the lines of its far lower edge.
  Frame frame = frameAt(2.5);
  frame.camera.elevation = 0.3;
  const auto colours = around(draw(frame), frame, {0, -2.85f, 1.0f}, 1);
  for (const Colour& c : colours) EXPECT_GT(lightness(c), 60);
}

TEST_F(RendererTest, ADigIsClosedAtItsBottom) {
  const Frame frame = frameAt(0.5, "plan");
  const auto bottom = mean(around(draw(frame), frame, {0, 0, -0.5f}, 3));
  EXPECT_GT(bottom[0], bottom[2] + 20);  // earth, not paper
}

TEST_F(RendererTest, SectionFillsWhatItCutsAndLeavesTheRoomOpen) {
  Frame frame = frameAt(5, "section");
  frame.section.on = true;
  frame.section.plane = {0, -1, 0, 0};
  const Image image = draw(frame);
  const auto room = mean(around(image, frame, {0, 2.7f, 1}, 4));
  EXPECT_TRUE(room[0] > room[2] + 15) << "the north wall is seen beyond the cut";
  Frame flat = frame;
  flat.selected = kWestWall;
  const Image tinted = draw(flat);
  const auto cut = mean(around(tinted, frame, {-3.85f, 0, 1}, 2));
  EXPECT_GT(cut[2], cut[0]) << "the cut face of the wall that is selected is tinted";
  // Hatched: strokes darker than the fill.
  int palest = 0, darkest = 255;
  for (const Colour& c : around(image, frame, {0, 0, -1.5f}, 14)) {
    palest = std::max(palest, lightness(c));
    darkest = std::min(darkest, lightness(c));
  }
  EXPECT_GT(palest - darkest, 30);
}

TEST_F(RendererTest, GroundThatIsStillToBeDugIsCutAsOnePiece) {
  // Of the line along the bottom of the dig, the share that is ink.
  const auto inked = [&](double time) {
    Frame frame = frameAt(time, "section");
    frame.section.on = true;
    frame.section.plane = {0, -1, 0, 0};
    const Image image = draw(frame);
    int dark = 0, all = 0;
    for (float x = -3.5f; x < 3.5f; x += 0.05f, ++all) {
      const auto colours = around(image, frame, {x, 0, -1}, 1);
      dark += std::any_of(colours.begin(), colours.end(),
                          [](const Colour& c) { return lightness(c) < 70; });
    }
    return static_cast<double>(dark) / all;
  };
  EXPECT_LT(inked(0), 0.5);
  EXPECT_GT(inked(1), 0.95) << "the bottom of the open dig is outlined";
}

TEST_F(RendererTest, ASectionFillStandsBeforeWhatIsBehindIt) {
  Frame frame = frameAt(5);
  frame.section.on = true;
  frame.section.plane = {-1, 0, 0, 1};  // west of x = 1 is gone
  frame.selected = kRoof;
  const auto cut = mean(around(draw(frame), frame, {1, 0, 2.6f}, 1));
  EXPECT_GT(cut[2], cut[0]);
}

TEST_F(RendererTest, ScrubbingOrbitingAndCuttingUploadNothing) {
  draw(frameAt(0));
  const auto before = renderer_->stats().bytesUploaded;
  EXPECT_GT(before, 0u);
  for (double t = 0; t < 5; t += 0.3) {
    Frame frame = frameAt(t);
    frame.camera.orbit(t, 0);
    frame.section.on = t > 2;
    frame.levelPlane = t > 3;
    frame.seeThrough = t > 4 ? viewer::SeeThrough::Ground : viewer::SeeThrough::Nothing;
    draw(frame);
  }
  EXPECT_EQ(renderer_->stats().bytesUploaded, before);
}

TEST_F(RendererTest, DrawsFewTrianglesEarlyInTheProgramme) {
  draw(frameAt(0));
  const auto early = renderer_->stats().triangles;
  draw(frameAt(4));
  EXPECT_LT(early, renderer_->stats().triangles);
}

TEST_F(RendererTest, AFinishedFrameTakesFewDrawCalls) {
  draw(frameAt(5));
  draw(frameAt(5));
  EXPECT_LE(renderer_->stats().drawCalls, 8u);
}

TEST_F(RendererTest, EdgesAreInk) {
  Frame frame = frameAt(5);
  const auto darkestAt = [&](bool edges) {
    frame.edges = edges;
    int darkest = 255;
    for (const Colour& c : around(draw(frame), frame, {-4, -3, 1.4f}, 2))
      darkest = std::min(darkest, lightness(c));
    return darkest;
  };
  EXPECT_LT(darkestAt(true), darkestAt(false) - 25);
}

// Where a neighbour makes a line a seam, the line goes although what it belongs to stays.
TEST_F(RendererTest, ALineHasAClockOfItsOwn) {
  const Frame frame = frameAt(5);
  const auto drawn = [&](float goesAtOneEnd, float goesAtTheOther) {
    viewer::Scene scene = scene_;
    for (size_t i = 0; i < scene.edges.size(); i += 2) {
      scene.edges[i].goes = goesAtOneEnd;
      scene.edges[i + 1].goes = goesAtTheOther;
    }
    renderer_->setScene(scene);
    return draw(frame);
  };
  const Image whole = drawn(1e6f, 1e6f), none = drawn(5, 5), half = drawn(4, 6);
  Frame without = frame;
  without.edges = false;
  EXPECT_EQ(differing(none, draw(without)), 0);
  EXPECT_GT(differing(whole, none), 500);
  EXPECT_GT(differing(half, none), differing(whole, none) / 4);
  EXPECT_LT(differing(half, none), differing(whole, none) * 3 / 4);
}

TEST_F(RendererTest, HiddenLinesAreNotDrawn) {
  // Far below the roof slab from above, nothing of the concrete's outline shows through.
  const Frame frame = frameAt(5, "plan");
  for (const Colour& c : around(draw(frame), frame, {0, -2.7f, 2.7f}, 4))
    EXPECT_GT(lightness(c), 70);
}

TEST_F(RendererTest, LevelPlaneDrawsALineOnWhatItCuts) {
  Frame frame = frameAt(5, "south");
  frame.levelPlane = true;
  frame.levelPlaneAt = 1.2f;
  const Image image = draw(frame);
  const auto on = around(image, frame, {0, -3, 1.2f}, 1);
  const bool seen = std::any_of(
      on.begin(), on.end(), [](const Colour& c) { return c[0] < 80 && c[1] < 150 && c[2] > 130; });
  EXPECT_TRUE(seen);
}

TEST_F(RendererTest, GroundThatIsSeenThroughShowsWhatIsUnderIt) {
  Frame frame = frameAt(5, "south");
  frame.selected = kConcrete;
  const auto tintAt = [&](bool through) {
    frame.seeThrough = through ? viewer::SeeThrough::Ground : viewer::SeeThrough::Nothing;
    const auto c = mean(around(draw(frame), frame, {0, -3, -0.75f}, 2));
    return c[2] - c[0];
  };
  const int covered = tintAt(false);
  EXPECT_LT(covered, 0);
  EXPECT_GT(tintAt(true), covered + 30);
}

TEST_F(RendererTest, GhostsOfTheNextStageAreFaintAndOnlyThereWhenAsked) {
  Frame frame = frameAt(2);
  frame.stage = 1;
  const Image plain = draw(frame);
  frame.ghosts = true;
  const Image ghosted = draw(frame);
  EXPECT_GT(differing(plain, ghosted), 100);
}

TEST_F(RendererTest, WhatTheStageTookAwayIsDashedWhenAsked) {
  // The scaffold pole, struck in the last stage but one or so: its lines come in dashes on paper.
  const auto& range = scene_.elements[support::kPole];
  Frame frame = frameAt(std::ceil(double(range.goes)), "south");
  frame.stage = int(frame.time) - 1;
  const Image plain = draw(frame);
  frame.ghosts = true;
  const Image ghosted = draw(frame);
  EXPECT_GT(differing(plain, ghosted), 30);
  frame.time += 1;
  frame.stage += 1;
  const Image after = draw(frame);
  frame.ghosts = false;
  EXPECT_EQ(differing(draw(frame), after), 0) << "only in its own stage";
}

// A thing that is being taken away is neither there as before nor gone at a blow.
TEST_F(RendererTest, WhatIsTakenAwayIsSeenToGo) {
  const auto& range = scene_.elements[support::kPole];
  const double goes = double(range.goes), begins = double(range.fades);
  ASSERT_LT(begins, goes - 0.01);
  const auto at = [&](double time) {
    Frame frame = frameAt(time, "south");
    frame.stage = int(std::ceil(goes)) - 1;
    frame.shadows = false;
    return draw(frame);
  };
  const Image whole = at(begins), half = at((begins + goes) / 2), gone = at(goes);
  EXPECT_GT(differing(whole, half), 10);
  EXPECT_GT(differing(half, gone), 10);
  EXPECT_GT(differing(whole, gone), differing(half, gone));
}

TEST_F(RendererTest, SunlitFacesHaveNoFalseShadows) {
  Frame frame = frameAt(5, "plan");
  frame.edges = false;
  const Image shaded = draw(frame);
  frame.shadows = false;
  const Image open = draw(frame);
  const auto with = around(shaded, frame, {0, 0, 2.7f}, 20);
  const auto without = around(open, frame, {0, 0, 2.7f}, 20);
  for (size_t i = 0; i < with.size(); ++i)
    EXPECT_NEAR(lightness(with[i]), lightness(without[i]), 4);
}

TEST_F(RendererTest, TheBuildingCastsAShadow) {
  Frame frame = frameAt(5, "plan");
  const auto lightnessAt = [&](bool shadows) {
    frame.shadows = shadows;
    return lightness(mean(around(draw(frame), frame, {4.8f, 2, 0}, 2)));  // north-east of it
  };
  EXPECT_LT(lightnessAt(true), lightnessAt(false) - 15);
}

TEST_F(RendererTest, DrawsIntoAFramebufferWithSamplesOfItsOwn) {
  const Frame frame = frameAt(5);
  const long differs = differing(draw(frame, 4), draw(frame, 1), 24);
  EXPECT_LT(differs, kWidth * kHeight / 200);
}

TEST_F(RendererTest, OneSampleIsLegibleToo) {
  Frame frame = frameAt(5);
  const Image four = draw(frame);
  frame.samples = 1;
  EXPECT_LT(differing(four, draw(frame), 48), kWidth * kHeight / 20);
}

TEST_F(RendererTest, AnEmptySceneIsASheetOfPaper) {
  renderer_->setScene(viewer::Scene{});
  const Image image = draw(frameAt(1));
  EXPECT_EQ(at(image, kWidth / 2, kHeight / 2), (Colour{0xf7, 0xf4, 0xec}));
}

TEST(Shaders, AreBuiltIntoTheProgram) {
  EXPECT_FALSE(viewer::shaderText("surface.frag").empty());
  EXPECT_TRUE(viewer::shaderText("no such file").empty());
}

}  // namespace
