// How much room the words of the stages need, before there is any lettering to measure them with.
#pragma once

#include <string>
#include <vector>

#include "model/model.h"
#include "viewer/overlays/pen.h"

namespace viewer {

// A paragraph of a stage's caption.
struct CaptionPart {
  enum class Mark { None, Caution, Hold };
  std::string text;
  unsigned rgb = ink::kInk;
  Cut cut = Cut::Text;
  Mark mark = Mark::None;
};
std::vector<CaptionPart> captionParts(const model::Stage& stage);

// Pixels, on the safe side, of the tallest caption that stands over a building of more than half
// its height, so that the building keeps its place while the stages change. Captions of earlier
// stages may be taller: they stand over air.
float tallestCaption(const model::Model& model, float width, float unit);

// The same of one stage alone, by its place in the programme.
float captionHeightOf(const model::Model& model, size_t stage, float width, float unit);

}  // namespace viewer
