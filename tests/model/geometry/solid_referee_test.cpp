// The referee itself: does it see what it is there to see?
#include "tests/support/solid_referee.h"

#include <gtest/gtest.h>

namespace model {
namespace {

using test::overlap;
using test::slicedVolume;

const Polygon kL{{0, 0}, {4, 0}, {4, 2}, {2, 2}, {2, 3}, {0, 3}};

TEST(SolidReferee, SlicesAPyramidToAThirdOfItsBox) {
  Solid pyramid;
  pyramid.points = {{0, 0, 0}, {3, 0, 0}, {3, 2, 0}, {0, 2, 0}, {1, 1, 5}};
  pyramid.triangles = {{0, 2, 1}, {0, 3, 2}, {0, 1, 4}, {1, 2, 4}, {2, 3, 4}, {3, 0, 4}};
  EXPECT_NEAR(slicedVolume(pyramid), 3 * 2 * 5 / 3.0, 1e-12);
}

TEST(SolidReferee, SlicesAFrameLessItsHole) {
  const Region frame = ring(kL, {{0.5, 0.5}, {0.5, 1.5}, {1.5, 1.5}, {1.5, 0.5}});
  EXPECT_NEAR(slicedVolume(prism(frame, -1, 1)), (10 - 1) * 2, 1e-12);
}

TEST(SolidReferee, SlicesSlopingPrismsAsTheDivergenceFormulaDoes) {
  const Solid solid = prism(Region{kL, {}}, Plane{{0.1, 0.2}, -3}, Plane{{-0.3, 0.4}, 2});
  EXPECT_NEAR(slicedVolume(solid), volume(solid), 1e-12);
}

TEST(SolidReferee, SeesAMillimetreOfOverlapSideways) {
  const Solid a = box({0, 0, 0}, {1, 1, 1}), b = box({0.999, 0, 0}, {2, 1, 1});
  EXPECT_NEAR(overlap(a, b), 0.001, 1e-9);
}

TEST(SolidReferee, SeesAMillimetreOfOverlapInHeight) {
  const Solid a = box({0, 0, 0}, {1, 1, 1}), b = box({0.2, 0.2, 0.999}, {0.8, 0.8, 2});
  EXPECT_NEAR(overlap(a, b), 0.36 * 0.001, 1e-9);
}

TEST(SolidReferee, SeesAMillimetreOfOverlapUnderASlope) {
  const Region square{{{0, 0}, {1, 0}, {1, 1}, {0, 1}}, {}};
  const Solid below = prism(square, Plane::flat(0), Plane{{0.8, 0.3}, 1});
  const Solid above = prism(square, Plane{{0.8, 0.3}, 0.999}, Plane::flat(4));
  EXPECT_GT(overlap(below, above), 1e-5);
}

TEST(SolidReferee, SeesASolidInsideAnother) {
  EXPECT_NEAR(overlap(box({0, 0, 0}, {3, 3, 3}), box({1, 1, 1}, {2, 2, 2})), 1, 1e-9);
}

TEST(SolidReferee, CallsTouchingSolidsClear) {
  const Region square{{{0, 0}, {1, 0}, {1, 1}, {0, 1}}, {}};
  const Plane slope{{0.8, 0.3}, 1};
  EXPECT_EQ(overlap(box({0, 0, 0}, {1, 1, 1}), box({1, 0, 0}, {2, 1, 1})), 0);
  EXPECT_EQ(overlap(box({0, 0, 0}, {1, 1, 1}), box({0, 0, 1}, {1, 1, 2})), 0);
  EXPECT_EQ(overlap(prism(square, Plane::flat(0), slope), prism(square, slope, Plane::flat(4))), 0);
}

// A hundredth of a millimetre under a slope of one in a hundred is a millimetre wide.
TEST(SolidReferee, CallsALensThinnerThanASkinClear) {
  const Region square{{{0, 0}, {1, 0}, {1, 1}, {0, 1}}, {}};
  const Solid below = prism(square, Plane::flat(0), Plane{{0.01, 0}, 1});
  EXPECT_EQ(overlap(below, box({0, 0, 1.00999}, {1, 1, 2})), 0);
  EXPECT_EQ(overlap(box({0, 0, 1.00999}, {1, 1, 2}), below), 0);
  EXPECT_GT(overlap(below, box({0, 0, 1.009}, {1, 1, 2})), 1e-5);
}

TEST(SolidReferee, CallsASolidInTheHoleOfAnotherClear) {
  const Polygon hole{{0.5, 0.5}, {0.5, 1.5}, {1.5, 1.5}, {1.5, 0.5}};
  EXPECT_EQ(overlap(prism(ring(kL, hole), 0, 1), box({0.5, 0.5, 0}, {1.5, 1.5, 1})), 0);
}

TEST(SolidReferee, ListsEveryOverlappingPair) {
  const Solid a = box({0, 0, 0}, {1, 1, 1}), b = box({2, 0, 0}, {3, 1, 1}),
              c = box({0.5, 0.5, 0.5}, {2.5, 0.6, 0.6});
  const auto found = test::overlaps({&a, &b, nullptr, &c});
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].b, 3u);
  EXPECT_EQ(found[1].b, 3u);
  EXPECT_NEAR(found[0].volume + found[1].volume, 2 * 0.5 * 0.1 * 0.1, 1e-9);
}

TEST(SolidReferee, SeesOneShellOfManyOverlap) {
  Solid posts;
  for (int i = 0; i < 30; ++i) posts.append(box({i * 1.0, 0, 0}, {i + 0.1, 0.1, 3}));
  const Solid rail = box({12.05, 0.02, 1}, {12.5, 0.08, 1.1});
  const auto found = test::overlaps({&posts, &rail});
  ASSERT_EQ(found.size(), 1u);
  EXPECT_NEAR(found[0].volume, 0.05 * 0.06 * 0.1, 1e-9);
  EXPECT_NEAR(slicedVolume(posts), 30 * 0.03, 1e-9);
}

TEST(SolidReferee, SeesTheSameSolidTwiceAndOneInAHollow) {
  const Solid solid = prism(Region{kL, {}}, 0, 1);
  EXPECT_NEAR(test::overlap(solid, solid), volume(solid), 1e-6);
  Solid hollow = box({0, 0, 0}, {4, 4, 4}), inner = box({1, 1, 1}, {3, 3, 3});
  for (auto& t : inner.triangles) std::swap(t[1], t[2]);
  hollow.append(inner);
  const Solid within = box({1.5, 1.5, 1.5}, {2, 2, 2}), across = box({0.5, 2, 2}, {2, 2.5, 2.5});
  const auto found = test::overlaps({&hollow, &within, &across});
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].b, 2u);
  EXPECT_NEAR(found[0].volume, 0.5 * 0.5 * 0.5, 1e-9);
}

TEST(SolidReferee, LooksOnlyAtThePairsThatItIsAskedAbout) {
  const Solid a = box({0, 0, 0}, {1, 1, 1}), b = box({0.5, 0, 0}, {2, 1, 1});
  EXPECT_TRUE(test::overlaps({&a, &b}, [](size_t, size_t) { return false; }).empty());
}

}  // namespace
}  // namespace model
