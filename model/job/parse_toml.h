// TOML text to a table, going on behind mistakes in its syntax.
#pragma once

#include <toml++/toml.h>

#include <string>

#include "model/problems.h"

namespace model {

struct ParsedToml {
  toml::table table;   // what could be read
  bool whole = false;  // true when nothing was left out
};

// `text` must have passed cleanedText() and nestingProblem(). Statements that are no TOML are
// reported, left out, and the rest is read; at most kMostSyntaxProblems of them.
ParsedToml parseToml(const std::string& text, const std::string& file, Problems& problems);

inline constexpr int kMostSyntaxProblems = 20;

}  // namespace model
