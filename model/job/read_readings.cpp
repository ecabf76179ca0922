#include "model/job/readings_csv.h"

#include "model/job/reading_checks.h"

namespace model {

namespace {

constexpr size_t kMostRows = 5000;
constexpr size_t kMostProblems = 200;

constexpr const char* kWhat = "a set of readings";

ReadingsResult refused(const std::string& file, std::string what, std::string instead) {
  return {{}, {{file, {}, Severity::Error, std::move(what), std::move(instead)}}};
}

void readRows(const CsvRows& csv, const std::string& file, const Job& job, ReadingsResult& result) {
  const ReadingColumns columns = readReadingColumns(csv.rows.front(), file, result.problems);
  if (!columns.usable) return;
  Decimals decimals(file, result.problems);
  ReadingChecks checks(job, file, result.problems);
  // What a quote left open has swallowed is not looked at.
  const size_t end = csv.whole ? csv.rows.size() : csv.rows.size() - 1;
  for (size_t i = 1; i < end; ++i) {
    if (result.problems.size() >= kMostProblems) {
      result.problems.push_back({file, csv.rows[i].place, Severity::Error,
                                 "too many mistakes to go on",
                                 "put those above right first; is this the right file?"});
      return;
    }
    const ReadingRow row{csv.rows[i], columns};
    auto reading = readReadingRow(row, csv.separator, file, decimals, result.problems);
    if (reading) reading = checks.accept(row, std::move(*reading));
    if (reading) result.rows.push_back(std::move(*reading));
  }
}

}  // namespace

ReadingsResult readReadings(std::string_view text, const std::string& file, const Job& job) {
  ReadingsResult result;
  const CsvRows csv = readCsvRows(text, file, kWhat, result.problems);
  if (csv.rows.size() > kMostRows + 1)
    return refused(file, "the file has over 5,000 readings", "make a set of each day's");
  if (!csv.rows.empty()) {
    readRows(csv, file, job, result);
  } else if (!hasErrors(result.problems)) {
    return refused(file, "there is nothing in this file",
                   "begin with kind,target,at,along mm,value,x mm,y mm,set-up,note,photo");
  }
  if (csv.rows.size() == 1 && !hasErrors(result.problems)) {
    result.problems.push_back({file, csv.rows.front().place, Severity::Warning,
                               "there are no readings under the headings",
                               "write a row for each, such as level,top-of-concrete,C,,-0.975"});
  }
  sortByPlace(result.problems);
  return result;
}

}  // namespace model
