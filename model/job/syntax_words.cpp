#include "model/job/syntax_words.h"

#include <cctype>

#include "model/job/key_table.h"

namespace model {

namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isLetter(char c) {
  return std::isalpha(static_cast<unsigned char>(c)) || static_cast<unsigned char>(c) >= 0x80;
}

std::string inQuotes(std::string_view text) { return "\"" + std::string(text) + "\""; }

// The value as written on its first line, without a comment and spaces at its end.
std::string_view valueOf(std::string_view text, const Statement& statement) {
  std::string_view value = text.substr(statement.valueAt, statement.end - statement.valueAt);
  value = value.substr(0, value.find_first_of("#\n"));
  while (!value.empty() && std::isspace(static_cast<unsigned char>(value.back()))) {
    value.remove_suffix(1);
  }
  return value;
}

bool beginsLikeNumber(std::string_view value) {
  const size_t sign = !value.empty() && (value.front() == '-' || value.front() == '+') ? 1 : 0;
  return sign < value.size() && (isDigit(value[sign]) || value[sign] == '.');
}

bool isQuoted(std::string_view value) { return value.front() == '"' || value.front() == '\''; }

// The line where the same key (in the same table) or the same table stands first; 0 if nowhere.
int firstLineOf(const std::vector<Statement>& all, size_t index) {
  const Statement& wanted = all[index];
  if (!wanted.header) {
    for (size_t i = index; i-- > 0 && !all[i].header;) {
      if (all[i].key == wanted.key) return all[i].line;
    }
    return 0;
  }
  for (size_t i = 0; i < index; ++i) {
    if (all[i].header && all[i].key == wanted.key) return all[i].line;
  }
  return 0;
}

SyntaxFault givenTwice(const std::vector<Statement>& all, size_t index) {
  const Statement& statement = all[index];
  const TableSpec* table = statement.header ? findTable(statement.key) : nullptr;
  if (table && table->form == TableForm::Many) {
    return {statement.begin, "[" + statement.key + "] is there more than once",
            "a section that is repeated has two brackets: [[" + statement.key + "]]"};
  }
  const std::string shown = statement.header ? "[" + statement.key + "]" : statement.key;
  const int first = firstLineOf(all, index);
  return {statement.begin, shown + " is given twice",
          first > 0 ? "keep one of them; the first is on line " + std::to_string(first)
                    : std::string("keep one of them")};
}

SyntaxFault leftOpen(const Statement& statement) {
  switch (statement.open) {
    case '[':
      return {statement.openAt, "this bracket is not closed", "close it with ]"};
    case '{':
      return {statement.openAt, "this brace is not closed on its line",
              "a { ... } must stand on one line and be closed with }"};
    default:
      return {statement.openAt, "this text is not closed",
              std::string("close it with ") + statement.open};
  }
}

bool hasCommaDecimal(std::string_view value) {
  bool comma = false;
  for (const char c : value) {
    if (c == ',') {
      if (comma) return false;
      comma = true;
    } else if (!isDigit(c) && c != '-' && c != '+') {
      return false;
    }
  }
  return comma;
}

SyntaxFault faultyNumber(const Statement& statement, std::string_view value) {
  size_t digits = value.find_first_not_of("0123456789.+-_");
  if (hasCommaDecimal(value)) {
    std::string pointed(value), bare(value);
    pointed[pointed.find(',')] = '.';
    bare.erase(bare.find(','), 1);
    return {statement.valueAt, std::string(value) + " has a comma",
            "decimals take a point (" + pointed + ") and thousands take nothing (" + bare + ")"};
  }
  if (digits != std::string_view::npos && (isLetter(value[digits]) || value[digits] == '\'' ||
                                           value[digits] == '"' || value[digits] == ' ')) {
    const bool inches = value.find('"') != std::string_view::npos;
    return {statement.valueAt, std::string(value) + " is not a plain number",
            "a value with a unit stands in quotes: " +
                (inches ? std::string("\"3'-6\\\"\", with \\ before the inch mark inside them")
                        : inQuotes(value))};
  }
  const size_t sign = value.front() == '-' || value.front() == '+' ? 1 : 0;
  if (value.size() > sign + 1 && (value[sign] == '.' || value.back() == '.')) {
    return {statement.valueAt, std::string(value) + " lacks a digit beside its point",
            "write the digits on both sides of the point, like 0.5"};
  }
  return {statement.valueAt, std::string(value) + " is not a number as TOML writes it",
          "write digits only, with no zeros in front: 910 or 102.5"};
}

SyntaxFault faultyHeader(std::string_view text, const Statement& statement) {
  const std::string_view body = text.substr(statement.begin, statement.end - statement.begin);
  const bool two = body.substr(0, 2) == "[[";
  const std::string right = (two ? "[[" : "[") + statement.key + (two ? "]]" : "]");
  return {statement.begin, "this section heading cannot be read", "write " + right};
}

}  // namespace

SyntaxFault explainSyntax(std::string_view text, const std::vector<Statement>& all, size_t index,
                          size_t at, std::string_view reason) {
  const Statement& statement = all[index];
  const auto says = [&](std::string_view words) {
    return reason.find(words) != std::string_view::npos;
  };
  if (says("redefine")) return givenTwice(all, index);
  const bool isNumber = statement.valueAt != 0 && beginsLikeNumber(valueOf(text, statement));
  // In 0'4" the marks are units, not quotes.
  const bool isQuote = statement.open == '"' || statement.open == '\'';
  if (statement.open != 0 && !(isQuote && isNumber)) return leftOpen(statement);
  if (statement.header) return faultyHeader(text, statement);
  if (statement.valueAt == 0) {
    return {statement.begin, "this line has no =", "write name = value, like width = 910"};
  }
  const std::string_view value = valueOf(text, statement);
  if (value.empty()) {
    return {statement.begin, statement.key + " has no value",
            "write it behind the =, or take the line out"};
  }
  if (says("escape")) {
    return {at, "a \\ in text in double quotes begins a special character",
            "write \\\\ for a plain one, or use single quotes"};
  }
  if (says("control character")) {
    return {at, "there is a control character here", "take it out"};
  }
  if (!isQuoted(value) && value.find('=') != std::string_view::npos && value.front() != '{' &&
      value.front() != '[') {
    return {statement.valueAt, "there are two keys on this line", "each key has a line of its own"};
  }
  if (isNumber) return faultyNumber(statement, value);
  if (isLetter(value.front())) {
    return {statement.valueAt, std::string(value) + " is not a number and has no quotes",
            "text stands in quotes: " + inQuotes(value)};
  }
  return {at, "this cannot be read",
          "write name = value, with texts in quotes and lists in [ ], one item to a comma"};
}

}  // namespace model
