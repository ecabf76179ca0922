// A reading that is about to be taken, and where a finger points.
#include "model/asbuilt/drawn_there.h"

#include <gtest/gtest.h>

#include "model/asbuilt/as_built.h"
#include "model/asbuilt/point_names.h"
#include "tests/support/demo_job.h"

namespace {

using namespace model;

struct House {
  Job job = test_support::demoJob("orchard-house");
  SettingOut out = deriveSettingOut(job);
};

Reading readingOf(ReadingKind kind, const std::string& target, const std::string& at) {
  Reading reading;
  reading.kind = kind;
  reading.target = target;
  reading.at = at;
  return reading;
}

TEST(HoldReading, SaysOfEveryReadingOfTheHouseWhatTheJobSaysOfIt) {
  const House house;
  const AsBuilt built = deriveAsBuilt(house.job, house.out);
  ASSERT_GT(built.deviations.size(), 20u);
  for (const Deviation& d : built.deviations) {
    std::string why;
    const auto held = holdReading(house.job, house.out, house.job.readings[d.set].rows[d.row], why);
    ASSERT_TRUE(held) << d.what << why;
    EXPECT_EQ(held->what, d.what);
    EXPECT_EQ(held->words, d.words);
  }
}

TEST(HoldReading, SaysWhyThereIsNothingToHoldItAgainst) {
  const House house;
  std::string why;
  EXPECT_FALSE(holdReading(house.job, house.out,
                           readingOf(ReadingKind::Level, "top-of-concrete", "pin 999"), why));
  EXPECT_NE(why.find("the level pins are 1 to"), std::string::npos) << why;
}

TEST(DrawnThere, IsTheDesignOfEveryReadingOfTheHouse) {
  const House house;
  for (const Deviation& d : deriveAsBuilt(house.job, house.out).deviations) {
    const Reading& reading = house.job.readings[d.set].rows[d.row];
    const std::string words = drawnThereText(house.job, house.out, reading);
    EXPECT_EQ(words.find("drawn "), 0u) << d.what;
    if (d.kind != ReadingKind::Level) continue;
    EXPECT_NE(words.find(levelText(d.design)), std::string::npos) << d.what << ": " << words;
  }
}

TEST(DrawnThere, GivesTheStaffReadingBeforeItIsTaken) {
  const House house;
  Reading reading = readingOf(ReadingKind::Staff, "top-of-concrete", "E");
  reading.setUp = "Site";
  EXPECT_EQ(drawnThereText(house.job, house.out, reading), "drawn -0.975: read 2.400");
  reading.kind = ReadingKind::Level;
  EXPECT_EQ(drawnThereText(house.job, house.out, reading), "drawn -0.975");
  reading.at = "Q";
  EXPECT_EQ(drawnThereText(house.job, house.out, reading), "");
}

TEST(PointNames, AreThoseThatTheReaderTakes) {
  const House house;
  for (const auto& [kind, target] :
       std::vector<std::pair<ReadingKind, std::string>>{{ReadingKind::Level, "top-of-concrete"},
                                                        {ReadingKind::Level, "sill"},
                                                        {ReadingKind::Face, "outer-face"},
                                                        {ReadingKind::Corner, "outer-face"},
                                                        {ReadingKind::Side, "outer-face"},
                                                        {ReadingKind::Diagonal, "outer-face"}}) {
    const auto names = pointNames(house.job, house.out, kind, target);
    EXPECT_GT(names.size(), 3u) << target;
    for (const PointName& name : names) {
      Reading reading = readingOf(kind, target, name.name);
      reading.position = name.at;
      if (name.name.size() == 3 && name.name[1] == '-' && kind != ReadingKind::Side) {
        if (kind != ReadingKind::Diagonal) reading.along = 1.0;
      }
      std::string why;
      if (kind == ReadingKind::Corner) reading.position = Vec2{0, 0};
      EXPECT_TRUE(holdReading(house.job, house.out, reading, why) ||
                  why.find("no place") == std::string::npos)
          << name.name << ": " << why;
    }
  }
}

TEST(PointNear, IsTheCornerTheWallOrAPointOfItsOwn) {
  const House house;
  const auto near = [&](ReadingKind kind, const std::string& target, Vec2 at, double level = 0) {
    return pointNear(house.job, house.out, kind, target, {at, level});
  };
  const WallLine& wall = house.out.walls[0];
  const auto corner = near(ReadingKind::Level, "damp-course", wall.start + wall.along * 0.3);
  ASSERT_TRUE(corner);
  EXPECT_EQ(corner->name, house.out.corners[wall.from].letter);
  const auto on = near(ReadingKind::Level, "damp-course", wall.at(2.004, 0.2));
  ASSERT_TRUE(on);
  EXPECT_EQ(on->name, wall.name);
  EXPECT_DOUBLE_EQ(on->along.value(), 2.0);
  EXPECT_EQ(near(ReadingKind::Side, "outer-face", wall.at(2, 0))->along, std::nullopt);
  const auto inside = near(ReadingKind::Level, "finished-floor", wall.at(3, 2.5));
  ASSERT_TRUE(inside);
  EXPECT_TRUE(inside->at);
  EXPECT_FALSE(near(ReadingKind::Diagonal, "outer-face", wall.start));
  for (const BuiltOpening& opening : house.out.openings) {
    const Vec2 middle = house.out.walls[opening.wall].at((opening.s0 + opening.s1) / 2);
    EXPECT_EQ(near(ReadingKind::Level, "sill", middle, opening.sill + 0.1)->name, opening.name);
  }
}

}  // namespace
