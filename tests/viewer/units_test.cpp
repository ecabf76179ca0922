// Bricks drawn one by one, and the same bricks on flat faces.
#include <epoxy/gl.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "tests/support/laid_sample.h"
#include "tests/support/sample_model.h"
#include "viewer/gl/offscreen.h"
#include "viewer/gl/renderer.h"
#include "viewer/picking.h"
#include "viewer/piece_words.h"
#include "viewer/scene_units.h"
#include "viewer/unit_words.h"

namespace {

using namespace support;
using viewer::Frame;
using viewer::Image;

constexpr int kWidth = 960, kHeight = 600;

class Units : public ::testing::Test {
 protected:
  static void SetUpTestSuite() { offscreen_ = viewer::Offscreen::create(why_); }
  static void TearDownTestSuite() { offscreen_.reset(); }
  void SetUp() override {
    ASSERT_TRUE(offscreen_) << why_;
    renderer_ = std::make_unique<viewer::Renderer>();
    renderer_->setScene(scene_);
  }
  void TearDown() override {
    EXPECT_EQ(glGetError(), static_cast<GLenum>(GL_NO_ERROR));
    renderer_.reset();
  }

  // Looking at the south-west corner with pixels of that size there.
  static Frame frameAt(double time, double pixel) {
    Frame frame;
    frame.time = time;
    frame.stage = 4;
    frame.camera.target = {-3.5f, -3, 1};
    frame.camera.azimuth = 0.6;
    frame.camera.elevation = 0.35;
    frame.camera.distance = pixel * kHeight / (2 * std::tan(frame.camera.fieldOfView / 2));
    frame.sun = {-0.36f, -0.48f, 0.8f};
    frame.edges = false;
    return frame;
  }
  Image draw(const Frame& frame) {
    offscreen_->begin(kWidth, kHeight, 1);
    renderer_->draw(frame, kWidth, kHeight);
    return offscreen_->read();
  }
  static long differing(const Image& a, const Image& b, int tolerance) {
    long n = 0;
    for (size_t i = 0; i < a.rgba.size(); i += 4) {
      int most = 0;
      for (size_t k = 0; k < 3; ++k) most = std::max(most, std::abs(a.rgba[i + k] - b.rgba[i + k]));
      n += most > tolerance;
    }
    return n;
  }

