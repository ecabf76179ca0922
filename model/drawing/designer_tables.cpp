#include "model/drawing/designer_tables.h"

#include <algorithm>
#include <cmath>

#include "model/asbuilt/reading_summary.h"
#include "model/asbuilt/words.h"
#include "model/decimal_text.h"
#include "model/level_text.h"

namespace model {

namespace {

constexpr double kSame = 0.0005;  // metres

// "given, line 52", "worked out: from the eaves up the pitch".
std::string fromWords(const Source& source) {
  const char* join = source.origin == Origin::Given ? ", " : ": ";
  return nameOf(source.origin) + (source.words.empty() ? std::string() : join + source.words);
}

// One opening by its name, several by their numbers.
std::string whereWords(const SheetLevel& level) {
  if (level.openings.size() < 2) return level.where;
  std::vector<size_t> numbers;
  for (const size_t opening : level.openings) numbers.push_back(opening + 1);
  return "openings " + numberRuns(numbers);
}

// "7 in brick sizes", or how much it is off them.
std::string bricksWords(const SheetOpening& opening) {
  const double bricks = opening.halfBricks / 2.0;
  const std::string called = decimalText(bricks, opening.halfBricks % 2 == 0 ? 0 : 1) +
                             (bricks == 1 ? " brick" : " bricks");
  const double off = opening.width - opening.coordinating;
  if (std::abs(off) < kSame) return called;
  return called + ", " + signedMillimetres(off);
}

// Columns that no row uses are left out.
void dropEmpty(SheetTable& table) {
  for (size_t i = table.columns.size(); i-- > 0;) {
    const bool used = std::any_of(table.rows.begin(), table.rows.end(),
                                  [&](const auto& row) { return !row[i].empty(); });
    if (used) continue;
    table.columns.erase(table.columns.begin() + long(i));
    for (auto& row : table.rows) row.erase(row.begin() + long(i));
  }
}

}  // namespace

SheetTable questionsInShort(const DesignerSheetData& data) {
  SheetTable table;
  table.title = "Questions, and when an answer is wanted";
  table.columns = {{"question", false}, {"about", false}, {"wanted", false}};
  for (const SheetQuestion& question : data.facts.questions)
    table.rows.push_back({"Q" + std::to_string(question.number), question.about,
                          wantedBy(data.model.programme, question)});
  return table;
}

SheetTable sheetLevelsTable(const DesignerSheetData& data) {
  const Job& job = data.model.job;
  SheetTable table;
  table.title = "Levels";
  table.columns = {{"no", false},    {"level m", true}, {"above OD", true}, {"what", false},
                   {"where", false}, {"from", false},   {"Q", false},       {"as built", true},
                   {"off mm", true}, {"result", false}, {"readings", false}};
  for (size_t i = 0; i < data.facts.levels.size(); ++i) {
    const SheetLevel& level = data.facts.levels[i];
    std::vector<std::string> row{
        "L" + std::to_string(i + 1),
        levelText(level.level),
        job.ordnanceDatum ? decimalText(level.level + *job.ordnanceDatum, 3) : "",
        level.name,
        whereWords(level),
        fromWords(level.source),
        numberRuns(level.source.questions),
        "",
        "",
        "",
        ""};
    if (level.asRead) {
      const Deviation& d = data.built.deviations[level.asRead->deviation];
      row[7] = levelText(d.read);
      row[8] = signedMillimetres(d.off);
      row[9] = markOf(d);
      row[10] = std::to_string(level.asRead->readings) +
                (level.asRead->readings > 1 ? ", most off at " : " at ") + d.place.words;
    }
    table.rows.push_back(std::move(row));
  }
  table.note = "0.000: " + (job.datumNote.empty() ? std::string("not said what") : job.datumNote) +
               ". Q: the questions that the level rests on until they are answered.";
  dropEmpty(table);
  return table;
}

SheetTable sheetDimensionsTable(const DesignerSheetData& data) {
  SheetTable table;
  table.title = "Dimensions";
  table.columns = {{"part", false}, {"what", false}, {"mm", true}, {"from", false}, {"Q", false}};
  std::string part;
  for (const SheetDimension& each : data.facts.dimensions) {
    table.rows.push_back({each.part == part ? "" : each.part, each.what, each.value,
                          fromWords(each.source), numberRuns(each.source.questions)});
    part = each.part;
  }
  dropEmpty(table);
  return table;
}

SheetTable sheetOpeningsTable(const DesignerSheetData& data) {
  SheetTable table;
  table.title = "Openings";
  table.columns = {{"no", false},    {"name", false},  {"what", false},  {"wall", false},
                   {"from", false},  {"at mm", true},  {"width", true},  {"in bricks", false},
                   {"height", true}, {"sill m", true}, {"head m", true}, {"assumed", false},
                   {"Q", false}};
  for (size_t i = 0; i < data.facts.openings.size(); ++i) {
    const SheetOpening& o = data.facts.openings[i];
    std::string assumed;
    std::vector<size_t> asked;
    for (const auto& [what, source] :
         {std::pair{"width", &o.widthFrom}, {"sill", &o.sillFrom}, {"head", &o.headFrom}}) {
      if (source->origin != Origin::Assumed) continue;
      assumed += (assumed.empty() ? "" : ", ") + std::string(what);
      asked.insert(asked.end(), source->questions.begin(), source->questions.end());
    }
    std::sort(asked.begin(), asked.end());
    table.rows.push_back({"O" + std::to_string(i + 1), o.name, o.kind, o.wall, o.from,
                          millimetres(o.at), millimetres(o.width), bricksWords(o),
                          millimetres(o.head - o.sill), levelText(o.sill), levelText(o.head),
                          assumed, numberRuns(asked)});
  }
  table.note =
      "At: along the outer face from that corner to the nearer jamb. In bricks: the nearest "
      "width of whole and half bricks with a joint at both ends, and what the opening is off it. "
      "What is not named as assumed is given.";
  dropEmpty(table);
  return table;
}

SheetTable offReadingsTable(const DesignerSheetData& data) {
  SheetTable table;
  table.title = "Readings out of what is allowed";
  table.columns = {{"reading", false},     {"what", false},   {"where", false},
                   {"drawn", true},        {"read", true},    {"off mm", true},
                   {"allowed", false},     {"result", false}, {"allowed by", false},
                   {"touches next", false}};
  for (const OffReading& off : data.facts.off) {
    const Deviation& d = data.built.deviations[off.deviation];
    const bool level = d.kind == ReadingKind::Level, corner = d.kind == ReadingKind::Corner;
    const auto text = [&](double value) {
      return corner ? std::string() : level ? levelText(value) : millimetres(value);
    };
    table.rows.push_back({"R" + std::to_string(readingNumber(data.model.job, d.set, d.row)),
                          targetWords(d), d.place.words, text(d.design), text(d.read), d.offWords,
                          d.limitText, markOf(d), d.allowed.source, off.touches});
  }
  dropEmpty(table);
  return table;
}

}  // namespace model
