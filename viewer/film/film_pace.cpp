#include "viewer/film/film_pace.h"

#include <algorithm>
#include <numeric>

namespace viewer {
namespace {

constexpr double kLeast = 0.25, kMost = 4;  // of the mean
constexpr double kRestShare = 0.1, kLongestRest = 2;

// Each stage's seconds when a day takes `perDay`, within the bounds.
std::vector<double> shared(const std::vector<double>& days, double perDay, double mean) {
  std::vector<double> seconds;
  for (const double each : days)
    seconds.push_back(std::clamp(each * perDay, kLeast * mean, kMost * mean));
  return seconds;
}

double total(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

}  // namespace

FilmPace::FilmPace(const std::vector<double>& days, size_t first, double length)
    : first_(static_cast<double>(first)), length_(length) {
  if (days.empty()) return;
  const double playing = length - std::min(length * kRestShare, kLongestRest);
  const double mean = playing / static_cast<double>(days.size());
  // The more seconds to a day, the longer the film: halved until it is as long as it should be.
  double low = 0, high = kMost * mean;
  for (const double each : days)
    if (each > 0) high = std::max(high, kMost * mean / each);
  for (int i = 0; i < 80; ++i) {
    const double middle = (low + high) / 2;
    (total(shared(days, middle, mean)) < playing ? low : high) = middle;
  }
  seconds_ = shared(days, high, mean);
  // Where most stages have no days even the bounds fall short of it.
  const double scale = playing / total(seconds_);
  for (double& each : seconds_) each *= scale;
}

double FilmPace::at(double second) const {
  double clock = first_;
  for (const double each : seconds_) {
    if (second < each) return clock + std::max(0.0, second) / each;
    second -= each;
    clock += 1;
  }
  return clock;
}

}  // namespace viewer
