// Courses of house walls that stand out.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include <glm/geometric.hpp>

#include "model/geometry/check_solid.h"
#include "model/geometry/polygon.h"
#include "model/job/job_names.h"
#include "model/job/read_job.h"
#include "model/works/build_works.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

constexpr double kStep = 0.015;

Job cornered(const std::vector<std::string>& walls, int courses = 2) {
  Job job;
  job.outline = {{0, 0}, {8.99, 0}, {8.99, 5.39}, {4.49, 5.39}, {4.49, 7.64}, {0, 7.64}};
  for (const std::string& wall : walls) job.corbels.push_back({wall, 1.5, courses, kStep});
  EXPECT_FALSE(hasErrors(validateJob(job, "", {})));
  return job;
}

const std::vector<std::string> kAllRound{"A-B", "B-C", "C-D", "D-E", "E-F", "F-A"};

bool isOf(const Element& e, const std::string& part) {
  return e.kind == ElementKind::OuterLeaf && e.id.find(part) != std::string::npos;
}

// Where a unit lies on plan.
Polygon placeOf(const UnitFrame& frame, const MasonryUnit& unit) {
  const auto at = [&](double s, double d) {
    return frame.start + frame.along * s + frame.inward * d;
  };
  const auto d0 = static_cast<double>(unit.d0), d1 = static_cast<double>(unit.d1);
  Polygon place{at(unit.s0, d0), at(unit.s1, d0), at(unit.s1, d1), at(unit.s0, d1)};
  if (signedArea(place) < 0) std::reverse(place.begin(), place.end());
  return place;
}

TEST(Corbels, StandOutByTheirStepsFromAPlainWallAndStopABrickShortOfItsCorners) {
  const Job job = cornered({"A-B"});
  const SettingOut out = deriveSettingOut(job);
  const Works works = buildWorks(job, out);
  for (const int course : {1, 2}) {
    double from = 1e300, to = -1e300, low = 1e300, high = -1e300;
    for (const Element& e : works.elements) {
      if (!isOf(e, "corbel 1 course " + std::to_string(course))) continue;
      EXPECT_EQ(solidFault(e.solid), "") << e.id;
      EXPECT_NEAR(glm::dot(works.frames[e.frame].start - out.walls[0].start, out.walls[0].outward),
                  course * kStep, 1e-9);
      const Bounds box = bounds(e.solid);
      EXPECT_NEAR(box.low.y, -course * kStep, 1e-9);
      EXPECT_NEAR(box.high.y, 0.1025 - course * kStep, 1e-9);
      from = std::min(from, box.low.x);
      to = std::max(to, box.high.x);
      low = std::min(low, e.underside);
      high = std::max(high, e.top);
      ASSERT_GT(e.unitCount, 0u);
    }
    EXPECT_NEAR(from, 0.225, 1e-9);
    EXPECT_NEAR(to, 8.99 - 0.225, 1e-9);
    EXPECT_NEAR(low, 1.5 + (course - 1) * 0.075, 1e-9);
    EXPECT_NEAR(high, low + 0.075, 1e-9);
  }
}

// Outside corners and the inside one: no more and no less than a ring as thick as the leaf.
TEST(Corbels, TurnCornersWhereTheNextWallHasTheSame) {
  const Job job = cornered(kAllRound);
  const SettingOut out = deriveSettingOut(job);
  const Works works = buildWorks(job, out);
  for (const int course : {1, 2}) {
    double ring = 0;
    for (const Element& e : works.elements)
      if (isOf(e, "course " + std::to_string(course)) && isOf(e, "/corbel "))
        ring += volume(e.solid);
    const auto offset = [&](double by) { return signedArea(offsetMitred(job.outline, by)); };
    const double beyond = course * kStep;
    EXPECT_NEAR(ring, (offset(-beyond) - offset(0.1025 - beyond)) * 0.075, 1e-6);
  }
}

