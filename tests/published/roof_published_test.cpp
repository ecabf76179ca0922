// Roof geometry against rafter tables and worked examples.
//
// "Builder 3&2" is NAVEDTRA 14044, Builder 3 & 2, Volume 2, chapter 2, Roof framing (US Navy).
// "EN5156" is US Army correspondence course EN5156, Carpentry. Their roofs are built here by the
// model itself, in feet turned to metres; what is measured are its roof lines and its rafters.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "tests/support/roofed_job.h"

namespace model {
namespace {

constexpr double kInch = 0.0254, kFoot = 0.3048;
constexpr double kDegree = 0.017453292519943295;

double pitchOf(double riseInches) { return std::atan(riseInches / 12) / kDegree; }

double trueLength(const RoofLine& line, double riseInches) {
  return std::hypot(line.b.x - line.a.x, line.b.y - line.a.y,
                    (line.runB - line.runA) * riseInches / 12);
}

Skeleton roofOver(const Polygon& outline, const std::vector<size_t>& gables = {}) {
  std::vector<bool> gable(outline.size(), false);
  for (const size_t i : gables) gable[i] = true;
  return roofSkeleton(outline, gable).skeleton.value();
}

Polygon oblong(double length, double width) {
  return {{0, 0}, {length, 0}, {length, width}, {0, width}};
}

RoofLine lineOf(const Skeleton& roof, RoofLineKind kind) {
  for (const RoofLine& line : roof.lines)
    if (line.kind == kind) return line;
  throw std::runtime_error("no such line");
}

// From eaves to ridge along a verge: a common rafter without its overhang.
double commonRafter(double span, double riseInches) {
  return trueLength(lineOf(roofOver(oblong(2 * span, span), {1, 3}), RoofLineKind::Verge),
                    riseInches);
}

double hipRafter(double run, double riseInches) {
  return trueLength(lineOf(roofOver(oblong(6 * run, 2 * run)), RoofLineKind::Hip), riseInches);
}

// Rafters of a built job over wall A-B, in order along it.
std::vector<double> raftersOver(const test::RoofedJob& made, const std::string& wall) {
  std::vector<double> lengths;
  for (const Element* element : test::ofKind(made.works, ElementKind::Rafter))
    if (element->wall == wall) lengths.push_back(element->quantity.amount);
  return lengths;
}

// Builder 3&2, fig. 2-17 with example 1: 7 in rise, 16 ft span: 111.12 in from 13.89 in per foot.
TEST(RoofPublished, CommonRafterOfSevenInchRise) {
  EXPECT_NEAR(commonRafter(16 * kFoot, 7) / kInch, 111.12, 0.03);
  EXPECT_NEAR(commonRafter(2 * kFoot, 7) / kInch, 13.89, 0.005);
}

// Builder 3&2, fig. 2-17, example 2: 6 in rise, 25 ft span: rise 6.25 ft over 12.5 ft.
TEST(RoofPublished, CommonRafterByTotalRiseAndRun) {
  EXPECT_NEAR(commonRafter(25 * kFoot, 6) / kFoot, 13.975, 0.0005);
}

// Builder 3&2, "Hip (continued)": common run 15 ft: hip run 21.21 ft; 8 in rise: 18.76 in a foot of
// common run, 23.45 ft in all.
TEST(RoofPublished, HipRafterOfEightInchRise) {
  const RoofLine hip = lineOf(roofOver(oblong(90 * kFoot, 30 * kFoot)), RoofLineKind::Hip);
  EXPECT_NEAR(std::hypot(hip.b.x - hip.a.x, hip.b.y - hip.a.y) / kFoot, 21.21, 0.005);
  EXPECT_NEAR(std::abs(hip.runB - hip.runA) * 8 / 12 / kFoot, 10, 1e-9);
  EXPECT_NEAR(trueLength(hip, 8) / kFoot, 23.45, 0.005);
  EXPECT_NEAR(hipRafter(kFoot, 8) / kInch, 18.76, 0.005);
}

// Builder 3&2, fig. 2-41 page: addition of 30 ft span, 9 in rise: valley of 288.15 in.
TEST(RoofPublished, ValleyRafterOfAnAddition) {
  const double w = 30 * kFoot;
  const Skeleton roof = roofOver(
      {{0, 0}, {3 * w, 0}, {3 * w, w}, {2 * w, w}, {2 * w, 2 * w}, {w, 2 * w}, {w, w}, {0, w}});
  EXPECT_NEAR(trueLength(lineOf(roof, RoofLineKind::Valley), 9) / kInch, 288.15, 0.03);
}

// EN5156, table method: 13 in rise, 20 ft 8 in wide: 182.79 in (from 17.69 in a foot).
TEST(RoofPublished, CommonRafterOfThirteenInchRise) {
  EXPECT_NEAR(commonRafter((20 + 8 / 12.0) * kFoot, 13) / kInch, 182.79, 0.03);
}

// EN5156, table method: pitch fractions, the rise over the whole span, for seven rises.
TEST(RoofPublished, PitchFractionsAreRiseOverSpan) {
  const std::map<double, double> fractions{{4, 1 / 6.0},   {6, 1 / 4.0},  {8, 1 / 3.0},
                                           {10, 5 / 12.0}, {12, 1 / 2.0}, {15, 5 / 8.0},
                                           {18, 3 / 4.0}};
  for (const auto& [rise, fraction] : fractions) {
    const auto made = test::roofed(oblong(10, 6), pitchOf(rise), {"B-C", "D-A"});
    const Levels& levels = made.settingOut.levels;
    // The underside's rise from the outer face of one wall to the middle, over the span.
    const double ridge = made.settingOut.rafterUndersideAt({5, 3});
    EXPECT_NEAR((ridge - levels.eavesUnderside) / 6, fraction, 1e-9) << rise;
  }
}

// US Army EN0069A, rafter table: 16 in rise: 20.00 in of common rafter to a foot of run.
TEST(RoofPublished, CommonRafterOfSixteenInchRise) {
  EXPECT_NEAR(commonRafter(2 * kFoot, 16) / kInch, 20.00, 0.005);
}

// EN5156, "Rafters": 8 in rise, measured over the square to a twelfth of an inch: 14 5/12 in.
TEST(RoofPublished, UnitLengthMeasuredOverTheSquare) {
  EXPECT_NEAR(commonRafter(2 * kFoot, 8) / kInch, 14 + 5 / 12.0, 0.5 / 12);
}

// The bevel across the top edge of a jack that is cut against its hip: how far it runs along the
// slope for 12 across. Read off the built rafter.
double sideCutOfJack(double riseInches) {
  const auto made = test::roofed(oblong(12, 8), pitchOf(riseInches));
  const double cosine = std::cos(std::atan(riseInches / 12));
  for (const Element* jack : test::ofKind(made.works, ElementKind::Rafter)) {
    if (jack->wall != "D-A" || jack->solid.points.size() < 4) continue;  // runs along +x
    // The highest point of each side face is the top of its cheek.
    const Bounds b = bounds(jack->solid);
    Vec3 south{0, 0, -1e9}, north{0, 0, -1e9};
    for (const Vec3& p : jack->solid.points) {
      if (p.y < b.low.y + 1e-6 && p.z > south.z) south = p;
      if (p.y > b.high.y - 1e-6 && p.z > north.z) north = p;
    }
    const double along = std::abs(south.x - north.x) / cosine;
    if (along > 1e-6) return along / (north.y - south.y) * 12;
  }
  return 0;
}

// Builder 3&2, "Side cuts": 8 in rise, 12 on the tongue, 10 on the blade (12 x 12 / 14.42). F. T.
// Hodgson, ABC of the Steel Square, figs. 55 to 58: 12 and 15 for 9 in, 12 and 15 5/8 for 10 in.
TEST(RoofPublished, SideCutsOfJacks) {
  EXPECT_NEAR(12 * 12 / sideCutOfJack(8), 10, 0.02);
  EXPECT_NEAR(sideCutOfJack(9), 15, 1e-3);
  EXPECT_NEAR(sideCutOfJack(10), 15 + 5 / 8.0, 0.01);
}

// Hodgson, figs. 55 to 58: the side cut of a hip is 17 and its length over that run: 19 1/4 for 9
// in, 19 3/4 for 10 in, to a quarter of an inch.
TEST(RoofPublished, SideCutsOfHips) {
  const auto sideCut = [](double rise) {
    return 17 * hipRafter(kFoot, rise) / (std::sqrt(2.0) * kFoot);
  };
  EXPECT_NEAR(sideCut(9), 19.25, 0.125);
  EXPECT_NEAR(sideCut(9), 19.235, 0.01);  // from 17 for the square's 16.97
  EXPECT_NEAR(sideCut(10), 19.75, 0.125);
  EXPECT_NEAR(sideCut(10), 19.723, 0.015);
}

// H. Miller, The Carpenters' Guide, "Height of ridge": 5 ft 4 in over a run of 8 ft is 8 in a foot.
TEST(RoofPublished, RidgeHeightOfEightInchRise) {
  const RoofLine ridge = lineOf(roofOver(oblong(40 * kFoot, 16 * kFoot)), RoofLineKind::Ridge);
  EXPECT_NEAR(ridge.runA * 8 / 12 / kInch, 64, 1e-9);
}

// Carpentry refresher (open textbook), topic 8: a hip roof 36 ft by 24 ft has a ridge of 12 ft.
TEST(RoofPublished, HipRoofRidgeIsLengthLessWidth) {
  const RoofLine ridge = lineOf(roofOver(oblong(36 * kFoot, 24 * kFoot)), RoofLineKind::Ridge);
  EXPECT_NEAR(trueLength(ridge, 8) / kFoot, 12, 1e-9);
}

// I. S. Griffith, Carpentry (1916), section 23: 6 in rise, run 12 ft 7 in: 12 steps of 18.00 in (17
// and 6) and 7/12 of one.
TEST(RoofPublished, HipByFractionalSteps) {
  EXPECT_NEAR(hipRafter((12 + 7 / 12.0) * kFoot, 6) / kInch, 226.5, 0.05);
}

// The same section: the step for what is left, 7/12 of one: 9 11/12 in (of 17) and 3 1/2.
TEST(RoofPublished, TheLastFractionOfAHipsStep) {
  const RoofLine hip = lineOf(roofOver(oblong(60 * kInch, 14 * kInch)), RoofLineKind::Hip);
  EXPECT_NEAR(std::hypot(hip.b.x - hip.a.x, hip.b.y - hip.a.y) / kInch, 9 + 11 / 12.0, 0.02);
  EXPECT_NEAR(std::abs(hip.runB - hip.runA) * 6 / 12 / kInch, 3.5, 1e-9);
}

// F. T. Hodgson, ABC of the Steel Square, fig. 39; Griffith, section 35: the octagon's 4.97 in
// to 12.
TEST(RoofPublished, OctagonComesToItsPointAtTwelveForHalfSidesOf497) {
  const Polygon octagon = test::regularPlan(8, std::hypot(12, 4.97) * kInch);
  const Skeleton roof = roofOver(octagon);
  EXPECT_NEAR(std::hypot(octagon[1].x - octagon[0].x, octagon[1].y - octagon[0].y) / 2 / kInch,
              4.97, 0.005);
  EXPECT_NEAR(roof.faces[0].run[2] / kInch, 12, 0.005);
  EXPECT_EQ(roof.faces[0].plan.size(), 3u);
}

// Basic Construction and Carpentry Techniques, "How to frame hip roofs": span 6400 mm, slope 150 in
// 250: common 3731.2 mm; hip 4916 mm; hip over 800 mm of eaves 1229 mm.
TEST(RoofPublished, MetricHipRoof) {
  const double rise = 12 * 150 / 250.0;
  EXPECT_NEAR(commonRafter(6.4, rise) * 1000, 3731.2, 0.7);
  EXPECT_NEAR(hipRafter(3.2, rise) * 1000, 4916, 0.5);
  EXPECT_NEAR(hipRafter(0.8, rise) * 1000, 1229, 0.5);
}

// Basic Construction and Carpentry Techniques, "Framing shed roofs": walls of 2000 and 2500 mm,
// 2500 apart: 2549.5 mm, and 510 mm more over 500 of eaves.
TEST(RoofPublished, MetricRafterBetweenWallsOfTwoHeights) {
  const double rise = 12 * 500 / 2500.0;
  EXPECT_NEAR(commonRafter(2 * 2.5, rise) * 1000, 2549.5, 0.05);
  EXPECT_NEAR(commonRafter(2 * 0.5, rise) * 1000, 510, 0.5);
}

// Griffith, section 18: the plumb cut is made along the rise and the seat cut along the run of the
// square, so that at 8 in they make 56.31 and 33.69 degrees with the rafter's edge.
TEST(RoofPublished, BirdsmouthIsCutLevelAndPlumb) {
  const auto made = test::roofed(oblong(8, 16 * kFoot), pitchOf(8), {"B-C", "D-A"});
  const Element* rafter = nullptr;  // in the middle of the wall: those at the verges pass the plate
  for (const Element* e : test::ofKind(made.works, ElementKind::Rafter))
    if (e->wall == "A-B" && std::abs(bounds(e->solid).low.x - 4) < 0.4) rafter = e;
  ASSERT_TRUE(rafter);
  // Its underside on one side face, from the eaves inward.
  const Bounds b = bounds(rafter->solid);
  std::vector<Vec3> side;
  for (const Vec3& p : rafter->solid.points)
    if (p.x < b.low.x + 1e-6) side.push_back(p);
  const double plateTop = made.settingOut.levels.plateTop;
  std::vector<Vec3> seat, under;
  for (const Vec3& p : side) {
    if (std::abs(p.z - plateTop) < 1e-6) seat.push_back(p);
    if (p.z < plateTop - 1e-4) under.push_back(p);
  }
  ASSERT_EQ(seat.size(), 2u);  // level
  const Vec3 &heel = seat[0].y < seat[1].y ? seat[0] : seat[1],
             &toe = seat[0].y < seat[1].y ? seat[1] : seat[0];
  const bool plumb = std::any_of(under.begin(), under.end(),
                                 [&](const Vec3& p) { return std::abs(p.y - heel.y) < 1e-6; });
  EXPECT_TRUE(plumb);
  // The edge goes on from the toe of the seat up to the ridge.
  const Vec3* top = nullptr;
  for (const Vec3& p : side)
    if (p.z > plateTop + 1e-4 && p.y > toe.y && (!top || p.z - plateTop < (p.y - toe.y) * 0.7))
      top = &p;
  ASSERT_TRUE(top);
  const double seatAngle = std::atan2(top->z - toe.z, top->y - toe.y) / kDegree;
  EXPECT_NEAR(seatAngle, 33.69, 0.005);
  EXPECT_NEAR(90 - seatAngle, 56.31, 0.005);
}

// hunker.com, "Roof slope multiplying factors": 28 ft wide, 4 in 12: 14 x 1.0541 = 14.757 ft.
TEST(RoofPublished, RafterBySlopeFactor) {
  EXPECT_NEAR(commonRafter(28 * kFoot, 4) / kFoot, 14.757, 0.0005);
}

// Builder 3&2, fig. 2-18: a common rafter is shortened by half the ridge board, measured level; and
// its tail by unit length times projection. Here both are seen in the rafters as built.
TEST(RoofPublished, RafterIsShortenedByHalfTheRidgeBoard) {
  const auto made = test::roofed(oblong(8, 16 * kFoot), pitchOf(7), {"B-C", "D-A"});
  const double level = 8 * kFoot + made.job.roof.eaves - made.job.roof.rafterWidth / 2;
  const auto lengths = raftersOver(made, "A-B");
  ASSERT_GT(lengths.size(), 15u);
  for (const double length : lengths) EXPECT_NEAR(length, level * 13.892 / 12, 0.0005);
}

// Builder 3&2, fig. 2-53: jacks at equal spacing run in multiples of the shortest's difference.
// Radford's Cyclopedia vol. 3: 16 in centres, 6 in rise: 17.889 in. Audel's Carpenters and Builders
// Guide vol. 3, p. 975: 10 in rise: 20.83 in, and 26 in at 20 in centres. Basic Construction and
// Carpentry Techniques, page 11: 400 mm, 150 in 250: 466 mm.
TEST(RoofPublished, JacksGrowByTheCommonDifference) {
  struct Row {
    double spacing, rise, difference, band;
  };
  for (const Row& row :
       {Row{16 * kInch, 6, 17.889 * kInch, 0.001 * kInch},
        Row{16 * kInch, 10, 20.83 * kInch, 0.005 * kInch},
        Row{20 * kInch, 10, 26 * kInch, 0.05 * kInch}, Row{0.4, 12 * 150 / 250.0, 0.466, 0.0006}}) {
    const auto made = test::roofed(oblong(12, 8), pitchOf(row.rise), {}, row.spacing);
    const auto lengths = raftersOver(made, "D-A");  // a hipped end: nothing but jacks
    ASSERT_GT(lengths.size(), 10u);
    int pairs = 0;
    for (size_t k = 1; k < lengths.size(); ++k) {
      // Not across the middle, where two jacks differ by less.
      if (std::abs(double(k) - double(lengths.size()) / 2) < 2) continue;
      EXPECT_NEAR(std::abs(lengths[k] - lengths[k - 1]), row.difference, row.band);
      ++pairs;
    }
    EXPECT_GT(pairs, 6);
  }
}

// The steel square's rafter table: per foot of common run the length of common and of hip or
// valley, the slope, and its factor of area. Entries for 7, 8, 9, 13 and 16 in are printed in
// Builder 3&2 and EN5156; 2 to 8 and 10 to 12 at daveosborne.com, "Rafter table".
TEST(RoofPublished, RafterTableOfTheSteelSquare) {
  struct Row {
    double rise, common, hip, degrees, factor;
  };
  for (const Row& row :
       {Row{2, 12.166, 17.088, 9.462, 1.0138}, Row{3, 12.369, 17.234, 14.036, 1.0308},
        Row{4, 12.649, 17.436, 18.435, 1.0541}, Row{5, 13.000, 17.692, 22.620, 1.0833},
        Row{6, 13.416, 18.000, 26.565, 1.1180}, Row{7, 13.892, 18.358, 30.256, 1.1577},
        Row{8, 14.422, 18.762, 33.690, 1.2019}, Row{9, 15.000, 19.209, 36.870, 1.2500},
        Row{10, 15.620, 19.698, 39.806, 1.3017}, Row{11, 16.279, 20.224, 42.510, 1.3566},
        Row{12, 16.971, 20.785, 45.000, 1.4142}, Row{13, 17.692, 21.378, 47.291, 1.4743},
        Row{16, 20.000, 23.324, 53.130, 1.6667}, Row{18, 21.633, 24.739, 56.310, 1.8028}}) {
    EXPECT_NEAR(commonRafter(2 * kFoot, row.rise) / kInch, row.common, 0.00051) << row.rise;
    EXPECT_NEAR(hipRafter(kFoot, row.rise) / kInch, row.hip, 0.00051) << row.rise;
    EXPECT_NEAR(pitchOf(row.rise), row.degrees, 0.00051) << row.rise;
    // Area of the covering of a whole roof over that of its plan.
    const auto made = test::roofed(oblong(9, 6), row.degrees);
    double slopes = 0;
    for (const Element* element : test::ofKind(made.works, ElementKind::RoofCovering))
      slopes += element->quantity.amount;
    EXPECT_NEAR(slopes / signedArea(made.settingOut.eavesOutline), row.factor, 0.00006) << row.rise;
  }
}

}  // namespace
}  // namespace model
