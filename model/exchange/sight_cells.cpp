#include "model/exchange/sight_cells.h"

#include "model/level_text.h"
#include "model/levelling/staff_text.h"

namespace model {

SightCells::SightCells(const LevelSight& sight)
    : staff(sight.reading.canBeRead() ? staffText(sight.reading.reading) : "") {
  for (const std::string& each : sight.words) words += (words.empty() ? "" : "; ") + each;
}

std::string readFromText(const Job& job, const SetUp& setUp) {
  std::string text = ", read from set-up " + setUp.name;
  if (!setUp.date.empty()) text += " of " + setUp.date;
  if (const auto instrument = instrumentOf(job, setUp))
    text += ", line at " + levelText(instrument->collimation);
  return text;
}

}  // namespace model
