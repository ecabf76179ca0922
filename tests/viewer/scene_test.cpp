#include "viewer/scene.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include <glm/geometric.hpp>
#include <glm/packing.hpp>

#include "tests/support/sample_model.h"
#include "viewer/draw_list.h"

namespace {

using viewer::buildScene;
using viewer::Scene;
using viewer::Vertex;

class SceneTest : public ::testing::Test {
 protected:
  model::Model model_ = support::sampleModel();
  Scene scene_ = buildScene(model_);

  glm::vec3 corner(std::uint32_t index) const { return scene_.vertices[index].position; }
};

TEST_F(SceneTest, KeepsEveryTriangleOfEverySolidInOrder) {
  for (size_t e = 0; e < model_.works.elements.size(); ++e) {
    const auto& solid = model_.works.elements[e].solid;
    const auto& range = scene_.elements[e];
    ASSERT_EQ(range.indexCount, solid.triangles.size() * 3) << e;
    for (size_t t = 0; t < solid.triangles.size(); ++t) {
      for (size_t c = 0; c < 3; ++c) {
        const std::uint32_t index = scene_.indices[range.firstIndex + t * 3 + c];
        const glm::vec3 expected = scene_.local(solid.points[solid.triangles[t][c]]);
        EXPECT_LT(glm::distance(corner(index), expected), 1e-6f);
        EXPECT_EQ(scene_.vertices[index].element, e);
      }
    }
  }
}

TEST_F(SceneTest, NormalsAreThoseOfTheTriangles) {
  for (size_t i = 0; i < scene_.indices.size(); i += 3) {
    const glm::vec3 a = corner(scene_.indices[i]), b = corner(scene_.indices[i + 1]),
                    c = corner(scene_.indices[i + 2]);
    const glm::vec3 n = glm::normalize(glm::cross(b - a, c - a));
    for (size_t k = 0; k < 3; ++k)
      EXPECT_GT(glm::dot(n, scene_.vertices[scene_.indices[i + k]].normal), 0.9999f);
  }
}

TEST_F(SceneTest, ClockOfEveryVertexIsTheModels) {
  for (const Vertex& v : scene_.vertices) {
    const auto& element = model_.works.elements[v.element];
    const auto p = scene_.world(v.position);
    EXPECT_NEAR(v.appears, model::timeAt(model_.programme, element.placed, p), 1e-5);
    if (!element.removed) {
      EXPECT_FLOAT_EQ(v.goes, static_cast<float>(model::kNever));
    } else if (element.removed->direction != model::Vec3(0)) {
      EXPECT_NEAR(v.goes, model::timeAt(model_.programme, *element.removed, p), 1e-5);
    }
  }
}

// What is taken away whole is seen to go: the last of it at the model's moment, the first of it a
// little before, and in the same stage.
TEST_F(SceneTest, WhatIsTakenAwayWholeGoesInTheLastOfItsTime) {
  for (const double begin : {0.0, 0.05, 0.6, 1.0}) {
    auto& wall = model_.works.elements[support::kSouthWall];  // 8 m long, 3 m high
    wall.removed = model::Placement{};
    wall.removed->stage.kind = model::StageKind::StrikeScaffold;
    wall.removed->begin = begin;
    auto& pole = model_.works.elements[support::kPole];
    pole.removed = wall.removed;
    const Scene scene = buildScene(model_);
    for (const auto thing : {support::kSouthWall, support::kPole}) {
      const auto& range = scene.elements[thing];
      const double moment = model::timeAt(model_.programme, *wall.removed, {0, 0, 0});
      EXPECT_NEAR(range.goes, moment, 1e-5);
      EXPECT_LT(range.fades, moment);
      EXPECT_GT(range.fades, std::max(std::floor(moment), moment - 0.21));
    }
    // Along the wall, down the pole.
    EXPECT_EQ(glm::abs(scene.elements[support::kSouthWall].removed.direction), glm::vec3(1, 0, 0));
    EXPECT_EQ(scene.elements[support::kPole].removed.direction, glm::vec3(0, 0, -1));
  }
}

TEST_F(SceneTest, ClockIsLinearOverEveryTriangleEvenWhereItsPlacementClamps) {
  auto& wall = model_.works.elements[support::kSouthWall];
  wall.placed.low = 0.3;  // the wall reaches from -0.5 to 2.5
  wall.placed.high = 1.7;
  wall.removed = wall.placed;
  wall.removed->stage.kind = model::StageKind::StrikeScaffold;
  wall.removed->direction = {0.6, 0, 0.8};
  const Scene scene = buildScene(model_);
  const auto& range = scene.elements[support::kSouthWall];
  ASSERT_GT(range.indexCount, 36u);
  for (std::uint32_t i = 0; i < range.indexCount; i += 3) {
    const Vertex* v[3];
    for (std::uint32_t k = 0; k < 3; ++k)
      v[k] = &scene.vertices[scene.indices[range.firstIndex + i + k]];
    const glm::vec3 middle = (v[0]->position + v[1]->position + v[2]->position) / 3.0f;
    const double appears = model::timeAt(model_.programme, wall.placed, scene.world(middle));
    const double goes = model::timeAt(model_.programme, *wall.removed, scene.world(middle));
    EXPECT_NEAR((v[0]->appears + v[1]->appears + v[2]->appears) / 3, appears, 1e-4);
    EXPECT_NEAR((v[0]->goes + v[1]->goes + v[2]->goes) / 3, goes, 1e-4);
  }
}

TEST_F(SceneTest, SplittingKeepsTheAreaOfTheSurface) {
  const auto areaOf = [](const Scene& scene, size_t element) {
    double area = 0;
    const auto& range = scene.elements[element];
    for (std::uint32_t i = 0; i < range.indexCount; i += 3) {
      const auto at = [&](std::uint32_t k) {
        return scene.vertices[scene.indices[range.firstIndex + i + k]].position;
      };
      area += glm::length(glm::cross(at(1) - at(0), at(2) - at(0))) / 2;
    }
    return area;
  };
  const double whole = areaOf(scene_, support::kSouthWall);
  auto& wall = model_.works.elements[support::kSouthWall];
  wall.placed.direction = {0.3, 0.1, 0.9};
  wall.placed.low = 0.1;
  wall.placed.high = 1.2;
  EXPECT_NEAR(areaOf(buildScene(model_), support::kSouthWall), whole, 1e-4);
}

TEST_F(SceneTest, ABoxHasTwelveLinesAndNoDiagonals) {
  const auto& range = scene_.elements[support::kRoof];
  ASSERT_EQ(range.edgeCount, 24u);
  for (std::uint32_t i = 0; i < 24; i += 2) {
    const glm::vec3 along = glm::abs(scene_.edges[range.firstEdge + i + 1].position -
                                     scene_.edges[range.firstEdge + i].position);
    const int moved = (along.x > 1e-4f) + (along.y > 1e-4f) + (along.z > 1e-4f);
    EXPECT_EQ(moved, 1);
  }
}

TEST_F(SceneTest, EveryLineKnowsTheTwoFacesThatMeetThere) {
  const auto& range = scene_.elements[support::kRoof];
  for (std::uint32_t i = 0; i < range.edgeCount; ++i) {
    const auto& edge = scene_.edges[range.firstEdge + i];
    const glm::vec3 a(glm::unpackSnorm4x8(edge.normalA)), b(glm::unpackSnorm4x8(edge.normalB));
    EXPECT_NEAR(glm::dot(a, b), 0, 0.02);
    EXPECT_NEAR(glm::length(a), 1, 0.02);
  }
}

TEST_F(SceneTest, DrawsFirstWhatAppearsFirst) {
  float last = -10;
  std::uint32_t next = 0;
  for (const std::uint32_t e : scene_.order) {
    EXPECT_GE(scene_.elements[e].placed.from, last);
    last = scene_.elements[e].placed.from;
    EXPECT_EQ(scene_.elements[e].firstIndex, next);
    next += scene_.elements[e].indexCount;
  }
  EXPECT_EQ(next, scene_.indices.size());
}

TEST_F(SceneTest, HeightsAreLevelsWhateverTheOrigin) {
  EXPECT_EQ(scene_.origin.z, 0);
  EXPECT_EQ(scene_.origin.x, 100);
  EXPECT_NEAR(scene_.elements[support::kRoof].high.z, 2.7, 1e-6);
}

TEST_F(SceneTest, BuildingBoundsLeaveOutGroundAndTemporaryThings) {
  EXPECT_NEAR(scene_.buildingLow.x, -4, 1e-6);
  EXPECT_NEAR(scene_.buildingHigh.z, 2.7, 1e-6);
  EXPECT_NEAR(scene_.low.x, -6, 1e-6);
  EXPECT_NEAR(scene_.high.z, 3, 1e-6);
}

TEST_F(SceneTest, OnlyTheSidesOfTheSiteAreCutEarth) {
  std::set<std::uint32_t> withCut;
  for (const Vertex& v : scene_.vertices) {
    if (!(v.material & viewer::kCutFace)) continue;
    withCut.insert(v.element);
    EXPECT_LT(std::abs(v.normal.z), 0.01f);
    EXPECT_NEAR(std::max(std::abs(v.position.x), std::abs(v.position.y)), 6, 1e-4);
  }
  EXPECT_EQ(withCut, std::set<std::uint32_t>{support::kGround});
}

TEST_F(SceneTest, TheSameModelGivesTheSameArrays) {
  const Scene again = buildScene(model_);
  ASSERT_EQ(again.vertices.size(), scene_.vertices.size());
  EXPECT_EQ(again.indices, scene_.indices);
  for (size_t i = 0; i < again.vertices.size(); ++i)
    EXPECT_EQ(again.vertices[i].position, scene_.vertices[i].position);
}

TEST(Scene, OfNothingIsEmptyAndStillHasBounds) {
  const Scene scene = buildScene(model::Model{});
  EXPECT_TRUE(scene.indices.empty());
  EXPECT_EQ(scene.low, scene.high);
}

// ---- seams ------------------------------------------------------------------

// Length of the lines of an element that are seen at a moment, between two heights.
double lengthSeen(const Scene& scene, size_t element, double time, double over, double under) {
  double sum = 0;
  const auto& range = scene.elements[element];
  for (std::uint32_t i = 0; i < range.edgeCount; i += 2) {
    const auto &a = scene.edges[range.firstEdge + i], &b = scene.edges[range.firstEdge + i + 1];
    const auto middle = (a.position + b.position) * 0.5f;
    if (middle.z < over || middle.z > under) continue;
    if ((a.appears + b.appears) / 2 > time || (a.goes + b.goes) / 2 <= time) continue;
    sum += glm::distance(a.position, b.position);
  }
  return sum;
}

class SeamTest : public SceneTest {
 protected:
  // A second lift of brick on the south wall, in the next stage, over part of its length.
  void SetUp() override {
    auto& works = model_.works;
    model::Element upper = works.elements[support::kSouthWall];
    upper.id = upper.name = "upper lift";
    upper.placed.stage.kind = model::StageKind::RoofCovering;
    upper.placed.direction = {0, 0, 0};
    for (auto& p : upper.solid.points) {
      p.z = p.z < 0 ? 2.5 : 3.5;
      if (p.x > 100) p.x = 101;
    }
    upper_ = works.elements.size();
    works.elements.push_back(upper);
    works.elements.erase(works.elements.begin() + support::kRoof);
    --upper_;
    scene_ = buildScene(model_);
  }
  size_t upper_ = 0;
};

TEST_F(SeamTest, TheTopOfALiftIsALineUntilTheNextStandsOnIt) {
  // 8 m outside, 7.4 m inside between the walls that butt against it, and 0.3 m at both ends.
  EXPECT_NEAR(lengthSeen(scene_, support::kSouthWall, 3.0, 2.49, 2.51), 16.0, 1e-4);
  // Then only what the next lift leaves open: 3 m outside, 2.7 inside and the far end.
  EXPECT_NEAR(lengthSeen(scene_, support::kSouthWall, 4.0, 2.49, 2.51), 6.0, 1e-4);
}

TEST_F(SeamTest, TheNextLiftHasNoLineAtItsFoot) {
  // But for its far end, where the top of the lower one meets its upright face.
  EXPECT_LT(lengthSeen(scene_, upper_, 4.0, 2.49, 2.51), 0.61);
}

TEST_F(SeamTest, AChangeOfMaterialKeepsItsLine) {
  model_.works.elements[upper_].material = model::Material::Block;
  scene_ = buildScene(model_);
  EXPECT_NEAR(lengthSeen(scene_, support::kSouthWall, 4.0, 2.49, 2.51), 16.0, 1e-4);
}

TEST_F(SeamTest, TheLineComesBackWhenTheNeighbourGoes) {
  model_.works.elements[upper_].removed = model::Placement{};
  model_.works.elements[upper_].removed->stage.kind = model::StageKind::StrikeScaffold;
  scene_ = buildScene(model_);
  EXPECT_LT(lengthSeen(scene_, support::kSouthWall, 4.0, 2.49, 2.51), 7.0);
  EXPECT_NEAR(lengthSeen(scene_, support::kSouthWall, 5.0, 2.49, 2.51), 16.0, 1e-4);
}

TEST_F(SceneTest, TrianglesWithThreePointsInLineDrawNoLines) {
  // The same box, one face of it cut through a point in the middle of a side's diagonal.
  auto& solid = model_.works.elements[support::kRoof].solid;
  const auto middle = static_cast<std::uint32_t>(solid.points.size());
  auto& first = solid.triangles[0];
  const auto [a, b, c] = first;
  solid.points.push_back((solid.points[a] + solid.points[b]) * 0.5);
  // a-b is a crease or a diagonal; either way the sliver a, b, middle adds nothing to see.
  first = {a, middle, c};
  solid.triangles.push_back({middle, b, c});
  solid.triangles.push_back({a, b, middle});
  const Scene scene = buildScene(model_);
  double before = 0, after = 0;
  for (double* sum : {&before, &after}) {
    const Scene& s = sum == &before ? scene_ : scene;
    *sum = lengthSeen(s, support::kRoof, 5, -9, 9);
  }
  EXPECT_NEAR(after, before, 1e-4);
}

// ---- what one frame draws ---------------------------------------------------

class DrawListTest : public SceneTest {
 protected:
  viewer::DrawList at(double time) {
    viewer::Frame frame;
    frame.time = time;
    viewer::DrawList list;
    viewer::listFor(scene_, frame, list);
    return list;
  }
};

TEST_F(DrawListTest, DrawsExactlyWhatStands) {
  for (double t = 0; t < 5; t += 0.0625) {
    std::uint64_t expected = 0;
    for (const size_t e : model::standingAt(model_.programme, model_.works, t))
      expected += model_.works.elements[e].solid.triangles.size() * 3;
    const auto list = at(t);
    EXPECT_EQ(list.still.total() + list.moving.total(), expected) << t;
  }
}

TEST_F(DrawListTest, FromFarOffLinesGoFirstAndThenWhatIsSmall) {
  viewer::Frame frame;
  frame.time = 5;
  std::uint64_t faces = 1e9, lines = 1e9;
  const auto all = at(5);
  for (const float pixel : {0.001f, 0.5f, 5.0f, 500.0f}) {
    viewer::NearView parallel;
    parallel.eye = {0, 0, 1, 0};
    parallel.pixel = pixel;
    viewer::DrawList list;
    viewer::listFor(scene_, frame, list, parallel);
    const std::uint64_t nowFaces = list.still.total() + list.moving.total();
    EXPECT_LE(nowFaces, faces);
    EXPECT_LE(list.edges.total(), lines);
    faces = nowFaces;
    lines = list.edges.total();
    if (pixel < 0.01f) {
      EXPECT_EQ(faces, all.still.total() + all.moving.total());
      EXPECT_EQ(lines, all.edges.total());
    }
    if (pixel == 5) {
      EXPECT_EQ(lines, 0u);
      EXPECT_GT(faces, 0u) << "the roof is larger than that";
    }
  }
  EXPECT_EQ(faces, 0u) << "a whole house in a hundredth of a pixel";
}

TEST_F(DrawListTest, AsksTheClockOnlyOfWhatMoves) {
  EXPECT_EQ(at(2.5).moving.total(), 4u * 36);  // the walls
  EXPECT_EQ(at(0.5).moving.total(), 36u);      // the dig
  EXPECT_TRUE(at(5).moving.empty());
}

TEST_F(DrawListTest, ClosesWhatGrowsAndWhatIsDug) {
  EXPECT_EQ(at(0.5).cuts.size(), 1u);  // the dig
  EXPECT_EQ(at(2.5).cuts.size(), 4u);  // four walls
  EXPECT_TRUE(at(3.0).cuts.empty());
  const auto cut = at(0.5).cuts[0];
  EXPECT_EQ(cut.element, support::kSpoil);
  EXPECT_NEAR(cut.plane.z, 1, 1e-6);  // its fill looks up
  EXPECT_NEAR(cut.plane.w, 0.5, 0.01);
}

TEST_F(DrawListTest, SectionLeavesOutWhatIsWhollyCutAwayAndFillsWhatItCuts) {
  viewer::Frame frame;
  frame.time = 5;
  frame.section.on = true;
  frame.section.plane = {0, -1, 0, 0};  // everything south of 0 is gone
  viewer::DrawList list;
  viewer::listFor(scene_, frame, list);
  std::set<std::uint32_t> cut;
  for (const auto& c : list.cuts) cut.insert(c.element);
  using namespace support;
  EXPECT_EQ(cut, (std::set<std::uint32_t>{kGround, kConcrete, kWestWall, kEastWall, kRoof}));
  // The south wall, 12 triangles, is gone with the spoil and the pole.
  EXPECT_EQ(list.still.total() + list.moving.total(), (5 * 12 + 4 * 12 + 12) * 3u);
}

TEST_F(DrawListTest, GhostsOnlyWhatTheStageAndTheNextBring) {
  viewer::Frame frame;
  frame.time = 0.5;
  frame.stage = 0;
  frame.ghosts = true;
  viewer::DrawList list;
  viewer::listFor(scene_, frame, list);
  EXPECT_EQ(list.comingEdges.total(), scene_.elements[support::kConcrete].edgeCount);
}

TEST_F(DrawListTest, GhostsWhatTheStageHasTakenAwayOrIsTaking) {
  viewer::Frame frame;
  frame.ghosts = true;
  const auto gone = [&](double time, int stage) {
    frame.time = time;
    frame.stage = stage;
    viewer::DrawList list;
    viewer::listFor(scene_, frame, list);
    return list.goneEdges.total();
  };
  const auto dug = scene_.elements[support::kSpoil].edgeCount;
  EXPECT_EQ(gone(0, 0), 0u);
  EXPECT_EQ(gone(0.5, 0), dug) << "half dug";
  EXPECT_EQ(gone(1, 0), dug) << "at its end";
  EXPECT_EQ(gone(1.5, 1), 0u) << "the next stage has done something else";
  frame.ghosts = false;
  EXPECT_EQ(gone(1, 0), 0u);
}

TEST_F(DrawListTest, SoilIsDrawnApartWhenTheGroundIsSeenThrough) {
  viewer::Frame frame;
  frame.time = 5;
  frame.seeThrough = viewer::SeeThrough::Ground;
  viewer::DrawList list;
  viewer::listFor(scene_, frame, list);
  EXPECT_EQ(list.seeThrough.total(), scene_.elements[support::kGround].indexCount);
}

}  // namespace
