// What must hold for all works together, whatever the job: the demonstration jobs and drawn ones.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <sstream>

#include "model/geometry/check_solid.h"
#include "model/job/read_job.h"
#include "model/programme/programme.h"
#include "model/works/build_works.h"
#include "tests/support/demo_job.h"
#include "tests/support/dice.h"
#include "tests/support/random_job.h"
#include "tests/support/solid_referee.h"

namespace model {
namespace {

struct Building {
  SettingOut out;
  Works works;
  Programme programme;

  explicit Building(const Job& job)
      : out(deriveSettingOut(job)),
        works(buildWorks(job, out)),
        programme(deriveProgramme(job, out, works)) {}
};

// True inside, by the faces that an upright line through p crosses below it.
bool inside(const Solid& solid, const Vec3& p) {
  int crossings = 0;
  for (const auto& [i, j, k] : solid.triangles) {
    const Vec3 &a = solid.points[i], &b = solid.points[j], &c = solid.points[k];
    const auto turn = [](const Vec2& u, const Vec2& v, const Vec2& w) {
      return cross(v - u, w - u);
    };
    const Vec2 q(p);
    const double wa = turn(Vec2(b), Vec2(c), q), wb = turn(Vec2(c), Vec2(a), q),
                 wc = turn(Vec2(a), Vec2(b), q);
    const bool within = (wa > 0 && wb > 0 && wc > 0) || (wa < 0 && wb < 0 && wc < 0);
    if (!within) continue;
    const double z = (wa * a.z + wb * b.z + wc * c.z) / (wa + wb + wc);
    if (z < p.z) ++crossings;
  }
  return crossings % 2 == 1;
}

double removedAt(const Programme& programme, const Element& e, const Vec3& p) {
  return e.removed ? timeAt(programme, *e.removed, p) : kNever;
}

// A moment at which both hold the same place, in words; empty when there is none. Looks at drawn
// places that lie in both.
std::string meeting(const Programme& programme, const Element& a, const Element& b,
                    test_support::Dice& dice) {
  const Bounds one = bounds(a.solid), two = bounds(b.solid);
  for (int i = 0; i < 60; ++i) {
    Vec3 p{0, 0, 0};
    for (int axis = 0; axis < 3; ++axis) {
      const double low = std::max(one.low[axis], two.low[axis]);
      const double high = std::min(one.high[axis], two.high[axis]);
      p[axis] = dice.real(low, high);
    }
    if (!inside(a.solid, p) || !inside(b.solid, p)) continue;
    const double from = std::max(timeAt(programme, a.placed, p), timeAt(programme, b.placed, p));
    const double to = std::min(removedAt(programme, a, p), removedAt(programme, b, p));
    if (from < to - 1e-9) {
      return a.id + " and " + b.id + " from " + std::to_string(from) + " to " + std::to_string(to);
    }
  }
  return {};
}

// Stage by stage, whole things: at the end of a stage what stands there has its full size.
std::string standingTogether(const Programme& programme, const Element& a, const Element& b) {
  const auto index = [&](const StageKey& key) {
    if (key.kind == StageKind::Existing) return -1.0;
    const auto found = programme.indexOf(key);
    return found ? static_cast<double>(*found) : kNever;
  };
  const double placed = std::max(index(a.placed.stage), index(b.placed.stage));
  const double gone = std::min(a.removed ? index(a.removed->stage) : kNever,
                               b.removed ? index(b.removed->stage) : kNever);
  return placed < gone ? a.id + " and " + b.id : "";
}

// The stages in which a thing stands at any moment: from the first up to, but without, the last.
std::pair<double, double> stagesOf(const Programme& programme, const Element& e) {
  const auto index = [&](const StageKey& key) {
    if (key.kind == StageKind::Existing) return -1.0;
    const auto found = programme.indexOf(key);
    return found ? static_cast<double>(*found) : -1.0;
  };
  return {index(e.placed.stage), e.removed ? index(e.removed->stage) + 1 : kNever};
}

bool isOfRoof(const Element& e) {
  return e.kind == ElementKind::Rafter || e.kind == ElementKind::RoofCovering ||
         e.kind == ElementKind::FasciaBoard || e.kind == ElementKind::BargeBoard;
}

std::vector<std::string> faultsOf(const Building& building) {
  std::vector<std::string> faults;
  std::vector<const Solid*> solids;
  for (const Element& e : building.works.elements) {
    const std::string fault = solidFault(e.solid);
    if (!fault.empty()) faults.push_back(e.id + ": " + fault);
    const double formula = volume(e.solid), sliced = test::slicedVolume(e.solid);
    if (std::abs(formula - sliced) > 1e-6 * (1 + formula))
      faults.push_back(e.id + ": " + std::to_string(formula) + " m3, in slices " +
                       std::to_string(sliced));
    solids.push_back(&e.solid);
  }
  test_support::Dice dice(1);
  std::vector<std::pair<double, double>> stages;
  for (const Element& e : building.works.elements)
    stages.push_back(stagesOf(building.programme, e));
  // What is dug and what is built in its place never stand together: no need to look.
  const auto mayMeet = [&](size_t i, size_t j) {
    return stages[i].first < stages[j].second && stages[j].first < stages[i].second;
  };
  constexpr double kCrumb = 5e-7;  // m3: where mitres are cut on the same line twice
  for (const test::Overlap& o : test::overlaps(solids, mayMeet)) {
    if (o.volume < kCrumb) continue;
    // A taller house beside the roof is only warned of: how they meet there is the designer's.
    const auto is = [&](size_t i, ElementKind kind) {
      return building.works.elements[i].kind == kind;
    };
    if (is(o.a, ElementKind::StandingBuilding) && isOfRoof(building.works.elements[o.b])) continue;
    if (is(o.b, ElementKind::StandingBuilding) && isOfRoof(building.works.elements[o.a])) continue;
    const Element &a = building.works.elements[o.a], &b = building.works.elements[o.b];
    std::string together = standingTogether(building.programme, a, b);
    if (together.empty()) together = meeting(building.programme, a, b, dice);
    if (!together.empty())
      faults.push_back("in one place, " + std::to_string(o.volume) + " m3: " + together);
  }
  return faults;
}

// ---- the demonstration jobs -------------------------------------------------------

class EveryDemo : public testing::TestWithParam<std::string> {};

TEST_P(EveryDemo, SolidsAreClosedAndNoTwoStandInOnePlace) {
  const Building building(test_support::demoJob(GetParam()));
  for (const std::string& fault : faultsOf(building)) ADD_FAILURE() << fault;
}

TEST_P(EveryDemo, GivesTheSameTwice) {
  const Job job = test_support::demoJob(GetParam());
  const Building one(job), two(job);
  ASSERT_EQ(one.works.elements.size(), two.works.elements.size());
  for (size_t i = 0; i < one.works.elements.size(); ++i) {
    const Element &a = one.works.elements[i], &b = two.works.elements[i];
    EXPECT_EQ(a.id, b.id);
    EXPECT_TRUE(a.solid.points == b.solid.points) << a.id;
    EXPECT_TRUE(a.solid.triangles == b.solid.triangles) << a.id;
  }
}

TEST_P(EveryDemo, EveryStageExistsInTheProgramme) {
  const Building building(test_support::demoJob(GetParam()));
  for (const Element& e : building.works.elements) {
    if (e.placed.stage.kind != StageKind::Existing) {
      EXPECT_TRUE(building.programme.indexOf(e.placed.stage)) << e.id;
    }
    if (e.removed) {
      EXPECT_TRUE(building.programme.indexOf(e.removed->stage)) << e.id;
    }
  }
}

TEST_P(EveryDemo, NothingTemporaryIsLeftAtTheEnd) {
  const Building building(test_support::demoJob(GetParam()));
  for (const Element& e : building.works.elements) {
    if (isTemporary(e.kind)) {
      EXPECT_TRUE(e.removed) << e.id;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Jobs, EveryDemo, testing::ValuesIn(test_support::demoNames()),
                         [](const auto& demo) {
                           std::string name = demo.param;
                           std::replace(name.begin(), name.end(), '-', '_');
                           return name;
                         });

// ---- drawn jobs ---------------------------------------------------------------------

// Fixed seeds, one test each, so that a failure names the job to look at.
class DrawnJob : public testing::TestWithParam<unsigned> {};

TEST_P(DrawnJob, SolidsAreClosedAndNoTwoStandInOnePlace) {
  for (const std::string& fault : faultsOf(Building(test_support::seededJob(GetParam())))) {
    ADD_FAILURE() << fault;
  }
}

// Square, skew and re-entrant corners under the whole plan, and under a part of it.
TEST(WholeBuilding, OverACellarInBlocksIsClosedAndNoTwoThingsStandInOnePlace) {
  for (const CellarWallKind kind : {CellarWallKind::FilledCavity, CellarWallKind::HollowBlock}) {
    for (const bool part : {false, true}) {
      Job job;
      job.outline = {{0, 0}, {9, 0}, {10.5, 3.5}, {7, 7}, {4, 7}, {4, 4.5}, {0, 4.5}};
      job.walls.blockBond = part ? BlockBondKind::Third : BlockBondKind::Half;
      job.cellar = Cellar{};
      job.cellar->kind = kind;
      job.cellar->wall = 0.390;
      if (part) job.cellar->outline = {{0, 0}, {5, 0}, {5, 3.5}, {0, 3.5}};
      for (const std::string& fault : faultsOf(Building(job))) ADD_FAILURE() << fault;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Seeds, DrawnJob, testing::Range(0u, 8u));
// A form beside a re-entrant corner stood in the next wall; a rail's foot in a fold of the ground;
// a standard's plate dipped some hundredths of a millimetre into one, over a square millimetre;
// sheets of a deep trench stood in the fill of a battered dig; a wall went on past its last pier by
// a rounding error.
INSTANTIATE_TEST_SUITE_P(SeedsThatFailed, DrawnJob,
                         testing::Values(238u, 245u, 275130u, 677432u, 4591u, 344u, 414u, 474850u));

// And others. A failure names the seed of the job to look at: add it to the list above.
TEST(WholeBuilding, OfAnyDrawnJobIsClosedAndNoTwoThingsStandInOnePlace) {
  rc::detail::TestParams params = rc::detail::configuration().testParams;
  // A quarter of the others' cases: each looks at every pair of some hundred solids.
  params.maxSuccess = (params.maxSuccess + 3) / 4;
  const auto holds = [] {
    const unsigned seed = *rc::gen::resize(100, rc::gen::inRange(0u, 1000000u));
    for (const std::string& fault : faultsOf(Building(test_support::seededJob(seed))))
      RC_FAIL("seed " + std::to_string(seed) + ": " + fault);
  };
  const auto result = rc::detail::checkTestable(holds, rc::detail::TestMetadata{}, params);
  std::ostringstream said;
  rc::detail::printResultMessage(result, said);
  EXPECT_TRUE(result.is<rc::detail::SuccessResult>()) << said.str();
}

TEST(WholeBuilding, SteppedTrenchFillFollowsTheGroundWithoutGapsOrOverlaps) {
  int jobs = 0;
  for (unsigned seed = 1; jobs < 2 && seed < 400; ++seed) {
    Job job = test_support::seededJob(seed);
    if (job.foundations.steps.empty() || job.site.spots.empty()) continue;
    job.foundations.kind = FoundationKind::TrenchFill;
    job.foundations.thickness.reset();
    if (hasErrors(validateJob(job, "", {}))) continue;
    ++jobs;
    for (const std::string& fault : faultsOf(Building(job))) ADD_FAILURE() << seed << ": " << fault;
  }
  EXPECT_EQ(jobs, 2);
}

RC_GTEST_PROP(WholeBuilding, EverySolidIsClosedAndTurnedOutward, ()) {
  const Building building(*test_support::randomJob());
  for (const Element& e : building.works.elements) {
    const std::string fault = solidFault(e.solid);
    if (!fault.empty()) RC_FAIL(e.id + ": " + fault);
    RC_ASSERT(volume(e.solid) > 0);
  }
}

RC_GTEST_PROP(WholeBuilding, IdsAreUniqueAndThingsHaveNames, ()) {
  const Building building(*test_support::randomJob());
  std::set<std::string> ids;
  for (const Element& e : building.works.elements) {
    RC_ASSERT(ids.insert(e.id).second);
    RC_ASSERT(!e.name.empty());
    RC_ASSERT(e.quantity.amount > 0);
  }
}

// A storey put in below another leaves the other's ids as they were.
TEST(WholeBuilding, IdsCallStoreysByTheirNames) {
  const Building building(test_support::demoJob("orchard-house"));
  std::set<std::string> ids;
  for (const Element& e : building.works.elements) {
    ids.insert(e.id);
    EXPECT_EQ(e.id.find("storey "), std::string::npos) << e.id;
  }
  EXPECT_TRUE(ids.count("floor/First floor/deck"));
  EXPECT_TRUE(ids.count("wall A-B/outer leaf/First floor/lift 1/run"));
}

RC_GTEST_PROP(WholeBuilding, UndersideAndTopAreTheSolids, ()) {
  const Building building(*test_support::randomJob());
  for (const Element& e : building.works.elements) {
    const Bounds b = bounds(e.solid);
    RC_ASSERT(e.underside == b.low.z);
    RC_ASSERT(e.top == b.high.z);
  }
}

RC_GTEST_PROP(WholeBuilding, NothingIsRemovedBeforeItIsPlaced, ()) {
  const Building building(*test_support::randomJob());
  const auto check = [&](const auto& thing, const Vec3& p) {
    if (!thing.removed) return;
    RC_ASSERT(timeAt(building.programme, thing.placed, p) <
              timeAt(building.programme, *thing.removed, p));
  };
  for (const Element& e : building.works.elements) {
    for (const Vec3& p : e.solid.points) check(e, p);
  }
  for (const StringLine& line : building.works.strings) check(line, line.a);
}

RC_GTEST_PROP(WholeBuilding, AllThatIsDugIsGroundThatStoodThere, ()) {
  const Building building(*test_support::randomJob());
  for (const Element& e : building.works.elements) {
    if (e.kind != ElementKind::Spoil) continue;
    RC_ASSERT(e.placed.stage.kind == StageKind::Existing);
    RC_ASSERT(e.removed.has_value());
    RC_ASSERT(std::abs(e.quantity.amount - volume(e.solid)) < 1e-9);
  }
}

}  // namespace
}  // namespace model
