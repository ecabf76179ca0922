// What stands in each table.
#include "model/exchange/tables.h"

#include <cstdio>

namespace model {
namespace {

std::string number(double value, int places) {
  char text[64];
  std::snprintf(text, sizeof text, "%.*f", places, value);
  const bool zero = std::string_view(text).find_first_of("123456789") == std::string_view::npos;
  return zero && text[0] == '-' ? text + 1 : text;
}

// Whole days without a point, halves with one place.
std::string daysText(double days) {
  char text[64];
  std::snprintf(text, sizeof text, "%.4g", days);
  return text;
}

// Things that are counted are whole; the rest to two places.
std::string amountText(double amount, const std::string& unit) {
  return number(amount, unit == nameOf(Unit::Each) ? 0 : 2);
}

std::string joined(const std::vector<size_t>& stages) {
  std::string text;
  for (size_t stage : stages) {
    if (!text.empty()) text += ", ";
    text += std::to_string(stage + 1);
  }
  return text;
}

}  // namespace

Table levelsTable(const Model& model) {
  Table table;
  table.title = "Levels of " + model.job.name + ", metres above " + model.job.datumNote;
  table.columns = {"level m", "name", "courses from damp course", "whole course", "where", "key"};
  table.numeric = {true, false, true, false, false, false};
  table.detail = {false, false, false, true, false, true};
  const auto& datum = model.job.ordnanceDatum;
  if (datum) {
    table.columns.insert(table.columns.begin() + 1, "above ordnance datum m");
    table.numeric.insert(table.numeric.begin() + 1, true);
    table.detail.insert(table.detail.begin() + 1, false);
  }
  for (const ScheduledLevel& level : model.settingOut.schedule) {
    std::vector<std::string> row{levelText(level.level)};
    if (datum) row.push_back(number(level.level + *datum, 3));
    row.push_back(level.name);
    row.push_back(number(level.course, level.wholeCourse ? 0 : 2));
    row.push_back(level.wholeCourse ? "yes" : "no");
    row.push_back(level.where);
    row.push_back(level.key);
    table.rows.push_back(std::move(row));
  }
  return table;
}

Table takeoffTable(const Model& model, bool byStage) {
  Table table;
  table.title = "Quantities of " + model.job.name + (byStage ? ", by stage" : "");
  table.columns = {"item", "net", "unit", "allowance %", "order", "basis"};
  table.numeric = {false, true, false, true, true, false};
  if (byStage) {
    table.columns.insert(table.columns.begin(), "stage");
    table.numeric.insert(table.numeric.begin(), false);
  }
  const auto& rows = byStage ? model.takeoff.byStage : model.takeoff.rows;
  for (const TakeoffRow& row : rows) {
    std::vector<std::string> cells{row.item,
                                   amountText(row.amount, row.unit),
                                   row.unit,
                                   number(row.waste * 100, 0),
                                   amountText(row.order, row.unit),
                                   row.basis};
    if (byStage) cells.insert(cells.begin(), row.stage);
    table.rows.push_back(std::move(cells));
  }
  return table;
}

Table stagesTable(const Model& model) {
  Table table;
  table.title = "Stages of " + model.job.name;
  table.columns = {"number", "id",   "name",       "days",    "wait days",  "start", "finish",
                   "after",  "what", "at its end", "caution", "hold point", "note"};
  table.numeric = {true,  false, false, true,  true,  false, false,
                   false, false, false, false, false, false};
  // On a terminal the programme; the words of each stage are in CSV, JSON and on the screen.
  table.detail = {false, false, false, false, false, false, false,
                  false, true,  true,  true,  false, false};
  const auto& stages = model.programme.stages;
  for (size_t i = 0; i < stages.size(); ++i) {
    const Stage& s = stages[i];
    table.rows.push_back({std::to_string(i + 1), s.id, s.name, daysText(s.days),
                          daysText(s.waitDays), s.start, s.finish, joined(s.after), s.what, s.atEnd,
                          s.caution, s.holdPoint, s.note});
  }
  return table;
}

}  // namespace model
