#include "model/job/statements.h"

#include <cctype>

namespace model {

namespace {

bool isBlank(char c) { return c == ' ' || c == '\t' || c == '\r'; }

std::string trimmed(std::string_view text) {
  while (!text.empty() && isBlank(text.front())) text.remove_prefix(1);
  while (!text.empty() && isBlank(text.back())) text.remove_suffix(1);
  return std::string(text);
}

bool isKeyLetter(char c) {
  return std::isalnum(static_cast<unsigned char>(c)) || c == '_' || c == '-' || c == '.' ||
         c == '"' || c == '\'' || isBlank(c) || static_cast<unsigned char>(c) >= 0x80;
}

// Offset of the "=" of a line that reads like `key = ...`, or npos.
size_t equalsOf(std::string_view line) {
  for (size_t i = 0; i < line.size(); ++i) {
    if (line[i] == '=') return i > 0 ? i : std::string_view::npos;
    if (!isKeyLetter(line[i])) break;
  }
  return std::string_view::npos;
}

// True when a statement begins on this line: `key = ...`, `[name...`, or a lone word.
bool beginsStatement(std::string_view line, bool insideBrackets) {
  size_t at = line.find_first_not_of(" \t");
  if (at == std::string_view::npos || line[at] == '#') return false;
  line.remove_prefix(at);
  if (line.front() == '[') {
    const size_t name = line.find_first_not_of("[ \t");
    return name != std::string_view::npos &&
           (std::isalpha(static_cast<unsigned char>(line[name])) || line[name] == '_');
  }
  if (equalsOf(line) != std::string_view::npos) return true;
  return !insideBrackets && line.front() != '\r' && line.front() != '\n';
}

// Follows brackets and quotes over the text of one statement.
class OpenThings {
 public:
  // Takes in one line that starts at offset `base`; texts in single quotes end with their line.
  void takeLine(std::string_view line, size_t base, std::string_view restOfText) {
    for (size_t i = 0; i < line.size(); ++i) {
      if (triple_ != 0) {
        if (isTriple(line, i, triple_)) {
          triple_ = 0;
          i += 2;
        }
        continue;
      }
      const char c = line[i];
      if (c == '#') return;
      if (c == '"' || c == '\'') {
        if (isTriple(line, i, c)) {
          const std::string closing(3, c);
          if (restOfText.find(closing, i + 3) == std::string_view::npos) {
            badQuote(c, base + i);
            return;
          }
          triple_ = c;
          i += 2;
          continue;
        }
        const size_t close = closingQuote(line, i);
        if (close == std::string_view::npos) {
          badQuote(c, base + i);
          return;
        }
        i = close;
      } else if (c == '[' || c == '{') {
        stack_.push_back({c, base + i});
      } else if ((c == ']' || c == '}') && !stack_.empty()) {
        stack_.pop_back();
      }
    }
  }

  bool insideText() const { return triple_ != 0; }
  bool insideBrackets() const { return !stack_.empty(); }
  void report(Statement& statement) const {
    if (quote_ != 0) {
      statement.open = quote_;
      statement.openAt = quoteAt_;
    } else if (!stack_.empty()) {
      statement.open = stack_.back().first;
      statement.openAt = stack_.back().second;
    }
  }

 private:
  static bool isTriple(std::string_view line, size_t at, char quote) {
    return at + 2 < line.size() && line[at] == quote && line[at + 1] == quote &&
           line[at + 2] == quote;
  }
  static size_t closingQuote(std::string_view line, size_t at) {
    for (size_t i = at + 1; i < line.size(); ++i) {
      if (line[i] == '\\' && line[at] == '"') {
        ++i;
      } else if (line[i] == line[at]) {
        return i;
      }
    }
    return std::string_view::npos;
  }
  void badQuote(char quote, size_t at) {
    if (quote_ != 0) return;
    quote_ = quote;
    quoteAt_ = at;
  }

  std::vector<std::pair<char, size_t>> stack_;
  char triple_ = 0;
  char quote_ = 0;
  size_t quoteAt_ = 0;
};

Statement opened(std::string_view text, size_t start, size_t end, int line) {
  Statement statement;
  statement.begin = text.find_first_not_of(" \t", start);
  statement.end = end;
  statement.line = line;
  const std::string_view body = text.substr(statement.begin, end - statement.begin);
  statement.header = body.front() == '[';
  if (statement.header) {
    const size_t name = body.find_first_not_of("[ \t");
    statement.key = trimmed(body.substr(name, body.find_first_of("]#\r", name) - name));
    return statement;
  }
  const size_t equals = equalsOf(body);
  statement.key = trimmed(body.substr(0, equals));
  if (equals != std::string_view::npos) {
    const size_t value = body.find_first_not_of(" \t", equals + 1);
    statement.valueAt = statement.begin + (value == std::string_view::npos ? body.size() : value);
  }
  return statement;
}

}  // namespace

std::vector<Statement> splitStatements(std::string_view text) {
  std::vector<Statement> statements;
  OpenThings open;
  int number = 0;
  for (size_t start = 0; start < text.size();) {
    ++number;
    size_t end = text.find('\n', start);
    if (end == std::string_view::npos) end = text.size();
    const std::string_view line = text.substr(start, end - start);
    if (!open.insideText() && beginsStatement(line, open.insideBrackets())) {
      if (!statements.empty()) open.report(statements.back());
      open = OpenThings{};
      statements.push_back(opened(text, start, end, number));
    }
    if (!statements.empty()) {
      const bool inside = open.insideText() || open.insideBrackets();
      if (inside) statements.back().end = end;
      open.takeLine(line, start, text.substr(start));
    }
    start = end + 1;
  }
  if (!statements.empty()) open.report(statements.back());
  return statements;
}

}  // namespace model
