// What to set out, as tables: one for each part, and words for people below it.
#pragma once

#include <string>
#include <vector>

#include "model/exchange/tables.h"
#include "model/lines/set_out_lines.h"

namespace model {

struct LinePart {
  std::string key;  // "boards", "lines", "tape", "limits"
  Table table;
  // For people besides, below the table: what it leaves out for them as too wide, and sentences
  // without their full stops.
  std::vector<Table> more;
  std::vector<std::string> words;
};

// In that order.
std::vector<LinePart> lineParts(const Model& model, const SetOutLines& lines);

// The first of them.
LinePart boardsPart(const Model& model, const SetOutLines& lines);

Table pegsTable(const Model& model, const SetOutLines& lines);

}  // namespace model
