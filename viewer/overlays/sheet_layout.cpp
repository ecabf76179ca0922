#include "viewer/overlays/sheet_layout.h"

#include <algorithm>

namespace viewer {

SheetLayout layOutSheet(float width, float height, float unit, float pulledOut, bool withRod) {
  const float u = unit;
  SheetLayout s;
  s.sheet = {0, 0, width, height};
  const float margin = 22 * u;
  const float rodRight = width - margin - 86 * u;
  s.rod = {rodRight - 30 * u, margin + 12 * u, rodRight, height - margin};
  const float blockWidth = std::min(318 * u, width * 0.32f);
  const float blockHeight = std::min(176 * u, height * 0.3f);
  const float blockRight = withRod ? s.rod.left - 36 * u : width - margin;
  s.titleBlock = {blockRight - blockWidth, height - margin - blockHeight, blockRight,
                  height - margin};
  const float tapeHeight = std::min(66 * u, height * 0.12f);
  s.tape = {margin + 20 * u, height - margin - tapeHeight, s.titleBlock.left - 30 * u,
            height - margin};
  s.tabs = {0, margin, 32 * u, s.tape.top - 26 * u};
  const float captionsLeft = margin + 20 * u + pulledOut;
  s.captions = {captionsLeft, margin, std::min(s.rod.left - 290 * u, captionsLeft + 780 * u),
                height * 0.42f};
  s.drawing = {s.tabs.right + 8 * u + pulledOut, margin + 84 * u, s.rod.left - 170 * u,
               s.tape.top - 34 * u};
  return s;
}

}  // namespace viewer
