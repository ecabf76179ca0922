// What stands in each table.
#include "model/exchange/tables.h"

#include "model/decimal_text.h"
#include "model/exchange/programme_tables.h"

namespace model {
namespace {

// Things that are counted are whole; the rest to two places.
std::string amountText(double amount, const std::string& unit) {
  return decimalText(amount, unit == nameOf(Unit::Each) ? 0 : 2);
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
                                   decimalText(row.waste * 100, 0),
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
