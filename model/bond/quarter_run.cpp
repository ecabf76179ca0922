#include "model/bond/quarter_run.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <limits>

namespace model {

namespace {

constexpr size_t kMostKinds = 3;  // of different courses in a bond
constexpr int kFar = 5;           // quarters since the last joint: no piece is so long
constexpr int kNone = std::numeric_limits<int>::max() / 2;

bool throughAt(const QuarterRun& run, size_t course, bool last) {
  return (course % 2 == run.throughFirst) != (last && run.odd);
}

// The joints as the bond from either end has them.
struct Course {
  std::vector<int> first, last;  // from the one end, from the other; ascending, from the first
  bool headers = false;          // laid of headers only
  bool buttsFirst = false, buttsLast = false;
};

Course courseOf(const QuarterRun& run, size_t number) {
  Course course;
  const bool through = throughAt(run, number, false), throughLast = throughAt(run, number, true);
  course.first = patternJoints(run.bond, number, through, run.quarters);
  course.last = patternJoints(run.bond, number, throughLast, run.quarters);
  for (int& at : course.last) at = run.quarters - at;
  std::reverse(course.last.begin(), course.last.end());
  course.headers =
      isHeaderCourse(run.bond, number, through) && isHeaderCourse(run.bond, number, throughLast);
  course.buttsFirst = !through;
  course.buttsLast = !throughLast;
  return course;
}

bool has(const std::vector<int>& joints, int at) {
  return std::binary_search(joints.begin(), joints.end(), at);
}

// But for the pieces at the ends, which each end makes its own way.
bool meets(const Course& course, int quarters) {
  for (int at = kThreeQuarter; at <= quarters - kThreeQuarter; ++at)
    if (has(course.first, at) != has(course.last, at)) return false;
  return quarters > 2 * kThreeQuarter;
}

std::vector<int> joined(const Course& course, int quarters) {
  std::vector<int> joints;
  for (const int at : course.first)
    if (2 * at < quarters) joints.push_back(at);
  for (const int at : course.last)
    if (2 * at >= quarters) joints.push_back(at);
  return joints;
}

// Finds the joints of all courses between `from` and `to` at once, quarter by quarter: which of the
// courses have one there, at the least cost.
class Bridge {
 public:
  struct Freedom {
    int halfWidth;
    bool closers, noLap;
  };

  Bridge(const QuarterRun& run, const std::vector<Course>& courses, Freedom freedom)
      : run_(run), courses_(courses), freedom_(freedom) {
    const int from = std::max(0, run.breakAt - freedom.halfWidth);
    const int to = std::min(run.quarters, run.breakAt + freedom.halfWidth);
    for (size_t k = 0; k < courses.size(); ++k) {
      const Course& course = courses[k];
      keptTo_[k] = course.buttsFirst ? kHeader : 0;
      for (const int at : course.first)
        if (at <= from) keptTo_[k] = std::max(keptTo_[k], at);
      keptFrom_[k] = run.quarters - (course.buttsLast ? kHeader : 0);
      for (const int at : course.last)
        if (at >= to) keptFrom_[k] = std::min(keptFrom_[k], at);
    }
  }

  int from() const { return *std::min_element(keptTo_.begin(), keptTo_.begin() + count()); }
  int to() const { return *std::max_element(keptFrom_.begin(), keptFrom_.begin() + count()); }

  // By course; nothing when there is no way.
  std::vector<std::vector<int>> find() {
    for (size_t k = 0; k < courses_.size(); ++k)
      if (keptTo_[k] >= keptFrom_[k]) return {};
    // Far enough back to know the last joint of every course.
    const int begin = std::max(0, from() - kStretcher), end = std::min(run_.quarters, to());
    const size_t width = static_cast<size_t>(end - begin + 1);
    best_.assign(width, Costs{});
    for (Costs& costs : best_) costs.fill({kNone, 0, 0});
    std::array<int, kMostKinds> since{};
    for (size_t k = 0; k < courses_.size(); ++k) since[k] = begin - lastKept(k, begin);
    best_[0][codeOf(since)].cost = 0;
    for (size_t i = 0; i + 1 < width; ++i)
      for (size_t code = 0; code < kStates; ++code)
        if (best_[i][code].cost < kNone) step(begin + static_cast<int>(i) + 1, i, code);
    return readBack(begin, end);
  }

 private:
  static constexpr size_t kStates = (kFar + 1) * (kFar + 1) * (kFar + 1);
  struct Best {
    int cost;
    std::uint8_t before, joints;  // state it came from, and which courses have a joint here
  };
  using Costs = std::array<Best, kStates>;

  std::ptrdiff_t count() const { return static_cast<std::ptrdiff_t>(courses_.size()); }

  static size_t codeOf(const std::array<int, kMostKinds>& since) {
    size_t code = 0;
    for (const int far : since) code = code * (kFar + 1) + static_cast<size_t>(std::min(far, kFar));
    return code;
  }

  static std::array<int, kMostKinds> sinceOf(size_t code) {
    std::array<int, kMostKinds> since{};
    for (size_t k = kMostKinds; k-- > 0; code /= kFar + 1)
      since[k] = static_cast<int>(code % (kFar + 1));
    return since;
  }

  int lastKept(size_t k, int at) const {
    int last = 0;
    for (const int joint : courses_[k].first)
      if (joint <= at) last = joint;
    return last;
  }

  bool isKept(size_t k, int at) const { return at <= keptTo_[k] || at >= keptFrom_[k]; }

  bool hasKept(size_t k, int at) const {
    if (at == run_.quarters || at == 0) return true;  // the end itself
    if (at == keptTo_[k] || at == keptFrom_[k]) return true;
    return has(at < keptTo_[k] ? courses_[k].first : courses_[k].last, at);
  }

