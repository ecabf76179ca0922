// Walls that are joined to a standing building.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "model/bond/bond_count.h"
#include "model/geometry/check_solid.h"
#include "model/job/read_job.h"
#include "model/takeoff/takeoff.h"
#include "model/works/build_works.h"
#include "model/works/junction_cuts.h"
#include "model/works/starter_strips.h"
#include "tests/support/wall_works.h"

namespace {

using namespace model;

// A house of one storey, built on to the south side of an old one.
Job extension(JunctionKind kind, double gap = 0) {
  Job job;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  StandingBuilding house;
  house.name = "House";
  house.outline = {{-1, 4.49 + gap}, {6.74, 4.49 + gap}, {6.74, 10}, {-1, 10}};
  house.height = 5;
  job.site.buildings.push_back(house);
  job.junctions.push_back({"B-C", "C", "House", kind});
  EXPECT_FALSE(hasErrors(validateJob(job, "", {})));
  return job;
}

double volumeOf(const Works& works, const std::string& part) {
  double sum = 0;
  for (const Element& e : works.elements)
    if (e.id.find(part) != std::string::npos) sum += volume(e.solid);
  return sum;
}

// The units of wall B-C that lie in the old wall, or partly.
std::vector<MasonryUnit> unitsPast(const Works& works, double length) {
  std::vector<MasonryUnit> units;
  for (const Element& e : works.elements) {
    if (e.kind != ElementKind::OuterLeaf || e.wall != "B-C") continue;
    for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i)
      if (works.units[i].s1 > length + 1e-6) units.push_back(works.units[i]);
  }
  return units;
}

TEST(Junctions, ToothedGoInEveryOtherCourseAsDeepAsDrawn) {
  const Job job = extension(JunctionKind::Toothed);
  const SettingOut out = deriveSettingOut(job);
  const Works works = buildWorks(job, out);
  const auto units = unitsPast(works, out.walls[1].length);
  const LeafPlan leaf = leafPlan(job, out, 1, LeafSide::Outer);
  const double courses = (leaf.levelTop - out.levels.dampCourse) / job.walls.course();
  EXPECT_NEAR(static_cast<double>(units.size()), courses / 2, 1);
  ASSERT_FALSE(units.empty());
  int last = units.front().course;
  for (const MasonryUnit& unit : units) {
    EXPECT_NEAR(unit.s1 - out.walls[1].length, 0.1025, 1e-9);
    EXPECT_LE(unit.length(), 0.215 + 1e-9);
    EXPECT_LT(unit.s0, out.walls[1].length) << "bonds nothing";
    EXPECT_EQ((unit.course - last) % 2, 0);
    last = unit.course;
  }
}

TEST(Junctions, BlockBondedGoInThreeCoursesAndThenNotThree) {
  const Job job = extension(JunctionKind::BlockBonded);
  const SettingOut out = deriveSettingOut(job);
  const Works works = buildWorks(job, out);
  std::set<int> in;
  for (const MasonryUnit& unit : unitsPast(works, out.walls[1].length)) in.insert(unit.course);
  ASSERT_GT(in.size(), 10u);
  EXPECT_EQ(in.size() % 3, 0u);
  const int first = *in.begin();
  for (const int course : in) EXPECT_LT((course - first) % 6, 3) << course;
}

// What is cut out of the old wall is what goes into it: brick and mortar.
TEST(Junctions, FillTheirPocketsAndNoMore) {
  for (const JunctionKind kind : {JunctionKind::Toothed, JunctionKind::BlockBonded}) {
    for (const double gap : {0.0, 0.012}) {
      const Job job = extension(kind, gap);
      const SettingOut out = deriveSettingOut(job);
      const Works works = buildWorks(job, out);
      Job plain = job;
      plain.junctions.clear();
      const Works without = buildWorks(plain, out);
      const double into = volumeOf(works, "B-C/outer leaf") - volumeOf(without, "B-C/outer leaf");
      const double deep = 0.1025 + 0.010, pockets = volumeOf(works, ", pocket");
      EXPECT_NEAR(into * deep / (deep + gap), pockets, 2e-5 + pockets * 1e-3);
      EXPECT_NEAR(volumeOf(works, "standing building House/walls"),
                  volumeOf(without, "standing building House/walls"), 1e-6);
    }
  }
}

TEST(Junctions, CutTheirPocketsBeforeAnyBrickOfThatLiftIsLaid) {
  const Job job = extension(JunctionKind::Toothed);
  const SettingOut out = deriveSettingOut(job);
  const Works works = buildWorks(job, out);
  int pockets = 0;
  for (const Element& e : works.elements) {
    if (e.kind != ElementKind::StandingBuilding) continue;
    EXPECT_EQ(solidFault(e.solid), "") << e.id;
    EXPECT_EQ(e.removed.has_value(), e.id.find(", pocket") != std::string::npos) << e.id;
    if (!e.removed) continue;
    ++pockets;
    EXPECT_EQ(e.removed->stage.kind, StageKind::RaiseCorners);
    EXPECT_EQ(fractionAt(*e.removed, {0, 0, e.top}), 0);
    const auto lift = std::find_if(out.lifts.begin(), out.lifts.end(), [&](const Lift& l) {
      return l.storey == e.removed->stage.storey && l.number == e.removed->stage.lift;
    });
    ASSERT_NE(lift, out.lifts.end());
    EXPECT_LT(lift->bottom, e.top);
    EXPECT_GT(lift->top, e.underside);
  }
  EXPECT_GT(pockets, 10);
}

