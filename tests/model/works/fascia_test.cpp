// Fascia and barge boards, alone and with what they close.
#include <gtest/gtest.h>

#include <cmath>

#include "model/geometry/check_solid.h"
#include "model/works/build_works.h"
#include "model/works/scaffold_plan.h"
#include "tests/support/random_job.h"
#include "tests/support/roofed_job.h"

namespace model {
namespace {

using test::ofKind;
using test::roofed;
using test::RoofedJob;

const Outline kOblong{{0, 0}, {10, 0}, {10, 6}, {0, 6}};

double lengthOf(const Works& works, ElementKind kind) {
  double sum = 0;
  for (const Element* board : ofKind(works, kind)) sum += board->quantity.amount;
  return sum;
}

TEST(FasciaBoards, RunRoundAHippedRoofOutsideTheEaves) {
  const RoofedJob made = roofed(kOblong);
  const auto boards = ofKind(made.works, ElementKind::FasciaBoard);
  ASSERT_EQ(boards.size(), 4u);
  EXPECT_TRUE(ofKind(made.works, ElementKind::BargeBoard).empty());
  // 10 x 6 with 300 eaves and 25 of board on every side, round the outside.
  EXPECT_NEAR(lengthOf(made.works, ElementKind::FasciaBoard), 2 * (10.65 + 6.65), 1e-9);
  Bounds all;
  for (const Element* board : boards) all.add(bounds(board->solid));
  EXPECT_NEAR(all.low.x, -0.325, 1e-9);
  EXPECT_NEAR(all.high.y, 6.325, 1e-9);
}

TEST(FasciaBoards, CloseTheRafterEndsUnderTheCovering) {
  const RoofedJob made = roofed(kOblong, 35);
  const double cosine = std::cos(35 * std::acos(-1.0) / 180), sine = std::sqrt(1 - cosine * cosine);
  const Levels& levels = made.settingOut.levels;
  for (const Element* board : ofKind(made.works, ElementKind::FasciaBoard)) {
    EXPECT_NEAR(board->underside, levels.eavesUnderside - 0.3 * sine / cosine, 1e-9);
    EXPECT_NEAR(board->top, levels.eaves - 0.060 / cosine, 1e-9);
    EXPECT_NEAR(board->top - board->underside, 0.150 / cosine, 1e-9);
  }
}

TEST(BargeBoards, FollowTheSlopesAndMeetAtTheApex) {
  const RoofedJob made = roofed(kOblong, 40, {"B-C", "D-A"});
  const auto boards = ofKind(made.works, ElementKind::BargeBoard);
  ASSERT_EQ(boards.size(), 4u);
  const double cosine = std::cos(40 * std::acos(-1.0) / 180);
  const double apex = made.settingOut.levels.ridge - 0.060 / cosine;
  for (const Element* board : boards) {
    // From the eaves' outside to the middle of the wall, up the slope.
    EXPECT_NEAR(board->quantity.amount, (3 + 0.325) / cosine, 1e-9);
    EXPECT_NEAR(board->top, apex, 1e-9);
    const Bounds b = bounds(board->solid);
    EXPECT_TRUE(std::abs(b.low.y - 3) < 1e-9 || std::abs(b.high.y - 3) < 1e-9);
    EXPECT_NEAR(b.high.x - b.low.x, 0.025, 1e-9);
  }
  EXPECT_EQ(boards[0]->id, "wall B-C/barge board/1");
}

// On every roof the boards fill the strip outside its outline, corner to corner.
TEST(FasciaBoards, LeaveNoGapRoundTheRoof) {
  for (const RoofedJob& made : test::roofedAtRandom(5, 40)) {
    const Polygon& eaves = made.settingOut.eavesOutline;
    const double strip = signedArea(offsetMitred(eaves, -0.025)) - signedArea(eaves);
    const double height =
        made.job.roof.rafterDepth * std::sqrt(1 + std::pow(made.settingOut.tanPitch, 2));
    double filled = 0;
    for (const ElementKind kind : {ElementKind::FasciaBoard, ElementKind::BargeBoard})
      for (const Element* board : ofKind(made.works, kind)) filled += volume(board->solid) / height;
    EXPECT_NEAR(filled, strip, 1e-7);
  }
}

TEST(FasciaBoards, AreThinnerWhereEavesNearlyMeet) {
  // A slot 640 wide between two wings leaves 40 between their eaves.
  const RoofedJob made =
      roofed({{0, 0}, {9, 0}, {9, 8}, {4.82, 8}, {4.82, 3}, {4.18, 3}, {4.18, 8}, {0, 8}});
  ASSERT_EQ(ofKind(made.works, ElementKind::FasciaBoard).size(), 8u);
  Bounds all;
  for (const Element* board : ofKind(made.works, ElementKind::FasciaBoard)) {
    EXPECT_EQ(solidFault(board->solid), "");
    all.add(bounds(board->solid));
  }
  EXPECT_NEAR(all.low.x, -0.3125, 1e-9);
}

TEST(FasciaBoards, StandClearOfTheScaffold) {
  for (unsigned seed = 0; seed < 40; ++seed) {
    const Job job = test_support::seededJob(seed);
    EXPECT_GT(scaffoldRows(job).inner - kTube / 2, job.roof.eaves + 0.025 + 0.1);
    EXPECT_GT(scaffoldRows(job).inner - kTube / 2, job.roof.verge + 0.025 + 0.1);
  }
}

TEST(FasciaBoards, GoOnOneAfterAnotherAfterTheRafters) {
  const RoofedJob made = roofed(kOblong, 40, {"B-C"});
  double last = -1;
  for (const Element& element : made.works.elements) {
    if (element.kind != ElementKind::FasciaBoard && element.kind != ElementKind::BargeBoard)
      continue;
    EXPECT_EQ(element.placed.stage, StageKey{StageKind::Fascia});
    EXPECT_GT(element.placed.begin, last);
    last = element.placed.begin;
  }
  EXPECT_GT(last, 0);
  EXPECT_LT(last, 1);
}

}  // namespace
}  // namespace model
