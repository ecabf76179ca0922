// The order in which units are laid: nothing floats, corners come first, no day goes too high.
#include <gtest/gtest.h>

#include <algorithm>
#include <glm/geometric.hpp>
#include <map>
#include <tuple>

#include "model/programme/course_times.h"
#include "tests/support/many_jobs.h"

namespace model {
namespace {

constexpr double kBed = 0.0405;  // a course lower than 20 is all bed
constexpr double kLap = 0.005;   // less of a unit over another does not rest on it
constexpr double kMoment = 1e-9;

struct Laid {
  const MasonryUnit* unit = nullptr;
  const Element* leaf = nullptr;
  double time = 0;
};

std::map<size_t, std::vector<Laid>> leavesOf(const Model& m) {
  std::map<size_t, std::vector<Laid>> leaves;
  for (const Element& e : m.works.elements)
    for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i) {
      const MasonryUnit& unit = m.works.units[i];
      leaves[e.frame].push_back({&unit, &e, timeOfUnit(m.programme, e.placed, unit)});
    }
  for (auto& [frame, units] : leaves)
    std::sort(units.begin(), units.end(), [](const Laid& a, const Laid& b) {
      return std::make_tuple(a.unit->z1, a.unit->s0) < std::make_tuple(b.unit->z1, b.unit->s0);
    });
  return leaves;
}

double overlap(const MasonryUnit& a, const MasonryUnit& b) {
  return std::min(a.s1, b.s1) - std::max(a.s0, b.s0);
}

// At a corner bricks lie on those of the other wall. That one may have no room for a corner of its
// own and follow with its run, so when it is laid is not asked here.
bool bornByOtherLeaf(const Model& m, const std::map<size_t, std::vector<Laid>>& leaves,
                     const Laid& laid) {
  constexpr double kWithin = 0.012;  // a joint
  const UnitFrame& frame = m.works.frames[laid.leaf->frame];
  const double d = (double(laid.unit->d0) + double(laid.unit->d1)) / 2;
  for (const auto& [other, units] : leaves) {
    if (other == laid.leaf->frame) continue;
    const UnitFrame& its = m.works.frames[other];
    auto under = std::lower_bound(units.begin(), units.end(), laid.unit->z0 - kBed,
                                  [](const Laid& l, double z) { return l.unit->z1 < z; });
    for (; under != units.end() && under->unit->z1 < laid.unit->z0; ++under) {
      for (const double share : {0.1, 0.5, 0.9}) {
        const Vec2 at = frame.start + frame.along * (laid.unit->s0 + share * laid.unit->length()) +
                        frame.inward * d - its.start;
        const double s = glm::dot(at, its.along), in = glm::dot(at, its.inward);
        const MasonryUnit& u = *under->unit;
        if (s > u.s0 - kWithin && s < u.s1 + kWithin && in > u.d0 - kWithin && in < u.d1 + kWithin)
          return true;
      }
    }
  }
  return false;
}

// Things of other kinds that a leaf may stand on, whose top lies in the bed under the unit.
bool bornByOther(const Model& m, const Laid& laid) {
  const UnitFrame& frame = m.works.frames[laid.leaf->frame];
  for (const Element& e : m.works.elements) {
    if (e.unitCount > 0 || isTemporary(e.kind)) continue;
    if (std::abs(e.top - laid.unit->z0) > kBed) continue;
    if (timeAt(m.programme, e.placed, {0, 0, e.top}) > laid.time + kMoment) continue;
    for (const double share : {0.1, 0.5, 0.9}) {
      const double s = laid.unit->s0 + share * laid.unit->length();
      const double d = (double(laid.unit->d0) + double(laid.unit->d1)) / 2;
      const Vec2 at = frame.start + frame.along * s + frame.inward * d;
      Vec2 low{1e9, 1e9}, high{-1e9, -1e9};
      for (const Vec3& p : e.solid.points) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
      }
      const bool over =
          at.x > low.x - 0.2 && at.x < high.x + 0.2 && at.y > low.y - 0.2 && at.y < high.y + 0.2;
      if (over) return true;
    }
  }
  return false;
}

