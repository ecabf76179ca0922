// What plates off their line do to every rafter.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <map>
#include <numbers>
#include <set>

#include "model/works/parts.h"
#include "tests/model/asbuilt/as_built_support.h"

namespace asbuilt_test {
namespace {

Job gabled() {
  Job job = rectangle(10, 6);
  job.roof.edges = {{"B-C", EavesKind::Gable}, {"D-A", EavesKind::Gable}};
  return job;
}

void shiftPlate(std::vector<Reading>& rows, const std::string& wall, double length, double out,
                double up, double plateTop) {
  for (const double along : {0.0, length}) {
    rows.push_back(faceAt("inner-leaf-front", wall, along, out));
    rows.push_back(levelAt("plate-top", wall, plateTop + up, along));
  }
}

double cosine(const Job& job) { return std::cos(job.roof.pitch * std::numbers::pi / 180); }
double tangent(const Job& job) { return std::tan(job.roof.pitch * std::numbers::pi / 180); }

TEST(Rafters, OfOnePlateOutAreLongerByHalfOfItOnBothSidesWithThePitchHeld) {
  Job job = gabled();
  const double top = deriveSettingOut(job).levels.plateTop;
  std::vector<Reading> rows;
  shiftPlate(rows, "A-B", 10, 0.020, 0, top);
  addSet(job, rows);
  const auto built = derive(job);
  std::set<size_t> walls;
  for (const RafterChange& r : built.roof.rafters) {
    walls.insert(r.wall);
    EXPECT_NEAR(r.pitchHeld, 0.010 / cosine(job), 1e-9) << r.id;
    EXPECT_NEAR(r.topUp, 0.010 * tangent(job), 1e-9) << r.id;
    EXPECT_TRUE(r.atRidge);
    const double length = std::hypot(r.run + (r.wall == 0 ? 0.020 : 0), r.rise);
    EXPECT_NEAR(r.ridgeHeld, length - r.length, 1e-9);
  }
  EXPECT_EQ(walls, (std::set<size_t>{0, 2}));
  EXPECT_TRUE(anyChangeSays(
      built, "rafters over A-B: with the ridge held 15 longer, with the pitch held 13 longer"));
}

TEST(Rafters, OfBothPlatesOutAreLongerByItsSlope) {
  Job job = gabled();
  const double top = deriveSettingOut(job).levels.plateTop;
  std::vector<Reading> rows;
  shiftPlate(rows, "A-B", 10, 0.020, 0, top);
  shiftPlate(rows, "C-D", 10, 0.020, 0, top);
  addSet(job, rows);
  const auto built = derive(job);
  ASSERT_FALSE(built.roof.rafters.empty());
  for (const RafterChange& r : built.roof.rafters)
    EXPECT_NEAR(r.pitchHeld, 0.020 / cosine(job), 1e-9) << r.id;
}

// Trade brief, worked there: walls 60 further apart at one end, 6.000 to 6.060 between plates, 40
// degrees: rafters 3.916 to 3.939 with the ridge held; with the pitch held it climbs 25.
TEST(Rafters, OfWallsThatPartGrowAlongTheWall) {
  Job job = gabled();
  job.roof.pitch = 40;
  const double depth = deriveSettingOut(job).faceDistances.innerLeafFront;
  job.outline = {{0, 0}, {10, 0}, {10, 6 + 2 * depth}, {0, 6 + 2 * depth}};
  addSet(job,
         {faceAt("inner-leaf-front", "A-B", 0, 0), faceAt("inner-leaf-front", "A-B", 10, 0.030),
          faceAt("inner-leaf-front", "D-C", 0, 0), faceAt("inner-leaf-front", "D-C", 10, 0.030)});
  const auto built = derive(job);
  ASSERT_FALSE(built.roof.rafters.empty());
  double most = 0, climbs = 0;
  for (const RafterChange& r : built.roof.rafters) {
    EXPECT_NEAR(r.length, 3.916, 0.0005);
    const Vec2 at = deriveSettingOut(job).walls[r.wall].at(r.s);
    // Beside the verges the plates end, and the last readings are held.
    const double out = 0.030 * std::clamp(at.x, 0.0, 10.0) / 10;
    EXPECT_NEAR(r.ridgeHeld, std::hypot(3 + out, r.rise) - r.length, 1e-9);
    most = std::max(most, r.ridgeHeld);
    climbs = std::max(climbs, r.topUp);
  }
  EXPECT_NEAR(most, 0.023, 0.001);
  EXPECT_NEAR(climbs, 0.025, 0.001);
  EXPECT_TRUE(anyChangeSays(built, "each its own length"));
  EXPECT_TRUE(anyChangeSays(built, "out of level"));
}

// Trade brief, worked there: one plate 10 low with the ridge held, rafters that side 6 longer.
TEST(Rafters, OfALowPlateAreLongerWithTheRidgeHeld) {
  Job job = gabled();
  job.roof.pitch = 40;
  const double top = deriveSettingOut(job).levels.plateTop;
  std::vector<Reading> rows;
  shiftPlate(rows, "A-B", 10, 0, -0.010, top);
  addSet(job, rows);
  for (const RafterChange& r : derive(job).roof.rafters)
    EXPECT_NEAR(r.ridgeHeld, r.wall == 0 ? 0.006 : 0, 0.0006) << r.id;
}

// Trade brief, worked there: a hip end skew by 30 over 6 m; plan 4.232 and 4.253, lengths 4.924 and
// 4.942 for a run of 3.000 and a rise of 2.517.
TEST(Hips, OfASkewEndNoLongerMatch) {
  const double skew = std::asin(0.030 / 6), square = std::numbers::pi / 2;
  EXPECT_NEAR(hipLength(3, 0, square + skew), 4.232, 0.0005);
  EXPECT_NEAR(hipLength(3, 0, square - skew), 4.253, 0.0005);
  EXPECT_NEAR(hipLength(3, 2.517, square + skew), 4.924, 0.0005);
  EXPECT_NEAR(hipLength(3, 2.517, square - skew), 4.942, 0.0005);
}

RC_GTEST_PROP(Rafters, OfPlatesAllLowAreAsDrawnWithThePitchHeld, ()) {
  const auto seed = *rc::gen::inRange<unsigned>(0, 100000);
  Job job = test_support::seededJob(seed);
  job.readings.clear();
  const SettingOut out = deriveSettingOut(job);
  const double low = *rc::gen::inRange(1, 60) / 1000.0;
  std::vector<Reading> rows;
  for (const Corner& corner : out.corners)
    rows.push_back(levelAt("plate-top", corner.letter, out.levels.plateTop - low));
  addSet(job, rows);
  const AsBuilt built = deriveAsBuilt(job, out);
  Works works;
  buildRafters(job, out, works);
  std::map<std::string, double> lengths;
  for (const Element& element : works.elements) lengths[element.id] = element.quantity.amount;
  size_t found = 0;
  for (const RafterChange& r : built.roof.rafters) {
    RC_ASSERT(std::abs(r.pitchHeld) < 1e-6);
    RC_ASSERT(std::abs(r.topUp + low) < 1e-6);
    RC_ASSERT(lengths.count(r.id) == 1u);
    ++found;
  }
  if (out.tanPitch > 0 && !out.roof.faces.empty())
    RC_ASSERT(found * 10 >= works.elements.size() * 6);
}

// Each rafter's difference is what a roof drawn with the moved wall has.
TEST(Rafters, DifferByWhatARoofOverTheMovedWallHas) {
  Job job = rectangle(10, 6);  // hipped all round
  const SettingOut out = deriveSettingOut(job);
  const double d = 0.040;
  std::vector<Reading> rows;
  shiftPlate(rows, "A-B", 10, d, 0, out.levels.plateTop);
  Job read = job;
  addSet(read, rows);
  const auto built = derive(read);
  Job moved = job;
  moved.outline[0].y -= d;
  moved.outline[1].y -= d;
  const SettingOut there = deriveSettingOut(moved);
  size_t compared = 0;
  for (const RafterChange& r : built.roof.rafters) {
    const WallLine &before = out.walls[r.wall], &after = there.walls[r.wall];
    // Up from the plate at the same place on plan to where the other slopes are lower.
    const auto runIn = [&](const SettingOut& roof, const WallLine& wall, double s) {
      const double plate = roof.faceDistances.innerLeafFront;
      double run = 0;
      for (const double step : {0.1, 0.001, 0.00001}) {
        const auto under = [&](double inward) {
          const Vec2 p = wall.at(s, inward);
          const double mine = inward;
          double least = 1e300;
          for (const WallLine& each : roof.walls)
            least = std::min(least, -glm::dot(p - each.start, each.outward));
          return mine <= least + 1e-9;
        };
        while (under(plate + run + step)) run += step;
      }
      return run;
    };
    const Vec2 at = before.at(r.s);
    const double s = glm::dot(at - after.start, after.along);
    const double change = runIn(there, after, s) - runIn(out, before, r.s);
    EXPECT_NEAR(r.pitchHeld * cosine(job), change, 5e-5) << r.id;
    ++compared;
  }
  EXPECT_GT(compared, 30u);
}

// All but the short tails in the corners of hips, which end before the plate.
TEST(Rafters, AreNamedAsInTheWorksAndNoneIsLeftOut) {
  const Job job = test_support::demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  Works works;
  buildRafters(job, out, works);
  std::map<std::string, double> lengths;
  for (const Element& element : works.elements) {
    if (element.id.find(" board ") == std::string::npos)
      lengths[element.id] = element.quantity.amount;
  }
  const auto built = deriveAsBuilt(job, out);
  ASSERT_GT(built.roof.rafters.size(), 50u);
  for (const RafterChange& r : built.roof.rafters) EXPECT_EQ(lengths.erase(r.id), 1u) << r.id;
  const double tail = (job.roof.eaves + out.faceDistances.innerLeafFront) / cosine(job);
  for (const auto& [id, length] : lengths) EXPECT_LT(length, tail + 0.1) << id;
}

}  // namespace
}  // namespace asbuilt_test
