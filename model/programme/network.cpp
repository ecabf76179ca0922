#include "model/programme/network.h"

#include <algorithm>
#include <limits>

namespace model {
namespace {

constexpr double kNoFloat = 1e-6;

// Relations by the activity at one of their ends, all in one array.
class ByEnd {
 public:
  ByEnd(size_t activities, const std::vector<Relation>& relations, size_t Relation::*end)
      : first_(activities + 1, 0), relations_(relations.size()) {
    for (const Relation& r : relations) ++first_[r.*end + 1];
    for (size_t i = 0; i < activities; ++i) first_[i + 1] += first_[i];
    std::vector<size_t> next(first_.begin(), first_.end() - 1);
    for (const Relation& r : relations) relations_[next[r.*end]++] = &r;
  }
  struct Range {
    const Relation* const* from;
    const Relation* const* to;
    const Relation* const* begin() const { return from; }
    const Relation* const* end() const { return to; }
  };
  Range of(size_t activity) const {
    return {relations_.data() + first_[activity], relations_.data() + first_[activity + 1]};
  }

 private:
  std::vector<size_t> first_;
  std::vector<const Relation*> relations_;
};

// From first to last so that every relation points onward; shorter when some run in a circle.
std::vector<size_t> inOrder(size_t activities, const std::vector<Relation>& relations,
                            const ByEnd& leaving) {
  std::vector<size_t> waitsFor(activities, 0), order;
  order.reserve(activities);
  for (const Relation& r : relations) ++waitsFor[r.to];
  for (size_t i = 0; i < activities; ++i)
    if (waitsFor[i] == 0) order.push_back(i);
  for (size_t next = 0; next < order.size(); ++next)
    for (const Relation* r : leaving.of(order[next]))
      if (--waitsFor[r->to] == 0) order.push_back(r->to);
  return order;
}

bool fromFinish(LinkKind kind) {
  return kind == LinkKind::FinishStart || kind == LinkKind::FinishFinish;
}
bool toFinish(LinkKind kind) {
  return kind == LinkKind::FinishFinish || kind == LinkKind::StartFinish;
}

// The time that a relation asks for, from the time at its near end.
double lagged(const Relation& r, double time, const WorkCalendar& calendar) {
  if (r.lagIn == LagKind::Working) return time + r.lag;
  return fromFinish(r.kind) ? calendar.afterWait(time, r.lag)
                            : calendar.afterWaitFromStart(time, r.lag);
}

// The latest time at its near end that keeps to a time at the far one.
double latestFor(const Relation& r, double time, const WorkCalendar& calendar) {
  if (r.lagIn == LagKind::Working) return time - r.lag;
  return fromFinish(r.kind) ? calendar.latestBeforeWait(time, r.lag)
                            : calendar.latestStartBeforeWait(time, r.lag);
}

void setEarly(const Activity& activity, ActivityTimes& times) {
  if (activity.started) times.earlyStart = *activity.started;
  times.earlyFinish = times.earlyStart + std::max(activity.days, 0.0);
  if (activity.finished) {
    times.earlyFinish = *activity.finished;
    if (!activity.started) times.earlyStart = std::min(times.earlyStart, times.earlyFinish);
  } else if (activity.started && activity.remaining) {
    times.earlyFinish = std::max(activity.resumed.value_or(times.earlyStart), times.earlyStart) +
                        std::max(*activity.remaining, 0.0);
  }
}

}  // namespace

std::optional<NetworkTimes> scheduleNetwork(const std::vector<Activity>& activities,
                                            const std::vector<Relation>& relations,
                                            const WorkCalendar& calendar) {
  const size_t n = activities.size();
  const ByEnd arriving(n, relations, &Relation::to), leaving(n, relations, &Relation::from);
  const std::vector<size_t> order = inOrder(n, relations, leaving);
  if (order.size() < n) return std::nullopt;

  NetworkTimes result;
  std::vector<ActivityTimes>& times = result.activities;
  times.resize(n);
  for (size_t i : order) {
    double start = std::max(0.0, activities[i].notBefore);
    for (const Relation* r : arriving.of(i)) {
      const ActivityTimes& from = times[r->from];
      const double asked =
          lagged(*r, fromFinish(r->kind) ? from.earlyFinish : from.earlyStart, calendar);
      start = std::max(start, toFinish(r->kind) ? asked - activities[i].days : asked);
    }
    times[i].earlyStart = start;
    setEarly(activities[i], times[i]);
    result.finish = std::max(result.finish, times[i].earlyFinish);
  }

  for (auto i = order.rbegin(); i != order.rend(); ++i) {
    ActivityTimes& time = times[*i];
    const double length = time.earlyFinish - time.earlyStart;
    double finish = result.finish;
    double slack = result.finish - time.earlyFinish;
    for (const Relation* r : leaving.of(*i)) {
      // What has begun, or is finished, is held up by nothing any more.
      const Activity& next = activities[r->to];
      if (toFinish(r->kind) ? next.finished.has_value() : next.started || next.finished) continue;
      const ActivityTimes& to = times[r->to];
      const double end = fromFinish(r->kind) ? 0 : length;
      const auto latest = [&](double start, double last) {
        return latestFor(*r, toFinish(r->kind) ? last : start, calendar) + end;
      };
      finish = std::min(finish, latest(to.lateStart, to.lateFinish));
      slack = std::min(slack, latest(to.earlyStart, to.earlyFinish) - time.earlyFinish);
    }
    // Work that is behind all that waits for it has no float, and less than none is not shown.
    time.lateFinish = std::max(finish, time.earlyFinish);
    time.lateStart = time.lateFinish - length;
    if (activities[*i].started || activities[*i].finished) time.lateStart = time.earlyStart;
    if (activities[*i].finished) time.lateFinish = time.earlyFinish;
    time.totalFloat = time.lateFinish - time.earlyFinish;
    time.freeFloat = std::max(slack, 0.0);
    time.critical = !activities[*i].finished && time.totalFloat <= kNoFloat;
  }
  return result;
}

std::vector<size_t> circleIn(size_t activities, const std::vector<Relation>& relations) {
  const ByEnd leaving(activities, relations, &Relation::from);
  const std::vector<size_t> order = inOrder(activities, relations, leaving);
  if (order.size() == activities) return {};
  std::vector<bool> left(activities, true);
  for (size_t i : order) left[i] = false;
  // Each one left waits for another one left: going back from any of them comes round at last.
  const ByEnd arriving(activities, relations, &Relation::to);
  constexpr size_t kNever = std::numeric_limits<size_t>::max();
  std::vector<size_t> seenAt(activities, kNever), path;
  size_t at = static_cast<size_t>(std::find(left.begin(), left.end(), true) - left.begin());
  while (seenAt[at] == kNever) {
    seenAt[at] = path.size();
    path.push_back(at);
    for (const Relation* r : arriving.of(at)) {
      if (!left[r->from]) continue;
      at = r->from;
      break;
    }
  }
  std::vector<size_t> circle(path.begin() + static_cast<long>(seenAt[at]), path.end());
  std::reverse(circle.begin(), circle.end());
  return circle;
}

}  // namespace model
