// The tables of the designer's sheet. Private to this folder.
#pragma once

#include "model/designer/sheet_facts.h"
#include "model/drawing/sheet_table.h"

namespace model {

struct DesignerSheetData {
  const Model& model;
  const AsBuilt& built;
  const DesignerSheetFacts& facts;
};

// Questions with by when, without their words.
SheetTable questionsInShort(const DesignerSheetData& data);
SheetTable sheetLevelsTable(const DesignerSheetData& data);
SheetTable sheetDimensionsTable(const DesignerSheetData& data);
SheetTable sheetOpeningsTable(const DesignerSheetData& data);
SheetTable offReadingsTable(const DesignerSheetData& data);

}  // namespace model
