// What a thing's own card says and what the takeoff says are one figure in one unit.
#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "model/model.h"
#include "model/takeoff/laid_count.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace {

using namespace model;

// Not taken off: they are there already, belong to the crew or come as a part of something else.
bool isTakenOff(const Element& e) {
  switch (e.kind) {
    case ElementKind::Ground:
    case ElementKind::StandingBuilding:
    case ElementKind::Peg:
    case ElementKind::TrenchSupport:
    case ElementKind::Scaffold:
    case ElementKind::EdgeProtection:
      return false;
    case ElementKind::Formwork:  // its props
      return e.quantity.unit == Unit::SquareMetre;
    case ElementKind::Window:
    case ElementKind::Door:  // counted as one with their glass and leaves
      return e.id.ends_with("/frame") || e.id.ends_with("/sill");
    default:
      return true;
  }
}

bool has(const Takeoff& takeoff, const std::string& unit, double amount) {
  for (const TakeoffRow& row : takeoff.rows)
    if (row.unit == unit && std::abs(row.amount - amount) < 1e-6 * (1 + amount)) return true;
  return false;
}

// Sums of the rows of one unit: kinds that are ordered by size have a row for each.
double sumOf(const Takeoff& takeoff, const std::string& unit) {
  double sum = 0;
  for (const TakeoffRow& row : takeoff.rows)
    if (row.unit == unit) sum += row.amount;
  return sum;
}

void expectOneFigure(const Job& job, const std::string& which) {
  const Model model = buildModel(job);
  std::map<std::pair<ElementKind, Unit>, Works> kinds;
  for (const Element& e : model.works.elements)
    if (isTakenOff(e)) kinds[{e.kind, e.quantity.unit}].elements.push_back(e);
  for (auto& [key, works] : kinds) {
    works.units = model.works.units;
    works.frames = model.works.frames;
    double amount = 0;
    for (const Element& e : works.elements) amount += e.quantity.amount;
    SettingOut out = model.settingOut;
    out.stairs.clear();  // each has a row as a whole
    const bool frames = key.second == Unit::Each &&
                        (key.first == ElementKind::Window || key.first == ElementKind::Door);
    const bool windows = key.first == ElementKind::Window;
    std::erase_if(out.openings, [&](const BuiltOpening& o) {
      return !frames || o.kind == OpeningKind::Opening ||
             (o.kind == OpeningKind::Window) != windows;
    });
    const Takeoff takeoff = deriveTakeoff(job, out, works, model.programme);
    const std::string unit = nameOf(key.second);
    if (key.first == ElementKind::Topsoil || key.first == ElementKind::Spoil) {
      // By what is done with it: stripped, dug, put back, carted away. Some of it stays.
      EXPECT_TRUE(takeoff.rows.empty() || sumOf(takeoff, unit) > 0) << which;
      continue;
    }
    EXPECT_TRUE(has(takeoff, unit, amount) || std::abs(sumOf(takeoff, unit) - amount) < 1e-6)
        << which << ": " << nameOf(key.first) << ", " << amount << " " << unit;
  }
}

TEST(Units, OfEveryKindOfThingAreTheTakeoffs) {
  for (const std::string& name : test_support::demoNames())
    expectOneFigure(test_support::demoJob(name), name);
  for (unsigned seed = 0; seed < 40; ++seed)
    expectOneFigure(test_support::seededJob(seed), "seed " + std::to_string(seed));
}

TEST(Units, OfSheetsAreSquareMetres) {
  const Model model = buildModel(test_support::demoJob("orchard-house"));
  int seen = 0;
  for (const Element& e : model.works.elements) {
    const bool sheet =
        e.kind == ElementKind::CellarMembrane || e.kind == ElementKind::FloorInsulation;
    if (!sheet) continue;
    ++seen;
    EXPECT_EQ(e.quantity.unit, Unit::SquareMetre) << e.id;
  }
  EXPECT_GE(seen, 3);
}

// A wall of one brick and no building's: what is laid whole is ordered once.
TEST(Units, OfGardenWallsAreOrderedOnce) {
  Job job;
  job.outline = {{0, 0}, {8, 0}, {8, 6}, {0, 6}};
  const Takeoff without = buildModel(job).takeoff;
  GardenWall& wall = job.gardenWalls.emplace_back();
  wall.line = {{0, -6}, {5.61, -6}};
  const Model model = buildModel(job);
  double more = 0;
  for (const TakeoffRow& row : model.takeoff.rows)
    if (row.unit == nameOf(Unit::Each) && row.waste > 0 && row.item.find("rick") < 10)
      more += row.amount;
  for (const TakeoffRow& row : without.rows)
    if (row.unit == nameOf(Unit::Each) && row.waste > 0 && row.item.find("rick") < 10)
      more -= row.amount;
  LaidCount laid;
  for (const Element& e : model.works.elements)
    if (e.kind == ElementKind::GardenWall) laid.add(model.works, e);
  EXPECT_EQ(more, neededFor(laid, job.walls.brickLength, job.walls.brickHeight).wholes);
}

}  // namespace
