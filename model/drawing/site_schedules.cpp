#include "model/drawing/site_schedules.h"

#include <algorithm>

#include "model/decimal_text.h"
#include "model/level_text.h"
#include "model/settingout/offsets.h"

namespace model {

SheetTable cornersTable(const Job& job, const SettingOut& out) {
  SheetTable table;
  table.title = "Corners";
  table.columns = {{"corner", false}, {"x", true}, {"y", true}, {"angle inside", true}};
  table.note = "Coordinates of the drawing, mm, of the outer face.";
  const auto& grid = job.site.grid;
  if (grid) {
    table.columns.push_back({"east m", true});
    table.columns.push_back({"north m", true});
    table.note += " East and north in the site's grid.";
  }
  const auto add = [&](const std::string& name, const Vec2& at, const std::string& angle) {
    std::vector<std::string> row{name, lengthText(at.x), lengthText(at.y), angle};
    if (grid) {
      const Vec2 there = inGrid(grid, at);
      row.push_back(decimalText(there.x, 3));
      row.push_back(decimalText(there.y, 3));
    }
    table.rows.push_back(std::move(row));
  };
  for (const Corner& corner : out.corners)
    add(corner.letter, corner.at,
        decimalText(corner.angle * 180 / 3.14159265358979323846, 3) + "\u00b0");
  for (size_t i = 0; i < out.cellarOutline.size(); ++i)
    add("cellar " + std::to_string(i + 1), out.cellarOutline[i], "");
  if (!out.cellarOutline.empty()) table.note += " Cellar: outer face of its structural walls.";
  return table;
}

SheetTable benchMarksTable(const Job& job) {
  SheetTable table;
  table.title = "Bench marks";
  table.columns = {{"name", false}, {"level", true}, {"x", true}, {"y", true}};
  if (job.site.marks.empty()) return table;
  const auto add = [&](const BenchMark& mark) {
    table.rows.push_back(
        {mark.name, levelText(mark.level), lengthText(mark.at.x), lengthText(mark.at.y)});
  };
  if (job.site.benchMark) add(*job.site.benchMark);
  for (const BenchMark& mark : job.site.marks) add(mark);
  return table;
}

SheetTable offsetsTable(const Job& job, const SettingOut& out) {
  SheetTable table;
  table.title = "Offsets";
  table.columns = {{"nearest to", false}, {"clear", true}};
  table.note = "From the finished face.";
  for (const SiteOffset& offset : deriveOffsets(job, out))
    table.rows.push_back({offset.to, lengthText(offset.distance)});
  return table;
}

SheetTable limitsTable(const SetOutLines& lines) {
  SheetTable table;
  table.title = "Limits";
  table.columns = {{"what", false}, {"verdict", false}, {"from", false}};
  for (const LimitTest& test : lines.limits) {
    if (!test.given) continue;
    // The mark alone: the words begin with the verdict themselves.
    const std::string shape = shapeOf(test.verdict);
    table.rows.push_back(
        {test.what, shape.substr(0, shape.find(' ')) + " " + test.words, test.note});
  }
  return table;
}

std::array<SheetTable, 2> levelsTables(const Job& job, const SettingOut& out) {
  SheetTable table;
  table.columns = {{"level", true}};
  if (job.ordnanceDatum) table.columns.push_back({"above ordnance datum", true});
  table.columns.push_back({"what", false});
  table.columns.push_back({"where", false});
  std::array<SheetTable, 2> tables{table, table};
  tables[0].title = "Levels up to the ground floor";
  tables[1].title = "Levels above";
  const double floor = std::max(out.levels.dampCourse, out.levels.finishedFloor.front());
  for (const ScheduledLevel& level : out.schedule) {
    std::vector<std::string> row{levelText(level.level)};
    if (job.ordnanceDatum) row.push_back(decimalText(level.level + *job.ordnanceDatum, 3));
    row.push_back(level.name);
    row.push_back(level.where);
    tables[level.level > floor + 5e-4 ? 1 : 0].rows.push_back(std::move(row));
  }
  return tables;
}

}  // namespace model
