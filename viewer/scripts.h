// Which typeface has which script.
#pragma once

#include <string>
#include <vector>

namespace viewer {

struct Script {
  char32_t low, high;                         // its characters lie here
  std::string name;                           // for people: "Hebrew"
  std::vector<std::string> files, boldFiles;  // the first that is there is taken
  std::string package;                        // of Debian, that has it
};

// Every script beyond Latin, Greek and Cyrillic that has a typeface; a script with several ranges
// is there several times.
const std::vector<Script>& scripts();

// Null for a character that none of them has.
const Script* scriptOf(char32_t c);

}  // namespace viewer
