// What the readings come to: counts, changes, beds, cavities, rafters.
#include "model/drawing/report_tables.h"

#include <algorithm>
#include <cmath>

#include "model/asbuilt/reading_summary.h"
#include "model/asbuilt/words.h"
#include "model/decimal_text.h"
#include "model/level_text.h"
#include "model/levelling/set_up.h"
#include "model/levelling/staff_text.h"

namespace model {

namespace {

constexpr size_t kMost = 6;

std::string counted(size_t number) { return number == 0 ? "-" : std::to_string(number); }

}  // namespace

SheetTable setsTable(const ReportData& data) {
  SheetTable table;
  table.title = "Sets of readings";
  table.columns = {{"set", false},     {"date", false},      {"by", false},
                   {"readings", true}, {"within", true},     {"at the edge", true},
                   {"out", true},      {"read again", true}, {"held against nothing", true}};
  for (size_t i = 0; i < data.job.readings.size(); ++i) {
    const ReadingSet& set = data.job.readings[i];
    const ReadingCount count = countReadings(data.built, i);
    table.rows.push_back({set.name, set.date.empty() ? "not given" : set.date, set.by,
                          std::to_string(count.all()), counted(count.within),
                          counted(count.atTheEdge), counted(count.out), counted(count.readAgain),
                          counted(count.unheld)});
  }
  return table;
}

SheetTable mostOffTable(const ReportData& data) {
  SheetTable table;
  table.title = "Those that matter most";
  table.columns = {{"reading", true},
                   {"what", false},
                   {"off mm", true},
                   {"result", false},
                   {"allowed by", false}};
  for (const size_t index : mostOff(data.built, kMost)) {
    const Deviation& d = data.built.deviations[index];
    table.rows.push_back({std::to_string(readingNumber(data.job, d.set, d.row)), d.what,
                          std::string(shapeOf(d)) + " " + signedMillimetres(d.off), d.words,
                          d.allowed.source});
  }
  const ReadingCount count = countReadings(data.built);
  const size_t more = count.out + count.atTheEdge - table.rows.size();
  if (more > 0) table.note = "And " + std::to_string(more) + " more: see the readings.";
  return table;
}

SheetTable changesTable(const ReportData& data) {
  SheetTable table;
  table.title = "What the readings change";
  table.columns = {{"what", false}, {"where", false}, {"words", false}};
  for (const Change& change : data.built.changes)
    table.rows.push_back({nameOf(change.of), change.where, change.words});
  table.note =
      "These are answers in common use. The designer decides where they touch what is drawn.";
  return table;
}

SheetTable firstBedsTable(const ReportData& data) {
  SheetTable table;
  table.title = "First beds, from concrete as built to damp course";
  table.columns = {{"where", false},         {"concrete m", true},      {"height mm", true},
                   {"courses", true},        {"first bed drawn", true}, {"as built", true},
                   {"with the answer", true}};
  for (const FirstBed& bed : data.built.beds) {
    const Deviation& d = data.built.deviations[bed.deviation];
    table.rows.push_back({d.place.words, levelText(d.read), millimetres(bed.height),
                          std::to_string(bed.courses), millimetres(bed.drawn), millimetres(bed.bed),
                          millimetres(bed.bedThen)});
  }
  return table;
}

SheetTable cavitiesTable(const ReportData& data) {
  SheetTable table;
  table.title = "Cavities";
  table.columns = {{"wall", false}, {"drawn", true}, {"least", true},
                   {"at", true},    {"most", true},  {"at", true}};
  for (const CavityAsBuilt& c : data.built.cavities)
    table.rows.push_back({data.out.walls[c.wall].name, millimetres(c.drawn),
                          millimetres(c.least.width), lengthText(c.least.s),
                          millimetres(c.most.width), lengthText(c.most.s)});
  table.note = "Widths in mm, where along the wall from its first corner.";
  return table;
}

SheetTable raftersTable(const ReportData& data) {
  SheetTable table;
  table.title = "Rafters, over the plates as read";
  table.columns = {{"rafter", false},    {"from", false},       {"at mm", true},
                   {"drawn mm", true},   {"plate", false},      {"ridge held", false},
                   {"pitch then", true}, {"pitch held", false}, {"its top then", false}};
  bool beyond = false;
  for (const RafterChange& r : data.built.roof.rafters) {
    const WallLine& wall = data.out.walls[r.wall];
    beyond = beyond || r.beyond;
    table.rows.push_back(
        {wall.name + " " + r.id.substr(r.id.find_last_of('/') + 1) + (r.beyond ? " *" : ""),
         "corner " + data.out.corners[wall.from].letter, lengthText(r.s), lengthText(r.length),
         plateText(r), longerText(r.ridgeHeld), decimalText(r.pitchThen, 2) + "\u00b0",
         longerText(r.pitchHeld), offText(ReadingKind::Level, r.topUp)});
  }
  table.note =
      "Ridge held: ridges, hips and valleys stay as drawn and the pitch gives way. Pitch held: "
      "every slope keeps its pitch on its own plate, and ridges, hips and valleys move. Lengths "
      "run from the plate's outer edge to the line at the top, in mm.";
  if (beyond) table.note += " * Past the readings: the nearest is held.";
  return table;
}

SheetTable setUpsTable(const ReportData& data) {
  SheetTable table;
  table.title = "Set-ups of the instrument";
  table.columns = {{"set-up", false},   {"date", false},      {"bench mark", false},
                   {"its level", true}, {"read on it", true}, {"level of the line", true}};
  for (const SetUp& setUp : data.job.setUps) {
    const bool used =
        std::any_of(data.job.readings.begin(), data.job.readings.end(), [&](const ReadingSet& set) {
          return std::any_of(set.rows.begin(), set.rows.end(), [&](const Reading& reading) {
            return reading.kind == ReadingKind::Staff && reading.setUp == setUp.name;
          });
        });
    const auto instrument = instrumentOf(data.job, setUp);
    const BenchMark* mark = markOf(data.job, setUp);
    if (!used || !instrument || !mark) continue;
    table.rows.push_back({setUp.name, setUp.date, mark->name, levelText(mark->level),
                          staffText(setUp.backsight), levelText(instrument->collimation)});
  }
  return table;
}

}  // namespace model
