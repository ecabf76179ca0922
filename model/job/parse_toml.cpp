#include "model/job/parse_toml.h"

#include <algorithm>
#include <optional>

#include "model/job/syntax_words.h"
#include "model/job/text_index.h"

namespace model {

namespace {

// The statement that is to blame when the library stops at `at`: the one that holds it, or the one
// before when that has something left open (the library only notices later).
size_t blamed(const std::vector<Statement>& all, size_t at) {
  size_t index = 0;
  while (index + 1 < all.size() && all[index + 1].begin <= at) ++index;
  if (index > 0 && all[index - 1].open != 0) return index - 1;
  return index;
}

void blank(std::string& text, size_t begin, size_t end) {
  for (size_t i = begin; i < std::min(end, text.size()); ++i) {
    if (text[i] != '\n') text[i] = ' ';
  }
}

// The last statement (one past) that must go with the faulty one, so that what is left still means
// the same: all of a section whose heading is lost, all of a { ... } over several lines.
size_t endOfDamage(std::string_view text, const std::vector<Statement>& all, size_t index) {
  size_t next = index + 1;
  if (all[index].header) {
    while (next < all.size() && !all[next].header) ++next;
  } else if (all[index].open == '{') {
    const size_t close = text.find('}', all[index].openAt);
    size_t last = next;
    while (last < all.size() && !all[last].header && all[last].begin <= close) ++last;
    const bool closes =
        close != std::string_view::npos && (last == all.size() || all[last].begin > close);
    if (closes) next = last;
  }
  return next;
}

bool isName(std::string_view text) {
  return !text.empty() && text.find_first_not_of(
                              "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUV"
                              "WXYZ0123456789_-.") == std::string_view::npos;
}

// The section that a statement stands in, with its count when the heading is there more than once.
LostStatement sectionOf(std::string_view text, const std::vector<Statement>& all, size_t index) {
  LostStatement section;
  size_t header = index;
  while (header > 0 && !all[header].header) --header;
  if (!all[header].header) return section;
  section.table = section.item = all[header].key;
  if (text.substr(all[header].begin, 2) != "[[") return section;
  size_t before = 0;
  for (size_t i = 0; i < header; ++i) before += all[i].header && all[i].key == section.table;
  section.item += "[" + std::to_string(before) + "]";
  return section;
}

// What goes with a faulty statement; nothing when that cannot be told.
std::optional<LostStatement> lostWith(std::string_view text, const std::vector<Statement>& all,
                                      size_t index) {
  const Statement& faulty = all[index];
  if (faulty.header) {
    if (!isName(faulty.key)) return std::nullopt;
    return LostStatement{faulty.key, faulty.key, ""};
  }
  LostStatement lost = sectionOf(text, all, index);
  const std::string_view body = text.substr(faulty.begin, faulty.end - faulty.begin);
  const std::string_view word = std::string_view(faulty.key).substr(0, faulty.key.find(' '));
  const auto signs = std::count(body.begin(), body.end(), '=');
  const bool oneKey = signs == 0 || faulty.open == '{' || (signs == 1 && word == faulty.key);
  if (oneKey && isName(word)) {
    lost.key = word;
  } else if (lost.table.empty()) {
    return std::nullopt;
  }
  return lost;
}

}  // namespace

ParsedToml parseToml(const std::string& text, const std::string& file, Problems& problems) {
  ParsedToml result;
  std::string rest = text;
  const LineIndex lines(text);
  std::vector<Statement> statements;
  bool allNamed = true;
  for (int tries = 0; tries < kMostSyntaxProblems; ++tries) {
    try {
      result.table = toml::parse(std::string_view(rest), std::string_view(file));
      result.whole = allNamed;
      return result;
    } catch (const toml::parse_error& error) {
      const toml::source_position stop = error.source().begin;
      const size_t at =
          lines.offsetOf({static_cast<int>(stop.line), static_cast<int>(stop.column)});
      statements = splitStatements(rest);
      if (statements.empty()) {
        problems.push_back({file, lines.placeOf(at), Severity::Error, "this cannot be read",
                            "a job file is plain text with lines like width = 910"});
        return result;
      }
      const size_t index = blamed(statements, at);
      const SyntaxFault fault = explainSyntax(rest, statements, index, at, error.description());
      problems.push_back(
          {file, lines.placeOf(fault.at), Severity::Error, fault.what, fault.instead});
      if (auto lost = lostWith(rest, statements, index)) {
        result.lost.push_back(std::move(*lost));
      } else {
        allNamed = false;
      }
      const size_t past = endOfDamage(rest, statements, index);
      blank(rest, statements[index].begin,
            past < statements.size() ? statements[past].begin : rest.size());
    }
  }
  result.table.clear();
  return result;
}

}  // namespace model
