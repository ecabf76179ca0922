// Solid walls on plan, course by course: what a bricklayer could lay and would call bonded.
#include "model/bond/solid_run.h"

#include <algorithm>
#include <cmath>
#include <sstream>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/job/garden_outline.h"

namespace model {
namespace {

struct Rect4 {
  double x0, x1, y0, y1;
};

bool overlap(const Rect4& a, const Rect4& b) {
  constexpr double kTouch = 1e-4;
  return a.x0 < b.x1 - kTouch && b.x0 < a.x1 - kTouch && a.y0 < b.y1 - kTouch &&
         b.y0 < a.y1 - kTouch;
}

std::string told(const Rect4& r) {
  std::ostringstream text;
  text << "x " << r.x0 << " to " << r.x1 << ", y " << r.y0 << " to " << r.y1;
  return text.str();
}

// With half a joint all round pieces fill their wall, so these are the sum of what they take.
double taken(const std::vector<Rect4>& all, double joint) {
  double sum = 0;
  for (const Rect4& r : all) sum += (r.x1 - r.x0 + joint) * (r.y1 - r.y0 + joint);
  return sum;
}

std::string firstOverlap(const std::vector<Rect4>& all) {
  for (size_t i = 0; i < all.size(); ++i)
    for (size_t k = i + 1; k < all.size(); ++k)
      if (overlap(all[i], all[k])) return told(all[i]) + " and " + told(all[k]);
  return "";
}

// The pieces of a course that are cut by a line along the wall at depth d, in order.
std::vector<SolidPiece> alongLine(const std::vector<SolidPiece>& course, double d) {
  std::vector<SolidPiece> line;
  for (const SolidPiece& p : course)
    if (p.d0 < d && d < p.d1) line.push_back(p);
  std::sort(line.begin(), line.end(),
            [](const SolidPiece& a, const SolidPiece& b) { return a.s0 < b.s0; });
  return line;
}

// The pieces of a course, the piers' own among them.
std::vector<SolidPiece> withPiers(const SolidSizes& sizes, const SolidLength& length,
                                  const SolidRun& run, size_t course) {
  std::vector<SolidPiece> all = run.courses[course];
  const double before = pierBeforeFace(sizes, length.piers.halfBricks);
  for (const SolidPierPlace& place : run.piers) {
    for (SolidPiece p : layPier(sizes, length.piers.halfBricks, run.through[course], place)) {
      p.s0 += place.from, p.s1 += place.from;
      p.d0 -= before, p.d1 -= before;
      all.push_back(p);
    }
  }
  return all;
}

std::vector<double> jointsOf(const std::vector<SolidPiece>& line) {
  std::vector<double> joints;
  constexpr double kNoJoint = 0.030;  // but from pier to pier
  for (size_t i = 0; i + 1 < line.size(); ++i)
    if (line[i + 1].s0 - line[i].s1 < kNoJoint) joints.push_back((line[i].s1 + line[i + 1].s0) / 2);
  return joints;
}

// Between the skins of a pier, where no face is.
bool insidePier(const SolidSizes& sizes, const SolidLength& length, const SolidRun& run, double s,
                double d) {
  const int m = length.piers.halfBricks;
  const double front = -pierBeforeFace(sizes, m);
  const double back = front + m * sizes.half() - sizes.joint;
  if (d < front + sizes.half() - sizes.joint || d > back - sizes.half() + sizes.joint) return false;
  return std::any_of(run.piers.begin(), run.piers.end(),
                     [&](const SolidPierPlace& place) { return s > place.from && s < place.to; });
}

// The nearest that joints of a course come to those of the one under it, over what is not cut out
// of order; `d`: on which line.
double leastLap(const SolidSizes& sizes, const SolidLength& length, const SolidRun& run, double d) {
  double least = 1e9;
  const size_t n = run.courses.size();
  const double beside = run.cut > 0 ? sizes.brick : -1e-6;
  for (size_t i = 0; i < n; ++i) {
    const auto a = jointsOf(alongLine(withPiers(sizes, length, run, i), d));
    const auto b = jointsOf(alongLine(withPiers(sizes, length, run, (i + 1) % n), d));
    for (const double p : a) {
      if (insidePier(sizes, length, run, p, d)) continue;
      if (run.cut > 0 && p > run.broken[0] - beside && p < run.broken[1] + beside) continue;
      for (const double q : b) least = std::min(least, std::fabs(p - q));
    }
  }
  return least;
}

struct Drawn {
  SolidSizes sizes;
  SolidLength length;
};

std::string told(const Drawn& w) {
  std::ostringstream text;
  text << "bond " << static_cast<int>(w.sizes.bond) << ", " << w.sizes.halfBricks
       << " half bricks, length " << w.length.to - w.length.from << ", ends "
       << static_cast<int>(w.length.start) << static_cast<int>(w.length.end) << ", shift "
       << w.length.shift << ", piers " << w.length.piers.halfBricks << " every "
       << w.length.piers.every;
  return text.str();
}

const std::vector<BondKind> kThin{
    BondKind::Stretcher,        BondKind::Header,  BondKind::Stack,
    BondKind::English,          BondKind::Flemish, BondKind::EnglishGardenWall,
    BondKind::FlemishGardenWall};
const std::vector<BondKind> kBrickThick{BondKind::Header, BondKind::English, BondKind::Flemish,
                                        BondKind::EnglishGardenWall, BondKind::FlemishGardenWall};

Drawn drawn(bool piers) {
  Drawn w;
  const int n = *rc::gen::inRange(1, piers ? 3 : 5);
  w.sizes.halfBricks = n;
  w.sizes.bond = n == 1   ? *rc::gen::elementOf(kThin)
                 : n == 2 ? *rc::gen::elementOf(kBrickThick)
                          : BondKind::English;
  const bool sized = *rc::gen::arbitrary<bool>();
  const int halves = *rc::gen::inRange(24, 120);
  w.length.to = halves * w.sizes.half() - w.sizes.joint;
  if (!sized) w.length.to += *rc::gen::inRange(0, 112) / 1000.0;
  w.length.shift = *rc::gen::inRange(0, 2);
  if (!piers) return w;
  w.length.piers.halfBricks = n + *rc::gen::inRange(1, 3);
  GardenWall wall;
  wall.bond = w.sizes.bond;
  wall.bricks = n / 2.0;
  wall.pierBricks = w.length.piers.halfBricks / 2.0;
  RC_PRE(gardenPierFits(wall));
  w.length.piers.every = *rc::gen::elementOf(std::vector<double>{0, 1.8, 2.4, 3});
  return w;
}

RC_GTEST_PROP(SolidRun, EveryRowIsFilledFromEndToEndWithJointsInTheirLimits, ()) {
  const Drawn w = drawn(false);
  const SolidRun run = laySolidRun(w.sizes, w.length);
  for (const auto& course : run.courses) {
    for (int row = 0; row < w.sizes.halfBricks; ++row) {
      const auto line = alongLine(course, (row + 0.4) * w.sizes.half());
      if (std::fabs(line.front().s0) > 1e-6 || std::fabs(line.back().s1 - w.length.to) > 1e-6)
        RC_FAIL(told(w) + ": not flush");
      for (size_t i = 0; i + 1 < line.size(); ++i) {
        const double joint = line[i + 1].s0 - line[i].s1;
        if (joint < w.sizes.least - 1e-4 || joint > w.sizes.most + 1e-4)
          RC_FAIL(told(w) + ": joint of " + std::to_string(joint));
      }
      for (const SolidPiece& p : line) {
        RC_ASSERT(p.s1 - p.s0 < w.sizes.brick + 1e-6);
        RC_ASSERT(p.s1 - p.s0 > w.sizes.quarter() - w.sizes.joint - 1e-6);
      }
    }
  }
}

RC_GTEST_PROP(SolidRun, LapsByAQuarterOnBothFaces, ()) {
  const Drawn w = drawn(false);
  RC_PRE(w.sizes.bond != BondKind::Stack);
  const SolidRun run = laySolidRun(w.sizes, w.length);
  for (const double d : {0.01, w.sizes.thickness() - 0.01}) {
    const double lap = leastLap(w.sizes, w.length, run, d);
    if (lap < w.sizes.quarter() - 0.002) RC_FAIL(told(w) + ": lap of " + std::to_string(lap));
  }
}

RC_GTEST_PROP(SolidRun, GoesThroughItsPiersInEveryOtherCourse, ()) {
  const Drawn w = drawn(true);
  const SolidRun run = laySolidRun(w.sizes, w.length);
  const int m = w.length.piers.halfBricks;
  const double joint = w.sizes.joint, size = m * w.sizes.half();
  const double before = pierBeforeFace(w.sizes, m);
  RC_ASSERT(run.piers.size() >= 2u);
  double out = 0;
  for (const SolidPierPlace& place : run.piers) {
    RC_ASSERT(std::fabs(place.to - place.from - (size - joint)) < 1e-9);
    out += size * (size - w.sizes.halfBricks * w.sizes.half());
  }
  for (size_t i = 0; i < run.courses.size(); ++i) {
    RC_ASSERT(run.through[i] != run.through[(i + 1) % run.courses.size()]);
    std::vector<Rect4> all;
    for (const SolidPiece& p : withPiers(w.sizes, w.length, run, i))
      all.push_back({p.s0, p.s1, p.d0, p.d1});
    const std::string found = firstOverlap(all);
    if (!found.empty()) RC_FAIL(told(w) + ": " + found);
    const double wall = (w.length.to + joint) * w.sizes.halfBricks * w.sizes.half();
    const double ratio = taken(all, joint) / (wall + out);
    if (ratio < 0.985 || ratio > 1.015) RC_FAIL(told(w) + ": filled " + std::to_string(ratio));
  }
  const double back = size - before - joint - 0.01;
  for (const double d : {0.01 - before, 0.01, w.sizes.thickness() - 0.01, back}) {
    const double lap = leastLap(w.sizes, w.length, run, d);
    if (lap < w.sizes.quarter() - 0.004)
      RC_FAIL(told(w) + ": lap of " + std::to_string(lap) + " at " + std::to_string(d));
  }
}

// Two lengths round a square corner, to the left or to the right, on plan.
RC_GTEST_PROP(SolidRun, TurnsSquareCornersInTurn, ()) {
  Drawn w = drawn(false);
  const bool left = *rc::gen::arbitrary<bool>();
  const double t = w.sizes.thickness(), joint = w.sizes.joint;
  const SolidEnd corner = left ? SolidEnd::CornerAtFace : SolidEnd::CornerAtBack;
  SolidLength one{0, w.length.to, SolidEnd::Stop, corner, 0, {}};
  SolidLength two{left ? 0 : -t, w.length.to, corner, SolidEnd::Stop, 1, {}};
  const SolidRun first = laySolidRun(w.sizes, one), second = laySolidRun(w.sizes, two);
  const double turn = left ? one.to : one.to - t;  // where the second length's face begins
  double lastReach = -1;
  for (size_t i = 0; i < first.courses.size(); ++i) {
    std::vector<Rect4> all;
    double reach = 0;
    for (const SolidPiece& p : first.courses[i]) {
      all.push_back({p.s0, p.s1, p.d0, p.d1});
      reach = std::max(reach, p.s1);
    }
    for (const SolidPiece& p : second.courses[i]) {
      // Inward is on the left: west when going north, east when going south.
      if (left)
        all.push_back({turn - p.d1, turn - p.d0, p.s0, p.s1});
      else
        all.push_back({turn + p.d0, turn + p.d1, -p.s1, -p.s0});
    }
    const std::string found = firstOverlap(all);
    if (!found.empty()) RC_FAIL(told(w) + ": " + found);
    const double plan = (one.to + joint + two.to - two.from + joint - (t + joint)) * (t + joint);
    const double ratio = taken(all, joint) / plan;
    if (ratio < 0.985 || ratio > 1.015) RC_FAIL(told(w) + ": filled " + std::to_string(ratio));
    // In turn: a row of the one reaches the outer face of the other in every second course.
    RC_ASSERT((reach > one.to - 1e-6) != (lastReach > one.to - 1e-6) || i == 0);
    lastReach = reach;
  }
}

std::vector<int> quarters(const SolidSizes& sizes, const std::vector<SolidPiece>& line) {
  std::vector<int> widths;
  for (const SolidPiece& p : line)
    widths.push_back(static_cast<int>(std::lround((p.s1 - p.s0 + sizes.joint) / sizes.quarter())));
  return widths;
}

std::vector<int> startOf(BondKind bond, size_t course, size_t count) {
  SolidSizes sizes;
  sizes.bond = bond;
  const SolidLength length{0, 60 * sizes.half() - sizes.joint, SolidEnd::Stop, SolidEnd::Stop, 0,
                           {}};
  auto widths = quarters(sizes, alongLine(laySolidRun(sizes, length).courses[course], 0.01));
  widths.resize(count);
  return widths;
}

// Text-book quoins, from memory: the closer stands next to the quoin header and nowhere else; in
// Flemish garden wall bond a three-quarter brick follows the header.
TEST(SolidRun, BeginsAsTheTextBooksHaveIt) {
  EXPECT_EQ(startOf(BondKind::English, 0, 4), (std::vector<int>{4, 4, 4, 4}));
  EXPECT_EQ(startOf(BondKind::English, 1, 5), (std::vector<int>{2, 1, 2, 2, 2}));
  EXPECT_EQ(startOf(BondKind::Flemish, 0, 5), (std::vector<int>{4, 2, 4, 2, 4}));
  EXPECT_EQ(startOf(BondKind::Flemish, 1, 5), (std::vector<int>{2, 1, 4, 2, 4}));
  EXPECT_EQ(startOf(BondKind::FlemishGardenWall, 0, 5), (std::vector<int>{4, 4, 4, 2, 4}));
  EXPECT_EQ(startOf(BondKind::FlemishGardenWall, 1, 5), (std::vector<int>{2, 3, 2, 4, 4}));
  EXPECT_EQ(startOf(BondKind::EnglishGardenWall, 2, 3), (std::vector<int>{4, 4, 4}));
  EXPECT_EQ(startOf(BondKind::EnglishGardenWall, 3, 4), (std::vector<int>{2, 1, 2, 2}));
}

// 120 bricks to the square metre of a one-brick wall, 118.5 exactly (check M07); round figures of
// the trade allow for what is lost. Closers at the ends are two to a brick.
TEST(SolidRun, TakesThePublishedBricksToTheSquareMetre) {
  for (const BondKind bond : {BondKind::English, BondKind::Flemish}) {
    SolidSizes sizes;
    sizes.bond = bond;
    const SolidLength length{0, 200 * sizes.half() - sizes.joint, SolidEnd::Stop, SolidEnd::Stop, 0,
                             {}};
    const SolidRun run = laySolidRun(sizes, length);
    double bricks = 0;
    for (const auto& course : run.courses)
      for (const SolidPiece& p : course) bricks += p.piece == Piece::Closer ? 0.5 : 1;
    const double area = 2 * 0.075 * (length.to + sizes.joint);
    EXPECT_NEAR(bricks / area, 118.5, 0.6);
    EXPECT_EQ(run.cut, 0);
  }
}

}  // namespace
}  // namespace model
