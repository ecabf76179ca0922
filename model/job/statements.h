// A job file's text cut into statements (a table's header, or a key with its value) without
// understanding them: what the reader needs to name a mistake and to go on behind it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace model {

struct Statement {
  size_t begin = 0, end = 0;  // bytes; ends before the line break of its last line
  int line = 1;               // of `begin`
  bool header = false;        // [table] or [[table]]
  // What is left open at its end, with its offset: '[', '{', '"', '\'', or 0 for nothing.
  char open = 0;
  size_t openAt = 0;
  std::string key;     // as written, spaces trimmed: "width", "site.building"
  size_t valueAt = 0;  // first byte of the value; 0 when there is no "="
};

std::vector<Statement> splitStatements(std::string_view text);

}  // namespace model
