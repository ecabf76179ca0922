#include "model/programme/network.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/support/longest_ways.h"

namespace model {
namespace {

Activity lasting(double days) {
  Activity activity;
  activity.days = days;
  return activity;
}

const WorkCalendar& weekdays() {
  static const WorkCalendar calendar({}, *dayNumber("2027-04-12"));  // a Monday
  return calendar;
}

struct Network {
  std::vector<Activity> activities;
  std::vector<Relation> relations;
};

// Relations go from lower to higher numbers, then the numbers are shuffled.
Network randomNetwork() {
  Network network;
  const size_t n = *rc::gen::inRange<size_t>(1, 40);
  std::vector<size_t> names(n);
  for (size_t i = 0; i < n; ++i) names[i] = i;
  for (size_t i = n; i > 1; --i) std::swap(names[i - 1], names[*rc::gen::inRange<size_t>(0, i)]);
  for (size_t i = 0; i < n; ++i)
    network.activities.push_back(lasting(*rc::gen::inRange(0, 20) / 2.0));
  const size_t links = n < 2 ? 0 : *rc::gen::inRange<size_t>(0, 3 * n);
  for (size_t i = 0; i < links; ++i) {
    const size_t from = *rc::gen::inRange<size_t>(0, n - 1);
    const size_t to = *rc::gen::inRange<size_t>(from + 1, n);
    network.relations.push_back({names[from], names[to], LinkKind(*rc::gen::inRange(0, 4)),
                                 *rc::gen::inRange(-8, 12) / 2.0, LagKind::Working});
  }
  return network;
}

// The starts and ends of activities and the lengths between them.
class Ways {
 public:
  explicit Ways(const Network& network) : activities_(network.activities.size()) {
    for (size_t i = 0; i < activities_; ++i) {
      const double days = network.activities[i].days;
      edges_.push_back({begin(), start(i), 0});
      edges_.push_back({start(i), end(i), days});
      edges_.push_back({end(i), start(i), -days});  // an activity is not drawn out
      edges_.push_back({end(i), last(), 0});
    }
    for (const Relation& r : network.relations) {
      const bool fromEnd = r.kind == LinkKind::FinishStart || r.kind == LinkKind::FinishFinish;
      const bool toEnd = r.kind == LinkKind::FinishFinish || r.kind == LinkKind::StartFinish;
      edges_.push_back(
          {fromEnd ? end(r.from) : start(r.from), toEnd ? end(r.to) : start(r.to), r.lag});
    }
  }
  size_t begin() const { return 2 * activities_; }
  size_t last() const { return 2 * activities_ + 1; }
  static size_t start(size_t activity) { return 2 * activity; }
  static size_t end(size_t activity) { return 2 * activity + 1; }

  std::vector<double> from(size_t vertex) const {
    const auto ways = test_support::longestWays(2 * activities_ + 2, edges_, vertex);
    RC_ASSERT(ways.has_value());
    return *ways;
  }