  static inline std::unique_ptr<viewer::Offscreen> offscreen_;
  static inline std::string why_;
  model::Model model_ = laidSample();
  viewer::Scene scene_ = viewer::buildScene(model_);
  std::unique_ptr<viewer::Renderer> renderer_;
};

TEST_F(Units, AreTheSameOnFlatFacesAsOneByOne) {
  // Where the one gives way to the other.
  Frame flat = frameAt(4, 0.0034);
  flat.samples = 4;
  Frame single = flat;
  flat.unitPixel = 0;
  single.unitPixel = 0.0035f;
  const Image far = draw(flat);
  EXPECT_EQ(renderer_->stats().units, 0u);
  const Image near = draw(single);
  EXPECT_GT(renderer_->stats().units, 1000u);
  // Edges are smoothed otherwise; nothing else changes.
  const long all = long{kWidth} * kHeight;
  EXPECT_LT(differing(far, near, 24), all / 20);
  EXPECT_LT(differing(far, near, 60), all / 400);
  // Another bond would be told by this.
  for (model::MasonryUnit& unit : model_.works.units) unit.s0 += 0.03, unit.s1 += 0.03;
  scene_ = viewer::buildScene(model_);
  renderer_->setScene(scene_);
  EXPECT_GT(differing(far, draw(flat), 60), all / 100);
}

TEST_F(Units, AppearOneByOneAndScrubbingSendsNothing) {
  const auto drawn = [&](double time) {
    draw(frameAt(time, 0.01));
    return renderer_->stats().units;
  };
  EXPECT_EQ(drawn(1.9), 0u);
  const auto sent = renderer_->stats().bytesUploaded;
  std::uint64_t before = 0;
  for (double time = 2.05; time < 3; time += 0.1) {
    const auto now = drawn(time);
    EXPECT_GT(now, before) << time;
    std::uint64_t laid = 0;
    const viewer::Growth& growth = scene_.elements[kSouthWall].placed;  // as all walls grow
    for (const model::MasonryUnit& unit : model_.works.units)
      laid += static_cast<double>(growth.from + (growth.to - growth.from) * unit.when) <= time;
    EXPECT_NEAR(static_cast<double>(now), static_cast<double>(laid), 4) << time;
    before = now;
  }
  EXPECT_EQ(drawn(3.5), 0u) << "far off, what is laid is flat";
  EXPECT_EQ(renderer_->stats().bytesUploaded, sent);
}

TEST_F(Units, BeingLaidAreSeenAndThoseToComeAreNot) {
  const auto brickAt = [&](double time, const glm::vec3& p) {
    const Frame frame = frameAt(time, 0.006);
    const Image image = draw(frame);
    const auto at = frame.camera.project(p, static_cast<double>(kWidth) / kHeight);
    const size_t i =
        (static_cast<size_t>(at->y * kHeight) * kWidth + static_cast<size_t>(at->x * kWidth)) * 4;
    return image.rgba[i] > image.rgba[i + 1] + 40;
  };
  // The second brick of the south wall's 20th course (0.925 to 1), seen against the inside.
  const glm::vec3 second(-3.5f, -3, 0.97f);
  const model::Element& wall = model_.works.elements[kSouthWall];
  size_t unit = wall.firstUnit;
  while (model_.works.units[unit].course != 20 || model_.works.units[unit].s1 < 0.5) ++unit;
  const viewer::Growth& growth = scene_.elements[kSouthWall].placed;
  const double when =
      static_cast<double>(growth.from + (growth.to - growth.from) * model_.works.units[unit].when);
  EXPECT_TRUE(brickAt(when + 1e-4, {-3.5f, -3, 1.04f}));
  EXPECT_TRUE(brickAt(when + 1e-4, second));
  EXPECT_NE(differing(draw(frameAt(when - 1e-4, 0.006)), draw(frameAt(when + 1e-4, 0.006)), 24), 0);
}

TEST_F(Units, MarksChangeOnlyUnitsThatAreNotWhole) {
  for (const float unitPixel : {0.0f, 1.0f}) {
    Frame frame = frameAt(4, 0.003);
    frame.unitPixel = unitPixel;
    const Image plain = draw(frame);
    frame.markCuts = true;
    const long marked = differing(plain, draw(frame), 24);
    EXPECT_GT(marked, 500);
    EXPECT_LT(marked, long{kWidth} * kHeight / 10) << "most bricks are whole";
  }
}

TEST_F(Units, ArePickedByTheirOwnEdges) {
  const viewer::Picker picker(scene_);
  Frame frame = frameAt(4, 0.003);
  const auto unitAt = [&](float x, float z) {
    const auto pick = picker.pick({{x, -8, z}, {0, 1, 0}}, frame);
    return pick ? pick->unit : viewer::kNothing;
  };
  // The ninth course, of whole bricks from the corner.
  const std::uint32_t first = unitAt(-3.9f, 0.14f), same = unitAt(-3.8f, 0.15f);
  ASSERT_NE(first, viewer::kNothing);
  EXPECT_EQ(first, same);
  EXPECT_NE(first, unitAt(-3.7f, 0.14f));
  const model::MasonryUnit& unit = model_.works.units[scene_.modelUnits[first]];
  EXPECT_NEAR(unit.s0, 0, 1e-9);
  // The end of the west wall's brick belongs to the west wall.
  const auto pick = picker.pick({{-3.9f, -8, 0.07f}, {0, 1, 0}}, frame);
  ASSERT_TRUE(pick);
  EXPECT_EQ(pick->element, unsigned{kWestWall});
  // Not laid yet.
  frame.time = 2.1;
  EXPECT_EQ(unitAt(0, 2), viewer::kNothing);
}

TEST(UnitWords, NameCourseAndPiece) {
  model::Model model = laidSample();
  model::Element& wall = model.works.elements[kSouthWall];
  wall.name = "Wall A-B, outer leaf, lift 1, corner A";
  model::MasonryUnit& unit = model.works.units[wall.firstUnit];
  unit.course = 13;
  unit.piece = model::Piece::Cut;
  unit.s1 = unit.s0 + 0.158;
  EXPECT_EQ(viewer::unitWords(model, kSouthWall, wall.firstUnit),
            "Wall A-B, outer leaf, course 14, cut brick 158");
  unit.course = -2;
  unit.piece = model::Piece::Whole;
  EXPECT_EQ(viewer::unitWords(model, kSouthWall, wall.firstUnit),
            "Wall A-B, outer leaf, course 2 below the damp course, whole brick");
}

TEST(UnitWords, CountWhatStands) {
  const model::Model model = laidSample();
  const viewer::Scene scene = viewer::buildScene(model);
  long all = 0, half = 0;
  for (const model::MasonryUnit& unit : model.works.units) {
    ++all;
    half += unit.piece == model::Piece::Half;
  }
  const auto done = viewer::piecesStanding(model, scene, 5),
             none = viewer::piecesStanding(model, scene, 1);
  EXPECT_EQ(done.bricks[static_cast<size_t>(model::Piece::Half)], half);
  long sum = 0, before = 0;
  for (size_t i = 0; i < 8; ++i) sum += done.bricks[i], before += none.bricks[i];
  EXPECT_EQ(sum, all);
  EXPECT_EQ(before, 0);
}

// No pace costs more than a uniform: the scene's own times are played.
// A brick thick, in Flemish bond: headers right through, stretchers before and behind.
TEST(PackedUnits, HaveMortarTowardsTheLastInTheirCourseInEveryRowOfAThickWall) {
  struct Row {
    double s0, s1;
    std::uint8_t depth;
  };
  const std::vector<Row> rows{{0, 0.1025, 0},    {0.1125, 0.3275, 1}, {0.1125, 0.3275, 2},
                              {0.3375, 0.44, 0}, {0.45, 0.665, 1},    {0.45, 0.665, 2},
                              {0.675, 0.7775, 0}};
  std::vector<model::MasonryUnit> units;
  std::vector<std::uint8_t> depths;
  for (const int course : {0, 1}) {
    for (const Row& row : rows) {
      model::MasonryUnit unit;
      unit.s0 = row.s0, unit.s1 = row.s1;
      unit.z0 = 0.075 * course, unit.z1 = unit.z0 + 0.065;
      units.push_back(unit);
      depths.push_back(row.depth);
    }
  }
  std::vector<viewer::UnitInstance> packed(units.size());
  viewer::packUnits({}, units, depths, packed.data());
  for (size_t i = 0; i < units.size(); ++i) {
    EXPECT_EQ((packed[i].what & viewer::kJointAtStart) != 0, i % rows.size() != 0) << i;
    EXPECT_EQ(packed[i].what & viewer::kJointAtEnd, 0u) << i;
  }
  // From the other end.
  std::reverse(units.begin(), units.end());
  std::reverse(depths.begin(), depths.end());
  viewer::packUnits({}, units, depths, packed.data());
  for (size_t i = 0; i < units.size(); ++i) {
    EXPECT_EQ((packed[i].what & viewer::kJointAtEnd) != 0, i % rows.size() != 0) << i;
    EXPECT_EQ(packed[i].what & viewer::kJointAtStart, 0u) << i;
  }
}

TEST_F(Units, PlayedByPieceUploadNothing) {
  const viewer::PieceTimes pieces(scene_);
  const auto uploaded = renderer_->stats().bytesUploaded;
  for (size_t m = 0; m < pieces.momentCount(); m += 97) {
    Frame frame = frameAt(double(pieces.beats().ends()[m]), 0.004);
    const auto newest = viewer::newestPiece(pieces, frame.time);
    if (newest && newest->kind == viewer::PieceEvent::Kind::UnitLaid)
      frame.newestUnit = newest->index;
    frame.ghosts = true;
    draw(frame);
  }
  EXPECT_EQ(renderer_->stats().bytesUploaded, uploaded);
}

TEST_F(Units, TheNewestStandsOutALittle) {
  const viewer::PieceTimes pieces(scene_);
  // Somewhere in the middle of the walls, every brick in turn until one is in sight.
  long tinted = 0;
  for (size_t m = pieces.momentCount() / 2; m < pieces.momentCount() && tinted == 0; m += 5) {
    Frame frame = frameAt(double(pieces.beats().ends()[m]), 0.004);
    const Image plain = draw(frame);
    const auto newest = viewer::newestPiece(pieces, frame.time);
    if (!newest || newest->kind != viewer::PieceEvent::Kind::UnitLaid) continue;
    frame.newestUnit = newest->index;
    tinted = differing(plain, draw(frame), 8);
  }
  EXPECT_GT(tinted, 20);
  EXPECT_LT(tinted, 12000) << "one brick";
}

}  // namespace
