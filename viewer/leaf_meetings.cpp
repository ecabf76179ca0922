#include "viewer/leaf_meetings.h"

#include <algorithm>
#include <cmath>
#include <map>

#include <glm/geometric.hpp>

#include "viewer/unit_instance.h"

namespace viewer {

namespace {

constexpr double kSame = 0.001;

// A unit as its own frame has it.
struct Lying {
  double s0, s1, d0, d1, z0, z1;
  std::uint32_t unit;
};

struct Leaf {
  Lying all{1e300, -1e300, 1e300, -1e300, 1e300, -1e300, 0};  // what its units take up
  std::vector<const model::Element*> parts;
  std::map<std::int32_t, std::vector<Lying>> courses;  // by underside, in tenths of a millimetre
};

Lying lying(const model::MasonryUnit& u, std::size_t i) {
  return {u.s0, u.s1, static_cast<double>(u.d0),    static_cast<double>(u.d1),
          u.z0, u.z1, static_cast<std::uint32_t>(i)};
}

// From one frame into another that runs the same way or straight back.
struct Turn {
  double s, d;  // of the frame's start
  bool along, inward;

  Lying operator()(Lying u) const {
    const auto turned = [](double from, bool same, double a) { return from + (same ? a : -a); };
    const double s0 = turned(s, along, u.s0), s1 = turned(s, along, u.s1);
    const double d0 = turned(d, inward, u.d0), d1 = turned(d, inward, u.d1);
    u.s0 = std::min(s0, s1), u.s1 = std::max(s0, s1);
    u.d0 = std::min(d0, d1), u.d1 = std::max(d0, d1);
    return u;
  }
};

class Meetings {
 public:
  explicit Meetings(const model::Works& works) : works_(works), leaves_(works.frames.size()) {
    for (const model::Element& element : works.elements) {
      if (element.unitCount == 0) continue;
      Leaf& leaf = leaves_[element.frame];
      leaf.parts.push_back(&element);
      for (std::size_t i = element.firstUnit; i < element.firstUnit + element.unitCount; ++i) {
        const Lying u = lying(works.units[i], i);
        Lying& all = leaf.all;
        all.s0 = std::min(all.s0, u.s0), all.s1 = std::max(all.s1, u.s1);
        all.d0 = std::min(all.d0, u.d0), all.d1 = std::max(all.d1, u.d1);
        all.z0 = std::min(all.z0, u.z0), all.z1 = std::max(all.z1, u.z1);
      }
    }
  }

  std::vector<std::array<std::uint32_t, 2>> find() {
    for (std::size_t from = 0; from < leaves_.size(); ++from)
      for (std::size_t to = 0; to < leaves_.size(); ++to)
        if (from != to && !leaves_[from].parts.empty() && !leaves_[to].parts.empty())
          meet(from, to);
    return std::move(joints_);
  }

 private:
  // Few leaves meet another: the others' courses are never looked at.
  const Leaf& withCourses(std::size_t frame) {
    Leaf& leaf = leaves_[frame];
    if (!leaf.courses.empty()) return leaf;
    for (const model::Element* part : leaf.parts)
      for (std::size_t i = part->firstUnit; i < part->firstUnit + part->unitCount; ++i)
        leaf.courses[tenths(works_.units[i].z0)].push_back(lying(works_.units[i], i));
    for (auto& [level, course] : leaf.courses)
      std::sort(course.begin(), course.end(),
                [](const Lying& a, const Lying& b) { return a.s0 < b.s0; });
    return leaf;
  }

  void meet(std::size_t from, std::size_t to) {
    const model::UnitFrame &mine = works_.frames[from], &its = works_.frames[to];
    const double along = glm::dot(mine.along, its.along);
    if (std::fabs(along) < 0.9999) return;
    const Turn turn{glm::dot(its.start - mine.start, mine.along),
                    glm::dot(its.start - mine.start, mine.inward), along > 0,
                    glm::dot(mine.inward, its.inward) > 0};
    const Lying &own = leaves_[from].all, all = turn(leaves_[to].all);
    if (all.s0 > own.s1 + kWidestJoint || all.s1 < own.s0 - kWidestJoint ||
        all.d0 > own.d1 - kSame || all.d1 < own.d0 + kSame || all.z0 > own.z1 || all.z1 < own.z0)
      return;
    const Leaf &leaf = withCourses(from), &other = withCourses(to);
    for (const auto& [level, course] : leaf.courses) {
      const auto there = other.courses.find(level);
      if (there == other.courses.end()) continue;
      std::vector<Lying> against;
      for (const Lying& u : there->second) against.push_back(turn(u));
      for (const Lying& u : course) {
        if (u.s1 < all.s0 - kWidestJoint || u.s0 > all.s1 + kWidestJoint) continue;
        for (const Lying& v : against) meet(u, v, turn.inward);
      }
    }
  }

  void meet(const Lying& u, const Lying& v, bool sameWay) {
    const double after = v.s0 - u.s1, before = u.s0 - v.s1;
    const bool atEnd = after > -kSame && after < kWidestJoint;
    const bool atStart = before > -kSame && before < kWidestJoint;
    if ((!atEnd && !atStart) || v.d0 > u.d1 - kSame || v.d1 < u.d0 + kSame) return;
    // What stands out in front is seen, at the back it seldom is.
    const double front = sameWay ? 2 : 1;
    const auto bare = [&](const Lying& a, const Lying& b) {
      return front * std::max(0.0, b.d0 - a.d0) + std::max(0.0, a.d1 - b.d1);
    };
    const double mine = bare(u, v), its = bare(v, u);
    const bool alike = std::fabs(mine - its) < kSame;
    if (alike ? u.unit > v.unit : mine < its)
      joints_.push_back({u.unit, atEnd ? kJointAtEnd : kJointAtStart});
  }

  const model::Works& works_;
  std::vector<Leaf> leaves_;
  std::vector<std::array<std::uint32_t, 2>> joints_;
};

}  // namespace

std::vector<std::array<std::uint32_t, 2>> jointsBetweenLeaves(const model::Works& works) {
  return Meetings(works).find();
}

}  // namespace viewer
