// The writing half of readings_csv.h.
#include <algorithm>

#include "model/job/lengths.h"
#include "model/job/reading_columns.h"
#include "model/job/readings_csv.h"

namespace model {

namespace {

constexpr ReadingColumn kOrder[] = {
    ReadingColumn::Kind,  ReadingColumn::Target, ReadingColumn::At, ReadingColumn::Along,
    ReadingColumn::Value, ReadingColumn::X,      ReadingColumn::Y,  ReadingColumn::SetUp,
    ReadingColumn::Note,  ReadingColumn::Photo};

// Without the unit that the few lengths need which no number of millimetres gives.
std::string millimetres(double metres) {
  const std::string text = lengthValueText(metres);
  return text.front() == '"' ? numberValueText(metres * 1000) : text;
}

std::string valueText(const Reading& reading) {
  switch (reading.kind) {
    case ReadingKind::Corner:
      return {};
    case ReadingKind::Level:
    case ReadingKind::Staff:
      return levelValueText(reading.value);
    default:
      return millimetres(reading.value);
  }
}

std::string cellText(const Reading& reading, ReadingColumn column) {
  switch (column) {
    case ReadingColumn::Kind:
      return wordOf(reading.kind);
    case ReadingColumn::Target:
      return reading.target;
    case ReadingColumn::At:
      return reading.at;
    case ReadingColumn::Along:
      return reading.along ? millimetres(*reading.along) : "";
    case ReadingColumn::Value:
      return valueText(reading);
    case ReadingColumn::X:
      return reading.position ? millimetres(reading.position->x) : "";
    case ReadingColumn::Y:
      return reading.position ? millimetres(reading.position->y) : "";
    case ReadingColumn::SetUp:
      return reading.setUp;
    case ReadingColumn::Note:
      return reading.note;
    case ReadingColumn::Photo:
      return reading.photo;
  }
  return {};
}

bool isWritten(const std::vector<Reading>& rows, ReadingColumn column) {
  if (column <= ReadingColumn::Value) return true;
  return std::any_of(rows.begin(), rows.end(),
                     [&](const Reading& reading) { return !cellText(reading, column).empty(); });
}

}  // namespace

std::string writeReadings(const std::vector<Reading>& rows) {
  std::vector<ReadingColumn> columns;
  std::copy_if(std::begin(kOrder), std::end(kOrder), std::back_inserter(columns),
               [&](ReadingColumn column) { return isWritten(rows, column); });
  std::string text;
  const auto write = [&](const auto& cell) {
    for (size_t i = 0; i < columns.size(); ++i)
      text += (i > 0 ? "," : "") + csvCellText(cell(columns[i]));
    text += "\r\n";
  };
  write([](ReadingColumn column) -> std::string { return headingOf(column); });
  for (const Reading& reading : rows) {
    write([&](ReadingColumn column) { return cellText(reading, column); });
  }
  return text;
}

}  // namespace model
