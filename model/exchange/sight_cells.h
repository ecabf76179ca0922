// What is read of a level from a set-up, as cells of a table.
#pragma once

#include <string>

#include "model/lines/level_sights.h"

namespace model {

struct SightCells {
  std::string staff;  // empty when it cannot be read
  std::string words;  // what to do besides, or instead

  explicit SightCells(const LevelSight& sight);
};

// For a table's title: ", read from set-up Site of 2027-04-14, line at +1.425".
std::string readFromText(const Job& job, const SetUp& setUp);

}  // namespace model