 private:
  size_t activities_;
  std::vector<test_support::Edge> edges_;
};

RC_GTEST_PROP(Network, TimesAreTheLongestWaysThroughIt, ()) {
  const Network network = randomNetwork();
  const auto times = scheduleNetwork(network.activities, network.relations, weekdays());
  RC_ASSERT(times.has_value());
  const Ways ways(network);
  const std::vector<double> early = ways.from(ways.begin());
  const double finish = early[ways.last()];
  RC_ASSERT(std::abs(times->finish - finish) < 1e-9);
  for (size_t i = 0; i < network.activities.size(); ++i) {
    const ActivityTimes& t = times->activities[i];
    RC_ASSERT(std::abs(t.earlyStart - early[Ways::start(i)]) < 1e-9);
    RC_ASSERT(std::abs(t.earlyFinish - early[Ways::end(i)]) < 1e-9);
    // Late times: what is left of the whole when the way from there to the end is taken off.
    const std::vector<double> on = ways.from(Ways::start(i));
    RC_ASSERT(std::abs(t.lateStart - (finish - on[ways.last()])) < 1e-9);
    RC_ASSERT(std::abs(t.totalFloat - (t.lateStart - t.earlyStart)) < 1e-9);
    RC_ASSERT(t.critical == (t.totalFloat < 1e-6));
    RC_ASSERT(t.freeFloat <= t.totalFloat + 1e-9);
  }
}

RC_GTEST_PROP(Network, WaitsOfTheCalendarAreKeptEarlyAndLate, ()) {
  Network network = randomNetwork();
  for (Relation& r : network.relations) {
    r.kind = LinkKind::FinishStart;
    r.lagIn = *rc::gen::arbitrary<bool>() ? LagKind::Calendar : LagKind::Working;
    r.lag = *rc::gen::inRange(0, 9);
  }
  const WorkCalendar& calendar = weekdays();
  const auto times = scheduleNetwork(network.activities, network.relations, calendar);
  RC_ASSERT(times.has_value());
  for (const Relation& r : network.relations) {
    const ActivityTimes &from = times->activities[r.from], &to = times->activities[r.to];
    if (r.lagIn == LagKind::Working) {
      RC_ASSERT(to.earlyStart >= from.earlyFinish + r.lag - 1e-6);
      RC_ASSERT(to.lateStart >= from.lateFinish + r.lag - 1e-6);
      continue;
    }
    RC_ASSERT(calendar.dayOf(to.earlyStart) >
              calendar.lastDayBefore(from.earlyFinish) + long(r.lag) - 1 + 1e-6);
    RC_ASSERT(calendar.dayOf(to.lateStart) >
              calendar.lastDayBefore(from.lateFinish) + long(r.lag) - 1 + 1e-6);
    RC_ASSERT(from.lateFinish >= from.earlyFinish - 1e-9);
  }
}

RC_GTEST_PROP(Network, ACircleIsFoundAndRunsRound, ()) {
  Network network = randomNetwork();
  const size_t n = network.activities.size();
  RC_PRE(n >= 3u);
  // Close a circle of three.
  network.relations.push_back({0, 1});
  network.relations.push_back({1, 2});
  network.relations.push_back({2, 0});
  RC_ASSERT(!scheduleNetwork(network.activities, network.relations, weekdays()));
  const std::vector<size_t> circle = circleIn(n, network.relations);
  RC_ASSERT(circle.size() >= 2u);
  for (size_t i = 0; i < circle.size(); ++i) {
    const size_t next = circle[(i + 1) % circle.size()];
    RC_ASSERT(std::any_of(network.relations.begin(), network.relations.end(),
                          [&](const auto& r) { return r.from == circle[i] && r.to == next; }));
  }
}

TEST(Network, WhatIsDoneMovesTheRest) {
  // Three in a row of 2, 3 and 4 days; the first was started a day late and took 4.
  std::vector<Activity> activities{lasting(2), lasting(3), lasting(4)};
  const std::vector<Relation> relations{{0, 1}, {1, 2}};
  activities[0].started = 1;
  activities[0].finished = 5;
  activities[1].notBefore = activities[2].notBefore = 5;
  auto times = scheduleNetwork(activities, relations, weekdays());
  ASSERT_TRUE(times);
  EXPECT_DOUBLE_EQ(times->activities[1].earlyStart, 5);
  EXPECT_DOUBLE_EQ(times->finish, 12);
  EXPECT_FALSE(times->activities[0].critical) << "what is finished is not critical any more";
  EXPECT_TRUE(times->activities[1].critical);

  // Half of the second is done at the end of day 9.
  activities[1].started = 5;
  activities[1].resumed = 9;
  activities[1].remaining = 1.5;
  times = scheduleNetwork(activities, relations, weekdays());
  EXPECT_DOUBLE_EQ(times->activities[1].earlyFinish, 10.5);
  EXPECT_DOUBLE_EQ(times->finish, 14.5);
}

TEST(Network, NothingIsNothing) {
  const auto times = scheduleNetwork({}, {}, weekdays());
  ASSERT_TRUE(times);
  EXPECT_EQ(times->finish, 0);
  EXPECT_TRUE(circleIn(0, {}).empty());
}

}  // namespace
}  // namespace model
