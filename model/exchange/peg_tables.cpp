// Every peg, and the level pins, as tables; with what is read on the staff from a set-up.
#include <algorithm>

#include "model/decimal_text.h"
#include "model/exchange/line_tables.h"
#include "model/exchange/sight_cells.h"
#include "model/works/level_pins.h"

namespace model {
namespace {

void addColumn(Table& table, const std::string& heading, bool numeric, bool detail,
               const std::vector<std::string>& cells) {
  table.columns.push_back(heading);
  table.numeric.push_back(numeric);
  table.detail.push_back(detail);
  for (size_t i = 0; i < cells.size(); ++i) table.rows[i].push_back(cells[i]);
}

// Beside what is read on the staff it is left out for people.
void addHeights(const Model& model, const SetUp* setUp, const std::vector<Vec3>& points,
                Table& table) {
  const auto& datum = model.job.ordnanceDatum;
  if (!datum) return;
  std::vector<std::string> cells;
  for (const Vec3& point : points) cells.push_back(decimalText(point.z + *datum, 3));
  addColumn(table, "above ordnance datum m", true, setUp != nullptr, cells);
}

void addSights(const Model& model, const SetUp* setUp, const std::vector<Vec3>& points,
               Table& table) {
  if (!setUp) return;
  std::vector<std::string> staff, words;
  for (const LevelSight& sight : sightsOfPoints(model.job, model.settingOut, *setUp, points)) {
    const SightCells cells(sight);
    staff.push_back(cells.staff);
    words.push_back(cells.words);
  }
  addColumn(table, "staff m", true, false, staff);
  addColumn(table, "from there", false, false, words);
  table.title += readFromText(model.job, *setUp);
}

const char* gridWords(const Model& model) {
  return model.job.site.grid ? ", in the site's grid"
                             : ", east and north as x and y of the drawing: the job gives no site "
                               "grid";
}

std::string placeOf(const Model& model, const LevelPin& pin) {
  if (pin.concrete == PinnedConcrete::Foundation)
    return "trench " + model.settingOut.walls[pin.wall].name;
  return nameOf(pin.concrete);
}

void addPinWords(const Model& model, const std::vector<LevelPin>& pins, LinePart& part) {
  const auto any = [&](PinnedConcrete concrete) {
    return std::any_of(pins.begin(), pins.end(),
                       [&](const LevelPin& pin) { return pin.concrete == concrete; });
  };
  const bool cellar = any(PinnedConcrete::CellarSlab);
  if (cellar || any(PinnedConcrete::GroundSlab))
    part.words.push_back(
        std::string("Over a slab the letters go up the drawing and the numbers to the right") +
        (cellar ? "; K is the cellar" : ""));
  if (model.job.groundFloor.kind == GroundFloorKind::Suspended)
    part.words.emplace_back("The ground floor is beams and blocks: no pins");
  part.words.push_back("Pins stand " + lengthText(model.job.settingOut.pinSpacing) +
                       " apart at most: pin_spacing in the job. Along and in are taped from the "
                       "outer face's line");
}

}  // namespace

Table pegsTable(const Model& model, const SetOutLines& lines, const SetUp* setUp) {
  Table table;
  table.title = "Pegs of " + model.job.name + gridWords(model);
  table.columns = {"name", "east m", "north m", "level m", "code"};
  table.numeric = {false, true, true, true, false};
  table.detail.assign(table.columns.size(), false);
  std::vector<Vec3> points;
  for (const SetOutPeg& peg : lines.pegs) {
    table.rows.push_back({peg.name, decimalText(peg.east, 3), decimalText(peg.north, 3),
                          decimalText(peg.level, 3), peg.code});
    points.emplace_back(peg.at, peg.level);
  }
  addHeights(model, setUp, points, table);
  addSights(model, setUp, points, table);
  return table;
}

LinePart pinsPart(const Model& model, const SetUp* setUp) {
  LinePart part;
  part.key = "pins";
  Table& table = part.table;
  table.title = "Level pins of " + model.job.name + gridWords(model);
  table.columns = {"pin",        "in",          "east m",   "north m", "top m",
                   "along wall", "from corner", "along mm", "in mm"};
  table.numeric = {false, false, true, true, true, false, false, true, true};
  table.detail.assign(table.columns.size(), false);
  const std::vector<LevelPin> pins = levelPins(model.job, model.settingOut);
  std::vector<Vec3> points;
  for (const LevelPin& pin : pins) {
    const WallLine& wall = model.settingOut.walls[pin.wall];
    const Vec2 place = inGrid(model.job.site.grid, pin.at);
    table.rows.push_back({pin.name, placeOf(model, pin), decimalText(place.x, 3),
                          decimalText(place.y, 3), levelText(pin.top), wall.name,
                          model.settingOut.corners[wall.from].letter, lengthText(pin.along),
                          lengthText(pin.inward)});
    points.emplace_back(pin.at, pin.top);
  }
  addHeights(model, setUp, points, table);
  addSights(model, setUp, points, table);
  addPinWords(model, pins, part);
  return part;
}

}  // namespace model
