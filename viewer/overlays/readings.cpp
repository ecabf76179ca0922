// Readings on the building: a mark for each with its millimetres, told apart by shape, and the
// surfaces that were read as a heat map with hatching.
#include <algorithm>
#include <array>

#include <glm/geometric.hpp>

#include "viewer/overlays/heat_map.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/setting_out_lines.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr float kShape = 6;  // units
constexpr unsigned kLow = 0x56b4e9, kHigh = 0xe69f00, kWithin = 0xfdfbf5;

// ---- heat map -------------------------------------------------------------------

struct BandLook {
  unsigned rgb;
  float opacity;
  int strokes;  // hatching, so that it reads in grey: more for out
  bool rising;  // leans up to the right for high, down for low
};

BandLook lookOf(HeatBand band) {
  switch (band) {
    case HeatBand::LowOut:
      return {kLow, 0.85f, 3, false};
    case HeatBand::LowEdge:
      return {kLow, 0.45f, 1, false};
    case HeatBand::HighEdge:
      return {kHigh, 0.45f, 1, true};
    case HeatBand::HighOut:
      return {kHigh, 0.85f, 3, true};
    default:
      return {kWithin, 0.6f, 0, true};
  }
}

// Low left, low right, high right, high left.
using Quad = std::array<glm::vec2, 4>;

void drawQuad(const Pen& pen, const Quad& q, const BandLook& look) {
  pen.list()->AddQuadFilled(im(q[0]), im(q[1]), im(q[2]), im(q[3]), colour(look.rgb, look.opacity));
  for (int i = 0; i < look.strokes; ++i) {
    const float t = (float(i) + 0.5f) / float(look.strokes);
    const glm::vec2 below = glm::mix(q[0], q[1], t), above = glm::mix(q[3], q[2], t);
    const float lean = 0.5f / float(look.strokes);
    const glm::vec2 by = (q[1] - q[0]) * (look.rising ? lean : -lean);
    pen.line(below - by, above + by, ink::kInk, 1, 0.75f);
  }
}

bool drawCell(const OverlaySheet& sheet, const HeatCell& cell) {
  constexpr double kOver = 0.02;  // metres over the surface
  const auto at = [&](double x, double y) {
    return sheet.onSheet(
        sheet.scene.local({cell.middle + model::Vec2(x, y) * cell.half, cell.level + kOver}));
  };
  const auto a = at(-1, -1), b = at(1, -1), c = at(1, 1), d = at(-1, 1);
  if (!a || !b || !c || !d) return false;
  if (!isPlan(sheet.frame.camera) &&
      sheet.hidden(sheet.scene.local({cell.middle, cell.level + kOver})))
    return false;
  drawQuad(sheet.pen, {*a, *b, *c, *d}, lookOf(cell.band));
  return true;
}

// The scale in words.
void drawScale(OverlaySheet& sheet) {
  const Pen& pen = sheet.pen;
  const float u = pen.unit(), line = pen.lineHeight() * 1.25f, swatch = 22 * u;
  float wide = 0;
  for (int i = 0; i < kHeatBands; ++i) wide = std::max(wide, pen.size(nameOf(HeatBand(i))).x);
  const auto place =
      freeCorner(sheet, {swatch + 8 * u + wide + 14 * u, line * kHeatBands + 14 * u});
  if (!place) return;
  const Box& card = *place;
  pen.fill(card, ink::kCard, 0.95f);
  pen.outline(card, ink::kInk, 1.2f);
  for (int i = 0; i < kHeatBands; ++i) {
    const HeatBand band = HeatBand(kHeatBands - 1 - i);
    const float top = card.top + 7 * u + line * float(i), bottom = top + line - 5 * u;
    const float left = card.left + 7 * u, right = left + swatch;
    drawQuad(pen, {{{left, bottom}, {right, bottom}, {right, top}, {left, top}}}, lookOf(band));
    pen.outline({left, top, right, bottom}, ink::kInk, 1);
    pen.text({right + 8 * u, top - 2 * u}, ink::kInk, nameOf(band));
  }
  sheet.taken.push_back(card.grown(3 * u));
}

// ---- marks ------------------------------------------------------------------------

unsigned fillOf(model::Verdict verdict) {
  if (verdict == model::Verdict::Within) return ink::kCard;
  return verdict == model::Verdict::AtTheEdge ? ink::kTape : ink::kCaution;
}

// Within: a ring; at the edge a diamond; out a triangle that points to where it is off.
void drawShape(const Pen& pen, const glm::vec2& at, const model::Deviation& d) {
  const float u = pen.unit(), r = kShape * u;
  const ImU32 fill = colour(fillOf(d.verdict)), edge = colour(ink::kInk);
  if (d.verdict == model::Verdict::Within) {
    pen.list()->AddCircleFilled(im(at), r * 0.8f, fill);
    pen.list()->AddCircle(im(at), r * 0.8f, edge, 0, 1.5f * u);
  } else if (d.verdict == model::Verdict::AtTheEdge) {
    pen.diamond(at, r, fillOf(d.verdict), ink::kInk);
  } else {
    const float way = d.off > 0 ? -1.0f : 1.0f;
    const glm::vec2 tip{at.x, at.y + way * r * 1.3f};
    const ImVec2 left{at.x - r * 1.2f, at.y - way * r}, right{at.x + r * 1.2f, at.y - way * r};
    pen.list()->AddTriangleFilled(im(tip), left, right, fill);
    pen.list()->AddTriangle(im(tip), left, right, edge, 1.2f * u);
  }
}

