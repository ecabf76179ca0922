// The designer's sheet as one table: a row for each level, dimension, opening, question and reading
// that is out.
#pragma once

#include "model/designer/sheet_facts.h"
#include "model/exchange/tables.h"

namespace model {

// Numbered as the PDF is; cells that a row has no use for are empty. See assets/designer-csv.md.
Table designerTable(const Model& model, const AsBuilt& built, const DesignerSheetFacts& facts);

}  // namespace model