  // Of a joint of course k so many quarters behind the one before it; kNone: there cannot be one.
  int costOf(size_t k, int at, int length) const {
    if (isKept(k, at) && at != keptFrom_[k]) return 0;
    const Course& course = courses_[k];
    const bool asPattern = has(course.first, at) || has(course.last, at) || at == run_.quarters;
    const int cost = asPattern ? 0 : 2;
    switch (length) {
      case kStretcher:
        return cost + (course.headers ? 8 : 0);
      case kThreeQuarter:
        return cost + 4;
      case kHeader:
        return cost + (course.headers ? 0 : 1);
      case kCloser:
        // The bond's own stand beside a header at an end.
        if (course.buttsFirst && at == kHeader + kCloser) return cost;
        if (course.buttsLast && at == run_.quarters - kHeader) return cost;
        return freedom_.closers ? cost + 12 : kNone;
      default:
        return kNone;
    }
  }

  void step(int at, size_t column, size_t code) {
    const std::array<int, kMostKinds> since = sinceOf(code);
    const size_t kinds = courses_.size();
    for (unsigned mask = 0; mask < (1u << kinds); ++mask) {
      int cost = best_[column][code].cost;
      std::array<int, kMostKinds> next{};
      for (size_t k = 0; k < kinds && cost < kNone; ++k) {
        const bool joint = mask >> k & 1u;
        const int length = since[k] + 1;
        next[k] = joint ? 0 : length;
        if (isKept(k, at) && joint != hasKept(k, at)) cost = kNone;
        if (!joint && length >= kFar) cost = kNone;
        if (joint && cost < kNone) cost += std::min(kNone, costOf(k, at, length));
        // The courses of a bond lie over one another in turn, the last under the first again; of
        // three kinds the middle one lies between the two others.
        if (joint && k > 0 && (mask >> (k - 1) & 1u) && at != run_.quarters)
          cost = freedom_.noLap && cost < kNone ? cost + 40 : kNone;
      }
      if (cost >= kNone) continue;
      Best& best = best_[column + 1][codeOf(next)];
      if (cost < best.cost)
        best = {cost, static_cast<std::uint8_t>(code), static_cast<std::uint8_t>(mask)};
    }
  }

  std::vector<std::vector<int>> readBack(int begin, int end) const {
    size_t state = 0;
    int least = kNone;
    for (size_t code = 0; code < kStates; ++code) {
      if (best_.back()[code].cost >= least) continue;
      least = best_.back()[code].cost;
      state = code;
    }
    if (least >= kNone) return {};
    std::vector<std::vector<int>> joints(courses_.size());
    for (int at = end; at > begin; --at) {
      const Best& best = best_[static_cast<size_t>(at - begin)][state];
      for (size_t k = 0; k < courses_.size(); ++k)
        if ((best.joints >> k & 1u) && at < run_.quarters) joints[k].push_back(at);
      state = best.before;
    }
    for (size_t k = 0; k < courses_.size(); ++k) {
      std::vector<int>& all = joints[k];
      std::reverse(all.begin(), all.end());
      std::vector<int> before, after;
      for (const int joint : courses_[k].first)
        if (joint <= begin) before.push_back(joint);
      for (const int joint : courses_[k].last)
        if (joint > end) after.push_back(joint);
      all.insert(all.begin(), before.begin(), before.end());
      all.insert(all.end(), after.begin(), after.end());
    }
    return joints;
  }

  const QuarterRun& run_;
  const std::vector<Course>& courses_;
  Freedom freedom_;
  std::array<int, kMostKinds> keptTo_{}, keptFrom_{};
  std::vector<Costs> best_;
};

int lapOf(const std::vector<std::vector<int>>& joints) {
  int least = kStretcher;
  for (size_t k = 1; k < joints.size(); ++k)
    for (const int a : joints[k - 1]) {
      const auto over = std::lower_bound(joints[k].begin(), joints[k].end(), a);
      if (over != joints[k].end()) least = std::min(least, *over - a);
      if (over != joints[k].begin()) least = std::min(least, a - *(over - 1));
    }
  return least;
}

}  // namespace

bool comesOut(const QuarterRun& run) {
  for (size_t course = 0; course < coursesOf(run.bond); ++course)
    if (!meets(courseOf(run, course), run.quarters)) return false;
  return true;
}

QuarterJoints layQuarters(const QuarterRun& run) {
  QuarterJoints laid;
  // The fourth course of a garden wall is the second over again.
  std::vector<Course> kinds;
  for (size_t course = 0; course < std::min(coursesOf(run.bond), kMostKinds); ++course)
    kinds.push_back(courseOf(run, course));
  const bool meet = std::all_of(kinds.begin(), kinds.end(),
                                [&](const Course& course) { return meets(course, run.quarters); });
  if (meet) {
    for (const Course& course : kinds) laid.joints.push_back(joined(course, run.quarters));
  } else {
    laid.broken = true;
    // All joints of a stack stand over one another.
    const bool stack = run.bond == BondKind::Stack;
    for (const Bridge::Freedom& freedom : {Bridge::Freedom{6, false, stack},
                                           {10, false, stack},
                                           {16, false, stack},
                                           {10, true, stack},
                                           {24, true, stack},
                                           {24, true, true}}) {
      Bridge bridge(run, kinds, freedom);
      laid.joints = bridge.find();
      laid.from = bridge.from();
      laid.to = bridge.to();
      if (!laid.joints.empty()) break;
    }
    if (laid.joints.empty()) laid.joints.resize(kinds.size());  // too short for any bond
  }
  laid.lap = lapOf(laid.joints);
  if (coursesOf(run.bond) > kinds.size()) laid.joints.push_back(laid.joints[1]);
  return laid;
}

}  // namespace model
