// Cellar walls in blocks as tables: the courses of each leaf and what is cut in them, and their
// gauge.
#pragma once

#include <optional>
#include <string>

#include "model/exchange/table_part.h"

namespace model {

// "cellar"; nothing where the walls are cast or there is no cellar.
std::optional<TablePart> cellarBondPart(const Model& model);

// The levels of their courses, from the top down, as further rows of the gauge rods' table, and
// how they come out in a sentence without its full stop; nothing where there are none.
void addCellarGauge(const Model& model, Table& rods);
std::optional<std::string> cellarGaugeWords(const Model& model);

}  // namespace model
