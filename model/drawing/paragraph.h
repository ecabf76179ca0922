// Words in lines one below another, which go on where there is room next.
#pragma once

#include <functional>
#include <string>

#include "model/drawing/sheet.h"
#include "model/drawing/wrap_text.h"

namespace model {

// One place after another; each belongs to a sheet of the drawing by its index.
struct TablePlace {
  size_t sheet = 0;
  Area area;
};

// From the place's upper edge down, `leading` heights of capitals from line to line. Returns what
// is left of the last place used.
TablePlace drawParagraph(Drawing& drawing, const std::string& words, TablePlace place,
                         const std::function<TablePlace(Drawing&)>& nextPlace,
                         const Letters& letters, double leading, const TextWidth& widthOf);

}  // namespace model
