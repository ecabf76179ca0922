// The critical path method over activities, their relations and a calendar.
//
// Activities stand on the nodes; the four relations are those of precedence diagrams.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "model/job/programme_input.h"
#include "model/programme/calendar.h"

namespace model {

struct Activity {
  double days = 0;  // working days, 0 or more
  // What has happened already, in working time: it overrules all relations.
  std::optional<double> started, finished;
  double notBefore = 0;  // of what has not started
  // With `started` only: what remains is done from then on, in working days.
  std::optional<double> resumed, remaining;
};

struct Relation {
  size_t from = 0, to = 0;
  LinkKind kind = LinkKind::FinishStart;
  double lag = 0;  // in working days, or in days of the calendar when these count
  LagKind lagIn = LagKind::Working;
};

// In working time, days from the morning of the first day on site.
struct ActivityTimes {
  double earlyStart = 0, earlyFinish = 0;
  double lateStart = 0, lateFinish = 0;
  double totalFloat = 0;  // late less early start
  double freeFloat = 0;   // how far it may slip without moving any other
  bool critical = false;  // total float is none
};

struct NetworkTimes {
  std::vector<ActivityTimes> activities;
  double finish = 0;
};

// Nothing when the relations run in a circle; see circleIn. Relations must name activities that
// there are. A lead (negative lag) never takes a start before time 0. Linear in activities and
// relations.
std::optional<NetworkTimes> scheduleNetwork(const std::vector<Activity>& activities,
                                            const std::vector<Relation>& relations,
                                            const WorkCalendar& calendar);

// The activities of one circle in the order of its relations; empty when there is none.
std::vector<size_t> circleIn(size_t activities, const std::vector<Relation>& relations);

}  // namespace model
