// The programme's clock as it is played: beats one after another, each with seconds of its own.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace viewer {

// Through each beat the clock runs evenly; in a beat that ends where it begins it rests. The first
// begins at time 0. Moments are floats, as the graphics card has them, so that what is to be there
// at a beat's end is there to the last bit; a million beats of one length take 4 MB.
class Beats {
 public:
  Beats() = default;
  // All of one length; `ends` rise, the first is over 0.
  Beats(std::vector<float> ends, double secondsEach);
  // One more, up to a moment not before the last end. Not after the constructor above.
  void add(double end, double seconds);

  size_t size() const { return ends_.size(); }
  const std::vector<float>& ends() const { return ends_; }
  // Seconds that all of them take.
  double length() const;
  // The clock after so many seconds, held to the first beat's begin and the last one's end.
  double timeAt(double seconds) const;
  // The seconds at which the clock gets to a time, and at which it leaves it: they differ by its
  // rests there.
  double secondsTo(double time) const;
  double secondsFrom(double time) const;
  // Rests at those seconds.
  bool restsAt(double seconds) const;
  // The next end after a time or the one before it; nothing when there is none.
  std::optional<double> nextEnd(double time) const;
  std::optional<double> endBefore(double time) const;

 private:
  double from(size_t beat) const { return beat == 0 ? 0.0 : double(ends_[beat - 1]); }
  double secondsUpTo(size_t beat) const;
  size_t beatAt(double seconds) const;
  double secondsIn(size_t beat, double time) const;

  std::vector<float> ends_;
  std::vector<double> upTo_;  // seconds at each end; empty where all take the same
  double each_ = 0;
};

}  // namespace viewer
