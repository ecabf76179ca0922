#include "model/drawing/rod_strips.h"

#include <algorithm>
#include <cmath>

#include "model/drawing/rod_strip_parts.h"
#include "model/drawing/wrap_text.h"

namespace model {

namespace {

constexpr double kMargin = 10;  // printers leave it bare
constexpr double kHeading = 19, kFooting = 12;
constexpr double kCheckColumn = 9;  // at the right, for the upright check line
constexpr double kGap = 4;          // between strips
constexpr double kLeastStrip = 56;
constexpr double kCheck = 100;  // length of the check lines

struct Page {
  double width = 0, height = 0;

  Area strips() const {
    return {{kMargin, kMargin + kFooting},
            {width - kMargin - kCheckColumn, height - kMargin - kHeading}};
  }
  size_t across() const {
    return std::max<size_t>(1, size_t((strips().width() + kGap) / (kLeastStrip + kGap)));
  }
  double stripWidth() const { return (strips().width() + kGap) / double(across()) - kGap; }
};

void put(Sheet& sheet, const std::string& words, const Vec2& at, double size, Across across,
         double angle = 0, bool bold = false) {
  Text text;
  text.layer = Layer::Frame;
  text.text = words;
  text.at = at;
  text.size = size;
  text.across = across;
  text.angle = angle;
  text.bold = bold;
  sheet.texts.push_back(text);
}

// A line of 100 mm with its end ticks. Printers may stretch one way more than the other, so there
// is one each way.
void checkLine(Sheet& sheet, const Vec2& from, const Vec2& along) {
  const Pen pen{kPen035, LineType::Continuous};
  const Vec2 across{-along.y, along.x}, to = from + along * kCheck;
  sheet.line(Layer::Frame, pen, from, to);
  for (const Vec2& end : {from, to})
    sheet.line(Layer::Frame, pen, end - across * 2.0, end + across * 2.0);
  put(sheet, "measure this: 100", from + along * (kCheck / 2) + across * 1.2, 2.1, Across::Centre,
      along.y > 0.5 ? 90 : 0);
}

void drawAround(Sheet& sheet, const Job& job, const std::string& corner, Paper paper,
                const TextWidth& widthOf) {
  const double left = kMargin, right = sheet.width - kMargin, top = sheet.height - kMargin;
  put(sheet, "Gauge rod, corner " + corner, {left, top - 4}, 3.5, Across::Left, 0, true);
  put(sheet, shortened(job.name, right - left, {2.5, false}, widthOf), {left, top - 9}, 2.5,
      Across::Left);
  const std::string print =
      std::string("Full size: print at 100 % on ") + nameOf(paper) + ", not fitted to the page. ";
  put(sheet, print + "Cut along the dashes; fix it to a straight batten.", {left, top - 13}, 1.8,
      Across::Left);
  put(sheet,
      "Set the damp course by the level, at every corner. Where the concrete is out, the first bed "
      "changes, not the rod.",
      {left, top - 16.2}, 1.8, Across::Left);
  checkLine(sheet, {left, kMargin + 4}, {1, 0});
  checkLine(sheet, {right - 2.5, kMargin + kFooting}, {0, 1});
}

}  // namespace

Drawing drawRodStrips(const Job& job, const SettingOut& out, const std::vector<GaugeRod>& rods,
                      Paper paper, const TextWidth& widthOf) {
  Drawing drawing;
  drawing.title = "Gauge rods of " + job.name;
  const Sheet blank = blankSheet(paper, Lie::Portrait);
  const Page page{blank.width, blank.height};
  const Area strips = page.strips();
  for (const GaugeRod& rod : rods) {
    const std::string& corner = out.corners[rod.corner].letter;
    const auto pieces = rodPieces(rod, (strips.height() - kFlap) / 1000);
    for (const RodPiece& piece : pieces) {
      const size_t place = (piece.number - 1) % page.across();
      if (place == 0) {
        drawing.sheets.push_back(blank);
        drawing.sheets.back().title = "Gauge rod, corner " + corner;
        drawAround(drawing.sheets.back(), job, corner, paper, widthOf);
      }
      const double x = strips.low.x + double(place) * (page.stripWidth() + kGap);
      drawRodPiece(drawing.sheets.back(),
                   {{x, strips.low.y}, {x + page.stripWidth(), strips.high.y}},
                   {rod, job.walls, corner}, piece, widthOf);
    }
  }
  for (size_t i = 0; i < drawing.sheets.size(); ++i) {
    Sheet& sheet = drawing.sheets[i];
    put(sheet, "page " + std::to_string(i + 1) + " of " + std::to_string(drawing.sheets.size()),
        {sheet.width - kMargin, sheet.height - kMargin - 4}, 2.5, Across::Right, 0, true);
  }
  return drawing;
}

}  // namespace model