TEST(Corbels, AreOfBricksThatFillTheirCourseAndNeverShareAPlace) {
  for (const auto& walls : {kAllRound, std::vector<std::string>{"A-B", "B-C"}}) {
    const Job job = cornered(walls);
    const SettingOut out = deriveSettingOut(job);
    const Works works = buildWorks(job, out);
    std::map<int, std::vector<Polygon>> courses;
    double bricks = 0, solids = 0;
    for (const Element& e : works.elements) {
      if (e.kind != ElementKind::OuterLeaf) continue;
      const bool standsOut = isOf(e, "/corbel ");
      if (standsOut) solids += volume(e.solid);
      for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i) {
        const MasonryUnit& unit = works.units[i];
        if (unit.z0 < 1.5 || unit.z1 > 1.66) continue;
        EXPECT_LE(unit.length(), 0.215 + 1e-3) << e.id;
        EXPECT_GE(unit.length(), 0.040 - 1e-9) << e.id;
        courses[unit.course].push_back(placeOf(works.frames[e.frame], unit));
        if (standsOut) bricks += signedArea(courses[unit.course].back()) * 0.065;
      }
    }
    ASSERT_EQ(courses.size(), 2u);
    for (const auto& [course, places] : courses)
      for (size_t a = 0; a < places.size(); ++a)
        for (size_t b = 0; b < a; ++b)
          ASSERT_LT(area(intersect({{places[a], {}}}, {{places[b], {}}})), 1e-8) << course;
    // The rest is mortar.
    EXPECT_GT(bricks, 0.80 * solids);
    EXPECT_LT(bricks, 0.90 * solids);
  }
}

TEST(Corbels, AreLaidAfterTheCourseBelowAndBeforeTheOneOver) {
  const Job job = cornered(kAllRound);
  const SettingOut out = deriveSettingOut(job);
  const Works works = buildWorks(job, out);
  const auto timesOf = [&](const std::string& id, double low, double high) {
    std::pair<float, float> times{1, 0};
    for (const Element& e : works.elements) {
      if (e.id != id) continue;
      for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i) {
        if (works.units[i].z0 < low || works.units[i].z1 > high) continue;
        times.first = std::min(times.first, works.units[i].when);
        times.second = std::max(times.second, works.units[i].when);
      }
    }
    return times;
  };
  int compared = 0;
  for (const Element& e : works.elements) {
    const size_t at = e.id.find("/corbel ");
    if (e.kind != ElementKind::OuterLeaf || at == std::string::npos || e.id.back() != '1') continue;
    const std::string part = e.id.substr(0, at);
    const auto below = timesOf(part, 1.4, 1.5 + 1e-6), first = timesOf(e.id, 0, 9);
    const auto second = timesOf(e.id.substr(0, e.id.size() - 1) + "2", 0, 9);
    const auto over = timesOf(part, 1.65, 1.725 + 1e-6);
    if (below.second > 0) {
      EXPECT_LT(below.second, first.first) << e.id;
    }
    EXPECT_LT(first.second, second.first) << e.id;
    if (over.second > 0) {
      EXPECT_LT(second.second, over.first) << e.id;
    }
    ++compared;
  }
  EXPECT_GE(compared, 12);
}

TEST(Corbels, AreLeftBareOfRender) {
  Job job = cornered(kAllRound, 1);
  job.walls.render = 0.012;
  ASSERT_FALSE(hasErrors(validateJob(job, "", {})));
  const SettingOut out = deriveSettingOut(job);
  const auto rendered = [&](const Job& j) {
    double sum = 0;
    const Works works = buildWorks(j, out);
    for (const Element& e : works.elements)
      if (e.kind == ElementKind::Render) sum += volume(e.solid);
    return sum;
  };
  Job plain = job;
  plain.corbels.clear();
  const double round = signedArea(offsetMitred(job.outline, -0.012)) - signedArea(job.outline);
  EXPECT_NEAR(rendered(plain) - rendered(job), round * 0.075, 1e-6);
}

TEST(Corbels, AreDrawnAmongTheJobsThatAreLookedAt) {
  size_t corbels = 0;
  for (unsigned seed = 0; seed < 60; ++seed)
    corbels += test_support::seededJob(seed).corbels.size();
  EXPECT_GT(corbels, 15u);
}

}  // namespace
}  // namespace model