// Off the line, to the side that the face stands out to.
void drawArrow(OverlaySheet& sheet, const glm::vec2& at, const model::Deviation& d) {
  if (d.kind != model::ReadingKind::Face || !d.place.wall || d.off == 0) return;
  const model::WallLine& wall = sheet.model.settingOut.walls[*d.place.wall];
  const model::Vec2 to = d.place.at + wall.outward * (d.off > 0 ? 1.0 : -1.0);
  const auto tip = sheet.onSheet(sheet.scene.local({to, d.place.level}));
  if (!tip || glm::distance(*tip, at) < 1) return;
  const float u = sheet.pen.unit();
  const glm::vec2 along = glm::normalize(*tip - at), side{-along.y, along.x};
  const glm::vec2 end = at + along * (24 * u);
  sheet.pen.line(at, end, ink::kInk, 1.8f);
  sheet.pen.list()->AddTriangleFilled(im(end + along * (6 * u)), im(end + side * (4 * u)),
                                      im(end - side * (4 * u)), colour(ink::kInk));
}

void askForFigure(OverlaySheet& sheet, const glm::vec2& at, const model::Deviation& d) {
  const bool out = d.verdict == model::Verdict::Out;
  const Cut cut = out ? Cut::Bold : Cut::Text;
  std::string words = model::offText(d.kind, d.off);
  if (d.place.between) {
    const auto& corners = sheet.model.settingOut.corners;
    words = corners[d.place.between->first].letter + "-" + corners[d.place.between->second].letter +
            " " + words;
  }
  const float off = kShape * 1.9f * sheet.pen.unit();
  LabelRequest request;
  request.anchor = at + glm::vec2(off, 0);
  request.size = sheet.pen.size(words, cut);
  request.towards = {1, 0};
  for (const glm::vec2 side : {glm::vec2(-1, 0), glm::vec2(0, -1), glm::vec2(0, 1)})
    request.others.push_back({at + side * off, side});
  request.priority = out ? 4 : d.verdict == model::Verdict::AtTheEdge ? 3 : 1;
  // What is as it should be need not be figured where that is crowded; the table has it.
  const bool besideOnly = d.verdict == model::Verdict::Within;
  sheet.ask(request, {words, out ? ink::kCaution : ink::kInk, 1, true, cut, besideOnly});
}

// Of a tape between two corners the middle.
glm::vec3 placeOf(const OverlaySheet& sheet, const model::Deviation& d) {
  if (!d.place.between) return sheet.scene.local({d.place.at, d.place.level});
  const auto& corners = sheet.model.settingOut.corners;
  const model::Vec2 a = corners[d.place.between->first].at, b = corners[d.place.between->second].at;
  return onSettingOutLevel(sheet, (a + b) * 0.5);
}

// Whether what was read stands at this moment: something is there a little over or under it.
bool stands(const OverlaySheet& sheet, const model::Deviation& d) {
  constexpr double kAside = 0.06, kOff = 0.1;  // metres: points lie on edges of what they speak of
  constexpr float kNear = 0.45f;
  if (d.place.between || !sheet.options.picker) return true;
  for (const model::Vec2 by :
       {model::Vec2(1, 1), model::Vec2(-1, 1), model::Vec2(-1, -1), model::Vec2(1, -1)})
    for (const float way : {-1.0f, 1.0f}) {
      const glm::vec3 from =
          sheet.scene.local({d.place.at + by * kAside, d.place.level - double(way) * kOff});
      const auto pick = sheet.options.picker->pick({from, {0, 0, way}}, sheet.frame);
      if (pick && pick->along < kNear && !sheet.scene.elements[pick->element].soil) return true;
    }
  return false;
}

void drawReading(OverlaySheet& sheet, const model::Deviation& d) {
  const bool tape = d.place.between.has_value();
  // A tape is read on plan; from elsewhere only what is wrong with it.
  if (tape && !isPlan(sheet.frame.camera) && d.verdict == model::Verdict::Within) return;
  const glm::vec3 point = placeOf(sheet, d);
  const auto at = sheet.onSheet(point);
  if (!at || !Box{at->x, at->y, at->x, at->y}.grown(kShape).inside(sheet.layout.sheet)) return;
  // What is wrong is marked also where something stands before it.
  if (d.verdict == model::Verdict::Within && !isPlan(sheet.frame.camera) &&
      sheet.hidden(point + glm::vec3(0, 0, 0.02f)))
    return;
  if (tape) {
    const auto& corners = sheet.model.settingOut.corners;
    settingOutLine(sheet, onSettingOutLevel(sheet, corners[d.place.between->first].at),
                   onSettingOutLevel(sheet, corners[d.place.between->second].at),
                   {ink::kInk, 1, 0.6f, true});
  }
  drawArrow(sheet, *at, d);
  drawShape(sheet.pen, *at, d);
  sheet.taken.push_back(Box{at->x, at->y, at->x, at->y}.grown(kShape * sheet.pen.unit()));
  askForFigure(sheet, *at, d);
}

}  // namespace

void drawReadings(OverlaySheet& sheet, const model::AsBuilt& asBuilt) {
  const auto& set = sheet.options.readingSet;
  if (!isElevation(sheet.frame.camera)) {
    bool seen = false;
    for (const HeatCell& cell : sheet.options.facts->heatOf(set))
      if (cell.made <= sheet.frame.time + 1e-6) seen = drawCell(sheet, cell) || seen;
    if (seen) drawScale(sheet);
  }
  for (const model::Deviation& d : asBuilt.deviations)
    if ((set ? d.set == *set : d.latest) && stands(sheet, d)) drawReading(sheet, d);
}

}  // namespace viewer
