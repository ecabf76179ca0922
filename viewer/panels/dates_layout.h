// Where stages and days lie on the chart of dates. No OpenGL, no widgets.
#pragma once

#include <string>
#include <vector>

#include "model/programme/programme.h"

namespace viewer {

// One stage over time, in days: of the calendar since 1970-01-01, or working days from the first
// when the job gives no start. Ends are the days after the last.
struct DatesRow {
  long start = 0, finish = 0;  // early, or as it was
  long lateFinish = 0;
  long wait = 0;  // the day after the wait for curing
};

struct DatesChart {
  std::vector<DatesRow> rows;  // a stage each
  long first = 0, last = 0;    // days; `last` is the day after all
  bool dated = false;
};

DatesChart datesChart(const model::Programme& programme);

// From days to pixels and back.
struct DatesScale {
  long first = 0;
  float left = 0, perDay = 1;
  float xOf(double day) const { return left + float(day - double(first)) * perDay; }
  double dayAt(float x) const { return double(first) + double((x - left) / perDay); }
};

// What a hand does to a bar when it goes down at x: moves its end or points at the stage.
enum class BarPart { None, Body, End };
BarPart partAt(const DatesRow& row, const DatesScale& scale, float x, float reach);

// The working days that a stage takes when its bar's end is pulled to a day: whole days, at least
// half of one. `from` and `days` are the stage's own.
double daysWhenPulled(const model::Programme& programme, size_t stage, const DatesChart& chart,
                      double day);

// The clock at the morning of a day, for a click on the chart: within the stage, as its bar shows.
double timeOnBar(const DatesRow& row, size_t stage, double day);

// Ends of working days inside a stage, on the programme's clock; its own end is one too.
std::vector<double> dayEnds(const model::Stage& stage, size_t index);

// The next moment of the programme's clock at which a working day ends, or the one before.
double nextDayEnd(const model::Programme& programme, double time);
double dayEndBefore(const model::Programme& programme, double time);

}  // namespace viewer
