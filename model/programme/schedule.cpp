// When each stage is done, and what decides it.
#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "model/programme/plan_stages.h"

namespace model {
namespace {

// What a job without a first day on site is worked out on: a Monday, 1970-01-05.
constexpr long kAnyMonday = 4;

struct LinkAsked {
  Relation relation;
  size_t number = 0;  // in ProgrammeInput::links
};

std::vector<LinkAsked> linksOf(const ProgrammeInput& input, Programme& programme) {
  std::vector<LinkAsked> links;
  for (size_t i = 0; i < input.links.size(); ++i) {
    const StageLink& link = input.links[i];
    const std::string key = "programme.link[" + std::to_string(i) + "]";
    const auto from = stageNamed(programme, link.from, key + ".from");
    const auto to = stageNamed(programme, link.to, key + ".to");
    if (from && to) links.push_back({{*from, *to, link.kind, link.lag, link.lagIn}, i});
  }
  return links;
}

// What must be finished before what, with the wait for curing, and one crew after another.
std::vector<Relation> ownRelations(const std::vector<Stage>& stages) {
  std::vector<Relation> relations;
  std::map<std::string, size_t> lastOf;
  for (size_t i = 0; i < stages.size(); ++i) {
    for (size_t before : stages[i].after) {
      const double wait = stages[before].waitDays;
      const LagKind lagIn = wait > 0 ? LagKind::Calendar : LagKind::Working;
      relations.push_back({before, i, LinkKind::FinishStart, wait, lagIn});
    }
    const auto [last, isFirst] = lastOf.try_emplace(stages[i].crew, i);
    if (!isFirst) relations.push_back({last->second, i});
    last->second = i;
  }
  return relations;
}

// All relations but for links that would run in a circle, which are named.
std::vector<Relation> relationsOf(std::vector<LinkAsked> links, Programme& programme) {
  const std::vector<Stage>& stages = programme.stages;
  while (true) {
    std::vector<Relation> relations = ownRelations(stages);
    const size_t own = relations.size();
    for (const LinkAsked& link : links) relations.push_back(link.relation);
    const std::vector<size_t> circle = circleIn(stages.size(), relations);
    if (circle.empty()) return relations;
    std::string round;
    for (size_t i : circle) round += stages[i].id + ", ";
    round += stages[circle.front()].id;
    // The last of the links in it is the one that closes it.
    const auto inCircle = [&](const LinkAsked& link) {
      for (size_t i = 0; i < circle.size(); ++i) {
        if (link.relation.from == circle[i] && link.relation.to == circle[(i + 1) % circle.size()])
          return true;
      }
      return false;
    };
    const auto closing = std::find_if(links.rbegin(), links.rend(), inCircle);
    if (closing == links.rend()) return {relations.begin(), relations.begin() + long(own)};
    const std::string& to = stages[closing->relation.to].id;
    programme.faults.push_back({"programme.link[" + std::to_string(closing->number) + "].to",
                                Severity::Error,
                                "programme.link: \"" + to + "\" would wait for itself: " + round,
                                "a crew takes its stages in their order: give \"" + to +
                                    "\" a `crew` of its own, or move it with `follows`"});
    links.erase(std::next(closing).base());
  }
}

std::string newestDone(const std::vector<Stage>& stages) {
  std::string newest;
  for (const Stage& stage : stages) {
    if (stage.started) newest = std::max({newest, stage.start, stage.finish});
  }
  return newest;
}

Activity activityOf(const Stage& stage, const WorkCalendar& calendar, double asAt) {
  Activity activity;
  activity.days = std::max(stage.days, 0.0);
  if (!stage.started) {
    activity.notBefore = asAt;
    return activity;
  }
  activity.started = calendar.morningOf(*dayNumber(stage.start));
  if (!stage.finish.empty()) {
    activity.finished = std::max(calendar.eveningOf(*dayNumber(stage.finish)), *activity.started);
    return activity;
  }
  const double gone = std::max(asAt - *activity.started, 0.0);
  activity.resumed = *activity.started + gone;
  activity.remaining = stage.percent > 0 ? activity.days * (1 - stage.percent / 100)
                                         : std::max(activity.days - gone, 0.0);
  return activity;
}

// Waits as the month has them in which the work ends; true when one changed.
bool setWaits(const ProgrammeInput& input, const std::vector<double>& usual,
              const NetworkTimes& times, const WorkCalendar& calendar, std::vector<Stage>& stages) {
  std::array<double, 12> factors;
  factors.fill(1);
  for (const UsualMonth& month : input.months) {
    if (month.temperature && month.month >= 1 && month.month <= 12)
      factors[size_t(month.month - 1)] = curingFactor(*month.temperature);
  }
  bool changed = false;
  for (size_t i = 0; i < stages.size(); ++i) {
    const long day = calendar.lastDayBefore(times.activities[i].earlyFinish);
    const double wait =
        std::max(0.0, std::ceil(usual[i] * factors[size_t(monthOf(day) - 1)] - 1e-6));
    changed = changed || wait != stages[i].waitDays;
    stages[i].waitDays = wait;
  }
  return changed;
}

void setStage(const ActivityTimes& times, const WorkCalendar& calendar, bool dated, Stage& stage) {
  stage.from = times.earlyStart;
  stage.to = times.earlyFinish;
  stage.floatDays = times.totalFloat;
  stage.freeDays = times.freeFloat;
  stage.critical = times.critical;
  if (!dated) return;
  const auto dates = [&](double from, double to, std::string& start, std::string& finish) {
    const long first = calendar.dayOf(from);
    start = isoDate(first);
    finish = isoDate(std::max(first, calendar.lastDayBefore(to)));
  };
  const std::string start = stage.start, finish = stage.finish;
  dates(times.lateStart, times.lateFinish, stage.lateStart, stage.lateFinish);
  dates(times.earlyStart, times.earlyFinish, stage.start, stage.finish);
  if (stage.started) stage.start = start;
  if (!finish.empty()) stage.finish = finish;
}

void setDeliveries(const ProgrammeInput& input, const WorkCalendar& calendar, bool dated,
                   Programme& programme) {
  for (size_t i = 0; i < input.deliveries.size(); ++i) {
    const Delivery& each = input.deliveries[i];
    const auto stage =
        stageNamed(programme, each.stage, "programme.delivery[" + std::to_string(i) + "].stage");
    if (!stage) continue;
    // The start of a stage is counted from the morning of its day.
    const long day = calendar.dayOf(programme.stages[*stage].from);
    const double at = std::max(calendar.morningOf(day) - std::max(each.daysBefore, 0.0), 0.0);
    programme.deliveries.push_back(
        {each.what, *stage, dated ? isoDate(calendar.dayOf(at)) : std::string()});
  }
  std::stable_sort(programme.deliveries.begin(), programme.deliveries.end(),
                   [](const DatedDelivery& a, const DatedDelivery& b) { return a.date < b.date; });
}

}  // namespace

void schedule(const ProgrammeInput& input, Programme& programme) {
  std::vector<Stage>& stages = programme.stages;
  const auto first = dayNumber(input.start);
  const WorkCalendar calendar(input, first.value_or(kAnyMonday));
  const bool dated = first.has_value();
  // Without a first day nothing that was done can be placed.
  if (!dated) {
    for (Stage& stage : stages) {
      stage.started = false;
      stage.start.clear();
      stage.finish.clear();
    }
  }
  programme.asAt = newestDone(stages);
  const auto newest = dayNumber(programme.asAt);
  const double asAt = newest ? calendar.eveningOf(*newest) : 0;

  std::vector<Activity> activities;
  std::vector<double> usualWaits;
  for (const Stage& stage : stages) {
    activities.push_back(activityOf(stage, calendar, asAt));
    usualWaits.push_back(stage.waitDays);
  }
  const std::vector<LinkAsked> links = linksOf(input, programme);
  std::vector<Relation> relations = relationsOf(links, programme);
  auto times = scheduleNetwork(activities, relations, calendar);
  // A wait can move work into another month, which changes the wait: it settles at once, or goes
  // to and fro across the end of a month, and then either is right.
  constexpr int kRounds = 4;
  for (int round = 0; times && round < kRounds; ++round) {
    if (!setWaits(input, usualWaits, *times, calendar, stages)) break;
    size_t next = 0;
    for (size_t i = 0; i < stages.size(); ++i) {
      for (size_t before : stages[i].after) {
        while (relations[next].from != before || relations[next].to != i) ++next;
        relations[next].lag = stages[before].waitDays;
        relations[next].lagIn = stages[before].waitDays > 0 ? LagKind::Calendar : LagKind::Working;
        ++next;
      }
    }
    times = scheduleNetwork(activities, relations, calendar);
  }
  if (!times) return;
  programme.workingDays = times->finish;
  for (size_t i = 0; i < stages.size(); ++i)
    setStage(times->activities[i], calendar, dated, stages[i]);
  setDeliveries(input, calendar, dated, programme);
}

}  // namespace model
