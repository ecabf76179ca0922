#include "model/exchange/drawing_dxf.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <cstdio>

#include "model/exchange/dxf_text.h"
#include "model/job/write_job.h"

namespace model {
namespace {

constexpr double kBetweenSheets = 20;  // millimetres of paper

std::string layerOf(Layer layer) {
  std::string name = nameOf(layer);
  for (char& c : name) c = char(std::toupper(static_cast<unsigned char>(c)));
  return name;
}

const char* lineTypeOf(LineType type) {
  switch (type) {
    case LineType::Dashed:
      return "DASHED";
    case LineType::Chain:
      return "CHAIN";
    case LineType::Continuous:
      break;
  }
  return "CONTINUOUS";
}

// Pairs of a group code and a value, a line each.
class Groups {
 public:
  Groups& add(int code, const std::string& value) {
    text_ += std::to_string(code) + "\n" + value + "\n";
    return *this;
  }
  Groups& add(int code, int value) { return add(code, std::to_string(value)); }
  Groups& add(int code, double value) {
    char text[64];
    std::snprintf(text, sizeof text, "%.6f", value);
    return add(code, std::string(text) == "-0.000000" ? "0.000000" : text);
  }
  // A point's x, y and z have codes 10 apart.
  Groups& point(int code, const Vec2& p) {
    return add(code, p.x).add(code + 10, p.y).add(code + 20, 0.0);
  }
  Groups& point2(int code, const Vec2& p) { return add(code, p.x).add(code + 10, p.y); }
  const std::string& text() const { return text_; }

 private:
  std::string text_;
};

// From one sheet's paper to units of the file.
struct FullSize {
  double enlarged = 1;  // units to a millimetre of paper
  Vec2 origin{0, 0};    // paper point at (0, 0)

