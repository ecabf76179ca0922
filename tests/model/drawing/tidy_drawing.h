// Whether a drawing is fit to be printed: everything on its sheet, no word on another.
#pragma once

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "model/drawing/paper.h"
#include "model/exchange/lettering.h"
#include "model/works/plan_shapes.h"

namespace test_support {

using namespace model;

inline const TextWidth& letters() {
  static const TextWidth width = textWidth();
  return width;
}

// What the letters themselves cover, without the room left round them.
inline Polygon inkOf(Text text) {
  const double base = text.up == Up::Baseline ? 0
                      : text.up == Up::Middle ? -text.size / 2
                                              : -text.size;
  const double width = letters()(text.text, text.size, text.bold);
  const double left = text.across == Across::Left     ? 0
                      : text.across == Across::Centre ? -width / 2
                                                      : -width;
  const double angle = text.angle * 3.14159265358979323846 / 180;
  const Vec2 u{std::cos(angle), std::sin(angle)}, v{-u.y, u.x};
  return {text.at + u * left + v * base, text.at + u * (left + width) + v * base,
          text.at + u * (left + width) + v * (base + text.size),
          text.at + u * left + v * (base + text.size)};
}

// Empty when every mark lies in the border and no text covers another.
inline std::string untidy(const Drawing& drawing) {
  for (const Sheet& sheet : drawing.sheets) {
    const Area border = insideBorder(sheet);
    const auto inside = [&](const Vec2& p) {
      return p.x >= border.low.x - 1e-6 && p.x <= border.high.x + 1e-6 &&
             p.y >= border.low.y - 1e-6 && p.y <= border.high.y + 1e-6;
    };
    for (const Picture& picture : sheet.pictures)
      for (const Vec2& p : picture.area.corners())
        if (!inside(p)) return "a picture leaves the sheet";
    for (const Stroke& stroke : sheet.strokes)
      for (const Vec2& p : stroke.points)
        if (!inside(p))
          return std::string("a line of ") + nameOf(stroke.layer) + " leaves the sheet";
    for (const Fill& fill : sheet.fills)
      for (const Vec2& p : fill.outline)
        if (!inside(p)) return std::string("a mark of ") + nameOf(fill.layer) + " leaves the sheet";
    std::vector<Polygon> inks;
    for (size_t i = 0; i < sheet.texts.size(); ++i) {
      inks.push_back(inkOf(sheet.texts[i]));
      for (const Vec2& p : inks.back())
        if (!inside(p)) return "\"" + sheet.texts[i].text + "\" leaves the sheet";
      for (size_t j = 0; j < i; ++j)
        if (overlapping(inks[i], inks[j]))
          return "\"" + sheet.texts[i].text + "\" covers \"" + sheet.texts[j].text + "\"";
    }
  }
  return "";
}

inline bool says(const Sheet& sheet, const std::string& words) {
  return std::any_of(sheet.texts.begin(), sheet.texts.end(),
                     [&](const Text& text) { return text.text == words; });
}

}  // namespace test_support
