// The programme over the demo jobs and many drawn ones.
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "tests/support/many_jobs.h"

namespace model {
namespace {

using test_support::forManyJobs;

TEST(ProgrammeOfJobs, EverythingHasItsStageAndGoesAfterItCame) {
  forManyJobs([](const Model& m) {
    for (const Element& e : m.works.elements) {
      const Bounds b = bounds(e.solid);
      const double came = timeAt(m.programme, e.placed, b.low);
      EXPECT_LT(came, static_cast<double>(m.programme.stages.size())) << e.id;
      if (!e.removed) continue;
      for (const Vec3& p : e.solid.points) {
        ASSERT_GT(timeAt(m.programme, *e.removed, p), timeAt(m.programme, e.placed, p)) << e.id;
      }
    }
    for (const StringLine& line : m.works.strings) {
      EXPECT_LT(timeAt(m.programme, line.placed, line.a), kNever) << line.name;
    }
  });
}

TEST(ProgrammeOfJobs, IdsAreApartAndFoundAndNothingTemporaryIsLeft) {
  forManyJobs([](const Model& m) {
    std::set<std::string> ids;
    for (size_t i = 0; i < m.programme.stages.size(); ++i) {
      const Stage& stage = m.programme.stages[i];
      EXPECT_TRUE(ids.insert(stage.id).second) << stage.id;
      EXPECT_EQ(m.programme.find(stage.id), i);
      EXPECT_EQ(m.programme.find(std::to_string(i + 1)), i);
      EXPECT_EQ(m.programme.indexOf(stage.key), i);
      for (size_t before : stage.after) EXPECT_LT(before, i);
    }
    const double end = static_cast<double>(m.programme.stages.size());
    for (size_t i : standingAt(m.programme, m.works, end)) {
      EXPECT_FALSE(isTemporary(m.works.elements[i].kind)) << m.works.elements[i].id;
    }
  });
}

TEST(ProgrammeOfJobs, ABuilderCouldWorkInThisOrder) {
  using K = StageKind;
  const std::vector<std::pair<K, K>> beforeAndAfter{{K::CellarDig, K::TrenchDig},
                                                    {K::FloorOverCellar, K::CellarBackfill},
                                                    {K::CellarMembrane, K::CellarBackfill},
                                                    {K::FoundationPour, K::WallsBelowDampCourse},
                                                    {K::Oversite, K::GroundSlab},
                                                    {K::DampCourse, K::RaiseCorners},
                                                    {K::WallPlate, K::Rafters},
                                                    {K::Gables, K::Rafters},
                                                    {K::Rafters, K::Fascia},
                                                    {K::Fascia, K::RoofCovering},
                                                    {K::RoofCovering, K::StrikeScaffold}};
  forManyJobs([&](const Model& m) {
    for (const auto& [before, after] : beforeAndAfter) {
      for (size_t i = 0; i < m.programme.stages.size(); ++i) {
        if (m.programme.stages[i].key.kind != after) continue;
        for (size_t j = i; j < m.programme.stages.size(); ++j) {
          EXPECT_NE(m.programme.stages[j].key.kind, before)
              << m.programme.stages[j].id << " after " << m.programme.stages[i].id;
        }
      }
    }
  });
}

TEST(ProgrammeOfJobs, LintelsGoOnWhenTheWallUnderThemIsUpAndNoneIsOverThem) {
  forManyJobs([](const Model& m) {
    std::map<int, double> bearing;
    for (const Element& e : m.works.elements) {
      if (e.placed.stage.kind != StageKind::Lintels) continue;
      const auto [at, isNew] = bearing.emplace(e.placed.stage.storey, e.underside);
      if (!isNew) at->second = std::min(at->second, e.underside);
    }
    for (const auto& [storey, level] : bearing) {
      const auto set = m.programme.indexOf({StageKind::Lintels, storey});
      ASSERT_TRUE(set);
      for (const Lift& lift : m.settingOut.lifts) {
        const auto built = m.programme.indexOf({StageKind::RunIn, lift.storey, lift.number});
        if (lift.storey != storey || !built) continue;
        const bool under = lift.bottom < level - 0.001;
        EXPECT_EQ(*built < *set, under) << "storey " << storey << ", lift " << lift.number;
      }
    }
  });
}

TEST(ProgrammeOfJobs, EqualJobsGiveEqualProgrammes) {
  const Job job = test_support::seededJob(7);
  const Model a = buildModel(job), b = buildModel(job);
  ASSERT_EQ(a.programme.stages.size(), b.programme.stages.size());
  for (size_t i = 0; i < a.programme.stages.size(); ++i) {
    EXPECT_EQ(a.programme.stages[i].what, b.programme.stages[i].what);
    EXPECT_EQ(a.programme.stages[i].days, b.programme.stages[i].days);
  }
}

TEST(ProgrammeOfJobs, DurationsAreASmallCrewsAndTheDemoTakesAFewMonths) {
  forManyJobs([](const Model& m) {
    for (const Stage& stage : m.programme.stages) {
      EXPECT_GE(stage.days, 0.5) << stage.id;
      EXPECT_LE(stage.days, 60) << stage.id;
    }
  });
  double days = 0;
  const Model demo = buildModel(test_support::demoJob("orchard-house"));
  for (const Stage& stage : demo.programme.stages) days += stage.days;
  EXPECT_GT(days, 60);
  EXPECT_LT(days, 150);
  EXPECT_GE(demo.programme.stages.size(), 25u);
}

}  // namespace
}  // namespace model