  Vec2 at(const Vec2& paper) const { return (paper - origin) * enlarged; }
};

void writeLineTypes(Groups& out, double scale) {
  out.add(0, "TABLE").add(2, "LTYPE").add(70, 3);
  for (const LineType type : {LineType::Continuous, LineType::Dashed, LineType::Chain}) {
    // One pattern for all pens: that of the middling width.
    std::vector<double> dashes = dashesOf({kPen025, type});
    double whole = 0;
    for (const double d : dashes) whole += d * scale;
    out.add(0, "LTYPE").add(2, lineTypeOf(type)).add(70, 0).add(3, "").add(72, 65);
    out.add(73, int(dashes.size())).add(40, whole);
    for (size_t i = 0; i < dashes.size(); ++i) out.add(49, dashes[i] * scale * (i % 2 ? -1 : 1));
  }
  out.add(0, "ENDTAB");
}

void writeTables(Groups& out, double scale) {
  out.add(0, "SECTION").add(2, "TABLES");
  writeLineTypes(out, scale);
  out.add(0, "TABLE").add(2, "LAYER").add(70, int(Layer::Count) + 1);
  out.add(0, "LAYER").add(2, "0").add(70, 0).add(62, 7).add(6, "CONTINUOUS");
  for (int i = 0; i < int(Layer::Count); ++i)
    out.add(0, "LAYER").add(2, layerOf(Layer(i))).add(70, 0).add(62, 7).add(6, "CONTINUOUS");
  out.add(0, "ENDTAB");
  out.add(0, "TABLE").add(2, "STYLE").add(70, 1);
  out.add(0, "STYLE").add(2, "STANDARD").add(70, 0).add(40, 0.0).add(41, 1.0).add(50, 0.0);
  out.add(71, 0).add(42, 2.5 * scale).add(3, "arial.ttf").add(4, "");
  out.add(0, "ENDTAB").add(0, "ENDSEC");
}

void writeStroke(Groups& out, const Stroke& stroke, const FullSize& place) {
  const std::string layer = layerOf(stroke.layer), type = lineTypeOf(stroke.pen.type);
  if (stroke.points.size() == 2) {
    out.add(0, "LINE").add(8, layer).add(6, type);
    out.point(10, place.at(stroke.points[0])).point(11, place.at(stroke.points[1]));
    return;
  }
  out.add(0, "POLYLINE").add(8, layer).add(6, type).add(66, 1).point(10, {0, 0});
  out.add(70, stroke.closed ? 1 : 0);
  for (const Vec2& p : stroke.points) out.add(0, "VERTEX").add(8, layer).point(10, place.at(p));
  out.add(0, "SEQEND").add(8, layer);
}

// Release 12 has no filled outline: triangles do it. Light greys are left out: they are background
// on paper and would be solid ink here.
void writeFill(Groups& out, const Fill& fill, const FullSize& place) {
  if (fill.grey > 0.5 || fill.outline.size() < 3) return;
  Region region{fill.outline, {}};
  if (signedArea(region.outer) < 0) std::reverse(region.outer.begin(), region.outer.end());
  for (const auto& t : triangulate(region)) {
    out.add(0, "SOLID").add(8, layerOf(fill.layer));
    for (int k = 0; k < 4; ++k)
      out.point(10 + k, place.at(region.outer[t[size_t(std::min(k, 2))]]));
  }
}

void writeText(Groups& out, const Text& text, const FullSize& place) {
  if (text.text.empty()) return;
  const Vec2 at = place.at(text.at);
  out.add(0, "TEXT").add(8, layerOf(text.layer)).point(10, at);
  out.add(40, text.size * place.enlarged).add(1, dxfText(text.text));
  if (text.angle != 0) out.add(50, text.angle);
  const int across = int(text.across);
  const int up = text.up == Up::Baseline ? 0 : text.up == Up::Middle ? 2 : 3;
  if (across == 0 && up == 0) return;
  out.add(72, across).point(11, at).add(73, up);
}

void writeSheet(Groups& out, const Sheet& sheet, const FullSize& place) {
  for (const Fill& fill : sheet.fills) writeFill(out, fill, place);
  for (const Stroke& stroke : sheet.strokes) writeStroke(out, stroke, place);
  for (const Circle& circle : sheet.circles) {
    out.add(0, "CIRCLE").add(8, layerOf(circle.layer)).add(6, lineTypeOf(circle.pen.type));
    out.point(10, place.at(circle.centre)).add(40, circle.radius * place.enlarged);
  }
  for (const Text& text : sheet.texts) writeText(out, text, place);
}

}  // namespace

std::string dxfBytes(const Drawing& drawing) {
  const auto plan = std::find_if(drawing.sheets.begin(), drawing.sheets.end(),
                                 [](const Sheet& sheet) { return sheet.view.has_value(); });
  const double scale = plan == drawing.sheets.end() ? 1 : plan->view->scale;
  const Vec2 origin = plan == drawing.sheets.end() ? Vec2{0, 0} : plan->view->origin;
  std::vector<FullSize> places;
  Vec2 low{0, 0}, high{0, 0};
  double right = 0;
  for (const Sheet& sheet : drawing.sheets) {
    const FullSize place{scale, origin - Vec2{right, 0}};
    if (places.empty()) low = place.at({0, 0});
    const Vec2 corner = place.at({sheet.width, sheet.height});
    high = places.empty() ? corner : Vec2{std::max(high.x, corner.x), std::max(high.y, corner.y)};
    places.push_back(place);
    right += sheet.width + kBetweenSheets;
  }
  Groups out;
  out.add(999, dxfText(drawing.title) + "; one unit is one millimetre");
  out.add(0, "SECTION").add(2, "HEADER");
  out.add(9, "$ACADVER").add(1, "AC1009").add(9, "$INSBASE").point(10, {0, 0});
  out.add(9, "$EXTMIN").point(10, low).add(9, "$EXTMAX").point(10, high);
  out.add(9, "$LIMMIN").point2(10, low).add(9, "$LIMMAX").point2(10, high);
  out.add(9, "$LTSCALE").add(40, 1.0).add(9, "$LUNITS").add(70, 2).add(9, "$LUPREC").add(70, 3);
  out.add(0, "ENDSEC");
  writeTables(out, scale);
  out.add(0, "SECTION").add(2, "BLOCKS").add(0, "ENDSEC");
  out.add(0, "SECTION").add(2, "ENTITIES");
  for (size_t i = 0; i < places.size(); ++i) writeSheet(out, drawing.sheets[i], places[i]);
  out.add(0, "ENDSEC").add(0, "EOF");
  return out.text();
}

std::optional<Problem> writeDxf(const Drawing& drawing, const std::string& path) {
  return saveAtomically(path, dxfBytes(drawing));
}

}  // namespace model
