// Limits that a permission or an agreement sets: each with a shape and words for clear, at the
// limit and over.
#include <cmath>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/setting_out_lines.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr float kShape = 6;  // units

void drawShape(const Pen& pen, const glm::vec2& at, model::LimitVerdict verdict) {
  const float u = pen.unit(), r = kShape * u;
  switch (verdict) {
    case model::LimitVerdict::Clear:
      pen.list()->AddCircleFilled(im(at), r, colour(ink::kCard));
      pen.list()->AddCircle(im(at), r, colour(ink::kInk), 0, 1.6f * u);
      return;
    case model::LimitVerdict::AtTheLimit:
      pen.diamond(at, r * 1.15f, ink::kTape, ink::kInk);
      return;
    case model::LimitVerdict::Over:
      pen.list()->AddTriangleFilled({at.x, at.y - r * 1.2f}, {at.x + r * 1.2f, at.y + r},
                                    {at.x - r * 1.2f, at.y + r}, colour(ink::kCaution));
      return;
    case model::LimitVerdict::Told:
      return;
  }
}

void tell(OverlaySheet& sheet, const glm::vec2& at, const model::LimitTest& limit,
          const std::string& words) {
  const float r = kShape * sheet.pen.unit();
  if (!Box{at.x, at.y, at.x, at.y}.grown(r).inside(sheet.layout.sheet)) return;
  drawShape(sheet.pen, at, limit.verdict);
  sheet.taken.push_back(Box{at.x, at.y, at.x, at.y}.grown(r));
  const bool over = limit.verdict == model::LimitVerdict::Over;
  const Cut cut = over ? Cut::Bold : Cut::Text;
  const float off = r * 1.8f;
  LabelRequest request;
  request.anchor = at + glm::vec2(off, 0);
  request.size = sheet.pen.size(words, cut);
  request.towards = {1, 0};
  for (const glm::vec2 side : {glm::vec2(-1, 0), glm::vec2(0, -1), glm::vec2(0, 1)})
    request.others.push_back({at + side * off, side});
  request.priority = 4;
  sheet.ask(request, {words, over ? ink::kCaution : ink::kInk, 1, true, cut});
}

void drawDistance(OverlaySheet& sheet, const model::LimitTest& limit) {
  if (isElevation(sheet.frame.camera)) return;
  const glm::vec3 a = onSettingOutLevel(sheet, limit.from), b = onSettingOutLevel(sheet, limit.at);
  settingOutLine(sheet, a, b, {ink::kInk, 1.6f, 1, false});
  const glm::vec3 middle = (a + b) * 0.5f;
  if (!isPlan(sheet.frame.camera) && sheet.hidden(middle)) return;
  const auto at = sheet.onSheet(middle);
  if (!at) return;
  const size_t to = limit.what.find(" to ");
  const std::string where = limit.kind == model::LimitKind::Boundary || to == std::string::npos
                                ? " to the boundary"
                                : limit.what.substr(to);
  tell(sheet, *at, limit, model::lengthText(limit.found) + where + ": " + limit.words);
}

// The height that the roof must keep under, round the walls.
void drawHeight(OverlaySheet& sheet, const model::LimitTest& limit) {
  if (isPlan(sheet.frame.camera)) return;  // all heights fall on one point there
  const model::Polygon& outline = sheet.model.settingOut.outline;
  std::optional<glm::vec2> rightmost;
  for (size_t i = 0; i < outline.size(); ++i) {
    const glm::vec3 a = sheet.scene.local({outline[i], limit.allowed});
    const glm::vec3 b = sheet.scene.local({outline[(i + 1) % outline.size()], limit.allowed});
    settingOutLine(sheet, a, b, {ink::kLevels, 1.4f, 0.9f, true});
    const auto at = sheet.onSheet(a);
    // Where nothing lies over it.
    if (at && !sheet.takenAt(*at) && (!rightmost || at->x > rightmost->x)) rightmost = at;
  }
  if (rightmost)
    tell(sheet, *rightmost, limit,
         limit.what + " limit " + model::levelText(limit.allowed) + ": " + limit.words);
}

}  // namespace

void drawLimits(OverlaySheet& sheet, const model::SetOutLines& lines) {
  for (const model::LimitTest& limit : lines.limits) {
    if (limit.verdict == model::LimitVerdict::Told) continue;
    if (limit.kind == model::LimitKind::Boundary || limit.kind == model::LimitKind::Building)
      drawDistance(sheet, limit);
    else
      drawHeight(sheet, limit);
  }
}

}  // namespace viewer
