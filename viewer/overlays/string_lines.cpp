// String lines from profile to profile, with their names.
#include <glm/geometric.hpp>

#include "viewer/overlays/overlay_sheet.h"

namespace viewer {
namespace {

bool pulled(const OverlaySheet& sheet, const model::StringLine& line) {
  const auto& programme = sheet.model.programme;
  const double time = sheet.frame.time;
  if (model::timeAt(programme, line.placed, line.a) > time) return false;
  return !line.removed || model::timeAt(programme, *line.removed, line.a) > time;
}

}  // namespace

void drawStringLines(OverlaySheet& sheet) {
  for (const model::StringLine& line : sheet.model.works.strings) {
    if (!pulled(sheet, line)) continue;
    const glm::vec3 a = sheet.scene.local(line.a), b = sheet.scene.local(line.b);
    sheet.spaceLine(a, b, ink::kStrings, 1.6f, 24);
    // The name stands at the end that is nearer the eye.
    const glm::vec3 eye = sheet.frame.camera.eye();
    const bool aNear = glm::distance(a, eye) <= glm::distance(b, eye);
    const auto near = sheet.onSheet(aNear ? a : b), far = sheet.onSheet(aNear ? b : a);
    if (!near || !far) continue;
    LabelRequest request;
    request.anchor = *near;
    request.size = sheet.pen.size(line.name);
    request.towards = *near - *far;
    request.priority = 1;
    sheet.ask(request, {line.name, ink::kStrings, 1, true, Cut::Text});
  }
}

}  // namespace viewer
