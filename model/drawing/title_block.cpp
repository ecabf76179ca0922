#include "model/drawing/title_block.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/drawing/paper.h"
#include "model/drawing/wrap_text.h"
#include "model/level_text.h"

namespace model {

namespace {

constexpr double kPad = 1.5;

// One box of the block: a small word that says what it is, and what it says beneath.
struct Field {
  std::string name, value;
  Area area;
  double size = 2.5;  // of the value's capitals
  bool bold = false;
};

void drawField(Sheet& sheet, const Field& field, const TextWidth& widthOf) {
  sheet.outline(Layer::Frame, {kPen018, LineType::Continuous}, field.area.corners());
  Text name;
  name.layer = Layer::Frame;
  name.text = field.name;
  name.size = 1.4;
  name.up = Up::Top;
  name.at = {field.area.low.x + kPad, field.area.high.y - 1};
  sheet.texts.push_back(name);
  const double room = field.area.width() - 2 * kPad;
  // Smaller letters before fewer words; two lines before fewer words where there is height.
  Text value = name;
  value.bold = field.bold;
  value.size = field.size;
  while (value.size > 1.8 && widthOf(field.value, value.size, value.bold) > room)
    value.size = std::max(1.8, value.size - 0.35);
  auto lines = wrapped(field.value, room, {value.size, field.bold}, widthOf);
  const auto most = size_t(std::max(1.0, (field.area.height() - 3.2) / (1.5 * value.size)));
  if (lines.size() > most) {
    std::string rest;
    for (size_t i = most - 1; i < lines.size(); ++i) rest += (rest.empty() ? "" : " ") + lines[i];
    lines.resize(most);
    lines.back() = shortened(rest, room, {value.size, field.bold}, widthOf);
  }
  for (size_t i = 0; i < lines.size(); ++i) {
    value.text = lines[i];
    value.up = Up::Baseline;
    value.at.y = field.area.low.y + 1.4 + 1.5 * value.size * double(lines.size() - 1 - i);
    if (!value.text.empty()) sheet.texts.push_back(value);
  }
}

}  // namespace

void drawNorth(Sheet& sheet, const Vec2& centre, double radius, double bearing) {
  const double angle = bearing * 3.14159265358979323846 / 180;
  const Vec2 d{std::sin(angle), std::cos(angle)}, n{-d.y, d.x};
  const Pen pen{kPen025, LineType::Continuous};
  const Vec2 tip = centre + d * radius, back = centre - d * (radius * 0.8),
             waist = centre - d * (radius * 0.4);
  sheet.circles.push_back({Layer::Site, {kPen018, LineType::Continuous}, centre, radius, false});
  sheet.fills.push_back({Layer::Site, 0, {tip, back + n * (radius * 0.5), waist}});
  sheet.outline(Layer::Site, pen,
                {tip, back + n * (radius * 0.5), waist, back - n * (radius * 0.5)});
  Text letter;
  letter.layer = Layer::Site;
  letter.text = "N";
  letter.bold = true;
  letter.size = 2.5;
  letter.across = Across::Centre;
  letter.up = Up::Middle;
  letter.at = centre + d * (radius + 2.4);
  sheet.texts.push_back(letter);
}

TitleBlock titleBlockOf(const Job& job, const std::string& what, const std::string& date) {
  TitleBlock block;
  block.job = job.name;
  block.drawing = what + (job.drawing.empty() ? "" : ", to drawing " + job.drawing);
  block.date = date;
  block.units = "lengths mm, levels m";
  block.benchMark = job.site.benchMark
                        ? levelText(job.site.benchMark->level) + " " + job.site.benchMark->name
                        : "none given";
  block.benchMark += "; 0.000 = " + job.datumNote;
  block.northBearing = job.site.northBearing;
  return block;
}

void drawTitleStrip(Sheet& sheet, const TitleBlock& block, const TextWidth& widthOf) {
  const Area border = insideBorder(sheet);
  sheet.outline(Layer::Frame, {kPen070, LineType::Continuous}, border.corners());
  const auto box = [&](double from, double to) {
    return Area{{border.low.x + from * border.width(), border.low.y},
                {border.low.x + to * border.width(), border.low.y + kTitleStripHeight}};
  };
  drawField(sheet, {"JOB", block.job, box(0, 0.42), 2.5, true}, widthOf);
  drawField(sheet, {"DRAWING", block.drawing, box(0.42, 0.74), 2.0, false}, widthOf);
  drawField(sheet, {"DATE", block.date, box(0.74, 0.87), 2.0, false}, widthOf);
  drawField(sheet, {"SHEET", block.sheet, box(0.87, 1), 2.5, true}, widthOf);
}

Area drawTitleBlock(Sheet& sheet, const TitleBlock& block, double width, const TextWidth& widthOf) {
  const Area border = insideBorder(sheet);
  sheet.outline(Layer::Frame, {kPen070, LineType::Continuous}, border.corners());
  const Area whole{{border.high.x - width, border.low.y},
                   {border.high.x, border.low.y + kTitleBlockHeight}};
  const double north = 17, left = whole.low.x, right = whole.high.x, low = whole.low.y;
  const double third = width / 3;
  const auto box = [&](double x0, double y0, double x1, double y1) {
    return Area{{x0, low + y0}, {x1, low + y1}};
  };
  const Field fields[] = {
      {"JOB", block.job, box(left, 28, right - north, 37), 3.5, true},
      {"DRAWING", block.drawing, box(left, 19, right - north, 28), 2.5, true},
      {"BENCH MARK", block.benchMark, box(left, 8, left + 2 * third, 19), 2.0, false},
      {"UNITS", block.units, box(left + 2 * third, 8, right, 19), 2.0, false},
      {"SCALE", block.scale, box(left, 0, left + third, 8), 2.5, true},
      {"DATE", block.date, box(left + third, 0, left + 2 * third, 8), 2.0, false},
      {"SHEET", block.sheet, box(left + 2 * third, 0, right, 8), 2.5, true},
  };
  for (const Field& field : fields) drawField(sheet, field, widthOf);
  sheet.outline(Layer::Frame, {kPen050, LineType::Continuous}, whole.corners());
  // The letter may stand on any side of the arrow.
  drawNorth(sheet, {right - north / 2, low + 28}, 4.2, block.northBearing);
  return whole;
}

Area drawScaleBar(Sheet& sheet, const Vec2& at, double longest, const TextWidth& widthOf) {
  const double scale = sheet.view ? sheet.view->scale : 1;
  double metres = 0.01;
  for (const double base : {0.01, 0.1, 1.0, 10.0, 100.0})
    for (const double times : {1.0, 2.0, 5.0})
      if (base * times * 1000 / scale <= longest) metres = base * times;
  const double length = metres * 1000 / scale, height = 1.2;
  const Pen pen{kPen018, LineType::Continuous};
  constexpr int kParts = 5;
  for (int i = 0; i < kParts; ++i) {
    const Vec2 low = at + Vec2{length * i / kParts, 0};
    const Polygon part = Area{low, low + Vec2{length / kParts, height}}.corners();
    if (i % 2 == 0) sheet.fills.push_back({Layer::Frame, 0, part});
    sheet.outline(Layer::Frame, pen, part);
  }
  Text text;
  text.layer = Layer::Frame;
  text.size = 1.8;
  text.across = Across::Centre;
  text.text = "0";
  text.at = at + Vec2{0, height + 1};
  sheet.texts.push_back(text);
  text.text = lengthText(metres) + " mm";
  text.at.x = at.x + length;
  sheet.texts.push_back(text);
  const double half = widthOf(text.text, text.size, false) / 2;
  return {at - Vec2{1, 0}, at + Vec2{length + half, height + 1 + 1.5 * text.size}};
}

}  // namespace model
