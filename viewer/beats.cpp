#include "viewer/beats.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace viewer {

Beats::Beats(std::vector<float> ends, double secondsEach)
    : ends_(std::move(ends)), each_(secondsEach) {}

void Beats::add(double end, double seconds) {
  upTo_.push_back(length() + seconds);
  ends_.push_back(static_cast<float>(end));
}

double Beats::length() const { return secondsUpTo(ends_.size()); }

double Beats::secondsUpTo(size_t beat) const {
  if (beat == 0) return 0;
  return upTo_.empty() ? each_ * static_cast<double>(beat) : upTo_[beat - 1];
}

// The one that is under way; at the end of all the last.
size_t Beats::beatAt(double seconds) const {
  const size_t beat =
      upTo_.empty() ? static_cast<size_t>(std::max(0.0, std::floor(seconds / each_)))
                    : static_cast<size_t>(std::upper_bound(upTo_.begin(), upTo_.end(), seconds) -
                                          upTo_.begin());
  return std::min(beat, ends_.size() - 1);
}

double Beats::timeAt(double seconds) const {
  if (ends_.empty()) return 0;
  const size_t beat = beatAt(seconds);
  const double begin = secondsUpTo(beat), span = secondsUpTo(beat + 1) - begin;
  const double share = span > 0 ? std::clamp((seconds - begin) / span, 0.0, 1.0) : 1;
  // Both ends to the last bit.
  if (share >= 1) return static_cast<double>(ends_[beat]);
  return from(beat) + (static_cast<double>(ends_[beat]) - from(beat)) * share;
}

double Beats::secondsIn(size_t beat, double time) const {
  if (beat >= ends_.size()) return length();
  const double span = static_cast<double>(ends_[beat]) - from(beat);
  const double share = span > 0 ? std::clamp((time - from(beat)) / span, 0.0, 1.0) : 0;
  return secondsUpTo(beat) + (secondsUpTo(beat + 1) - secondsUpTo(beat)) * share;
}

double Beats::secondsTo(double time) const {
  if (time <= 0) return 0;
  const auto reaches = std::partition_point(
      ends_.begin(), ends_.end(), [time](float end) { return static_cast<double>(end) < time; });
  return secondsIn(static_cast<size_t>(reaches - ends_.begin()), time);
}

double Beats::secondsFrom(double time) const {
  const auto after = std::partition_point(
      ends_.begin(), ends_.end(), [time](float end) { return static_cast<double>(end) <= time; });
  return secondsIn(static_cast<size_t>(after - ends_.begin()), time);
}

bool Beats::restsAt(double seconds) const {
  if (ends_.empty()) return false;
  const size_t beat = beatAt(seconds);
  return beat > 0 && ends_[beat] == ends_[beat - 1];
}

std::optional<double> Beats::nextEnd(double time) const {
  const auto after = std::partition_point(
      ends_.begin(), ends_.end(), [time](float end) { return static_cast<double>(end) <= time; });
  if (after == ends_.end()) return std::nullopt;
  return static_cast<double>(*after);
}

std::optional<double> Beats::endBefore(double time) const {
  const auto reaches = std::partition_point(
      ends_.begin(), ends_.end(), [time](float end) { return static_cast<double>(end) < time; });
  if (reaches == ends_.begin()) return std::nullopt;
  return static_cast<double>(*std::prev(reaches));
}

}  // namespace viewer