TEST(LayingOrder, NoUnitIsLaidBeforeWhatBearsIt) {
  test_support::forManyJobs([](const Model& m) {
    int units = 0, wrong = 0;
    const auto leaves = leavesOf(m);
    for (const auto& [frame, laid] : leaves) {
      for (const Laid& one : laid) {
        ++units;
        bool born = false, early = false;
        const auto under = [&](const Laid& other) {
          return other.unit->z1 < one.unit->z0 - 1e-6 && other.unit->z1 > one.unit->z0 - kBed;
        };
        auto from = std::lower_bound(laid.begin(), laid.end(), one.unit->z0 - kBed,
                                     [](const Laid& l, double z) { return l.unit->z1 < z; });
        for (; from != laid.end() && from->unit->z1 < one.unit->z0; ++from) {
          if (!under(*from) || overlap(*from->unit, *one.unit) < kLap) continue;
          born = true;
          early = early || from->time > one.time + kMoment;
        }
        if (early || (!born && !bornByOtherLeaf(m, leaves, one) && !bornByOther(m, one))) {
          if (++wrong < 4)
            ADD_FAILURE() << (early ? "before what bears it: " : "on nothing: ") << one.leaf->id
                          << ", course " << courseNumber(*one.unit) << ", s " << one.unit->s0
                          << " to " << one.unit->s1 << ", from " << one.unit->z0;
        }
      }
    }
    EXPECT_GT(units, 100);
    EXPECT_EQ(wrong, 0);
  });
}

TEST(LayingOrder, CornersComeBeforeTheRunBetweenThem) {
  test_support::forManyJobs([](const Model& m) {
    std::map<std::tuple<size_t, int, int>, double> corners;
    for (const Element& e : m.works.elements) {
      if (e.unitCount == 0 || e.placed.stage.kind != StageKind::RaiseCorners) continue;
      const MasonryUnit& last = m.works.units[e.firstUnit + e.unitCount - 1];
      double& latest = corners[{e.frame, e.placed.stage.storey, e.placed.stage.lift}];
      latest = std::max(latest, timeOfUnit(m.programme, e.placed, last));
    }
    EXPECT_FALSE(corners.empty());
    for (const Element& e : m.works.elements) {
      if (e.unitCount == 0 || e.placed.stage.kind != StageKind::RunIn) continue;
      const auto corner = corners.find({e.frame, e.placed.stage.storey, e.placed.stage.lift});
      if (corner == corners.end()) continue;
      EXPECT_GT(timeOfUnit(m.programme, e.placed, m.works.units[e.firstUnit]), corner->second)
          << e.id;
    }
  });
}

TEST(LayingOrder, UnitsOfAnElementAreLaidOneAfterTheOther) {
  test_support::forManyJobs([](const Model& m) {
    for (const Element& e : m.works.elements) {
      float before = 0;
      for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i) {
        const float when = m.works.units[i].when;
        EXPECT_GE(when, before) << e.id;
        EXPECT_LE(when, 1) << e.id;
        before = when;
      }
    }
  });
}

TEST(LayingOrder, NothingIsLaidAboveTheDaysLimit) {
  test_support::forManyJobs([](const Model& m) {
    std::map<StageKey, std::pair<double, double>> reach;
    for (const Element& e : m.works.elements) {
      if (e.unitCount == 0) continue;
      const auto [at, isNew] = reach.emplace(e.placed.stage, std::pair{e.underside, e.top});
      at->second = {std::min(at->second.first, e.underside), std::max(at->second.second, e.top)};
    }
    EXPECT_FALSE(reach.empty());
    for (const auto& [key, range] : reach) {
      const Stage& stage = m.programme.stages[*m.programme.indexOf(key)];
      const bool lift = key.kind == StageKind::RaiseCorners || key.kind == StageKind::RunIn;
      // A lift's corners and run share their days; of the rest each stage has its own.
      const double days = lift ? 1 : std::max(1.0, stage.days);
      EXPECT_LE(range.second - range.first, days * m.job.laying.dayRise + 1e-6) << stage.id;
    }
  });
}

}  // namespace
}  // namespace model
