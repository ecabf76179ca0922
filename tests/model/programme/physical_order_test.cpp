// Whatever order a job asks for: nothing floats, stands in what is still there, or is buried before
// it is made. Contacts are found point by point on the solids themselves; the programme's own rules
// go by boxes round them.
#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <set>

#include <glm/geometric.hpp>

#include "tests/support/many_jobs.h"

namespace model {
namespace {

constexpr double kOff = 0.004;  // metres off a face

// By the faces over the point: an odd number of them is inside.
bool holds(const Solid& solid, const Bounds& box, const Vec3& p) {
  for (int axis = 0; axis < 3; ++axis)
    if (p[axis] < box.low[axis] || p[axis] > box.high[axis]) return false;
  bool inside = false;
  const Vec2 at(p);
  for (const auto& t : solid.triangles) {
    const Vec3 &a = solid.points[t[0]], &b = solid.points[t[1]], &c = solid.points[t[2]];
    const double all = cross(Vec2(b) - Vec2(a), Vec2(c) - Vec2(a));
    if (std::abs(all) < 1e-12) continue;
    const double u = cross(Vec2(b) - at, Vec2(c) - at) / all;
    const double v = cross(Vec2(c) - at, Vec2(a) - at) / all, w = 1 - u - v;
    if (u >= 0 && v >= 0 && w >= 0 && u * a.z + v * b.z + w * c.z > p.z) inside = !inside;
  }
  return inside;
}

// What must come first: an element, or its being taken away, and then an element.
struct Contact {
  size_t first = 0, then = 0;
  bool gone = false;  // `first` must be taken away
};

double placedAt(const Programme& programme, const Element& element) {
  return timeAt(programme, element.placed, bounds(element.solid).low);
}

// Where this moment of the usual order, in which all is well, has one before the other.
class Contacts {
 public:
  explicit Contacts(const Model& usual) : model_(usual) {
    for (const Element& element : usual.works.elements) boxes_.push_back(bounds(element.solid));
    for (size_t i = 0; i < boxes_.size(); ++i) look(i);
  }
  const std::vector<Contact>& all() const { return found_; }

 private:
  static bool poured(ElementKind kind) {
    using E = ElementKind;
    return kind == E::Backfill || kind == E::Hardcore || kind == E::CavityFill ||
           kind == E::Foundation || kind == E::CellarSlab || kind == E::CellarWall ||
           kind == E::GroundSlab || kind == E::Blinding || kind == E::Screed;
  }
  void look(size_t i) {
    const Element& element = model_.works.elements[i];
    if (element.placed.stage.kind == StageKind::Existing) return;
    // A few faces, spread over the solid.
    const auto& triangles = element.solid.triangles;
    const size_t step = std::max<size_t>(1, triangles.size() / 12);
    for (size_t t = 0; t < triangles.size(); t += step) {
      const Vec3 &a = element.solid.points[triangles[t][0]],
                 &b = element.solid.points[triangles[t][1]],
                 &c = element.solid.points[triangles[t][2]];
      const Vec3 across = glm::cross(b - a, c - a);
      if (glm::length(across) < 1e-9) continue;
      const Vec3 normal = glm::normalize(across);
      // Not the middle, where other things' edges are likely.
      const Vec3 p = a * 0.41 + b * 0.35 + c * 0.24;
      around(i, p + normal * kOff, normal.z < -0.3);
      inside(i, p - normal * kOff);
    }
  }
  void around(size_t i, const Vec3& p, bool under) {
    const Element& element = model_.works.elements[i];
    for (size_t j = 0; j < boxes_.size(); ++j) {
      const Element& other = model_.works.elements[j];
      if (j == i || !holds(other.solid, boxes_[j], p)) continue;
      if (under || poured(element.kind)) add(j, i, false);
      if (poured(other.kind)) add(i, j, false);
    }
  }
  void inside(size_t i, const Vec3& p) {
    for (size_t j = 0; j < boxes_.size(); ++j) {
      const Element& other = model_.works.elements[j];
      if (j != i && other.removed && holds(other.solid, boxes_[j], p)) add(j, i, true);
    }
  }
  void add(size_t first, size_t then, bool gone) {
    const Programme& programme = model_.programme;
    const Element &a = model_.works.elements[first], &b = model_.works.elements[then];
    const double from =
        gone ? timeAt(programme, *a.removed, bounds(a.solid).high) : placedAt(programme, a);
    // Within one stage the order is the stage's own.
    if (std::floor(from) < std::floor(placedAt(programme, b)))
      found_.push_back({first, then, gone});
  }

  const Model& model_;
  std::vector<Bounds> boxes_;
  std::vector<Contact> found_;
};

void randomOrder(std::mt19937& dice, const Programme& usual, ProgrammeInput& input) {
  const auto any = [&] { return usual.stages[dice() % usual.stages.size()].id; };
  const size_t changes = 1 + dice() % 6;
  for (size_t i = 0; i < changes; ++i) {
    StageOverride change;
    change.stage = any();
    // Mostly a short way, which is legal more often.
    const size_t at = *usual.find(change.stage);
    const size_t near = std::min(usual.stages.size() - 1, at + 1 + dice() % 4);
    const std::string host = dice() % 3 ? usual.stages[near].id : any();
    if (dice() % 4)
      change.follows = host;
    else
      change.with = host;
    input.stages.push_back(change);
  }
}

TEST(PhysicalOrder, NothingFloatsOrIsBuriedInAnyOrderThatIsTaken) {
  size_t taken = 0, refused = 0, moved = 0;
  unsigned seed = 0;
  test_support::forManyJobs([&](const Model& m) {
    std::mt19937 dice(++seed);
    Job plain = m.job;
    plain.programme = {};
    const Model usual = buildModel(plain);
    const Contacts contacts(usual);
    EXPECT_GT(contacts.all().size(), 20u);
    for (int round = 0; round < 12; ++round) {
      Job job = plain;
      randomOrder(dice, usual.programme, job.programme);
      const Programme programme = deriveProgramme(job, usual.settingOut, usual.works);
      for (const ProgrammeFault& fault : programme.faults) {
        EXPECT_NE(fault.what, "");
        EXPECT_NE(fault.instead, "");
        refused += fault.severity == Severity::Error;
      }
      std::set<StageKey> keys;
      for (const Stage& stage : programme.stages)
        for (const StageShare& share : stage.shares) EXPECT_TRUE(keys.insert(share.key).second);
      EXPECT_EQ(keys.size(), usual.programme.stages.size()) << "every stage is there, and once";
      for (size_t i = 0; i < programme.stages.size(); ++i)
        moved += i >= usual.programme.stages.size() ||
                 programme.stages[i].id != usual.programme.stages[i].id;
      ++taken;
      for (const Contact& contact : contacts.all()) {
        const Element &first = usual.works.elements[contact.first],
                      &then = usual.works.elements[contact.then];
        const double from = contact.gone
                                ? timeAt(programme, *first.removed, bounds(first.solid).high)
                                : placedAt(programme, first);
        ASSERT_LE(from, placedAt(programme, then))
            << then.id << (contact.gone ? " where still is " : " on ") << first.id;
      }
    }
  });
  EXPECT_GT(taken, 200u);
  EXPECT_GT(refused, 100u);
  EXPECT_GT(moved, 500u);
}

}  // namespace
}  // namespace model
