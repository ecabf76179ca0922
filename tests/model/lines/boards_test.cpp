// Profile boards with their marks, and offset lines where boards have no room.
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/model/lines/lines_support.h"

namespace lines_test {
namespace {

double awayFromLine(const Vec2& p, const Vec2& a, const Vec2& b) {
  return std::abs(cross(b - a, p - a)) / glm::length(b - a);
}

const BoardMark* markOf(const Board& board, const std::string& key) {
  const auto found = std::find_if(board.marks.begin(), board.marks.end(),
                                  [&](const BoardMark& m) { return m.key == key; });
  return found == board.marks.end() ? nullptr : &*found;
}

// The example of the trade's own books: 102.5 + 150 + 100 on a strip of 750.
TEST(Boards, CarryTheMarksOfTheWallFromOutsideIn) {
  const Derived house(test_support::demoJob("orchard-house"));
  const Board& board = house.lines.boards.boards.front();
  EXPECT_EQ(board.name, "A-B beyond A");
  EXPECT_EQ(board.opposite, "A-B beyond B");
  EXPECT_EQ(board.measuredFrom, "right-hand end");
  const auto at = [&](const char* key) {
    const BoardMark* mark = markOf(board, key);
    return mark ? mark->along : -1;
  };
  const double zero = at("outer-face");
  EXPECT_NEAR(at("foundation-outer") - zero, -0.19875, 1e-9);
  EXPECT_NEAR(at("outer-leaf-back") - zero, 0.1025, 1e-9);
  EXPECT_NEAR(at("inner-leaf-front") - zero, 0.2525, 1e-9);
  EXPECT_NEAR(at("inner-face") - zero, 0.3525, 1e-9);
  EXPECT_NEAR(at("foundation-inner") - zero, 0.55125, 1e-9);
  EXPECT_EQ(markOf(board, "render-face"), nullptr);
}

TEST(Boards, AllowForRender) {
  const Derived room(test_support::demoJob("skew-corner"));
  for (const Board& board : room.lines.boards.boards) {
    ASSERT_TRUE(markOf(board, "render-face"));
    EXPECT_NEAR(markOf(board, "outer-face")->along - markOf(board, "render-face")->along, 0.020,
                1e-9);
  }
}

TEST(Boards, AWallOnTheCellarHasItsMarksInPlaceOfAStrips) {
  const Derived house(test_support::demoJob("orchard-house"));
  for (const Board& board : house.lines.boards.boards) {
    const bool onCellar = house.out.walls[board.wall].name == "B-C";
    EXPECT_EQ(markOf(board, "foundation-outer") == nullptr, onCellar) << board.name;
    if (onCellar) {
      ASSERT_TRUE(markOf(board, "cellar-wall-inner"));
      EXPECT_NEAR(
          markOf(board, "cellar-wall-inner")->along - markOf(board, "cellar-wall-outer")->along,
          0.450, 1e-9);
    }
  }
}

// A string from a mark to the mark of the same name on the board opposite is the face's own line,
// and a mark is where its distance along the board says.
TEST(Boards, MarksReproduceTheFaceLinesOfEveryJob) {
  for (unsigned seed = 0; seed < 60; ++seed) {
    const Derived drawn(test_support::seededJob(seed));
    for (const Board& board : drawn.lines.boards.boards) {
      const Vec2 along = glm::normalize(board.to - board.from);
      double before = 0;
      for (const BoardMark& mark : board.marks) {
        ASSERT_NEAR(glm::length(board.from + along * mark.along - mark.at), 0, 1e-9) << seed;
        ASSERT_GE(mark.along, before) << seed;
        ASSERT_LE(mark.along, glm::length(board.to - board.from)) << seed;
        before = mark.along;
        for (const SetOutFace& face : facesOf(drawn.job, drawn.out, board.wall)) {
          if (face.key != mark.key) continue;
          // A cellar's wall counts as under this one when parallel to 0.05 degrees.
          const double near = face.key.rfind("cellar", 0) == 0 ? 0.02 : 1e-6;
          ASSERT_LT(awayFromLine(mark.at, face.start, face.end), near) << seed << mark.name;
        }
      }
    }
  }
}

TEST(Boards, TellTheMeasureDownFromTheString) {
  const Derived house(test_support::demoJob("orchard-house"));
  for (const Board& board : house.lines.boards.boards) {
    if (board.name != "F-A beyond A" && board.name != "F-A beyond F") continue;
    const double top = board.corner == "A" ? -1.200 : -0.975;  // the step at A
    EXPECT_NEAR(board.top - board.downToConcrete, top, 1e-9) << board.name;
    EXPECT_NEAR(board.downToFormation - board.downToConcrete, 0.225, 1e-9) << board.name;
  }
}

// A building that blocks the lines beyond B; its own wall is 400 from the corner.
Job blockedBeyondB() {
  Job job = rectangle(6, 5);
  StandingBuilding barn;
  barn.name = "Barn";
  barn.outline = {{6.4, -1}, {12, -1}, {12, 6}, {6.4, 6}};
  job.site.buildings.push_back(barn);
  return job;
}

TEST(OffsetLines, StandInForBoardsThatHaveNoRoom) {
  const Derived blocked(blockedBeyondB());
  ASSERT_FALSE(blocked.lines.boards.offsets.empty());
  const OffsetPair& pair = blocked.lines.boards.offsets.front();
  EXPECT_EQ(blocked.out.walls[pair.wall].name, "A-B");
  ASSERT_TRUE(pair.found);
  EXPECT_NE(pair.why.find("beyond B there is no room for a board between the dig and Barn, 400"),
            std::string::npos)
      << pair.why;
  // Parallel to the wall, a whole 100 mm off it.
  EXPECT_EQ(pair.why.find("beyond A"), std::string::npos) << pair.why;
  for (const Board& board : blocked.lines.boards.boards)
    EXPECT_NE(board.wall, pair.wall) << "a board that no string goes from: " << board.name;
  for (const auto& stake : pair.stakes) EXPECT_NEAR(stake.at.y, -pair.out, 1e-9);
  EXPECT_NEAR(std::remainder(pair.out, 0.1), 0, 1e-9);
  for (const auto& face : pair.faces) {
    if (face.key == "inner-face") {
      EXPECT_NEAR(face.across, pair.out + blocked.job.walls.total(), 1e-9);
    }
    if (face.key == "outer-face") {
      EXPECT_NEAR(face.across, pair.out, 1e-9);
    }
  }
}

TEST(OffsetLines, SaySoWhereNothingCanStand) {
  Job job = rectangle(6, 5);
  job.site.boundary = {{-0.25, -0.25}, {6.25, -0.25}, {6.25, 5.25}, {-0.25, 5.25}};
  job.cellar.emplace();
  const SettingOut out = deriveSettingOut(job);
  const BoardPlan plan = deriveBoards(job, out);
  EXPECT_TRUE(plan.boards.empty());
  ASSERT_EQ(plan.offsets.size(), 4u);
  for (const OffsetPair& pair : plan.offsets) {
    EXPECT_FALSE(pair.found);
    EXPECT_NE(pair.why.find("the boundary"), std::string::npos);
  }
}

// Of every wall without its two boards: stakes on the site, out of buildings and off the dig, and a
// string that meets neither boundary nor building.
TEST(OffsetLines, CanBeBuiltInEveryJob) {
  int found = 0;
  for (unsigned seed = 0; seed < 150; ++seed) {
    Job job = test_support::seededJob(seed);
    // A tight site: what 700 round the outline's box leaves.
    Vec2 low{1e300, 1e300}, high{-1e300, -1e300};
    for (const Vec2& p : job.outline) {
      low = {std::min(low.x, p.x), std::min(low.y, p.y)};
      high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    job.site.boundary = {{low.x - 0.7, low.y - 0.7},
                         {high.x + 0.7, low.y - 0.7},
                         {high.x + 0.7, high.y + 0.7},
                         {low.x - 0.7, high.y + 0.7}};
    const SettingOut out = deriveSettingOut(job);
    const BoardPlan plan = deriveBoards(job, out);
    for (const OffsetPair& pair : plan.offsets) {
      if (!pair.found) continue;
      for (const Board& board : plan.boards) ASSERT_NE(board.wall, pair.wall) << seed << board.name;
      ++found;
      const Vec2 a = pair.stakes[0].at, b = pair.stakes[1].at;
      for (int k = 0; k <= 50; ++k) {
        const Vec2 p = a + (b - a) * (k / 50.0);
        ASSERT_TRUE(contains(job.site.boundary, p)) << seed;
        for (const StandingBuilding& building : job.site.buildings) {
          if (building.kind == BuildingKind::Demolish) continue;
          ASSERT_FALSE(contains(building.outline, p)) << seed;
        }
      }
      const Polygon trench = out.ring(out.faceDistances.foundationOuter);
      for (const Vec2& p : {a, b}) {
        const bool inTrench =
            contains(trench, p) && !contains(out.ring(out.faceDistances.foundationInner), p);
        ASSERT_FALSE(inTrench) << seed;
      }
    }
  }
  EXPECT_GT(found, 50);
}

}  // namespace
}  // namespace lines_test
