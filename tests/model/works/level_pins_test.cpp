#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "model/model.h"
#include "tests/support/demo_job.h"

namespace {

using namespace model;

// Along each wall: where its pins stand, from its start, one list for each level of their tops.
std::vector<std::vector<double>> pinRows(const Model& m) {
  std::map<std::pair<std::string, long>, std::vector<double>> rows;
  for (const Element& element : m.works.elements) {
    if (element.kind != ElementKind::LevelPin || element.wall.empty()) continue;
    const WallLine& wall = m.settingOut.walls[m.settingOut.wallNamed(element.wall).value()];
    double low = 1e9, high = -1e9, top = -1e9;
    for (const Vec3& p : element.solid.points) {
      const Vec2 off = Vec2{p.x, p.y} - wall.start;
      const double s = off.x * wall.along.x + off.y * wall.along.y;
      low = std::min(low, s);
      high = std::max(high, s);
      top = std::max(top, p.z);
    }
    rows[{element.wall, std::lround(top * 1000)}].push_back((low + high) / 2);
  }
  std::vector<std::vector<double>> all;
  for (auto& [key, row] : rows) {
    std::sort(row.begin(), row.end());
    all.push_back(row);
  }
  return all;
}

TEST(LevelPins, StandNoFurtherApartThanTheJobSaysAndNoNearerThanItNeeds) {
  Job job = test_support::demoJob("garage");
  size_t before = 1000;
  for (const double spacing : {0.900, 1.800, 3.000}) {
    job.settingOut.pinSpacing = spacing;
    size_t count = 0;
    for (const auto& row : pinRows(buildModel(job))) {
      count += row.size();
      for (size_t i = 0; i + 1 < row.size(); ++i) {
        EXPECT_LE(row[i + 1] - row[i], spacing + 1e-9);
        // One pin fewer would leave too much between them.
        const double length = row.back() - row.front();
        if (row.size() > 2) {
          EXPECT_GT(length / static_cast<double>(row.size() - 2), spacing - 1e-9);
        }
      }
    }
    EXPECT_GT(count, 4u);
    EXPECT_LT(count, before);
    before = count;
  }
}

}  // namespace
