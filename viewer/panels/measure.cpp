#include "viewer/panels/measure.h"

#include <algorithm>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "viewer/overlays/pen.h"

namespace viewer {
namespace {

struct MeasureSheet {
  Pen pen;
  const Frame& frame;
  const SheetLayout& layout;

  std::optional<glm::vec2> at(const glm::vec3& p) const {
    const Box& s = layout.sheet;
    const auto where = frame.camera.project(p, double(s.width() / s.height()));
    if (!where) return std::nullopt;
    return glm::vec2(where->x * s.width(), where->y * s.height());
  }
  void line(const glm::vec3& a, const glm::vec3& b, float width, float opacity) const {
    const auto from = at(a), to = at(b);
    if (from && to) pen.line(*from, *to, ink::kLevels, width, opacity);
  }
  // Corners get a square, edges a cross, faces a small ring: told apart by shape.
  void mark(const glm::vec3& p, SnapKind kind) const {
    const auto where = at(p);
    if (!where) return;
    const float r = 7 * pen.unit();
    const Box box{where->x - r, where->y - r, where->x + r, where->y + r};
    if (kind == SnapKind::Corner) {
      pen.outline(box, ink::kLevels, 2);
    } else if (kind == SnapKind::Edge) {
      pen.line({box.left, box.top}, {box.right, box.bottom}, ink::kLevels, 2);
      pen.line({box.left, box.bottom}, {box.right, box.top}, ink::kLevels, 2);
    } else {
      pen.list()->AddCircle(im(*where), r * 0.7f, colour(ink::kLevels), 0, 2 * pen.unit());
    }
  }
};

void drawFigures(const MeasureSheet& sheet, const glm::vec3& a, const glm::vec3& b,
                 const Scene& scene) {
  const auto from = sheet.at(a), to = sheet.at(b);
  if (!from || !to) return;
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  std::vector<std::string> words = measureWords(measure(a, b));
  words.push_back("from " + model::levelText(scene.world(a).z) + " to " +
                  model::levelText(scene.world(b).z));
  float width = 0;
  for (const std::string& line : words) width = std::max(width, pen.size(line, Cut::Bold).x);
  const float step = pen.lineHeight() * 1.22f;
  const Box room{sheet.layout.drawing.left, 8 * u, sheet.layout.drawing.right,
                 sheet.layout.tape.top - 42 * u};
  const Box card = measureCardPlace(
      *from, *to, {width + 22 * u, step * float(words.size()) + 14 * u}, room, 18 * u);
  pen.fill(card, ink::kCard, 0.96f);
  pen.outline(card, ink::kLevels, 1.4f);
  for (size_t i = 0; i < words.size(); ++i)
    pen.text({card.left + 11 * u, card.top + 8 * u + step * float(i)},
             i < 3 ? ink::kInk : ink::kSoft, words[i], i < 3 ? Cut::Bold : Cut::Text);
}

}  // namespace

Measurement measure(const glm::vec3& a, const glm::vec3& b) {
  const glm::dvec3 by = glm::dvec3(b) - glm::dvec3(a);
  return {glm::length(glm::dvec2(by)), by.z, glm::length(by)};
}

std::vector<std::string> measureWords(const Measurement& m) {
  return {"plan " + model::lengthText(m.plan) + " mm",
          "height " + model::levelText(m.height) + " m",
          "slope " + model::lengthText(m.slope) + " mm"};
}

Box measureCardPlace(const glm::vec2& from, const glm::vec2& to, const glm::vec2& size,
                     const Box& room, float off) {
  const glm::vec2 &right = from.x > to.x ? from : to, &left = from.x > to.x ? to : from;
  const float most = std::max(room.left, room.right - size.x);
  float x = right.x + off, y = right.y - size.y / 2;
  if (x > most && left.x - off - size.x >= room.left) {
    x = left.x - off - size.x;
    y = left.y - size.y / 2;
  }
  return Box::at({std::clamp(x, room.left, most),
                  std::clamp(y, room.top, std::max(room.top, room.bottom - size.y))},
                 size);
}

void drawMeasure(ImDrawList* list, const Scene& scene, const Frame& frame,
                 const SheetLayout& layout, const std::vector<Snap>& points, const Snap& snap) {
  const MeasureSheet sheet{Pen(list), frame, layout};
  const bool pointing = snap.kind != SnapKind::None || snap.point != glm::vec3(0);
  std::vector<glm::vec3> shown;
  for (const Snap& point : points) shown.push_back(point.point);
  if (shown.size() == 1 && pointing) shown.push_back(snap.point);
  for (const Snap& point : points) sheet.mark(point.point, point.kind);
  if (pointing && points.size() < 2) sheet.mark(snap.point, snap.kind);
  if (shown.size() < 2) {
    const std::string words =
        points.empty() ? "Measure: click the first point" : "Measure: click the second point";
    const glm::vec2 size = sheet.pen.size(words, Cut::Bold);
    const float u = sheet.pen.unit();
    const glm::vec2 at{layout.drawing.centre().x - size.x / 2, layout.drawing.bottom - size.y};
    sheet.pen.fill(Box::at(at, size).grown(7 * u), ink::kCard, 0.95f);
    sheet.pen.outline(Box::at(at, size).grown(7 * u), ink::kLevels, 1.4f);
    sheet.pen.text(at, ink::kInk, words, Cut::Bold);
  }
  if (shown.size() < 2) return;
  const glm::vec3 corner{shown[1].x, shown[1].y, shown[0].z};
  sheet.line(shown[0], shown[1], 2, 1);
  sheet.line(shown[0], corner, 1.2f, 0.7f);
  sheet.line(corner, shown[1], 1.2f, 0.7f);
  drawFigures(sheet, shown[0], shown[1], scene);
}

}  // namespace viewer
