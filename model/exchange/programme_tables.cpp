#include "model/exchange/programme_tables.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "model/decimal_text.h"
#include "model/exchange/site_events.h"
#include "model/programme/calendar.h"
#include "model/programme/stage_days.h"

namespace model {
namespace {

const char* const kWeekdays[] = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

std::string movedText(const std::string& before, const std::string& after) {
  const auto from = dayNumber(before), to = dayNumber(after);
  if (!from || !to) return "";
  const long days = *to - *from;
  return days > 0 ? "+" + std::to_string(days) : std::to_string(days);
}

// Half days are as exact as a programme is.
std::string halves(double days) { return daysText(std::round(days * 2) / 2); }

// What the job calls the dates that have a day, the last given first.
std::string nameOfDates(const ProgrammeInput& input, const std::string& date) {
  for (auto each = input.exceptions.rbegin(); each != input.exceptions.rend(); ++each) {
    const std::string& to = each->to.empty() ? each->from : each->to;
    if (date >= each->from && date <= to) return each->name;
  }
  return "";
}

}  // namespace

std::string daysText(double days) {
  char text[64];
  std::snprintf(text, sizeof text, "%.4g", days);
  return text;
}

TablePart datesPart(const Model& model) {
  TablePart part;
  part.key = "dates";
  Table& table = part.table;
  table.title = "Programme of " + model.job.name;
  table.columns = {"number",    "id",       "name",       "crew",        "days",
                   "start",     "finish",   "late start", "late finish", "float days",
                   "free days", "critical", "done %"};
  table.numeric = {true,  false, false, false, true,  false, false,
                   false, false, true,  true,  false, true};
  table.detail = {false, true,  false, false, false, false, false,
                  false, false, false, true,  false, false};
  const std::vector<Stage>& stages = model.programme.stages;
  for (size_t i = 0; i < stages.size(); ++i) {
    const Stage& s = stages[i];
    table.rows.push_back({std::to_string(i + 1), s.id, s.name, s.crew, daysText(s.days), s.start,
                          s.finish, s.lateStart, s.lateFinish, halves(s.floatDays),
                          halves(s.freeDays), s.critical ? "critical" : "",
                          decimalText(s.percent, 0)});
  }
  const std::string end =
      stages.empty()
          ? ""
          : std::max_element(stages.begin(), stages.end(), [](const auto& a, const auto& b) {
              return a.finish < b.finish;
            })->finish;
  part.words.push_back(halves(model.programme.workingDays) + " working days" +
                       (end.empty() ? "; no dates, as the job gives no start" : ", to " + end));
  if (!model.programme.asAt.empty())
    part.words.push_back("What was done is as at the end of " + model.programme.asAt);
  return part;
}

TablePart ratesPart(const Model& model) {
  TablePart part;
  part.key = "rates";
  Table& table = part.table;
  table.title = "What the days of " + model.job.name + " are worked out from";
  table.columns = {"number", "id", "name", "counted", "amount", "unit", "usual a day", "days"};
  table.numeric = {true, false, false, false, true, false, true, true};
  table.detail = {false, true, false, false, false, false, false, false};
  const UsualDays usual(model.job.laying, model.works);
  const std::vector<Stage>& stages = model.programme.stages;
  for (size_t i = 0; i < stages.size(); ++i) {
    const Stage& s = stages[i];
    const auto rate = usual.rateOf(s.key);
    table.rows.push_back({std::to_string(i + 1), s.id, s.name, rate ? rate->what : "",
                          rate ? decimalText(rate->amount, rate->unit == "no." ? 0 : 2) : "",
                          rate ? rate->unit : "", rate ? daysText(rate->perDay) : "",
                          daysText(s.days)});
  }
  part.words.push_back(
      "Usual outputs are common practice without a source; `per_day` of a [[programme.stage]] puts "
      "another in its place");
  return part;
}

TablePart eventsPart(const Model& model) {
  TablePart part;
  part.key = "events";
  Table& table = part.table;
  table.title = "Hold points, deliveries, muck-away and decisions of " + model.job.name;
  table.columns = {"date", "day", "what", "stage", "text"};
  table.numeric = {false, false, false, false, false};
  for (const SiteEvent& event : siteEvents(model)) {
    const auto day = dayNumber(event.date);
    table.rows.push_back({event.date, day ? kWeekdays[weekdayOf(*day)] : "", nameOf(event.kind),
                          model.programme.stages[event.stage].name, event.text});
  }
  return part;
}

TablePart lookAheadPart(const Model& model, long from, int days) {
  TablePart part;
  part.key = "look-ahead";
  Table& table = part.table;
  table.title = model.job.name + ", " + isoDate(from) + " to " + isoDate(from + days - 1);
  table.columns = {"date", "day", "crew", "what", "stage", "text"};
  table.numeric = {false, false, false, false, false, false};
  const auto start = dayNumber(model.job.programme.start);
  if (!start) {
    part.words.push_back("There are no dates, as the job gives no start");
    return part;
  }
  const WorkCalendar calendar(model.job.programme, *start);
  const std::vector<SiteEvent> events = siteEvents(model);
  for (long day = from; day < from + days; ++day) {
    const std::string date = isoDate(day), name = kWeekdays[weekdayOf(day)];
    const size_t before = table.rows.size();
    const bool worked = calendar.capacityOf(day) > 0;
    for (const Stage& stage : model.programme.stages) {
      if (!worked || date < stage.start || date > stage.finish) continue;
      const char* when = date == stage.start && date == stage.finish ? "begins and ends"
                         : date == stage.start                       ? "begins"
                         : date == stage.finish                      ? "ends"
                                                                     : "goes on";
      table.rows.push_back({date, name, stage.crew, when, stage.name, stage.note});
    }
    for (const SiteEvent& event : events) {
      if (event.date == date)
        table.rows.push_back({date, name, "", nameOf(event.kind),
                              model.programme.stages[event.stage].name, event.text});
    }
    const std::string why = nameOfDates(model.job.programme, date);
    if (table.rows.size() == before || !why.empty())
      table.rows.insert(table.rows.begin() + long(before),
                        {date, name, "",
                         !worked                       ? "no work"
                         : table.rows.size() == before ? "nothing planned"
                                                       : "other hours",
                         "", why});
  }
  return part;
}

TablePart comparisonPart(const Model& before, const Model& after) {
  TablePart part;
  part.key = "compared";
  Table& table = part.table;
  table.title = before.job.name + ": one plan against the other";
  table.columns = {"stage", "name",       "days was",  "days is",   "start was", "start is",
                   "moved", "finish was", "finish is", "float was", "float is"};
  table.numeric = {false, false, true, true, false, false, true, false, false, true, true};
  table.detail = {true, false, false, false, false, false, false, false, false, false, false};
  const auto find = [](const Model& model, const std::string& id) -> const Stage* {
    for (const Stage& stage : model.programme.stages)
      if (stage.id == id) return &stage;
    return nullptr;
  };
  size_t same = 0;
  const auto row = [&](const Stage* a, const Stage* b) {
    if (a && b && a->start == b->start && a->finish == b->finish && a->days == b->days &&
        halves(a->floatDays) == halves(b->floatDays)) {
      ++same;
      return;
    }
    const Stage none;
    const Stage &was = a ? *a : none, &is = b ? *b : none;
    table.rows.push_back({(b ? is : was).id, (b ? is : was).name, a ? daysText(was.days) : "",
                          b ? daysText(is.days) : "", was.start, is.start,
                          movedText(was.start, is.start), was.finish, is.finish,
                          a ? halves(was.floatDays) : "", b ? halves(is.floatDays) : ""});
  };
  for (const Stage& stage : after.programme.stages) row(find(before, stage.id), &stage);
  for (const Stage& stage : before.programme.stages)
    if (!find(after, stage.id)) row(&stage, nullptr);
  part.words.push_back(std::to_string(same) + " stages are the same in both");
  part.words.push_back(halves(before.programme.workingDays) + " working days in the first, " +
                       halves(after.programme.workingDays) + " in the second");
  return part;
}

}  // namespace model
