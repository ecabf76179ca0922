// When does something next happen to a loop of the wavefront?
#include <algorithm>
#include <cmath>

#include "model/geometry/vector_math.h"
#include "model/geometry/wavefront.h"

namespace model {
namespace {

// Events so near in time are one moment.
constexpr double kSameMoment = 1e-11;

class EventSearch {
 public:
  EventSearch(const std::vector<WaveLine>& lines, const WaveLoop& loop, double now)
      : lines_(lines), loop_(loop), now_(now) {
    for (const WaveCorner& corner : loop) start_.push_back(corner.at(now));
  }

  WaveEvents find() {
    for (size_t k = 0; k < loop_.size(); ++k) findVanishing(k);
    for (size_t i = 0; i < loop_.size(); ++i)
      if (loop_[i].reflex)
        for (size_t k = 0; k < loop_.size(); ++k)
          if (k != i && next(k) != i) findHit(i, k);
    return std::move(events_);
  }

 private:
  size_t next(size_t k) const { return k + 1 < loop_.size() ? k + 1 : 0; }

  bool isSoonest(double time) {
    if (events_.any && time > events_.time + kSameMoment) return false;
    if (!events_.any || time < events_.time - kSameMoment) {
      events_.vanishing.clear();
      events_.hits.clear();
      events_.time = time;
    }
    events_.any = true;
    return true;
  }

  void findVanishing(size_t k) {
    const WaveLine& line = lines_[loop_[k].right];
    const double length = dot(start_[next(k)] - start_[k], line.direction);
    const double rate = dot(loop_[next(k)].velocity - loop_[k].velocity, line.direction);
    if (rate >= 0) return;
    if (isSoonest(now_ + std::max(0.0, -length / rate))) events_.vanishing.push_back(k);
  }

  // Only a re-entrant corner can be the first to reach an edge that is not its own.
  void findHit(size_t i, size_t k) {
    const WaveLine& line = lines_[loop_[k].right];
    const double distance = dot(start_[i] - start_[k], line.inward);
    const double rate = dot(loop_[i].velocity, line.inward) - line.speed;
    if (rate >= 0 || distance < -kMet) return;
    const double time = now_ + std::max(0.0, -distance / rate);
    if (events_.any && time > events_.time + kSameMoment) return;
    const Vec2 from = loop_[k].at(time), to = loop_[next(k)].at(time), p = loop_[i].at(time);
    const double along = dot(p - from, line.direction);
    if (along < -kMet || along > dot(to - from, line.direction) + kMet) return;
    if (isSoonest(time)) events_.hits.push_back({i, k});
  }

  const std::vector<WaveLine>& lines_;
  const WaveLoop& loop_;
  double now_;
  std::vector<Vec2> start_;
  WaveEvents events_;
};

}  // namespace

WaveEvents nextEvents(const std::vector<WaveLine>& lines, const WaveLoop& loop, double now) {
  return EventSearch(lines, loop, now).find();
}

}  // namespace model
