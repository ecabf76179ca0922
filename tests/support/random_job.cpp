#include "tests/support/random_job.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "model/geometry/polygon.h"
#include "model/job/job_names.h"
#include "model/job/read_job.h"
#include "model/job/stair_flight.h"
#include "model/job/unit_formats.h"
#include "tests/support/dice.h"
#include "tests/support/drawn_plan.h"

namespace test_support {

namespace {

using model::Job;

void drawWalls(Dice& dice, Job& job) {
  job.walls.cavity = dice.pick<double>({0.075, 0.1, 0.125, 0.15});
  job.walls.insulation = dice.chance(50) ? job.walls.cavity : job.walls.cavity - 0.05;
  job.walls.innerLeaf = dice.pick<double>({0.1, 0.14});
  if (dice.chance(20)) job.walls.render = dice.pick<double>({0.015, 0.02, 0.05});
}

void drawLaying(Dice& dice, Job& job) {
  if (dice.chance(30)) job.laying.dayRise = dice.pick<double>({0.75, 0.9, 1.2, 1.35});
  if (dice.chance(30)) job.laying.layers = dice.between(1, 4);
  if (dice.chance(30)) job.laying.mixSand = dice.pick<double>({3, 4.5, 6});
  if (dice.chance(30)) job.laying.bricksInPack = dice.pick<int>({360, 500});
}

void drawStoreys(Dice& dice, Job& job) {
  job.storeys.clear();
  const std::vector<std::string> names{"Ground floor", "First floor", "Second floor"};
  const int count = dice.pick<int>({1, 1, 1, 2, 2, 3});
  const double height = dice.pick<double>({2.55, 2.7, 2.775, 2.85});
  for (int i = 0; i < count; ++i) {
    job.storeys.push_back({names[static_cast<size_t>(i)], std::round(i * height * 1000) / 1000});
  }
}

// High enough that the outer leaf still covers the heads of the last storey's openings, however
// steep the roof is.
void drawRoof(Dice& dice, Job& job) {
  job.roof.pitch = dice.pick<double>({15, 22.5, 30, 35, 40, 45, 50});
  job.roof.eaves = dice.length(150, 500, 50);
  job.roof.verge = dice.length(50, 200, 50);
  const double drop = (job.walls.outerLeaf + job.walls.cavity) *
                      std::tan(job.roof.pitch * 3.14159265358979323846 / 180);
  const double needed = 2.1 + 0.15 + drop - job.roof.plateDepth;
  if (needed > 2.3 || dice.chance(30)) {
    job.walls.top = job.storeys.back().floor + std::ceil((needed + 0.075) / 0.075) * 0.075;
  }
}

void drawGables(Dice& dice, Job& job) {
  const size_t n = job.outline.size();
  Outline outline = job.outline;
  const bool clockwise = model::signedArea(outline) < 0;
  const auto angle = [&](size_t i) {
    const double seen = cornerAngle(outline, i);
    return clockwise ? 360 - seen : seen;
  };
  size_t last = n;  // the last wall made a gable
  for (size_t i = 0; i < n; ++i) {
    const bool square = angle(i) < 120 && angle((i + 1) % n) < 120;
    const bool neighbour = last + 1 == i || (i == n - 1 && last != n && !job.roof.edges.empty() &&
                                             job.roof.edges[0].wall == model::nameOfWall(0, n));
    if (!square || neighbour || !dice.chance(40)) continue;
    job.roof.edges.push_back({model::nameOfWall(i, n), model::EavesKind::Gable});
    last = i;
  }
}

void drawOpenings(Dice& dice, Job& job) {
  const size_t n = job.outline.size();
  for (size_t wall = 0; wall < n; ++wall) {
    const double length = edgeLength(job.outline, wall);
    for (size_t storey = 0; storey < job.storeys.size(); ++storey) {
      double s = dice.length(900, 2000);
      while (dice.chance(60)) {
        model::Opening opening;
        opening.width = dice.pick<double>({0.685, 0.91, 1.36, 1.81, 2.26});
        if (s + opening.width + 0.9 > length) break;
        const bool door = storey == 0 && dice.chance(25);
        opening.kind = door ? model::OpeningKind::Door : model::OpeningKind::Window;
        if (storey == 0 && opening.width > 2) opening.kind = model::OpeningKind::Garage;
        opening.name = (door ? "Door " : "Window ") + std::to_string(job.openings.size() + 1);
        opening.wall = model::nameOfWall(wall, n);
        opening.from = model::letterOfCorner(dice.chance(50) ? wall : (wall + 1) % n);
        const bool fromStart = opening.from == model::letterOfCorner(wall);
        opening.at = fromStart ? s : length - s - opening.width;
        opening.at = std::round(opening.at * 1000) / 1000;
        opening.storey = static_cast<int>(storey);
        if (!door && opening.kind == model::OpeningKind::Window && dice.chance(30)) {
          opening.sill =
              std::round((job.storeys[storey].floor + dice.pick<double>({0.6, 0.9, 1.35})) * 1000) /
              1000;
        }
        job.openings.push_back(opening);
        s += opening.width + dice.length(450, 1800);
      }
    }
  }
}

void drawFoundations(Dice& dice, Job& job) {
  model::Foundations& f = job.foundations;
  f.kind = dice.chance(35) ? model::FoundationKind::TrenchFill : model::FoundationKind::Strip;
  f.width = dice.pick<double>({0.6, 0.65, 0.75});
  f.width = std::max(f.width, job.walls.total() + 0.2);
  const bool strip = f.kind == model::FoundationKind::Strip;
  if (strip && dice.chance(50)) f.thickness = dice.pick<double>({0.2, 0.225, 0.3});
  if (strip && dice.chance(25)) f.blinding = 0.05;
  if (!strip || !dice.chance(50)) return;
  f.thickness = dice.pick<double>({0.225, 0.3});
  f.top = dice.pick<double>({-0.975, -1.05, -1.2});
  if (!dice.chance(60)) return;
  const size_t n = job.outline.size();
  const size_t wall = static_cast<size_t>(dice.between(0, static_cast<int>(n) - 1));
  model::FoundationStep step{model::nameOfWall(wall, n), 0, std::nullopt, *f.top - 0.225};
  const double length = edgeLength(job.outline, wall);
  if (length > 4 && dice.chance(60)) step.from = std::round(length / 2 * 100) / 100;
  if (length > 6 && step.from == 0 && dice.chance(50)) step.to = std::round(length * 60) / 100;
  f.steps.push_back(step);
}

void drawCellar(Dice& dice, Job& job, const Plan& plan) {
  model::Cellar cellar;
  if (!plan.cellar.empty() && dice.chance(70)) {
    cellar.outline = plan.cellar;
  }
  cellar.floor = dice.pick<double>({-2.4, -2.525, -2.7});
  cellar.wall = std::max(0.45, job.walls.total() + 0.05);
  if (dice.chance(40)) cellar.toe = dice.pick<double>({0, 0.1, 0.3});
  if (dice.chance(30)) job.ground.batter = dice.pick<double>({45, 60, 70});
  job.cellar = cellar;
}

struct Extent {
  Vec2 low{1e9, 1e9}, high{-1e9, -1e9};
};

Extent extentOf(const Outline& outline) {
  Extent e;
  for (const Vec2& p : outline) {
    e.low = {std::min(e.low.x, p.x), std::min(e.low.y, p.y)};
    e.high = {std::max(e.high.x, p.x), std::max(e.high.y, p.y)};
  }
  return e;
}

double toMm(double metres) { return std::round(metres * 1000) / 1000; }

void drawSite(Dice& dice, Job& job) {
  const Extent plan = extentOf(job.outline);
  if (dice.chance(60)) {
    const Vec2 fall{dice.real(-0.05, 0.05), dice.real(-0.05, 0.05)};
    const int count = dice.between(4, 9);
    double highest = -1e9;
    for (int i = 0; i < count; ++i) {
      const Vec2 at{toMm(dice.real(plan.low.x - 3, plan.high.x + 3)),
                    toMm(dice.real(plan.low.y - 3, plan.high.y + 3))};
      const double level = fall.x * at.x + fall.y * at.y + dice.real(-0.04, 0.04);
      job.site.spots.push_back({at, level});
      highest = std::max(highest, level);
    }
    for (model::SpotLevel& spot : job.site.spots) {
      spot.level = toMm(spot.level - highest - 0.2);
    }
  }
  const double margin = dice.real(9, 12);
  const auto askew = [&] { return dice.real(0, 1.5); };
  if (dice.chance(50)) {
    job.site.boundary = {
        {toMm(plan.low.x - margin - askew()), toMm(plan.low.y - margin - askew())},
        {toMm(plan.high.x + margin + askew()), toMm(plan.low.y - margin - askew())},
        {toMm(plan.high.x + margin + askew()), toMm(plan.high.y + margin + askew())},
        {toMm(plan.low.x - margin - askew()), toMm(plan.high.y + margin + askew())}};
  }
  if (dice.chance(30)) job.site.benchMark = model::BenchMark{"Mark", {plan.low.x - 4, 0}, 0.2};
  if (dice.chance(30)) {
    const double x = plan.high.x + dice.real(4.5, 5.5);
    job.site.buildings.push_back({"Wash house", model::BuildingKind::Existing,
                                  rectangle(toMm(x), 1, toMm(x + 2.4), 4), 2.4, 0.5});
  }
  if (dice.chance(30)) {
    const double x = plan.low.x - dice.real(14, 15);
    job.site.buildings.push_back({"Next door", model::BuildingKind::Neighbour,
                                  rectangle(toMm(x - 5), 0, toMm(x), 8), 5.2, 0.9});
  }
  if (dice.chance(30)) {
    const Vec2 at = (plan.low + plan.high) * 0.5;
    job.site.buildings.push_back({"Shed", model::BuildingKind::Demolish,
                                  rectangle(toMm(at.x), toMm(at.y), toMm(at.x + 2), toMm(at.y + 3)),
                                  2.1, 0.15});
  }
}

// Before the building's south side, or round a corner of it: whole bricks or not.
void drawGardenWall(Dice& dice, Job& job) {
  const Extent plan = extentOf(job.outline);
  double lowest = -0.15;
  for (const model::SpotLevel& spot : job.site.spots) lowest = std::min(lowest, spot.level);
  model::GardenWall wall;
  wall.name = dice.chance(50) ? "Front wall" : "";
  wall.bricks = dice.pick<double>({0.5, 1, 1, 1.5, 2});
  if (wall.bricks == 0.5) wall.bond = model::BondKind::Stretcher;
  if (wall.bricks == 1)
    wall.bond = dice.pick<model::BondKind>(
        {model::BondKind::English, model::BondKind::Flemish, model::BondKind::Header,
         model::BondKind::EnglishGardenWall, model::BondKind::FlemishGardenWall});
  const bool piers = wall.bricks < 1.25 && dice.chance(60);
  if (piers) wall.pierBricks = wall.bricks + 1;
  if (piers && wall.bricks == 0.5) wall.pierBricks = dice.pick<double>({1, 1.5});
  if (piers) wall.pierEvery = dice.pick<double>({0, 2.1, 3});
  const double y = toMm(plan.low.y - dice.real(5, 6));
  const double x = toMm(plan.low.x + dice.real(0, 1)), length = dice.between(22, 44) * 0.1125;
  const Vec2 end{toMm(x + length + (dice.chance(50) ? -0.01 : 0.031)), y};
  const Vec2 north{end.x, toMm(y + 2.5)}, south{end.x, toMm(y - 2.2)};
  // The building lies to the north: only a short length goes towards it.
  wall.line = {{x, y}, end};
  if (dice.chance(30)) wall.line.push_back(dice.chance(50) ? north : south);
  wall.base = toMm(lowest - dice.pick<double>({0.3, 0.45}));
  wall.top = toMm(wall.base + dice.between(14, 30) * job.walls.course());
  wall.coping = dice.pick<double>({0, 0.05, 0.075});
  wall.foundationWidth = wall.bricks * 0.225 + dice.pick<double>({0.2, 0.3});
  wall.foundationThickness = dice.pick<double>({0.15, 0.225});
  job.gardenWalls.push_back(wall);
}

// Kept when nothing about the job speaks against it.
void tryWith(Job& job, const std::function<void(Job&)>& change) {
  Job changed = job;
  change(changed);
  if (!model::hasErrors(model::validateJob(changed, "", {}))) job = changed;
}

// A sheet through a garden wall, and courses that stand out.
void drawGardenTop(Dice& dice, Job& job) {
  if (dice.chance(50))
    tryWith(job, [&](Job& j) {
      model::GardenWall& wall = j.gardenWalls[0];
      wall.dampCourse = toMm(wall.base + dice.real(0.1, 0.7));
    });
  if (dice.chance(60))
    tryWith(job, [&](Job& j) {
      model::GardenWall& wall = j.gardenWalls[0];
      wall.corbelCourses = dice.between(1, 4);
      wall.corbelStep = dice.pick<double>({0.012, 0.02, 0.028, 0.028, 0.045});
    });
}

// With limits that are kept, marks on the site, and set-ups whose line is in reach of the ground.
void drawSiteWork(Dice& dice, Job& job) {
  const Extent plan = extentOf(job.outline);
  const auto beside = [&] { return Vec2{toMm(plan.low.x - dice.real(1, 4)), toMm(plan.low.y)}; };
  if (dice.chance(40)) job.settingOut.pinSpacing = dice.pick<double>({1.2, 1.5, 2.0});
  if (dice.chance(30)) job.settingOut.tape = dice.pick<double>({20, 50});
  if (dice.chance(30)) {
    job.site.grid = model::SiteGrid{toMm(dice.real(100, 900)), toMm(dice.real(100, 900)),
                                    dice.between(-180, 180) / 2.0};
  }
  for (int i = dice.pick<int>({0, 0, 1, 2}); i > 0; --i)
    job.site.marks.push_back({"Nail " + std::to_string(i), beside(), toMm(dice.real(-0.4, 0.4))});
  if (dice.chance(30)) {
    job.limits.push_back({model::LimitKind::Boundary, "A-B", 0.5, std::nullopt, "as agreed"});
    job.limits.push_back({model::LimitKind::Ridge, "", std::nullopt, 25.0, ""});
  }
  if (dice.chance(50) && !job.site.marks.empty()) {
    for (int i = dice.between(1, 3); i > 0; --i) {
      job.setUps.push_back({"Set-up " + std::to_string(i), "2027-05-0" + std::to_string(i),
                            beside(), job.site.marks.front().name, toMm(dice.real(1.2, 1.6)),
                            dice.pick<double>({4, 5}),
                            i == 3 ? job.storeys.front().name : std::string()});
    }
  }
  if (dice.chance(30)) job.tolerances.push_back({"top-of-concrete", 0.008, 0.012, "specification"});
  if (dice.chance(20)) job.questions.push_back({"Corner C", "May it stay so?"});
}

// What is built in as the leaves rise, otherwise than usual.
void drawBuiltIn(Dice& dice, Job& job) {
  model::BuiltIn& built = job.walls.builtIn;
  if (dice.chance(20)) built.tieAcross = dice.pick<double>({0.6, 0.75});
  if (dice.chance(20)) built.tieUp = dice.pick<double>({0.3, 0.225});
  if (dice.chance(20)) built.boardHeight = dice.pick<double>({0.4, 0.6, 1.2});
  for (model::Opening& opening : job.openings) {
    if (dice.chance(20)) opening.lintelHeight = dice.pick<double>({0.065, 0.215});
    if (dice.chance(20)) opening.lintelBearing = dice.pick<double>({0.1, 0.2});
    if (dice.chance(15)) opening.padstone = dice.pick<double>({0.215, 0.44});
    if (dice.chance(15) && opening.kind == model::OpeningKind::Window)
      opening.sillHeight = dice.pick<double>({0.065, 0.14});
  }
  const size_t walls = job.outline.size();
  for (int i = dice.pick<int>({0, 0, 0, 1, 3}); i > 0; --i) {
    const size_t wall = static_cast<size_t>(dice.between(0, static_cast<int>(walls) - 1));
    job.airBricks.push_back({model::nameOfWall(wall, walls), model::letterOfCorner(wall),
                             dice.length(900, 2400), dice.pick<double>({-0.152, -0.077, 0.15, 1})});
  }
}

// In any bond, of any units, and with a movement joint.
void drawBond(Dice& dice, Job& job) {
  if (dice.chance(40))
    job.walls.bond = static_cast<model::BondKind>(
        dice.between(0, static_cast<int>(model::BondKind::FlemishGardenWall)));
  if (dice.chance(15)) {
    const int format = dice.between(0, static_cast<int>(model::BrickFormat::IndianModular));
    tryWith(job, [&](Job& j) {
      model::takeBrickSizes(j.walls, static_cast<model::BrickFormat>(format));
    });
  }
  if (dice.chance(15)) {
    const int format = dice.between(0, static_cast<int>(model::BlockFormat::TwelveDf));
    tryWith(job, [&](Job& j) {
      model::takeBlockSizes(j.walls, static_cast<model::BlockFormat>(format));
    });
  }
  if (dice.chance(10))  // a whole brick thick
    tryWith(job, [](Job& j) { j.walls.outerLeaf = j.walls.brickLength; });
  if (dice.chance(25)) {
    const size_t n = job.outline.size();
    const size_t wall = static_cast<size_t>(dice.between(0, static_cast<int>(n) - 1));
    const double length = edgeLength(job.outline, wall);
    const double at = toMm(dice.real(0.3, 0.7) * length);
    tryWith(job, [&](Job& j) {
      j.movementJoints.push_back(
          {model::nameOfWall(wall, n), model::letterOfCorner(wall), at, 0.016});
    });
  }
}

// Cellar walls in blocks instead of concrete.
void drawCellarBlockwork(Dice& dice, Job& job) {
  const bool hollow = dice.chance(50);
  const double leaf = dice.pick<double>({0.1, 0.14}), cores = dice.pick<double>({0.4, 0.5});
  tryWith(job, [&](Job& j) {
    j.cellar->kind =
        hollow ? model::CellarWallKind::HollowBlock : model::CellarWallKind::FilledCavity;
    j.cellar->leaf = leaf;
    j.cellar->cores = cores;
    if (hollow) j.cellar->wall = std::max(0.39, j.walls.total());
  });
}

// Given tops of concrete go down with the ground, so that the foundations stay covered.
void coverFoundations(Job& job) {
  if (!job.foundations.top) return;
  double lowest = 0;
  for (const model::SpotLevel& spot : job.site.spots) lowest = std::min(lowest, spot.level);
  const double wanted = std::floor((lowest - 0.25) / 0.075) * 0.075;
  const double lower = std::max(0.0, *job.foundations.top - wanted);
  job.foundations.top = toMm(*job.foundations.top - lower);
  for (model::FoundationStep& step : job.foundations.steps) step.top = toMm(step.top - lower);
}

// Upright and level barriers in the cavity, where nothing speaks against them.
void drawBarriers(Dice& dice, Job& job) {
  const size_t n = job.outline.size();
  for (int i = dice.pick<int>({1, 2, 3}); i > 0; --i) {
    const size_t wall = static_cast<size_t>(dice.between(0, static_cast<int>(n) - 1));
    model::CavityBarrier barrier;
    barrier.wall = model::nameOfWall(wall, n);
    if (dice.chance(50)) barrier.from = model::letterOfCorner((wall + 1) % n);
    barrier.width = dice.pick<double>({0.05, 0.1, 0.15});
    const double along = toMm(dice.real(0.1, 0.9) * edgeLength(job.outline, wall));
    const double level = toMm(job.storeys.back().floor + dice.real(0, 2.3));
    if (dice.chance(60))
      barrier.at = along;
    else
      barrier.level = level;
    tryWith(job, [&](Job& j) { j.cavityBarriers.push_back(barrier); });
  }
}

// A level barrier at one height round two walls or all, so that its trays meet at corners.
void drawBarrierRound(Dice& dice, Job& job) {
  const size_t n = job.outline.size();
  const size_t first = static_cast<size_t>(dice.between(0, static_cast<int>(n) - 1));
  const size_t count = dice.chance(50) ? n : 2;
  const double level = toMm(job.storeys.back().floor + dice.real(0.1, 2.2));
  for (size_t i = 0; i < count; ++i) {
    const std::string wall = model::nameOfWall((first + i) % n, n);
    tryWith(job, [&](Job& j) {
      j.cavityBarriers.push_back({wall, "", std::nullopt, level, 0.075});
    });
  }
}

// A length of wall whose outer damp course is stepped up, where it fits.
void drawDampStep(Dice& dice, Job& job) {
  const size_t n = job.outline.size();
  const size_t wall = static_cast<size_t>(dice.between(0, static_cast<int>(n) - 1));
  const double length = edgeLength(job.outline, wall);
  model::DampCourseStep step;
  step.wall = model::nameOfWall(wall, n);
  step.from = model::letterOfCorner(dice.chance(50) ? wall : (wall + 1) % n);
  step.at = toMm(dice.real(0.1, 0.6) * length);
  step.to = toMm(step.at + dice.real(0.1, 0.8) * (length - step.at));
  step.courses = dice.between(1, 8);
  tryWith(job, [&](Job& j) { j.dampCourseSteps.push_back(step); });
}

// Courses that stand out from one wall, from two that meet, or all round.
void drawCorbels(Dice& dice, Job& job) {
  const size_t n = job.outline.size();
  const size_t first = static_cast<size_t>(dice.between(0, static_cast<int>(n) - 1));
  const size_t count = dice.pick<size_t>({1, 2, n});
  model::Corbel corbel;
  corbel.courses = dice.pick<int>({1, 1, 2, 3});
  corbel.step = toMm(std::max(0.005, dice.real(0.008, 0.034) / corbel.courses));
  corbel.level = toMm(job.storeys.back().floor + dice.real(0.1, 2.4));
  for (size_t i = 0; i < count; ++i) {
    corbel.wall = model::nameOfWall((first + i) % n, n);
    tryWith(job, [&](Job& j) { j.corbels.push_back(corbel); });
  }
}

// A low old house along one of the walls, and the wall beside that joined to it. Its roof stays
// under the new eaves.
void drawJunction(Dice& dice, Job& job) {
  const size_t n = job.outline.size();
  const size_t beside = static_cast<size_t>(dice.between(0, static_cast<int>(n) - 1));
  const bool atStart = dice.chance(50);
  const Vec2 a = job.outline[beside], b = job.outline[(beside + 1) % n];
  const double length = edgeLength(job.outline, beside);
  const Vec2 along = (b - a) / length;
  const bool clockwise = model::signedArea(job.outline) < 0;
  const Vec2 out = clockwise ? Vec2{-along.y, along.x} : Vec2{along.y, -along.x};
  const double gap = dice.pick<double>({0, 0, 0.002, 0.01});
  const double before = dice.pick<double>({0, 0.5}), after = dice.pick<double>({0, 0.6});
  const double deep = dice.pick<double>({2.4, 3.5});
  const auto at = [&](double s, double d) {
    const Vec2 p = a + along * s + out * d;
    return Vec2{std::round(p.x * 1e6) / 1e6, std::round(p.y * 1e6) / 1e6};
  };
  model::StandingBuilding house;
  house.name = "Old house";
  house.kind = dice.chance(70) ? model::BuildingKind::Existing : model::BuildingKind::Neighbour;
  house.outline = {at(-before, gap), at(-before, gap + deep), at(length + after, gap + deep),
                   at(length + after, gap)};
  house.height = dice.pick<double>({1.7, 1.9});
  model::WallJunction junction;
  junction.wall = model::nameOfWall(atStart ? (beside + n - 1) % n : (beside + 1) % n, n);
  junction.corner = model::letterOfCorner(atStart ? beside : (beside + 1) % n);
  junction.building = house.name;
  junction.kind = dice.pick<model::JunctionKind>({model::JunctionKind::StarterTies,
                                                  model::JunctionKind::Toothed,
                                                  model::JunctionKind::BlockBonded});
  junction.pocket = dice.pick<double>({0.1025, 0.05, 0.14});
  junction.tieUp = dice.pick<double>({0.225, 0.3});
  // No window looks at the house.
  for (const model::Opening& opening : job.openings) {
    const size_t wall = model::wallNamed(opening.wall, n).value_or(beside);
    const bool fromFirst = opening.from == model::letterOfCorner(wall);
    const Vec2 corner = job.outline[fromFirst ? wall : (wall + 1) % n];
    const Vec2 other = job.outline[fromFirst ? (wall + 1) % n : wall];
    const Vec2 way = (other - corner) / edgeLength(job.outline, wall);
    for (const double s : {opening.at, opening.at + opening.width})
      if (model::distanceToOutline(house.outline, corner + way * s) < 0.5) return;
    if (wall == beside) return;
  }
  tryWith(job, [&](Job& j) {
    j.site.buildings.push_back(house);
    j.junctions.push_back(junction);
  });
}

// Anywhere inside, any way along a wall; some against a wall. Most places have no room: others are
// tried.
void drawStair(Dice& dice, Job& job, const std::string& from, double total) {
  const Extent plan = extentOf(job.outline);
  for (int tried = 0; tried < 40; ++tried) {
    const size_t count = job.stairs.size();
    model::Stair stair;
    stair.name = "Stair from " + from;
    stair.from = from;
    stair.risers = static_cast<int>(std::lround(total / dice.pick<double>({0.185, 0.2, 0.215})));
    stair.going = dice.pick<double>({0.22, 0.235, 0.25});
    stair.width = dice.pick<double>({0.7, 0.8, 0.86, 1.0});
    if (dice.chance(30)) stair.riserKind = model::RiserKind::Open;
    if (dice.chance(40)) stair.trimming = model::TrimmingKind::Double;
    if (dice.chance(20)) stair.guard = dice.pick<double>({0.95, 1.1});
    if (dice.chance(20)) stair.well = dice.length(2200, 4000, 50);
    const auto wall =
        static_cast<size_t>(dice.between(0, static_cast<int>(job.outline.size()) - 1));
    const Vec2 a = job.outline[wall], b = job.outline[(wall + 1) % job.outline.size()];
    const std::string name = model::nameOfWall(wall, job.outline.size());
    const size_t dash = name.find('-');
    const bool back = dice.chance(50);
    stair.up = back ? name.substr(dash + 1) + "-" + name.substr(0, dash) : name;
    stair.foot = {toMm(dice.real(plan.low.x, plan.high.x)),
                  toMm(dice.real(plan.low.y, plan.high.y))};
    if (dice.chance(60)) {
      const double length = std::sqrt((b.x - a.x) * (b.x - a.x) + (b.y - a.y) * (b.y - a.y));
      const Vec2 along = (b - a) / length;
      const double turn = model::signedArea(job.outline) < 0 ? -1 : 1;
      const double off = (from == model::kCellarFloor ? job.cellar->wall : job.walls.total()) +
                         stair.width / 2 + model::kStringThick + dice.real(0, 0.03);
      stair.foot = a + along * dice.real(0, length) + Vec2{-along.y, along.x} * (turn * off);
    }
    tryWith(job, [&](Job& j) { j.stairs.push_back(stair); });
    if (job.stairs.size() > count) return;
  }
}

void drawStairs(Dice& dice, Job& job) {
  if (job.cellar && dice.chance(60))
    drawStair(dice, job, model::kCellarFloor, job.storeys[0].floor - job.cellar->floor);
  for (size_t i = 0; i + 1 < job.storeys.size(); ++i)
    if (dice.chance(75))
      drawStair(dice, job, job.storeys[i].name, job.storeys[i + 1].floor - job.storeys[i].floor);
}

Job drawJob(unsigned seed) {
  Dice dice(seed);
  Job job;
  job.name = "Job " + std::to_string(seed);
  if (seed == 0) {
    job.outline = rectangle(0, 0, 6.74, 4.49);
    return job;
  }
  const Plan plan = drawPlan(dice, seed);
  job.outline = plan.outline;
  drawWalls(dice, job);
  drawStoreys(dice, job);
  drawRoof(dice, job);
  if (dice.chance(60)) drawGables(dice, job);
  if (dice.chance(80)) drawOpenings(dice, job);
  drawFoundations(dice, job);
  const bool canCellar = !plan.cellar.empty() || dice.chance(30);
  if (canCellar && dice.chance(40)) drawCellar(dice, job, plan);
  if (dice.chance(30)) job.groundFloor.kind = model::GroundFloorKind::Suspended;
  job.ground.topsoil = dice.pick<double>({0.1, 0.15, 0.2});
  drawSite(dice, job);
  coverFoundations(job);
  if (dice.chance(30)) job.programme.start = "2027-04-12";
  drawSiteWork(dice, job);
  drawBond(dice, job);
  drawBuiltIn(dice, job);
  drawLaying(dice, job);  // last, so that what is drawn above stays as it was
  if (dice.chance(35)) drawGardenWall(dice, job);
  if (dice.chance(25))
    job.walls.blockBond =
        dice.chance(60) ? model::BlockBondKind::Third : model::BlockBondKind::Stack;
  if (job.cellar && dice.chance(80)) drawCellarBlockwork(dice, job);
  if (!job.gardenWalls.empty()) drawGardenTop(dice, job);
  for (size_t i = 0; i < job.roof.edges.size(); ++i) {
    if (dice.chance(50)) continue;
    const double over = dice.pick<double>({0.15, 0.225, 0.4});
    const double coping = dice.pick<double>({0, 0.05, 0.075, 0.1});
    tryWith(job, [&](Job& j) {
      j.roof.edges[i].parapet = over;
      j.roof.edges[i].coping = coping;
    });
  }
  if (dice.chance(40)) drawBarriers(dice, job);
  if (dice.chance(40)) drawJunction(dice, job);
  if (dice.chance(30)) drawBarrierRound(dice, job);
  for (int i = dice.between(0, 6); i > 0; --i) drawDampStep(dice, job);
  if (dice.chance(50)) drawCorbels(dice, job);
  drawStairs(dice, job);
  return job;
}

}  // namespace

Job seededJob(unsigned seed) {
  Job job = drawJob(seed);
  // What was drawn fits together nearly always; when it does not, things are left out one by one
  // until it does.
  const std::vector<std::function<void(Job&)>> leaveOut{[](Job& j) { j.stairs.clear(); },
                                                        [](Job& j) { j.gardenWalls.clear(); },
                                                        [](Job& j) { j.airBricks.clear(); },
                                                        [](Job& j) { j.roof.edges.clear(); },
                                                        [](Job& j) { j.foundations.steps.clear(); },
                                                        [](Job& j) { j.cellar.reset(); },
                                                        [](Job& j) { j.site.buildings.clear(); },
                                                        [](Job& j) { j.movementJoints.clear(); },
                                                        [](Job& j) { j.openings.clear(); },
                                                        [](Job& j) { j.site = {}; }};
  for (const auto& change : leaveOut) {
    if (!model::hasErrors(model::validateJob(job, "", {}))) return job;
    change(job);
  }
  if (model::hasErrors(model::validateJob(job, "", {}))) job = drawJob(0);
  return job;
}

}  // namespace test_support
