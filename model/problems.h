// What is wrong with the user's input, in words a builder can act on.
#pragma once

#include <string>
#include <vector>

namespace model {

// Where in a text something stands. Lines and columns count from 1, columns in
// characters (not bytes); 0 means "not known" (for example a key that is absent).
struct Place {
  int line = 0;
  int column = 0;
};

enum class Severity {
  Error,    // nothing is built from this job
  Warning,  // the job is built; the viewer and `check` show it
};

// One thing that is wrong. `what` says what was found, `instead` what would be right;
// both are plain sentences without a full stop.
struct Problem {
  std::string file;
  Place place;
  Severity severity = Severity::Error;
  std::string what;
  std::string instead;
};

using Problems = std::vector<Problem>;

// "garage.toml:14:1: error: foundations.width is 120 mm; at least 300 mm is needed".
// The place is left out when its line is 0.
std::string format(const Problem& problem);

// In the order of the text; those without a place at the end, equal ones as they were.
void sortByPlace(Problems& problems);

// True when any problem is an error.
bool hasErrors(const Problems& problems);

}  // namespace model
