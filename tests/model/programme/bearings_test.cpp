// Whatever bears on the walls is set when they have come up to it, and before they go on past it.
#include <gtest/gtest.h>

#include <cmath>

#include <glm/geometric.hpp>

#include "tests/support/many_jobs.h"

namespace model {
namespace {

constexpr double kHair = 0.002;  // metres under or over a face
constexpr double kTogether = 1e-9;

// By the faces over the point: an odd number of them is inside.
bool holdsPoint(const Element& element, const Vec3& p) {
  if (p.z < element.underside || p.z > element.top) return false;
  bool inside = false;
  const Vec2 at(p);
  for (const auto& t : element.solid.triangles) {
    const Vec3 a = element.solid.points[t[0]], b = element.solid.points[t[1]],
               c = element.solid.points[t[2]];
    const double all = cross(Vec2(b) - Vec2(a), Vec2(c) - Vec2(a));
    if (std::abs(all) < 1e-12) continue;
    const double u = cross(Vec2(b) - at, Vec2(c) - at) / all;
    const double v = cross(Vec2(c) - at, Vec2(a) - at) / all, w = 1 - u - v;
    if (u >= 0 && v >= 0 && w >= 0 && u * a.z + v * b.z + w * c.z > p.z) inside = !inside;
  }
  return inside;
}

bool isMasonry(const Element& e) {
  return e.kind == ElementKind::OuterLeaf || e.kind == ElementKind::InnerLeaf;
}

bool bears(const Element& e) {
  return e.kind == ElementKind::Lintel || e.kind == ElementKind::Joist ||
         e.kind == ElementKind::WallPlate;
}

// What holds a point, and when it is there; nothing where there is nothing.
struct There {
  const Element* element = nullptr;
  double from = 0;
};

There thereAt(const Model& m, const Vec3& p, bool masonryOnly) {
  for (const Element& e : m.works.elements) {
    const bool counts = isMasonry(e) || (!masonryOnly && (bears(e) || e.kind == ElementKind::Deck ||
                                                          e.kind == ElementKind::Rafter));
    if (counts && !e.removed && holdsPoint(e, p)) return {&e, timeAt(m.programme, e.placed, p)};
  }
  return {};
}

// The corners of its underside on plan, each with a point of it a little way in and one beyond it.
struct End {
  Vec2 within{0, 0}, beyond{0, 0};
};

std::vector<End> endsOf(const Element& e) {
  constexpr double kIn = 0.03, kBeyond = 0.01, kOffLine = 1.7e-4;
  Vec2 middle{0, 0};
  std::vector<Vec2> corners;
  for (const Vec3& p : e.solid.points)
    if (p.z < e.underside + kHair) corners.push_back(Vec2(p));
  for (const Vec2& p : corners) middle += p / static_cast<double>(corners.size());
  // Its length runs between the corner that is farthest from the first and the one beside that.
  Vec2 along{1, 0};
  double longest = 0;
  for (size_t i = 0; i < corners.size(); ++i)
    for (size_t j = 0; j < i; ++j) {
      const Vec2 side = corners[j] - corners[i];
      // An edge of the plan, not across it: all corners lie on one side of it.
      bool left = false, right = false;
      for (const Vec2& p : corners) {
        left |= cross(side, p - corners[i]) > 1e-6;
        right |= cross(side, p - corners[i]) < -1e-6;
      }
      if (left && right) continue;
      if (glm::length(side) > longest) longest = glm::length(side), along = side / longest;
    }
  const Vec2 across{-along.y, along.x};
  std::vector<End> ends;
  for (const Vec2& p : corners) {
    const double run = glm::dot(p - middle, along), off = glm::dot(p - middle, across);
    const Vec2 sideways = across * (off * 0.4 + kOffLine);
    ends.push_back({middle + along * (run - std::copysign(kIn, run)) + sideways,
                    middle + along * (run + std::copysign(kBeyond, run)) + sideways});
  }
  return ends;
}

struct Counts {
  int under = 0, over = 0, beside = 0;
};

void check(const Model& m, const Element& e, Counts& counts) {
  const double set = timeAt(m.programme, e.placed, Vec3(0, 0, e.underside));
  for (const Vec3& p : e.solid.points)
    ASSERT_EQ(timeAt(m.programme, e.placed, p), set) << e.id << " is set whole";
  for (const End& end : endsOf(e)) {
    // Joists hang between the inner leaves: they bear beyond their ends.
    const bool joist = e.kind == ElementKind::Joist;
    const Vec2 bearing = joist ? end.beyond : end.within;
    // Where ends are mitred a point a little way in may be the neighbour's.
    const bool within = holdsPoint(e, {end.within, e.underside + kHair});
    const There under = thereAt(m, {bearing, e.underside - kHair}, false);
    if (under.element && (joist || within)) {
      ++counts.under;
      EXPECT_LE(under.from, set + kTogether) << e.id << " bears on " << under.element->id;
    }
    const There over = thereAt(m, {end.within, e.top + kHair}, false);
    if (over.element && within) {
      ++counts.over;
      EXPECT_GE(over.from, set - kTogether) << over.element->id << " bears on " << e.id;
    }
    const There beside = thereAt(m, {end.beyond, e.underside + kHair}, true);
    if (beside.element) {
      ++counts.beside;
      EXPECT_GE(beside.from, set - kTogether) << beside.element->id << " has passed " << e.id;
    }
  }
}

Counts checkAll(const Model& m) {
  Counts counts;
  for (const Element& e : m.works.elements)
    if (bears(e)) check(m, e, counts);
  return counts;
}

TEST(Bearings, AreThereWhenSomethingIsSetOnThemAndNothingIsInItsPlaceOrOverIt) {
  Counts all;
  test_support::forManyJobs([&](const Model& m) {
    const Counts counts = checkAll(m);
    all.under += counts.under;
    all.over += counts.over;
    all.beside += counts.beside;
  });
  EXPECT_GT(all.under, 500);
  EXPECT_GT(all.over, 500);
  EXPECT_GT(all.beside, 500);
}

// Heads on no course, near one and far from one, over one another and beside one another.
TEST(Bearings, AreAtAnyHeight) {
  for (const double head : {1.350, 1.395, 1.960, 2.031, 2.083, 2.100, 2.148, 2.260}) {
    for (const double other : {1.400, 2.034, 2.083, 2.090, 2.149}) {
      SCOPED_TRACE(std::to_string(head) + " and " + std::to_string(other));
      Job job = test_support::demoJob("orchard-house");
      for (size_t i = 0; i < job.openings.size(); ++i)
        if (job.openings[i].storey == 0 && job.openings[i].kind == OpeningKind::Window)
          job.openings[i].head = i % 2 == 0 ? head : other;
      for (Opening& opening : job.openings)
        if (opening.sill && opening.head && *opening.sill > *opening.head - 0.3)
          opening.sill = *opening.head - 0.3;
      const Counts counts = checkAll(buildModel(job));
      EXPECT_GT(counts.under, 100);
      EXPECT_GT(counts.beside, 100);
    }
  }
}

}  // namespace
}  // namespace model
