// What is laid over the building, looked for in finished pictures at the place it speaks of.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "model/programme/level_made.h"
#include "tests/support/demo_job.h"
#include "tests/viewer/overlays/picture_eye.h"
#include "viewer/overlays/rod_layout.h"

namespace viewer {
namespace {

class OverlayPixels : public PictureEye {
 protected:
  double last() const { return double(model_.programme.stages.size()); }

  // How much of the straight line is in that colour, to a pixel; words over it do not count.
  double shareOf(const glm::vec2& a, const glm::vec2& b, const Colour& is) const {
    constexpr int kSamples = 80;
    int seen = 0, asked = 0;
    for (int i = 1; i < kSamples; ++i) {
      const glm::vec2 p = glm::mix(a, b, float(i) / kSamples);
      if (onWords(p)) continue;
      ++asked;
      seen += near(p, 1, is);
    }
    return asked < kSamples / 4 ? 0 : double(seen) / asked;
  }
};

TEST_F(OverlayPixels, StringsRunWhereTheyArePulledAndNowhereElse) {
  overlays_.lines = true;
  for (const std::string& name : test_support::demoNames()) {
    SCOPED_TRACE(name);
    openPictured(name);
    look("plan", endOf("set-out"));
    std::vector<std::pair<glm::vec2, glm::vec2>> pulled;
    for (const model::StringLine& line : model_.works.strings) {
      if (model::timeAt(model_.programme, line.placed, line.a) > endOf("set-out")) continue;
      pulled.emplace_back(*pixel(line.a), *pixel(line.b));
      EXPECT_GT(shareOf(pulled.back().first, pulled.back().second, isString), 0.95) << line.name;
    }
    ASSERT_GE(pulled.size(), model_.settingOut.walls.size());
    int astray = 0;
    for (int y = 0; y < kHeight; ++y)
      for (int x = 0; x < kWidth; ++x) {
        if (!isString(at(x, y))) continue;
        const glm::vec2 p{float(x) + 0.5f, float(y) + 0.5f};
        astray += std::none_of(pulled.begin(), pulled.end(), [&](const auto& line) {
          return distanceTo(p, line.first, line.second) < 2.5f;
        });
      }
    EXPECT_EQ(astray, 0);
    // Before they are pulled there is not a thread of them.
    look("plan", endOf("set-out") - 1);
    EXPECT_EQ(count(isString), 0);
  }
}

TEST_F(OverlayPixels, CornerLettersStandInRingsBesideTheirCorners) {
  overlays_.corners = true;
  constexpr float kRadius = 13;
  for (const std::string& name : test_support::demoNames()) {
    SCOPED_TRACE(name);
    openPictured(name);
    look("plan", endOf("set-out"));
    const auto& walls = model_.settingOut.walls;
    for (size_t i = 0; i < walls.size(); ++i) {
      const model::Corner& corner = model_.settingOut.corners[i];
      const auto words = wordsOf(corner.letter);
      ASSERT_EQ(words.size(), 1u) << corner.letter;
      const glm::vec2 ring = words[0].centre();
      const auto away = [&](const model::Corner& c) {
        return glm::distance(ring, *pixel({c.at, model_.settingOut.terrain.levelAt(c.at)}));
      };
      const float metre =
          glm::distance(*pixel({corner.at, 0}), *pixel({corner.at.x + 1, corner.at.y, 0}));
      EXPECT_LT(away(corner), 2.5f * metre + 2) << corner.letter;
      for (const model::Corner& other : model_.settingOut.corners)
        EXPECT_LE(away(corner), away(other) + 1) << corner.letter << " or " << other.letter;
      const model::Vec2 out =
          walls[i].outward + walls[(i + walls.size() - 1) % walls.size()].outward;
      EXPECT_LT(glm::distance(ring, *pixel({corner.at + out, 0})),
                glm::distance(ring, *pixel({corner.at - out, 0})))
          << corner.letter << " stands outside";
      int inked = 0, paper = 0, letter = 0;
      for (int k = 0; k < 48; ++k) {
        const float angle = float(k) * 6.2831853f / 48;
        const glm::vec2 way{std::cos(angle), std::sin(angle)};
        inked += near(ring + way * kRadius, 1, isInk);
        paper += near(ring + way * (kRadius - 3), 1, isPaper);
      }
      for (float dy = -6; dy <= 6; ++dy)
        for (float dx = -6; dx <= 6; ++dx) letter += near(ring + glm::vec2(dx, dy), 0, isInk);
      EXPECT_GE(inked, 44) << corner.letter;
      EXPECT_GE(paper, 44) << corner.letter;
      EXPECT_GE(letter, 10) << corner.letter;
    }
  }
}

// A line of ink as long as the wall and along it, with the wall's length beside it.
TEST_F(OverlayPixels, DimensionLinesOfAPlanAreAsLongAsTheirWalls) {
  overlays_.dimensions = true;
  for (const std::string& name : test_support::demoNames()) {
    SCOPED_TRACE(name);
    openPictured(name);
    look("plan", endOf("set-out"));
    const double level = model_.settingOut.levels.groundHigh;
    for (const model::WallLine& wall : model_.settingOut.walls) {
      const glm::vec2 a = *pixel({wall.start, level}), b = *pixel({wall.end, level});
      const glm::vec2 along = glm::normalize(b - a);
      const glm::vec2 outward = glm::normalize(*pixel({wall.start + wall.outward, level}) - a);
      bool found = false;
      for (const Box& words : wordsOf(model::lengthText(wall.length)))
        for (float off = 3; off < 150 && !found; ++off) {
          const glm::vec2 from = a + outward * off, to = b + outward * off;
          found = distanceTo(words.centre(), from, to) < 32 && shareOf(from, to, isInk) > 0.95 &&
                  // It ends where the wall does.
                  !near(from - along * 10.0f, 1, isInk) && !near(to + along * 10.0f, 1, isInk);
        }
      EXPECT_TRUE(found) << wall.name;
    }
  }
}

TEST_F(OverlayPixels, TheDimensionOfAnElevationIsUnderItsWall) {
  overlays_.dimensions = true;
  openPictured("garage");
  look("south", last());
  const model::WallLine& wall = model_.settingOut.walls[0];
  const model::Levels& levels = model_.settingOut.levels;
  const auto words = wordsOf(model::lengthText(wall.length));
  ASSERT_EQ(words.size(), 1u);
  const glm::vec2 a = *pixel({wall.start, levels.groundLow}),
                  b = *pixel({wall.end, levels.groundLow});
  std::vector<float> rows;
  for (float y = a.y + 4; y < a.y + 90; ++y)
    if (shareOf({a.x + 1, y}, {b.x - 1, y}, isInk) > 0.98 && !near({a.x - 12, y}, 1, isInk) &&
        !near({b.x + 12, y}, 1, isInk))
      rows.push_back(y);
  ASSERT_FALSE(rows.empty());
  EXPECT_LE(rows.back() - rows.front(), 3) << "one line";
  EXPECT_LT(std::abs(words[0].centre().y - rows.front()), 32);
  EXPECT_NEAR(words[0].centre().x, (a.x + b.x) / 2, 2);
  // The strokes through its ends lean.
  for (const float end : {a.x, b.x}) {
    EXPECT_TRUE(near({end + 4, rows.front() - 4}, 1, isInk));
    EXPECT_FALSE(near({end - 5, rows.front() - 5}, 0, isInk));
  }
}

// Bluer than what is just above and below.
bool levelLineAt(const PictureEye& eye, float x, float y) {
  const auto blue = [&](float dy) {
    const unsigned p = eye.at(int(x), int(std::floor(y + dy)));
    return int(p & 255) - int(p >> 16);
  };
  int on = -255, beside = 255;
  for (const float dy : {-1.0f, 0.0f, 1.0f}) on = std::max(on, blue(dy));
  for (float dy = -4; dy <= 4; ++dy) beside = std::min(beside, blue(dy));
  return on - beside > 25;
}

TEST_F(OverlayPixels, LevelsAreTiedToTheBuildingAtTheirOwnHeight) {
  overlays_.levels = true;
  constexpr float kSlant = 48;  // over which a leader goes from its words to the height
  for (const char* name : {"garage", "smallest", "garden-store"}) {
    SCOPED_TRACE(name);
    openPictured(name);
    look("south", last());
    const SheetLayout sheet = sheetOf(model_, overlays_, kWidth, kHeight, 1);
    float right = 0;
    for (const model::Corner& corner : model_.settingOut.corners)
      right = std::max(right, pixel({corner.at, 0})->x);
    ASSERT_GT(sheet.levels.left - kSlant - right, 40) << "some line to look at";
    for (const RodMark& mark : rodMarks(model_.settingOut.schedule, sheet.lifts)) {
      const float y = pixel({0, 0, mark.level})->y;
      if (y < 2 || y > kHeight - 2) continue;
      int seen = 0, asked = 0;
      for (float x = right + 6; x < sheet.levels.left - kSlant - 2; ++x, ++asked)
        seen += levelLineAt(*this, x, y);
      EXPECT_GT(seen, asked * 0.95) << mark.names.front();
      EXPECT_EQ(wordsOf(model::levelText(mark.level)).size(), 1u);
    }
  }
}

TEST_F(OverlayPixels, LevelMarksFillAsTheirLevelsAreMade) {
  overlays_.levels = true;
  openPictured("garage");
  const auto times = model::timesOfLevels(model_.settingOut, model_.works, model_.programme);
  int shares[3] = {0, 0, 0};
  for (const double time : {endOf("damp-course"), last()}) {
    look("south", time);
    const SheetLayout sheet = sheetOf(model_, overlays_, kWidth, kHeight, 1);
    for (const RodMark& mark : rodMarks(model_.settingOut.schedule, sheet.lifts)) {
      const auto words = wordsOf(model::levelText(mark.level));
      ASSERT_EQ(words.size(), 1u);
      const auto made = std::count_if(mark.lines.begin(), mark.lines.end(),
                                      [&](size_t line) { return times[line] <= time + 1e-6; });
      // The mark stands on its point before the value, its left half first to be filled.
      const glm::vec2 middle{sheet.levels.left + 6, words[0].centre().y - 2};
      const bool left = near(middle - glm::vec2(1.5f, 0), 0, isLevel);
      const bool rightHalf = near(middle + glm::vec2(1.5f, 0), 0, isLevel);
      EXPECT_EQ(left, made > 0) << mark.names.front() << " at " << time;
      EXPECT_EQ(rightHalf, made == std::ssize(mark.lines)) << mark.names.front() << " at " << time;
      ++shares[left + rightHalf];
    }
  }
  EXPECT_GT(shares[0], 3) << "some were to come";
  EXPECT_GT(shares[2], 10);
}

}  // namespace
}  // namespace viewer
