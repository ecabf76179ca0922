#include <algorithm>

#include "viewer/overlays/overlay_sheet.h"

namespace viewer {

std::optional<Box> freeCorner(const OverlaySheet& sheet, const glm::vec2& size) {
  const Box room = sheet.layout.drawing.grown(-8 * sheet.pen.unit());
  for (const glm::vec2 at :
       {glm::vec2(room.left, room.bottom - size.y),
        glm::vec2(room.right - size.x, room.bottom - size.y),
        glm::vec2(room.right - size.x, room.top), glm::vec2(room.left, room.top)}) {
    const Box box = Box::at(at, size);
    if (!box.inside(room)) continue;
    if (std::none_of(sheet.taken.begin(), sheet.taken.end(),
                     [&](const Box& other) { return other.overlaps(box); }))
      return box;
  }
  return std::nullopt;
}

}  // namespace viewer
