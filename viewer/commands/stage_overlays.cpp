#include "viewer/commands/stage_overlays.h"

namespace viewer {

Overlays overlaysOf(const model::StageKey& stage) {
  using Kind = model::StageKind;
  Overlays overlays;
  overlays.captions = overlays.titleBlock = overlays.tape = overlays.levels = true;
  const bool byLines = stage.kind == Kind::SettingOut || stage.kind == Kind::LinesBack ||
                       stage.kind == Kind::WallsBelowDampCourse;
  overlays.lines = overlays.corners = overlays.dimensions = byLines;
  return overlays;
}

}  // namespace viewer
