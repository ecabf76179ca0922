// TOML text to a table, going on behind mistakes in its syntax.
#pragma once

#include <toml++/toml.h>

#include <string>
#include <vector>

#include "model/problems.h"

namespace model {

// A statement that was left out: `key` of the section `table` ("site.spots", which is `item`
// "site.spots[3]"), or all of the section when `key` is empty. At the top of the file both are "".
struct LostStatement {
  std::string table, item, key;
};

struct ParsedToml {
  toml::table table;   // what could be read
  bool whole = false;  // true when all that was left out is in `lost`
  std::vector<LostStatement> lost;
};

// `text` must have passed cleanedText() and nestingProblem(). Statements that are no TOML are
// reported, left out, and the rest is read; at most kMostSyntaxProblems of them.
ParsedToml parseToml(const std::string& text, const std::string& file, Problems& problems);

inline constexpr int kMostSyntaxProblems = 20;

}  // namespace model
