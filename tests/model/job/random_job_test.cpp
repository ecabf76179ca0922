#include "tests/support/random_job.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "model/job/key_table.h"
#include "model/job/read_job.h"

namespace {

constexpr unsigned kSeeds = 1000;

TEST(RandomJob, NoneHasAnError) {
  for (unsigned seed = 0; seed < kSeeds; ++seed) {
    for (const auto& problem : model::validateJob(test_support::seededJob(seed), "", {})) {
      EXPECT_NE(problem.severity, model::Severity::Error)
          << "seed " << seed << model::format(problem);
    }
  }
}

TEST(RandomJob, TheSameSeedGivesTheSameJob) {
  for (unsigned seed = 0; seed < 50; ++seed) {
    EXPECT_TRUE(model::sameJob(test_support::seededJob(seed), test_support::seededJob(seed)));
  }
}

TEST(RandomJob, EveryKindOfThingTurnsUpOften) {
  int cellars = 0, partCellars = 0, steps = 0, gables = 0, storeys = 0, openings = 0, buildings = 0,
      slopes = 0, trenchFill = 0, suspended = 0, marks = 0, limits = 0, setUps = 0, stairs = 0,
      cellarStairs = 0, plain = 0;
  std::set<size_t> corners;
  for (unsigned seed = 0; seed < kSeeds; ++seed) {
    const model::Job job = test_support::seededJob(seed);
    cellars += job.cellar.has_value();
    partCellars += job.cellar && !job.cellar->outline.empty();
    steps += !job.foundations.steps.empty();
    gables += !job.roof.edges.empty();
    storeys += job.storeys.size() > 1;
    openings += !job.openings.empty();
    buildings += !job.site.buildings.empty();
    slopes += job.site.spots.size() > 1;
    trenchFill += job.foundations.kind == model::FoundationKind::TrenchFill;
    suspended += job.groundFloor.kind == model::GroundFloorKind::Suspended;
    marks += !job.site.marks.empty();
    limits += !job.limits.empty();
    setUps += !job.setUps.empty();
    stairs += std::any_of(job.stairs.begin(), job.stairs.end(),
                          [](const auto& stair) { return stair.from != model::kCellarFloor; });
    cellarStairs += std::any_of(job.stairs.begin(), job.stairs.end(), [](const auto& stair) {
      return stair.from == model::kCellarFloor;
    });
    plain += seed > 0 && job.name == "Job 0";
    corners.insert(job.outline.size());
  }
  for (const int count : {cellars, partCellars, steps, gables, storeys, openings, buildings, slopes,
                          trenchFill, suspended, marks, limits, setUps, stairs, cellarStairs}) {
    EXPECT_GT(count, 50);
  }
  EXPECT_GE(corners.size(), 6u);
  EXPECT_LT(plain, 10) << "too many fall back to the plain rectangle";
}

}  // namespace
