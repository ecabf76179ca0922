// The schedule of levels as a table.
#include "model/decimal_text.h"
#include "model/exchange/sight_cells.h"
#include "model/exchange/tables.h"
#include "model/lines/level_sights.h"

namespace model {
namespace {

// One column: its heading, how it is set, and what stands in it.
struct Column {
  std::string heading;
  bool numeric = false;
  bool detail = false;  // not for people
  std::vector<std::string> cells;
};

// Heights over a mark; a level under it is negative.
Column overMark(const Model& model, const BenchMark& mark, bool detail) {
  Column column{"over " + mark.name + " m", true, detail, {}};
  for (const ScheduledLevel& line : model.settingOut.schedule)
    column.cells.push_back(levelText(line.level - mark.level));
  return column;
}

std::vector<Column> heights(const Model& model) {
  const auto& schedule = model.settingOut.schedule;
  std::vector<Column> columns{{"level m", true, false, {}}};
  for (const ScheduledLevel& line : schedule) columns[0].cells.push_back(levelText(line.level));
  const auto& main = model.job.site.benchMark;
  if (main) columns.push_back(overMark(model, *main, false));
  for (const BenchMark& mark : model.job.site.marks) columns.push_back(overMark(model, mark, true));
  if (const auto& datum = model.job.ordnanceDatum) {
    columns.push_back({"above ordnance datum m", true, false, {}});
    for (const ScheduledLevel& line : schedule)
      columns.back().cells.push_back(decimalText(line.level + *datum, 3));
  }
  return columns;
}

void addNames(const Model& model, std::vector<Column>& columns) {
  Column name{"name", false, false, {}}, course{"courses from damp course", true, false, {}},
      whole{"whole course", false, true, {}}, where{"where", false, false, {}},
      key{"key", false, true, {}};
  for (const ScheduledLevel& line : model.settingOut.schedule) {
    name.cells.push_back(line.name);
    course.cells.push_back(decimalText(line.course, line.wholeCourse ? 0 : 2));
    whole.cells.emplace_back(line.wholeCourse ? "yes" : "no");
    where.cells.push_back(line.where);
    key.cells.push_back(line.key);
  }
  columns.insert(columns.end(), {name, course, whole, where, key});
}

std::vector<Column> staffColumns(const Model& model, const SetUp& setUp) {
  Column staff{"staff m", true, false, {}}, words{"from there", false, false, {}};
  for (const LevelSight& sight : sightsOfLevels(model.job, model.settingOut, setUp)) {
    const SightCells cells(sight);
    staff.cells.push_back(cells.staff);
    words.cells.push_back(cells.words);
  }
  return {staff, words};
}

Table tableOf(const std::string& title, const std::vector<Column>& columns, size_t rows) {
  Table table;
  table.title = title;
  table.rows.resize(rows);
  for (const Column& column : columns) {
    table.columns.push_back(column.heading);
    table.numeric.push_back(column.numeric);
    table.detail.push_back(column.detail);
    for (size_t i = 0; i < rows; ++i)
      table.rows[i].push_back(i < column.cells.size() ? column.cells[i] : "");
  }
  return table;
}

std::string title(const Model& model) {
  return "Levels of " + model.job.name + ", metres above " + model.job.datumNote;
}

}  // namespace

Table levelsTable(const Model& model) {
  std::vector<Column> columns = heights(model);
  addNames(model, columns);
  return tableOf(title(model), columns, model.settingOut.schedule.size());
}

Table levelsTable(const Model& model, const SetUp& setUp) {
  // What is read stands beside the level; the marks give way to it, for people.
  std::vector<Column> columns = heights(model);
  for (size_t i = 1; i < columns.size(); ++i) columns[i].detail = true;
  const std::vector<Column> read = staffColumns(model, setUp);
  columns.insert(columns.begin() + 1, read[0]);
  addNames(model, columns);
  for (Column& column : columns)
    if (column.heading == "courses from damp course") column.detail = true;
  columns.push_back(read[1]);
  return tableOf(title(model) + readFromText(model.job, setUp), columns,
                 model.settingOut.schedule.size());
}

}  // namespace model
