// The designer's sheet: every level and size with where it comes from, what is asked, what is out.
#pragma once

#include <string>

#include "model/designer/sheet_facts.h"
#include "model/drawing/paper.h"
#include "model/drawing/sheet.h"

namespace model {

struct DesignerSheetOptions {
  std::string date;  // in the title block as it is; empty: room to write it
};

// Pages of A4: in short, with the questions and by when; a plan with their numbers; levels;
// dimensions; openings; each question with room to answer and sign; readings that are out. Every
// row of `facts` is on them, whatever their number. `facts` are designerSheetFacts() of the model,
// `built` what they were made with.
Drawing drawDesignerSheet(const Model& model, const AsBuilt& built, const DesignerSheetFacts& facts,
                          const DesignerSheetOptions& options, const TextWidth& widthOf);

}  // namespace model
