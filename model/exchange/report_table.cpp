#include "model/exchange/report_table.h"

#include <map>
#include <utility>

#include "model/asbuilt/designer_questions.h"
#include "model/asbuilt/reading_summary.h"
#include "model/asbuilt/words.h"
#include "model/job/reading_targets.h"
#include "model/levelling/staff_text.h"

namespace model {

namespace {

enum Cell : size_t {
  kRow,
  kNumber,
  kSet,
  kDate,
  kBy,
  kSetUp,
  kStaff,
  kPoint,
  kWhat,
  kX,
  kY,
  kUnit,
  kDrawn,
  kRead,
  kOff,
  kOver,
  kUnder,
  kAllowedBy,
  kResult,
  kWords,
  kCounts,
  kRemark,
  kPhotograph,
  kAbout,
  kQuestion,
  kAsked,
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
    {"set"},
    {"date"},
    {"by"},
    {"set-up"},
    {"staff m", kFigures},
    {"point"},
    {"what"},
    {"x mm", kFigures},
    {"y mm", kFigures},
    {"unit"},
    {"drawn", kFigures},
    {"read", kFigures},
    {"off mm", kFigures},
    {"over mm", kFigures},
    {"under mm", kFigures},
    {"allowed by"},
    {"result"},
    {"words"},
    {"counts"},
    {"remark"},
    {"photograph"},
    {"about"},
    {"question"},
    {"asked"},
};

using Cells = std::vector<std::string>;

void fillHeld(Cells& cells, const Deviation& d) {
  const bool level = d.kind == ReadingKind::Level, corner = d.kind == ReadingKind::Corner;
  cells[kPoint] = d.place.words;
  cells[kWhat] = targetWords(d);
  cells[kX] = lengthText(d.place.at.x);
  cells[kY] = lengthText(d.place.at.y);
  cells[kUnit] = level ? "m" : "mm";
  if (!corner) {
    cells[kDrawn] = level ? levelText(d.design) : millimetres(d.design);
    cells[kRead] = level ? levelText(d.read) : millimetres(d.read);
  }
  cells[kOff] = millimetres(d.off);
  cells[kOver] = millimetres(d.allowed.over);
  cells[kUnder] = millimetres(d.allowed.under);
  cells[kAllowedBy] = d.allowed.source;
  cells[kResult] = nameOf(d.verdict);
  cells[kWords] = d.words;
  cells[kCounts] = d.latest ? "yes" : "no: read again later";
}

void fillUnheld(Cells& cells, const Reading& reading, const std::string& why) {
  const ReadingTarget* target = findReadingTarget(reading.target);
  cells[kPoint] = reading.at;
  cells[kWhat] = target ? target->words : reading.target;
  const bool level = reading.kind == ReadingKind::Level;
  if (reading.kind != ReadingKind::Corner && reading.kind != ReadingKind::Staff) {
    cells[kUnit] = level ? "m" : "mm";
    cells[kRead] = level ? levelText(reading.value) : millimetres(reading.value);
  }
  cells[kCounts] = "no: " + why;
}

Cells readingRow(const Job& job, size_t index, size_t row) {
  const ReadingSet& set = job.readings[index];
  const Reading& reading = set.rows[row];
  Cells cells(kCells);
  cells[kRow] = "reading";
  cells[kNumber] = std::to_string(readingNumber(job, index, row));
  cells[kSet] = set.name;
  cells[kDate] = set.date;
  cells[kBy] = set.by;
  if (reading.kind == ReadingKind::Staff) {
    cells[kSetUp] = reading.setUp;
    cells[kStaff] = staffText(reading.value);
  }
  cells[kRemark] = reading.note;
  cells[kPhotograph] = reading.photo;
  return cells;
}

}  // namespace

Table reportTable(const Job& job, const AsBuilt& built) {
  Table table;
  table.title = "Readings of " + job.name + " against the drawing, and questions";
  for (const Column& column : kColumns) {
    table.columns.emplace_back(column.heading);
    table.numeric.push_back(column.numeric);
  }
  using At = std::pair<size_t, size_t>;  // set and row
  std::map<At, const Deviation*> held;
  std::map<At, const Unheld*> unheld;
  for (const Deviation& d : built.deviations) held[{d.set, d.row}] = &d;
  for (const Unheld& u : built.unheld) unheld[{u.set, u.row}] = &u;
  for (size_t set = 0; set < job.readings.size(); ++set) {
    for (size_t row = 0; row < job.readings[set].rows.size(); ++row) {
      Cells cells = readingRow(job, set, row);
      if (const auto found = held.find({set, row}); found != held.end())
        fillHeld(cells, *found->second);
      else if (const auto none = unheld.find({set, row}); none != unheld.end())
        fillUnheld(cells, job.readings[set].rows[row], none->second->why);
      table.rows.push_back(std::move(cells));
    }
  }
  size_t number = 0;
  for (const DesignerQuestion& question : designerQuestions(job, built)) {
    Cells cells(kCells);
    cells[kRow] = "question";
    cells[kNumber] = std::to_string(++number);
    cells[kAbout] = question.about;
    cells[kQuestion] = question.text;
    cells[kAsked] = question.ofJob ? "in the job" : "follows from readings";
    table.rows.push_back(std::move(cells));
  }
  return table;
}

}  // namespace model
