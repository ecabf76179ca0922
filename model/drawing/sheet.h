// A flat drawing as plain data: what is on each sheet, in millimetres on the paper.
//
// x runs to the right and y up from the paper's lower left corner. Nothing here knows of a file
// form: model/exchange/drawing_pdf.h and drawing_dxf.h write sheets.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "model/geometry/polygon.h"
#include "model/vec.h"

namespace model {

// What a mark belongs to. A reader of the DXF switches them on and off.
enum class Layer {
  Site,  // site boundary's ground, bench marks, north
  Boundary,
  Limits,     // set by permission or agreement, with their marks
  Buildings,  // that stand already
  Outlines,   // outer face of the finished masonry
  Faces,      // the other faces of the leaves
  Foundations,
  Cellar,
  Profiles,  // boards and pegs
  Strings,   // the lines between them
  Corners,   // their letters
  Diagonals,
  Dimensions,
  Levels,
  Text,
  Tables,
  Frame,  // border and title block
  Count
};

// "profiles"; lower case, one word.
const char* nameOf(Layer layer);

// Dashed: hidden or below. Chain: centre lines, strings and boundaries.
enum class LineType { Continuous, Dashed, Chain };

// Widths in millimetres are those of ISO 128-2 (each about 1.4 times the last).
inline constexpr double kPen013 = 0.13, kPen018 = 0.18, kPen025 = 0.25, kPen035 = 0.35,
                        kPen050 = 0.5, kPen070 = 0.7;

struct Pen {
  double width = kPen025;
  LineType type = LineType::Continuous;
};

// The lengths of dashes and gaps by turns, from a dash, mm; empty when continuous. From memory of
// ISO 128-2: dash 12, gap 3, long dash 24, dot half the line's width.
std::vector<double> dashesOf(const Pen& pen);

struct Stroke {
  Layer layer = Layer::Outlines;
  Pen pen;
  std::vector<Vec2> points;  // two or more
  bool closed = false;
};

// An area filled with grey.
struct Fill {
  Layer layer = Layer::Buildings;
  double grey = 0.9;  // 0 black, 1 white
  Polygon outline;
};

// A whole circle.
struct Circle {
  Layer layer = Layer::Corners;
  Pen pen;
  Vec2 centre{0, 0};
  double radius = 1;
  bool cleared = false;  // the paper shows inside it: what it covers is hidden
};

enum class Across { Left, Centre, Right };  // which point of the text stands at `at`
enum class Up { Baseline, Middle, Top };    // of its capitals

struct Text {
  Layer layer = Layer::Text;
  std::string text;  // UTF-8, one line
  Vec2 at{0, 0};
  double size = 2.5;  // height of its capitals; ISO 3098: 1.8, 2.5, 3.5, 5, 7
  Across across = Across::Left;
  Up up = Up::Baseline;
  double angle = 0;  // degrees anticlockwise
  bool bold = false;
  bool halo = false;  // a rim of bare paper, where it crosses lines
};

// The lower left corner of a text's capitals from its `at`, along the text and square to it, before
// it is turned; `width` is the text's.
Vec2 startOf(const Text& text, double width);

// How a plan in the model's metres lies on the paper.
struct View {
  double scale = 50;  // 1:scale
  Vec2 origin{0, 0};  // where the model's (0, 0) is, paper mm

  Vec2 onPaper(const Vec2& metres) const { return origin + metres * (1000.0 / scale); }
  Vec2 inMetres(const Vec2& paper) const { return (paper - origin) * (scale / 1000.0); }
  // A length in metres, on the paper.
  double length(double metres) const { return metres * 1000.0 / scale; }
};

// An upright rectangle on the paper.
struct Area {
  Vec2 low{0, 0}, high{0, 0};

  double width() const { return high.x - low.x; }
  double height() const { return high.y - low.y; }
  Polygon corners() const { return {low, {high.x, low.y}, high, {low.x, high.y}}; }
};

// A photograph or rendering, as the bytes of a JPEG file. Only writers look into them.
struct Jpeg {
  std::string bytes;
  int width = 0, height = 0;  // pixels
};

struct Picture {
  Layer layer = Layer::Text;
  Jpeg jpeg;
  Area area;  // filled by it
};

struct Sheet {
  std::string title;
  double width = 297, height = 210;  // of the paper, mm
  std::optional<View> view;          // of the plan on it; none: only texts and tables
  // Drawn in this order, each list from its front. Drawings in files that have no pictures leave
  // them out.
  std::vector<Picture> pictures;
  std::vector<Fill> fills;
  std::vector<Stroke> strokes;
  std::vector<Circle> circles;
  std::vector<Text> texts;

  void line(Layer layer, const Pen& pen, const Vec2& a, const Vec2& b);
  void outline(Layer layer, const Pen& pen, const Polygon& polygon);
};

// As large as goes into an area with its own proportions, in the middle of it.
Area fitted(const Jpeg& jpeg, const Area& area);

// All sheets of one drawing, in order.
struct Drawing {
  std::string title;
  std::vector<Sheet> sheets;
};

// Width of a text on the paper, mm, for capitals of a height. The one who knows the typeface gives
// it: textWidth() of model/exchange/lettering.h.
using TextWidth = std::function<double(const std::string& text, double size, bool bold)>;

// The parts of a stroke that lie in an area; a closed stroke that leaves it comes back as open
// pieces.
std::vector<Stroke> clipped(const Stroke& stroke, const Area& area);

// What a text takes up, with room for marks above and below its letters: four corners,
// anticlockwise. `gap` is added all round.
Polygon boxOf(const Text& text, const TextWidth& widthOf, double gap = 0);

}  // namespace model
