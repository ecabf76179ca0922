#include "model/job/typed_reading.h"

#include <algorithm>
#include <array>
#include <utility>

#include "model/job/reading_columns.h"
#include "model/job/reading_row.h"
#include "model/job/readings_csv.h"
#include "model/job/text_index.h"

namespace model {

namespace {

constexpr std::array kColumns{ReadingColumn::Kind,  ReadingColumn::Target, ReadingColumn::At,
                              ReadingColumn::Along, ReadingColumn::Value,  ReadingColumn::X,
                              ReadingColumn::Y,     ReadingColumn::SetUp,  ReadingColumn::Note,
                              ReadingColumn::Photo};

const std::string& cellOf(const TypedReading& typed, ReadingColumn column) {
  switch (column) {
    case ReadingColumn::Kind:
      return typed.kind;
    case ReadingColumn::Target:
      return typed.target;
    case ReadingColumn::At:
      return typed.at;
    case ReadingColumn::Along:
      return typed.along;
    case ReadingColumn::Value:
      return typed.value;
    case ReadingColumn::X:
      return typed.x;
    case ReadingColumn::Y:
      return typed.y;
    case ReadingColumn::SetUp:
      return typed.setUp;
    case ReadingColumn::Note:
      return typed.note;
    case ReadingColumn::Photo:
      break;
  }
  return typed.photo;
}

bool isNumber(ReadingColumn column) {
  return column == ReadingColumn::Along || column == ReadingColumn::Value ||
         column == ReadingColumn::X || column == ReadingColumn::Y;
}

// The first decimal mark in the file's numbers; without any the usual one beside its separator.
char markOf(const CsvRows& csv, const ReadingColumns& columns) {
  for (size_t i = 1; i < csv.rows.size(); ++i) {
    const ReadingRow row{csv.rows[i], columns};
    for (const ReadingColumn column : kColumns) {
      const std::string text = isNumber(column) ? row.text(column) : "";
      if (const size_t at = text.find_first_of(".,"); at != std::string::npos) return text[at];
    }
  }
  return csv.separator == ';' ? ',' : '.';
}

// Where the row that begins at `at` ends, its line break left out.
size_t endOfRow(std::string_view text, size_t at) {
  bool quoted = false;
  for (; at < text.size(); ++at) {
    if (text[at] == '"') quoted = !quoted;
    if (text[at] == '\n' && !quoted) break;
  }
  return at > 0 && at <= text.size() && text[at - 1] == '\r' ? at - 1 : at;
}

// Builds the longer text.
class RowAdder {
 public:
  RowAdder(std::string_view text, const TypedReading& typed)
      : text_(text),
        typed_(typed),
        newLine_(text_.find('\n') == std::string::npos || text_.find("\r\n") != std::string::npos
                     ? "\r\n"
                     : "\n") {}

  // `file` is only used in messages that are told elsewhere.
  std::string added(const std::string& file) {
    if (text_.find_first_not_of(" \t\r\n\xEF\xBB\xBF") == std::string::npos) addHeadings();
    Problems ignored;
    csv_ = readCsvRows(text_, file, "a set of readings", ignored);
    if (csv_.rows.empty()) return text_;
    columns_ = readReadingColumns(csv_.rows.front(), file, ignored);
    if (!columns_.usable) return text_;
    addMissingColumns();
    addRow();
    return std::move(text_);
  }

 private:
  void addHeadings() {
    for (const ReadingColumn column : kColumns)
      text_ += std::string(column == ReadingColumn::Kind ? "" : ",") + headingOf(column);
    text_ += newLine_;
  }

  void addMissingColumns() {
    std::string more;
    for (const ReadingColumn column : kColumns) {
      if (columns_.at.count(column) || cellOf(typed_, column).empty()) continue;
      columns_.at[column] = columns_.count++;
      more += csv_.separator + std::string(headingOf(column));
    }
    const size_t start = LineIndex(text_).lineStart(csv_.rows.front().place.line);
    text_.insert(endOfRow(text_, start), more);
  }

  void addRow() {
    if (text_.back() != '\n') text_ += newLine_;
    const char mark = markOf(csv_, columns_);
    std::vector<std::string> cells(columns_.count);
    for (const auto& [column, index] : columns_.at) {
      const std::string& cell = cellOf(typed_, column);
      cells[index] = isNumber(column) ? withDecimalMark(cell, mark) : cell;
    }
    for (size_t i = 0; i < cells.size(); ++i)
      text_ +=
          (i > 0 ? std::string(1, csv_.separator) : "") + csvCellText(cells[i], csv_.separator);
    text_ += newLine_;
  }

  std::string text_;
  const TypedReading& typed_;
  std::string newLine_;
  CsvRows csv_;
  ReadingColumns columns_;
};

bool isError(const Problem& problem) { return problem.severity == Severity::Error; }

}  // namespace

AddedReading addReading(std::string_view text, const TypedReading& typed, const std::string& file,
                        const Job& job) {
  AddedReading added;
  std::string longer = RowAdder(text, typed).added(file);
  ReadingsResult read = readReadings(longer, file, job);
  Problems ignored;
  const CsvRows csv = readCsvRows(longer, file, "a set of readings", ignored);
  const int line = csv.rows.empty() ? 0 : csv.rows.back().place.line;
  // Of what was there before only errors are told: its warnings are known.
  std::copy_if(read.problems.begin(), read.problems.end(), std::back_inserter(added.problems),
               [&](const Problem& p) { return isError(p) || p.place.line == line; });
  if (hasErrors(added.problems) || longer == text || read.rows.empty()) return added;
  added.reading = std::move(read.rows.back());
  added.text = std::move(longer);
  return added;
}

}  // namespace model