TEST(Junctions, AreOnlyAsHighAsTheOldBuilding) {
  Job job = extension(JunctionKind::Toothed);
  job.site.buildings[0].height = 1.6;
  const SettingOut out = deriveSettingOut(job);
  const double eaves = levelsAlong(out.terrain, job.site.buildings[0].outline).low + 1.6;
  double highest = -1e9;
  for (const MasonryUnit& unit : unitsPast(buildWorks(job, out), out.walls[1].length))
    highest = std::max(highest, unit.z1);
  EXPECT_LT(highest, eaves - 0.07);
  EXPECT_GT(highest, eaves - 0.4);
}

TEST(Junctions, WithStarterTiesHaveAStripOnTheOldFace) {
  for (const double gap : {0.0, 0.010}) {
    const Job job = extension(JunctionKind::StarterTies, gap);
    const SettingOut out = deriveSettingOut(job);
    const Works works = buildWorks(job, out);
    const Element* strip =
        test_support::find(works, "wall B-C/starter strip/corner C/Ground floor");
    ASSERT_NE(strip, nullptr);
    EXPECT_NEAR(volume(strip->solid), 0.003 * 0.060 * strip->quantity.amount, 1e-9);
    // Let in where there is no joint between old and new for it.
    EXPECT_EQ(volumeOf(works, ", place for the starter strip 1") > 0, gap == 0);
    EXPECT_EQ(unitsPast(works, out.walls[1].length).size(), 0u);
  }
}

TEST(Junctions, CountTiesInBedsAtMostAsFarApartAsDrawn) {
  Job job = extension(JunctionKind::StarterTies);
  const SettingOut out = deriveSettingOut(job);
  const JunctionPlan plan = junctionPlans(job, out).at(0);
  const auto usual = starterTies(job, out, plan);  // 225: every third bed
  for (size_t i = 1; i < usual.size(); ++i) EXPECT_NEAR(usual[i] - usual[i - 1], 0.225, 1e-9);
  job.junctions[0].tieUp = 0.200;  // every second
  const auto closer = starterTies(job, out, plan);
  EXPECT_NEAR(closer[1] - closer[0], 0.150, 1e-9);
}

TEST(Junctions, CountTheSameBricksDryAndLaid) {
  const Job job = extension(JunctionKind::Toothed);
  const SettingOut out = deriveSettingOut(job);
  Job plain = job;
  plain.junctions.clear();
  const auto bricksOf = [&](const Job& j) {
    const BondCount count = countBond(j, out, deriveDryBond(j, out))[1];
    int all = count.whole + count.half + count.closer;
    for (const auto& [length, number] : count.cut) all += number;
    return all;
  };
  const auto laidOf = [&](const Job& j) {
    int all = 0;
    for (const Element& e : test_support::wallsOf(j, out).elements)
      if (e.kind == ElementKind::OuterLeaf && e.wall == "B-C") all += static_cast<int>(e.unitCount);
    return all;
  };
  EXPECT_GT(bricksOf(job), bricksOf(plain));
  EXPECT_EQ(bricksOf(job) - bricksOf(plain), laidOf(job) - laidOf(plain));
}

TEST(Junctions, AreTakenOff) {
  const auto amount = [](const Job& job, const std::string& begins) {
    const SettingOut out = deriveSettingOut(job);
    const Works works = buildWorks(job, out);
    double sum = 0;
    for (const TakeoffRow& row :
         deriveTakeoff(job, out, works, deriveProgramme(job, out, works)).rows)
      if (row.item.starts_with(begins)) sum += row.amount;
    return sum;
  };
  EXPECT_GT(amount(extension(JunctionKind::Toothed), "Pockets cut in standing walls"), 10);
  EXPECT_GT(amount(extension(JunctionKind::StarterTies), "Starter ties"), 8);
  EXPECT_NEAR(amount(extension(JunctionKind::StarterTies), "Starter strips"), 2.3, 0.3);
}

TEST(Junctions, AreFixedNoStripThatHoldsNothing) {
  Job job = extension(JunctionKind::StarterTies);
  job.storeys.push_back({"First floor", 2.7});
  job.walls.top = 5.1;
  // Tops of the old house from a hair over the ground floor's walls to a course over them.
  for (double over = 0; over < 0.3; over += 0.001) {
    job.site.buildings[0].height = 2.55 + over;
    for (const StripPlan& strip : starterStrips(job, deriveSettingOut(job)))
      for (const StripPlan::Length& length : strip.lengths)
        EXPECT_GT(length.ties, 0) << job.site.buildings[0].height;
  }
}

}  // namespace
