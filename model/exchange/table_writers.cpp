// The three ways in which a table is written.
#include <algorithm>
#include <charconv>

#include <nlohmann/json.hpp>

#include "model/exchange/tables.h"
#include "model/exchange/text_width.h"

namespace model {
namespace {

bool isNumeric(const Table& table, size_t column) {
  return column < table.numeric.size() && table.numeric[column];
}

// ---- people ---------------------------------------------------------------

// Long texts are folded to this many columns, so that a table can be read on a terminal.
constexpr size_t kWidestCell = 44;

// The lines of a cell: broken at spaces where it is too wide, and at its own line ends.
std::vector<std::string> folded(const std::string& text) {
  std::vector<std::string> lines{""};
  std::string word;
  const auto endWord = [&] {
    if (word.empty()) return;
    const size_t width = seenWidth(lines.back());
    if (width > 0 && width + 1 + seenWidth(word) > kWidestCell) lines.emplace_back();
    if (!lines.back().empty()) lines.back() += ' ';
    lines.back() += word;
    word.clear();
  };
  for (char c : text) {
    if (c == '\n') {
      endWord();
      lines.emplace_back();
    } else if (c == ' ' || c == '\t' || c == '\r') {
      endWord();
    } else {
      word += c;
    }
  }
  endWord();
  return lines;
}

std::string padded(const std::string& text, size_t width, bool right) {
  const std::string space(width - std::min(width, seenWidth(text)), ' ');
  return right ? space + text : text + space;
}

// For people, details are left out and so are columns in which no row says anything.
std::vector<size_t> usedColumns(const Table& table) {
  std::vector<size_t> used;
  for (size_t c = 0; c < table.columns.size(); ++c) {
    if (c < table.detail.size() && table.detail[c]) continue;
    const bool any = std::any_of(table.rows.begin(), table.rows.end(),
                                 [&](const auto& row) { return !row[c].empty(); });
    if (any) used.push_back(c);
  }
  return used;
}

using Cells = std::vector<std::vector<std::string>>;  // per column, its lines

void appendCells(std::string& text, const Cells& cells, const std::vector<size_t>& widths,
                 const std::vector<bool>& right) {
  size_t height = 0;
  for (const auto& lines : cells) height = std::max(height, lines.size());
  for (size_t line = 0; line < height; ++line) {
    std::string row;
    for (size_t c = 0; c < cells.size(); ++c) {
      if (c > 0) row += "  ";
      row += padded(line < cells[c].size() ? cells[c][line] : "", widths[c], right[c]);
    }
    row.erase(row.find_last_not_of(' ') + 1);
    text += row + "\n";
  }
}

std::string writeForPeople(const Table& table) {
  const std::vector<size_t> used = usedColumns(table);
  std::vector<Cells> rows(1);
  for (size_t c : used) rows[0].push_back(folded(table.columns[c]));
  for (const auto& row : table.rows) {
    rows.emplace_back();
    for (size_t c : used) rows.back().push_back(folded(row[c]));
  }
  std::vector<size_t> widths(used.size(), 0);
  for (const Cells& row : rows) {
    for (size_t c = 0; c < used.size(); ++c) {
      for (const std::string& line : row[c]) widths[c] = std::max(widths[c], seenWidth(line));
    }
  }
  std::vector<bool> right;
  for (size_t c : used) right.push_back(isNumeric(table, c));
  std::string text = table.title + "\n\n";
  for (size_t i = 0; i < rows.size(); ++i) {
    appendCells(text, rows[i], widths, right);
    if (i > 0) continue;
    Cells rule;
    for (size_t width : widths) rule.push_back({std::string(width, '-')});
    appendCells(text, rule, widths, right);
  }
  return text;
}

// ---- CSV, RFC 4180 ----------------------------------------------------------

std::string csvCell(const std::string& text) {
  if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
  std::string quoted = "\"";
  for (char c : text) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + "\"";
}

std::string csvRow(const std::vector<std::string>& cells) {
  std::string row;
  for (size_t i = 0; i < cells.size(); ++i) {
    if (i > 0) row += ',';
    row += csvCell(cells[i]);
  }
  return row + "\r\n";
}

std::string writeCsv(const Table& table) {
  std::string text = csvRow(table.columns);
  for (const auto& row : table.rows) text += csvRow(row);
  return text;
}

// ---- JSON -------------------------------------------------------------------

nlohmann::ordered_json jsonCell(const std::string& text, bool numeric) {
  if (!numeric) return text;
  if (text.empty()) return nullptr;
  const char* first = text.data() + (text[0] == '+' ? 1 : 0);
  const char* last = text.data() + text.size();
  long long whole = 0;
  if (const auto r = std::from_chars(first, last, whole); r.ec == std::errc() && r.ptr == last) {
    return whole;
  }
  double value = 0;
  if (const auto r = std::from_chars(first, last, value); r.ec == std::errc() && r.ptr == last) {
    return value;
  }
  return text;
}

std::string writeJson(const Table& table) {
  auto array = nlohmann::ordered_json::array();
  for (const auto& row : table.rows) {
    nlohmann::ordered_json object;
    for (size_t c = 0; c < table.columns.size(); ++c) {
      object[table.columns[c]] = jsonCell(row[c], isNumeric(table, c));
    }
    array.push_back(std::move(object));
  }
  // Names in the job that are not UTF-8 cannot get here (the reader refuses them); were one to,
  // a replacement character is better than no table.
  return array.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace

std::string write(const Table& table, TableStyle style) {
  switch (style) {
    case TableStyle::Csv:
      return writeCsv(table);
    case TableStyle::Json:
      return writeJson(table);
    case TableStyle::People:
      break;
  }
  return writeForPeople(table);
}

}  // namespace model
