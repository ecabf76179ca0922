#include "viewer/panels/dates_layout.h"

#include <algorithm>
#include <cmath>

#include "model/programme/calendar.h"

namespace viewer {
namespace {

constexpr double kHair = 1e-6;

long dayOf(const std::string& iso) { return model::dayNumber(iso).value_or(0); }

}  // namespace

DatesChart datesChart(const model::Programme& programme) {
  DatesChart chart;
  const auto& stages = programme.stages;
  chart.dated = !stages.empty() && !stages.front().start.empty();
  for (const model::Stage& stage : stages) {
    DatesRow row;
    if (chart.dated) {
      row = {dayOf(stage.start), dayOf(stage.finish) + 1, dayOf(stage.lateFinish) + 1, 0};
    } else {
      row.start = long(std::floor(stage.from + kHair));
      row.finish = std::max(row.start + 1, long(std::ceil(stage.to - kHair)));
      row.lateFinish = std::max(row.finish, long(std::ceil(stage.to + stage.floatDays - kHair)));
    }
    row.lateFinish = std::max(row.lateFinish, row.finish);
    row.wait = row.finish + long(std::ceil(stage.waitDays - kHair));
    chart.rows.push_back(row);
  }
  if (chart.rows.empty()) return chart;
  chart.first = chart.rows.front().start;
  for (const DatesRow& row : chart.rows) {
    chart.first = std::min(chart.first, row.start);
    chart.last = std::max({chart.last, row.finish, row.lateFinish});
  }
  return chart;
}

BarPart partAt(const DatesRow& row, const DatesScale& scale, float x, float reach) {
  const float from = scale.xOf(double(row.start)), to = scale.xOf(double(row.finish));
  if (std::abs(x - to) <= reach) return BarPart::End;
  return x >= from && x < to ? BarPart::Body : BarPart::None;
}

double daysWhenPulled(const model::Programme& programme, size_t stage, const DatesChart& chart,
                      double day) {
  const model::Stage& s = programme.stages[stage];
  const DatesRow& row = chart.rows[stage];
  const double shown = double(row.finish - row.start);
  const double length = std::max(s.to - s.from, 0.5);
  // Weekends in the bar stretch it: the pull counts in the bar's own measure.
  const double pulled = (day - double(row.start)) / shown * length;
  return std::max(0.5, std::round(pulled * 2) / 2);
}

double timeOnBar(const DatesRow& row, size_t stage, double day) {
  const double within = (day - double(row.start)) / double(row.finish - row.start);
  return double(stage) + std::clamp(within, 0.0, 1.0);
}

std::vector<double> dayEnds(const model::Stage& stage, size_t index) {
  std::vector<double> ends;
  const double length = stage.to - stage.from;
  for (double day = std::floor(stage.from + kHair) + 1; day < stage.to - kHair; ++day)
    ends.push_back(double(index) + (day - stage.from) / length);
  ends.push_back(double(index) + 1);
  return ends;
}

double nextDayEnd(const model::Programme& programme, double time) {
  const auto& stages = programme.stages;
  for (size_t i = size_t(std::max(0.0, std::floor(time))); i < stages.size(); ++i)
    for (const double end : dayEnds(stages[i], i))
      if (end > time + kHair) return end;
  return double(stages.size());
}

double dayEndBefore(const model::Programme& programme, double time) {
  const auto& stages = programme.stages;
  const double at = std::min(time, double(stages.size()));
  for (size_t i = size_t(std::max(0.0, std::ceil(at))); i-- > 0;) {
    const std::vector<double> ends = dayEnds(stages[i], i);
    const auto before =
        std::find_if(ends.rbegin(), ends.rend(), [&](double end) { return end < at - kHair; });
    if (before != ends.rend()) return *before;
  }
  return 0;
}

}  // namespace viewer
