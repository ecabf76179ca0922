// What to set out, as tables: one for each part, and words for people below it.
#pragma once

#include <string>
#include <vector>

#include "model/exchange/table_part.h"
#include "model/lines/set_out_lines.h"

namespace model {

// Keys: "boards", "lines", "tape", "limits", "pins".
using LinePart = TablePart;

// In that order. With a set-up of the job, what is read of every pin from there.
std::vector<LinePart> lineParts(const Model& model, const SetOutLines& lines,
                                const SetUp* setUp = nullptr);

// The first and the last of them.
LinePart boardsPart(const Model& model, const SetOutLines& lines);
LinePart pinsPart(const Model& model, const SetUp* setUp);

// Every peg; with a set-up, what is read of its level from there.
Table pegsTable(const Model& model, const SetOutLines& lines, const SetUp* setUp = nullptr);

}  // namespace model
