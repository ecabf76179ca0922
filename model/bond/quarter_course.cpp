#include "model/bond/quarter_course.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace model {

namespace {

constexpr double kSame = 1e-6;
constexpr double kNear =
    16;  // quarters from the middle of its place within which a course is closed

std::vector<double> jointsOf(const QuarterOrder& order, double total) {
  std::vector<double> joints{0};
  for (size_t i = 0; joints.back() < total; ++i) {
    const bool first = i < order.first.size();
    const int width =
        first ? order.first[i] : order.then[(i - order.first.size()) % order.then.size()];
    joints.push_back(joints.back() + width);
  }
  if (joints.back() > total + kSame) joints.pop_back();
  return joints;
}

// How good what fills the gap is, 0 best; negative when it cannot be filled.
int rankOf(double gap) {
  if (gap < -kSame) return -1;
  if (gap < kSame) return 0;
  if (std::fabs(gap - 4) < kSame || std::fabs(gap - 2) < kSame) return 1;
  if (gap > 2 - kSame && gap < 4 + kSame) return 2;
  return gap > 4 && gap < 6 + kSame ? 3 : -1;
}

QuarterCourse closed(const std::vector<double>& left, size_t l, const std::vector<double>& right,
                     size_t r, double total) {
  QuarterCourse course;
  course.joints.assign(left.begin(), left.begin() + static_cast<std::ptrdiff_t>(l) + 1);
  course.from = left[l];
  course.to = total - right[r];
  if (course.to - course.from > 4 + kSame) course.joints.push_back((course.from + course.to) / 2);
  if (course.to - course.from < kSame) course.joints.pop_back();
  for (size_t i = r + 1; i-- > 0;) course.joints.push_back(total - right[i]);
  return course;
}

// No room for the order of the bond: pieces alike, none longer than a brick.
QuarterCourse alike(double total) {
  QuarterCourse course{{}, 0, total};
  const auto count = static_cast<int>(std::ceil(total / 4 - kSame));
  for (int i = 0; i <= count; ++i) course.joints.push_back(total * i / count);
  return course;
}

}  // namespace

std::vector<QuarterCourse> closings(const QuarterOrder& start, const QuarterOrder& end,
                                    double total, const ClosingPlace& place) {
  const std::vector<double> left = jointsOf(start, total), right = jointsOf(end, total);
  struct Way {
    int rank;
    double off;
    size_t l, r;
  };
  std::vector<Way> ways;
  for (size_t l = 0; l < left.size(); ++l) {
    for (size_t r = 0; r < right.size(); ++r) {
      const double gap = total - left[l] - right[r];
      const int rank = rankOf(gap);
      const double off = std::fabs(left[l] + gap / 2 - place.middle());
      const bool inside = left[l] > place.from - kSame && left[l] + gap < place.to + kSame;
      if (rank >= 0 && off < kNear && inside) ways.push_back({rank, off, l, r});
    }
  }
  std::stable_sort(ways.begin(), ways.end(), [](const Way& a, const Way& b) {
    return a.rank != b.rank ? a.rank < b.rank : a.off < b.off - kSame;
  });
  std::vector<QuarterCourse> all;
  for (const Way& way : ways) all.push_back(closed(left, way.l, right, way.r, total));
  const bool anywhere = place.from < kSame && place.to > total - kSame;
  if (all.empty() && !anywhere) return closings(start, end, total, {0, total});
  if (all.empty()) all.push_back(alike(total));
  return all;
}

double leastLap(const QuarterCourse& a, const QuarterCourse& b) {
  double least = std::numeric_limits<double>::max();
  size_t k = 1;
  for (size_t i = 1; i + 1 < a.joints.size(); ++i) {
    while (k + 1 < b.joints.size() && b.joints[k] < a.joints[i]) ++k;
    for (const size_t near : {k - 1, k})
      if (near > 0 && near + 1 < b.joints.size())
        least = std::min(least, std::fabs(a.joints[i] - b.joints[near]));
  }
  return least;
}

std::vector<QuarterCourse> lapped(const std::vector<std::vector<QuarterCourse>>& courses) {
  std::vector<QuarterCourse> best;
  double bestLap = -1;
  for (const QuarterCourse& first : courses[0]) {
    std::vector<QuarterCourse> chosen{first};
    double least = std::numeric_limits<double>::max();
    for (size_t i = 1; i < courses.size(); ++i) {
      const QuarterCourse* found = nullptr;
      double lapOfFound = -1;
      for (const QuarterCourse& course : courses[i]) {
        double lap = leastLap(chosen.back(), course);
        if (i + 1 == courses.size()) lap = std::min(lap, leastLap(course, first));
        if (lap <= lapOfFound + kSame) continue;
        found = &course;
        lapOfFound = lap;
        if (lap > 1 - kSame) break;
      }
      if (!found) found = &courses[i][0];
      chosen.push_back(*found);
      least = std::min(least, lapOfFound);
    }
    if (least > bestLap + kSame) {
      bestLap = least;
      best = std::move(chosen);
    }
    if (bestLap > 1 - kSame) break;
  }
  return best;
}

}  // namespace model
