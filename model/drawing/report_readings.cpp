// Every reading, one a row.
#include <algorithm>
#include <map>

#include "model/asbuilt/reading_summary.h"
#include "model/asbuilt/words.h"
#include "model/drawing/report_tables.h"
#include "model/job/reading_targets.h"
#include "model/level_text.h"
#include "model/levelling/staff_text.h"

namespace model {

namespace {

// In the order of their columns.
enum Cell : size_t {
  kNumber,
  kPoint,
  kTarget,
  kSetUp,
  kDrawn,
  kRead,
  kOff,
  kAllowed,
  kResult,
  kRemark,
  kCells
};

// Sources are named by number, in their order of appearance.
class Sources {
 public:
  std::string mark(const std::string& source) {
    const auto found = std::find(names_.begin(), names_.end(), source);
    const size_t number = size_t(found - names_.begin()) + 1;
    if (found == names_.end()) names_.push_back(source);
    return "[" + std::to_string(number) + "]";
  }
  std::string list() const {
    std::string text;
    for (size_t i = 0; i < names_.size(); ++i)
      text += (i == 0 ? "" : "; ") + ("[" + std::to_string(i + 1) + "] " + names_[i]);
    return text;
  }

 private:
  std::vector<std::string> names_;
};

// "±10", "+0 -25".
std::string allowedText(const Allowed& allowed) {
  if (millimetres(allowed.over) == millimetres(allowed.under))
    return "\u00b1" + millimetres(allowed.over);
  return "+" + millimetres(allowed.over) + " -" + millimetres(allowed.under);
}

std::vector<std::string> plainRow(const ReadingSet& set, size_t row, const Job& job, size_t index) {
  const Reading& reading = set.rows[row];
  std::vector<std::string> cells(kCells);
  cells[kNumber] = std::to_string(readingNumber(job, index, row));
  cells[kSetUp] =
      reading.kind == ReadingKind::Staff ? reading.setUp + " " + staffText(reading.value) : "";
  cells[kRemark] = reading.note;
  if (!reading.photo.empty())
    cells[kRemark] += (reading.note.empty() ? "photograph " : "; photograph ") + reading.photo;
  return cells;
}

void fillHeld(std::vector<std::string>& cells, const Deviation& d, Sources& sources) {
  const bool level = d.kind == ReadingKind::Level, corner = d.kind == ReadingKind::Corner;
  const auto value = [&](double metres) {
    return corner ? "" : level ? levelText(metres) : millimetres(metres);
  };
  cells[kPoint] = d.place.words;
  cells[kTarget] = targetWords(d);
  cells[kDrawn] = value(d.design);
  cells[kRead] = value(d.read);
  cells[kOff] = std::string(shapeOf(d)) + " " + signedMillimetres(d.off);
  cells[kAllowed] = allowedText(d.allowed) + " " + sources.mark(d.allowed.source);
  cells[kResult] = d.offWords == "on" ? "on" : d.offWords + ": " + nameOf(d.verdict);
  if (!d.latest) cells[kResult] += "; read again later, so it does not count";
}

void fillUnheld(std::vector<std::string>& cells, const Reading& reading, const std::string& why) {
  const ReadingTarget* target = findReadingTarget(reading.target);
  cells[kPoint] = reading.at;
  cells[kTarget] = target ? target->words : reading.target;
  if (reading.kind == ReadingKind::Level) cells[kRead] = levelText(reading.value);
  if (reading.kind == ReadingKind::Face || reading.kind == ReadingKind::Side ||
      reading.kind == ReadingKind::Diagonal)
    cells[kRead] = millimetres(reading.value);
  cells[kResult] = "held against nothing: " + why;
}

// A title stands again on every page: a long name must not fill it.
std::string shortTitle(const std::string& name) {
  constexpr size_t kMost = 80;
  if (name.size() <= kMost) return name;
  size_t end = kMost;
  while (end > 0 && (static_cast<unsigned char>(name[end]) & 0xc0) == 0x80) --end;
  return name.substr(0, end) + "\u2026";
}

void dropUnused(SheetTable& table) {
  for (size_t c = table.columns.size(); c-- > 0;) {
    const bool used = std::any_of(table.rows.begin(), table.rows.end(),
                                  [&](const auto& row) { return !row[c].empty(); });
    if (used) continue;
    table.columns.erase(table.columns.begin() + long(c));
    for (auto& row : table.rows) row.erase(row.begin() + long(c));
  }
}

}  // namespace

SheetTable readingsTable(const ReportData& data, size_t index) {
  const ReadingSet& set = data.job.readings[index];
  SheetTable table;
  table.title = "Readings: " + shortTitle(set.name);
  table.columns = {{"no.", true},     {"point", false},
                   {"what", false},   {"set-up, staff", false},
                   {"drawn", true},   {"read", true},
                   {"off mm", true},  {"allowed mm", false},
                   {"result", false}, {"remark, photograph", false}};
  Sources sources;
  std::map<size_t, const Deviation*> held;
  std::map<size_t, const Unheld*> unheld;
  for (const Deviation& d : data.built.deviations)
    if (d.set == index) held[d.row] = &d;
  for (const Unheld& u : data.built.unheld)
    if (u.set == index) unheld[u.row] = &u;
  for (size_t row = 0; row < set.rows.size(); ++row) {
    std::vector<std::string> cells = plainRow(set, row, data.job, index);
    if (const auto found = held.find(row); found != held.end())
      fillHeld(cells, *found->second, sources);
    else if (const auto none = unheld.find(row); none != unheld.end())
      fillUnheld(cells, set.rows[row], none->second->why);
    table.rows.push_back(std::move(cells));
  }
  dropUnused(table);
  table.note = "Levels in m, the rest in mm. Allowed by: " + sources.list() + ".";
  return table;
}

SheetTable photographsTable(const ReportData& data) {
  SheetTable table;
  table.title = "Photographs";
  table.columns = {
      {"photograph", false}, {"reading", true}, {"of", false}, {"set", false}, {"date", false}};
  for (size_t i = 0; i < data.job.readings.size(); ++i) {
    const ReadingSet& set = data.job.readings[i];
    for (size_t row = 0; row < set.rows.size(); ++row) {
      if (set.rows[row].photo.empty()) continue;
      const auto held =
          std::find_if(data.built.deviations.begin(), data.built.deviations.end(),
                       [&](const Deviation& d) { return d.set == i && d.row == row; });
      table.rows.push_back({set.rows[row].photo, std::to_string(readingNumber(data.job, i, row)),
                            held == data.built.deviations.end() ? set.rows[row].at : held->what,
                            set.name, set.date});
    }
  }
  return table;
}

}  // namespace model
