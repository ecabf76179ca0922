// The bricklayer's line at the course that is being run in: it moves up with the work.
#include <cstdlib>

#include <glm/geometric.hpp>

#include "viewer/overlays/overlay_sheet.h"

namespace viewer {
namespace {

struct Pulled {
  glm::vec3 a{0}, b{0};
  int number = 0;
  bool seen = false;  // its middle is
};

// The block that holds the line at a corner.
void lineBlock(const OverlaySheet& sheet, const glm::vec3& at) {
  const auto point = sheet.onSheet(at);
  if (!point || sheet.hidden(at)) return;
  const float half = 2.5f * sheet.pen.unit();
  sheet.pen.fill({point->x - half, point->y - half, point->x + half, point->y + half},
                 ink::kStringWords);
}

// One name is enough: all walls are at the same course, or nearly so.
void askForNumber(OverlaySheet& sheet, const Pulled& line) {
  const glm::vec3 middle = (line.a + line.b) * 0.5f;
  const auto at = sheet.onSheet(middle);
  if (!at) return;
  const std::string name =
      (line.number < 0 ? "course " + std::to_string(-line.number) + " below the damp course"
                       : "course " + std::to_string(line.number));
  LabelRequest request;
  request.anchor = *at;
  request.size = sheet.pen.size(name);
  request.towards = {0, -1};
  request.priority = 2;
  sheet.ask(request, {name, ink::kStringWords, 1, true, Cut::Text});
}

}  // namespace

void drawCourseLines(OverlaySheet& sheet) {
  const double time = sheet.frame.time;
  const glm::vec3 eye = sheet.frame.camera.eye();
  std::optional<Pulled> named;
  for (const model::CourseLine& line : sheet.options.facts->courseLines) {
    if (line.from > time) break;
    if (time >= line.to) continue;
    Pulled pulled{sheet.scene.local(line.a), sheet.scene.local(line.b), line.number, false};
    sheet.spaceLine(pulled.a, pulled.b, ink::kStrings, 1.8f, 24);
    lineBlock(sheet, pulled.a);
    lineBlock(sheet, pulled.b);
    const glm::vec3 middle = (pulled.a + pulled.b) * 0.5f;
    pulled.seen = !sheet.hidden(middle) && !sheet.cutAway(middle);
    if (!pulled.seen) continue;
    if (!named || glm::distance(eye, middle) < glm::distance(eye, (named->a + named->b) * 0.5f))
      named = pulled;
  }
  if (named) askForNumber(sheet, *named);
}

}  // namespace viewer
