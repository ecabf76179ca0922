#include "viewer/panels/delivery_days.h"

#include <algorithm>
#include <cmath>

#include "model/programme/calendar.h"
#include "model/programme/date_words.h"

namespace viewer {
namespace {

constexpr double kMostBefore = 200;  // as the job file allows

// With a first day, which every caller has made sure of.
model::WorkCalendar calendarOf(const model::Model& model) {
  const model::ProgrammeInput& input = model.job.programme;
  return {input, model::dayNumber(input.start).value_or(0)};
}

long startOf(const model::WorkCalendar& calendar, const model::Model& model, size_t stage) {
  return calendar.dayOf(model.programme.stages[stage].from);
}

long dayOf(const model::WorkCalendar& calendar, long start, double daysBefore) {
  return calendar.dayOf(std::max(calendar.morningOf(start) - std::max(daysBefore, 0.0), 0.0));
}

// The plainest number that comes to that day again.
double plainest(const model::WorkCalendar& calendar, long start, double days, long day) {
  for (const double steps : {1.0, 2.0, 10.0, 100.0})
    for (const double rounded :
         {std::round(days * steps) / steps, std::floor(days * steps) / steps})
      if (rounded >= 0 && dayOf(calendar, start, rounded) == day) return rounded;
  return days;
}

}  // namespace

long deliveryDay(const model::Model& model, size_t stage, double daysBefore) {
  const model::WorkCalendar calendar = calendarOf(model);
  return dayOf(calendar, startOf(calendar, model, stage), daysBefore);
}

std::vector<DeliveryMark> deliveryMarks(const model::Model& model) {
  std::vector<DeliveryMark> marks;
  const model::ProgrammeInput& input = model.job.programme;
  if (!model::dayNumber(input.start)) return marks;
  for (size_t i = 0; i < input.deliveries.size(); ++i) {
    const auto stage = model.programme.find(input.deliveries[i].stage);
    if (stage)
      marks.push_back({i, *stage, deliveryDay(model, *stage, input.deliveries[i].daysBefore)});
  }
  return marks;
}

std::optional<double> daysBeforeOn(const model::Model& model, const DeliveryMark& mark, long day,
                                   std::string& why) {
  const model::WorkCalendar calendar = calendarOf(model);
  const model::Stage& stage = model.programme.stages[mark.stage];
  const long start = startOf(calendar, model, mark.stage);
  if (day > start) {
    why = model.job.programme.deliveries[mark.delivery].what + " would come on " +
          model::dateWords(model::isoDate(day)) + ", after " + stage.name + " begins on " +
          model::dateWords(model::isoDate(start)) + "; it can come on that day or before it";
    return std::nullopt;
  }
  const double morning = calendar.morningOf(day);
  const long worked = std::min(start, calendar.dayOf(morning));
  const long first = *model::dayNumber(model.job.programme.start);
  if (day < first) {
    why = model.job.programme.deliveries[mark.delivery].what + " would come on " +
          model::dateWords(model::isoDate(day)) + ", before the first day on site, " +
          model::dateWords(model::isoDate(first));
    return std::nullopt;
  }
  const double days = calendar.morningOf(start) - morning;
  if (days > kMostBefore) {
    why = "a delivery comes at most 200 working days before its stage; this would be more";
    return std::nullopt;
  }
  return plainest(calendar, start, days, worked);
}

}  // namespace viewer
