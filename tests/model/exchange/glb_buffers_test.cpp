#include "model/exchange/glb_buffers.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace model {
namespace {

TEST(GlbBuffers, TurnEastNorthUpIntoTheAxesOfTheFormat) {
  // A marker: its long leg east, its short leg north, its post up.
  GlbBuffers buffers({100, 200, 0});
  const GlbPart east = buffers.add(box({100, 200, 0}, {103, 200.1, 0.1}));
  const GlbPart north = buffers.add(box({100, 200, 0}, {100.1, 202, 0.1}));
  const GlbPart up = buffers.add(box({100, 200, 0}, {100.1, 200.1, 1}));
  EXPECT_FLOAT_EQ(east.high[0], 3);   // east is +X
  EXPECT_FLOAT_EQ(north.low[2], -2);  // north is -Z
  EXPECT_FLOAT_EQ(up.high[1], 1);     // up is +Y
  EXPECT_FLOAT_EQ(north.high[2], 0);
}

TEST(GlbBuffers, MakeEveryFaceOfABoxFlat) {
  GlbBuffers buffers({0, 0, 0});
  const GlbPart part = buffers.add(box({0, 0, 0}, {1, 2, 3}));
  EXPECT_EQ(part.vertexCount, 24u);  // four corners on each of six faces
  EXPECT_EQ(part.indexCount, 36u);
  for (size_t i = 0; i + 2 < buffers.indices16.size(); i += 3) {
    const float* normal = buffers.normals.data() + 3 * buffers.indices16[i];
    for (size_t k = 1; k < 3; ++k) {
      const float* other = buffers.normals.data() + 3 * buffers.indices16[i + k];
      for (size_t axis = 0; axis < 3; ++axis) EXPECT_EQ(normal[axis], other[axis]);
    }
    EXPECT_FLOAT_EQ(std::hypot(normal[0], normal[1], normal[2]), 1);
  }
}

TEST(GlbBuffers, UseWideIndicesOnlyPastSixteenBits) {
  Solid many;
  for (int i = 0; i < 2730; ++i) many.append(box({i * 2.0, 0, 0}, {i * 2.0 + 1, 1, 1}));
  GlbBuffers buffers({0, 0, 0});
  EXPECT_FALSE(buffers.add(many).wide);  // 65,520 vertices
  many.append(box({-2, 0, 0}, {-1, 1, 1}));
  const GlbPart wide = buffers.add(many);
  EXPECT_TRUE(wide.wide);
  EXPECT_EQ(wide.vertexCount, 65544u);
  EXPECT_EQ(buffers.indices32.size(), wide.indexCount);
}

TEST(GlbBuffers, LeaveOutTrianglesWithoutArea) {
  Solid solid = box({0, 0, 0}, {1, 1, 1});
  solid.triangles.push_back({0, 0, 1});
  GlbBuffers buffers({0, 0, 0});
  EXPECT_EQ(buffers.add(solid).indexCount, 36u);
}

TEST(GlbBuffers, RefuseCoordinatesThatAreNotFinite) {
  for (double bad :
       {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
    Solid solid = box({0, 0, 0}, {1, 1, 1});
    solid.points[0].y = bad;
    GlbBuffers buffers({0, 0, 0});
    EXPECT_THROW(buffers.add(solid), std::runtime_error);
    EXPECT_THROW(buffers.addLine({0, 0, 0}, {0, bad, 0}), std::runtime_error);
  }
}

}  // namespace
}  // namespace model
