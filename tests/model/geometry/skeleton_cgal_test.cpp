// The roof against CGAL's straight skeleton, face by face: areas that only add up prove nothing.
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/create_straight_skeleton_2.h>
#include <gtest/gtest.h>

#include <cmath>

#include "model/geometry/skeleton.h"
#include "tests/support/random_plans.h"

namespace model {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;

struct Reference {
  std::vector<double> areas;                // by edge
  std::vector<std::array<double, 3>> tops;  // x, y, run of every inner node
};

Reference referenceFor(const Polygon& outline) {
  CGAL::Polygon_2<Kernel> polygon;
  for (const Vec2& p : outline) polygon.push_back(Kernel::Point_2(p.x, p.y));
  const auto skeleton = CGAL::create_interior_straight_skeleton_2(polygon.vertices_begin(),
                                                                  polygon.vertices_end(), Kernel());
  Reference reference;
  reference.areas.assign(outline.size(), 0.0);
  if (!skeleton) return reference;
  for (auto face = skeleton->faces_begin(); face != skeleton->faces_end(); ++face) {
    Polygon plan;
    size_t edge = outline.size();
    auto side = face->halfedge();
    do {
      const auto a = side->opposite()->vertex()->point(), b = side->vertex()->point();
      for (size_t i = 0; i < outline.size(); ++i) {
        const Vec2 &p = outline[i], &q = outline[(i + 1) % outline.size()];
        if (p.x == a.x() && p.y == a.y() && q.x == b.x() && q.y == b.y()) edge = i;
      }
      plan.emplace_back(b.x(), b.y());
      side = side->next();
    } while (side != face->halfedge());
    if (edge < outline.size()) reference.areas[edge] += signedArea(plan);
  }
  for (auto v = skeleton->vertices_begin(); v != skeleton->vertices_end(); ++v)
    if (v->is_skeleton()) reference.tops.push_back({v->point().x(), v->point().y(), v->time()});
  return reference;
}

bool near(const std::array<double, 3>& a, const std::array<double, 3>& b) {
  return std::abs(a[0] - b[0]) < 1e-5 && std::abs(a[1] - b[1]) < 1e-5 &&
         std::abs(a[2] - b[2]) < 1e-5;
}

std::string describe(const Polygon& outline) {
  std::string text;
  for (const Vec2& p : outline)
    text += "{" + std::to_string(p.x) + ", " + std::to_string(p.y) + "}, ";
  return text;
}

void expectAgrees(const Polygon& outline) {
  SCOPED_TRACE(describe(outline));
  const SkeletonResult result = roofSkeleton(outline, std::vector<bool>(outline.size(), false));
  ASSERT_EQ(result.refusal, "");
  const Reference reference = referenceFor(outline);
  const auto& faces = result.skeleton->faces;
  ASSERT_EQ(faces.size(), outline.size());
  std::vector<std::array<double, 3>> tops;
  for (size_t i = 0; i < faces.size(); ++i) {
    EXPECT_EQ(faces[i].edge, i);
    EXPECT_NEAR(signedArea(faces[i].plan), reference.areas[i], 1e-5) << "face over edge " << i;
    for (size_t k = 2; k < faces[i].plan.size(); ++k)
      tops.push_back({faces[i].plan[k].x, faces[i].plan[k].y, faces[i].run[k]});
  }
  for (const auto& top : reference.tops)
    EXPECT_TRUE(std::any_of(tops.begin(), tops.end(), [&](const auto& t) { return near(t, top); }))
        << "nothing at " << top[0] << ", " << top[1] << ", run " << top[2];
  for (const auto& top : tops)
    EXPECT_TRUE(std::any_of(reference.tops.begin(), reference.tops.end(),
                            [&](const auto& t) { return near(t, top); }))
        << "should not be at " << top[0] << ", " << top[1] << ", run " << top[2];
}

TEST(SkeletonAgainstCgal, AgreesOnRandomPlansOfFewCorners) {
  test::Random random(1);
  for (int round = 0; round < 1500 && !HasFailure(); ++round)
    expectAgrees(test::anyPlan(random, 3 + round % 8, 12));
}

TEST(SkeletonAgainstCgal, AgreesOnRandomPlansOfManyCorners) {
  test::Random random(2);
  for (int round = 0; round < 200 && !HasFailure(); ++round)
    expectAgrees(test::anyPlan(random, 12 + round % 30, 30));
}

TEST(SkeletonAgainstCgal, AgreesOnSquareGridPlans) {
  test::Random random(3);
  for (int round = 0; round < 1500 && !HasFailure(); ++round)
    expectAgrees(test::gridPlan(random, 2 + round % 16, false));
}

TEST(SkeletonAgainstCgal, AgreesOnOblongGridPlans) {
  test::Random random(4);
  for (int round = 0; round < 700 && !HasFailure(); ++round)
    expectAgrees(test::gridPlan(random, 2 + round % 16, false, 2.25, 3.6));
}

TEST(SkeletonAgainstCgal, AgreesWhereWallsHavePointsInLine) {
  test::Random random(5);
  for (int round = 0; round < 700 && !HasFailure(); ++round)
    expectAgrees(test::gridPlan(random, 2 + round % 12, true));
}

}  // namespace
}  // namespace model
