#include "model/programme/level_made.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "tests/support/many_jobs.h"

namespace model {
namespace {

using test_support::forManyJobs;
using K = StageKind;

// The kinds of stage that can make a level, by its key.
std::set<K> makersOf(const std::string& key) {
  const auto begins = [&](const char* with) { return key.rfind(with, 0) == 0; };
  if (begins("ridge") || begins("eaves")) return {K::RoofCovering};
  if (begins("plate-top")) return {K::WallPlate};
  if (begins("wall-top") || begins("outer-leaf-top")) return {K::RaiseCorners, K::RunIn, K::Gables};
  if (begins("head:")) return {K::Lintels, K::RaiseCorners, K::RunIn, K::Gables};
  if (begins("sill:"))
    return {K::RaiseCorners, K::RunIn, K::WallsBelowDampCourse, K::DampCourse, K::FoundationPour,
            K::CellarWalls,  K::Gables};
  if (begins("damp-course")) return {K::DampCourse};
  if (begins("finished-floor:"))
    return {K::FloorFinish, K::GroundSlab, K::UpperFloor, K::FloorOverCellar};
  if (begins("structural-floor:")) return {K::GroundSlab, K::UpperFloor, K::FloorOverCellar};
  if (begins("joist-bearing:")) return {K::RaiseCorners, K::RunIn, K::UpperFloor};
  if (begins("lift:")) return {K::RaiseCorners, K::RunIn, K::Gables};
  if (begins("blinding")) return {K::TrenchBlinding};
  if (begins("cellar-blinding")) return {K::CellarBlinding};
  if (begins("slab-underside")) return {K::GroundSlab, K::FloorOverCellar};
  if (begins("oversite"))
    return {K::Oversite,  K::TopsoilStrip, K::CellarDig,
            K::TrenchDig, K::GroundSlab,   K::FloorOverCellar};
  if (begins("top-of-concrete")) return {K::FoundationPour};
  if (begins("formation")) return {K::TrenchDig, K::CellarDig, K::TrenchBlinding};
  if (begins("cellar-wall-top")) return {K::CellarWalls};
  if (begins("cellar-floor")) return {K::FloorFinish, K::CellarSlab};
  if (begins("cellar-slab")) return {K::CellarSlab};
  if (begins("cellar-formation")) return {K::CellarDig};
  return {};
}

TEST(LevelsMade, AreThereNoSoonerThanWithinTheStageThatMakesThemAndAllAtTheEnd) {
  forManyJobs([](const Model& m) {
    const auto times = timesOfLevels(m.settingOut, m.works, m.programme);
    ASSERT_EQ(times.size(), m.settingOut.schedule.size());
    for (size_t i = 0; i < times.size(); ++i) {
      const ScheduledLevel& line = m.settingOut.schedule[i];
      if (line.key.rfind("ground-", 0) == 0) {
        EXPECT_LT(times[i], 0) << line.name;
        continue;
      }
      if (line.key.rfind("ceiling:", 0) == 0) {
        EXPECT_EQ(times[i], kNever) << "ceilings are finishes, which nobody makes here";
        continue;
      }
      ASSERT_GT(times[i], 0) << line.key << ": nobody has made it yet";
      ASSERT_LE(times[i], double(m.programme.stages.size())) << line.key << " is never made";
      const auto stage = size_t(std::ceil(times[i] - 1e-9)) - 1;
      EXPECT_EQ(makersOf(line.key).count(m.programme.stages[stage].key.kind), 1u)
          << line.key << " is made by " << m.programme.stages[stage].id;
    }
  });
}

TEST(LevelsMade, AreNotThereBecauseSomethingElseIsHigher) {
  const Model m = buildModel(test_support::demoJob("orchard-house"));
  const auto times = timesOfLevels(m.settingOut, m.works, m.programme);
  const auto timeOf = [&](const std::string& key) {
    for (size_t i = 0; i < times.size(); ++i)
      if (m.settingOut.schedule[i].key == key) return times[i];
    ADD_FAILURE() << key;
    return kNever;
  };
  // Concrete comes after its trench, the floor's finish after the walls far above it.
  EXPECT_LT(timeOf("formation"), timeOf("top-of-concrete"));
  EXPECT_LT(timeOf("wall-top"), timeOf("finished-floor:0"));
  EXPECT_LT(timeOf("damp-course"), timeOf("wall-top"));
}

}  // namespace
}  // namespace model
