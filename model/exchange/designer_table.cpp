#include "model/exchange/designer_table.h"

#include "model/asbuilt/reading_summary.h"
#include "model/asbuilt/words.h"
#include "model/level_text.h"

namespace model {

namespace {

enum Cell : size_t {
  kRow,
  kNumber,
  kKey,
  kWhat,
  kWhere,
  kUnit,
  kDrawn,
  kFrom,
  kHow,
  kRestsOn,
  kAt,
  kWidth,
  kInBricks,
  kSill,
  kHead,
  kBuilt,
  kOff,
  kLimit,
  kResult,
  kReadings,
  kAsked,
  kQuestion,
  kAssumed,
  kChanges,
  kWantedBy,
  kStage,
  kCells
};

struct Column {
  const char* heading;
  bool numeric = false;
};

constexpr bool kFigures = true;

constexpr Column kColumns[kCells] = {
    {"row"},
    {"number", kFigures},
    {"key"},
    {"what"},
    {"where"},
    {"unit"},
    {"drawn"},  // of a bond or a kind it is a word
    {"from"},
    {"how"},
    {"rests on questions"},
    {"at mm", kFigures},
    {"width mm", kFigures},
    {"in bricks mm", kFigures},
    {"sill m", kFigures},
    {"head m", kFigures},
    {"as built", kFigures},
    {"off mm", kFigures},
    {"allowed"},
    {"result"},
    {"readings", kFigures},
    {"asked by"},
    {"question"},
    {"assumed"},
    {"changes"},
    {"wanted by"},
    {"stage", kFigures},
};

using Cells = std::vector<std::string>;

void fillSource(Cells& cells, const Source& source) {
  cells[kFrom] = nameOf(source.origin);
  cells[kHow] = source.words;
  for (const size_t number : source.questions)
    cells[kRestsOn] += (cells[kRestsOn].empty() ? "" : " ") + std::to_string(number);
}

void fillRead(Cells& cells, const Deviation& d) {
  if (d.kind == ReadingKind::Level)
    cells[kBuilt] = levelText(d.read);
  else if (d.kind != ReadingKind::Corner)
    cells[kBuilt] = millimetres(d.read);
  cells[kOff] = millimetres(d.off);
  cells[kLimit] = d.limitText;
  cells[kResult] = nameOf(d.verdict);
}

const char* nameOf(AskedBy by) {
  switch (by) {
    case AskedBy::Job:
      return "the job";
    case AskedBy::Readings:
      return "readings";
    case AskedBy::LeftOut:
      return "left out on the drawing";
    case AskedBy::Bond:
      return "bond";
    case AskedBy::Check:
      break;
  }
  return "checks";
}

Cells levelRow(const SheetLevel& level, const AsBuilt& built) {
  Cells cells(kCells);
  cells[kRow] = "level";
  cells[kKey] = level.key;
  cells[kWhat] = level.name;
  cells[kWhere] = level.where;
  cells[kUnit] = "m";
  cells[kDrawn] = levelText(level.level);
  fillSource(cells, level.source);
  if (level.asRead) {
    fillRead(cells, built.deviations[level.asRead->deviation]);
    cells[kReadings] = std::to_string(level.asRead->readings);
  }
  return cells;
}

Cells dimensionRow(const SheetDimension& dimension) {
  Cells cells(kCells);
  cells[kRow] = "dimension";
  cells[kWhat] = dimension.what;
  cells[kWhere] = dimension.part;
  cells[kDrawn] = dimension.value;
  const bool figures = dimension.value.find_first_not_of("0123456789.") == std::string::npos;
  cells[kUnit] = figures ? "mm" : "";
  fillSource(cells, dimension.source);
  return cells;
}

Cells openingRow(const SheetOpening& opening) {
  Cells cells(kCells);
  cells[kRow] = "opening";
  cells[kWhat] = opening.name;
  cells[kWhere] = opening.wall + ", from " + opening.from;
  cells[kUnit] = "mm";
  cells[kAt] = millimetres(opening.at);
  cells[kWidth] = millimetres(opening.width);
  cells[kInBricks] = millimetres(opening.coordinating);
  cells[kSill] = levelText(opening.sill);
  cells[kHead] = levelText(opening.head);
  fillSource(cells, opening.widthFrom);
  std::string how;
  for (const auto& [what, source] : {std::pair{"width", &opening.widthFrom},
                                     {"sill", &opening.sillFrom},
                                     {"head", &opening.headFrom}}) {
    how += (how.empty() ? "" : ", ") + std::string(what) + " " + nameOf(source->origin);
    if (source == &opening.widthFrom) continue;
    for (const size_t number : source->questions)
      cells[kRestsOn] += (cells[kRestsOn].empty() ? "" : " ") + std::to_string(number);
  }
  cells[kHow] = how;
  return cells;
}

Cells questionRow(const Programme& programme, const SheetQuestion& question) {
  Cells cells(kCells);
  cells[kRow] = "question";
  cells[kWhat] = question.about;
  cells[kAsked] = nameOf(question.by);
  cells[kQuestion] = question.text;
  cells[kAssumed] = question.assumed;
  cells[kChanges] = question.changes;
  if (question.stage) {
    cells[kWantedBy] = programme.stages[*question.stage].start;
    cells[kStage] = std::to_string(*question.stage + 1);
  }
  return cells;
}

Cells offRow(const Job& job, const AsBuilt& built, const OffReading& off) {
  const Deviation& d = built.deviations[off.deviation];
  Cells cells(kCells);
  cells[kRow] = "deviation";
  cells[kNumber] = std::to_string(readingNumber(job, d.set, d.row));
  cells[kWhat] = targetWords(d);
  cells[kWhere] = d.place.words;
  const bool level = d.kind == ReadingKind::Level;
  cells[kUnit] = level ? "m" : "mm";
  if (d.kind != ReadingKind::Corner)
    cells[kDrawn] = level ? levelText(d.design) : millimetres(d.design);
  fillRead(cells, d);
  cells[kChanges] = off.touches;
  return cells;
}

}  // namespace

Table designerTable(const Model& model, const AsBuilt& built, const DesignerSheetFacts& facts) {
  Table table;
  table.title = "Levels, dimensions and questions of " + model.job.name + " for the designer";
  for (const Column& column : kColumns) {
    table.columns.emplace_back(column.heading);
    table.numeric.push_back(column.numeric);
  }
  const auto put = [&](size_t number, Cells cells) {
    if (cells[kNumber].empty()) cells[kNumber] = std::to_string(number);
    table.rows.push_back(std::move(cells));
  };
  for (size_t i = 0; i < facts.levels.size(); ++i) put(i + 1, levelRow(facts.levels[i], built));
  for (size_t i = 0; i < facts.dimensions.size(); ++i)
    put(i + 1, dimensionRow(facts.dimensions[i]));
  for (size_t i = 0; i < facts.openings.size(); ++i) put(i + 1, openingRow(facts.openings[i]));
  for (const SheetQuestion& question : facts.questions)
    put(question.number, questionRow(model.programme, question));
  for (const OffReading& off : facts.off) put(0, offRow(model.job, built, off));
  return table;
}

}  // namespace model
