// What to set out, as tables: one for each part, and words for people below it.
#pragma once

#include <string>
#include <vector>

#include "model/exchange/table_part.h"
#include "model/lines/set_out_lines.h"

namespace model {

// Keys: "boards", "lines", "tape", "limits".
using LinePart = TablePart;

// In that order.
std::vector<LinePart> lineParts(const Model& model, const SetOutLines& lines);

// The first of them.
LinePart boardsPart(const Model& model, const SetOutLines& lines);

Table pegsTable(const Model& model, const SetOutLines& lines);

}  // namespace model
