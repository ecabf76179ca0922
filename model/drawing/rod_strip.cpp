// One strip: the measuring edge with its courses, and the names of its marks.
#include <algorithm>
#include <cmath>

#include "model/drawing/rod_strip_parts.h"
#include "model/drawing/wrap_text.h"
#include "model/level_text.h"

namespace model {

namespace {

constexpr double kNumbers = 10.5;  // middle of the courses' numbers
constexpr double kMarkLine = 16;
constexpr double kLabels = 20;  // where labels begin
constexpr double kLetters = 2.1, kSmallest = 1.2;
constexpr double kHead = 5;  // of the strip, for its own number
constexpr double kSame = 5e-4;

class Strip {
 public:
  Strip(Sheet& sheet, const Area& area, const RodOfCorner& of, const RodPiece& piece,
        const TextWidth& widthOf)
      : sheet_(sheet), area_(area), of_(of), rod_(of.rod), piece_(piece), widthOf_(widthOf) {
    low_ = area.low.y + (piece.number > 1 ? kFlap : 0);
    high_ = low_ + (piece.high - piece.low) * 1000;
  }

  void draw() {
    outline();
    for (const RodCourse& course : rod_.courses) drawCourse(course);
    drawCourseLine(rod_.dampCourse);
    const auto labels = placedLabels();
    for (const GaugeMark& mark : rod_.marks)
      if (isHere(mark.level)) line(kPen050, {0, y(mark.level)}, {kMarkLine, y(mark.level)});
    for (const RodLabel& label : labels) drawLabel(label);
  }

 private:
  double y(double level) const { return low_ + (level - piece_.low) * 1000; }
  bool isHere(double level) const {
    const bool last = piece_.number == piece_.of;
    return level > piece_.low - kSame && (level < piece_.high - kSame || last);
  }
  Vec2 at(const Vec2& onStrip) const { return {area_.low.x + onStrip.x, onStrip.y}; }

  void line(double pen, const Vec2& a, const Vec2& b, Layer layer = Layer::Levels,
            LineType type = LineType::Continuous) {
    sheet_.line(layer, {pen, type}, at(a), at(b));
  }

  void text(const std::string& words, const Vec2& where, double size, Across across = Across::Left,
            bool bold = false) {
    Text text;
    text.layer = Layer::Text;
    text.text = words;
    text.at = at(where);
    text.size = size;
    text.across = across;
    text.up = Up::Middle;
    text.bold = bold;
    sheet_.texts.push_back(text);
  }

  // Cut along the dashes. The foot and the joins are lines to cut to exactly.
  void outline() {
    const double width = area_.width();
    const auto dashed = [&](const Vec2& a, const Vec2& b) {
      line(kPen018, a, b, Layer::Frame, LineType::Dashed);
    };
    const double bottom = area_.low.y;
    dashed({0, bottom}, {0, high_});
    dashed({width, bottom}, {width, high_});
    const bool last = piece_.number == piece_.of, first = piece_.number == 1;
    if (last) dashed({0, high_}, {width, high_});
    if (!last) line(kPen025, {0, high_}, {width, high_}, Layer::Frame);
    line(first ? kPen070 : kPen025, {0, low_}, {width, low_}, Layer::Frame);
    text("corner " + of_.corner + ", strip " + std::to_string(piece_.number) + " of " +
             std::to_string(piece_.of),
         {width - 1.5, high_ - kHead / 2}, 1.8, Across::Right, true);
    if (first) return;
    dashed({0, bottom}, {width, bottom});
    text("Paste behind strip " + std::to_string(piece_.number - 1) + ",", {kLabels, low_ - 4}, 1.8);
    text("its edge on this line.", {kLabels, low_ - 7.5}, 1.8);
    for (const double x : {kLabels - 8.0, width - 6.0})
      sheet_.fills.push_back(
          {Layer::Frame, 0, {at({x, low_}), at({x - 2, low_ - 4}), at({x + 2, low_ - 4})}});
  }

  void drawCourse(const RodCourse& course) {
    // The bed joint, as much of it as lies on this piece.
    const double bottom = std::max(course.bottom, piece_.low);
    const double top = std::min(course.bottom + course.bed, piece_.high);
    if (top > bottom) {
      const double x0 = area_.low.x, x1 = x0 + kCourseLine;
      sheet_.fills.push_back(
          {Layer::Levels, 0.8, {{x0, y(bottom)}, {x1, y(bottom)}, {x1, y(top)}, {x0, y(top)}}});
    }
    drawCourseLine(course.number > 0 ? course.top() : course.bottom);
    const double middle = course.bottom + course.bed + course.unit / 2;
    if (middle <= piece_.low + 0.003 || middle >= piece_.high - 0.003 || course.unit == 0) return;
    const bool covered =
        std::any_of(rod_.marks.begin(), rod_.marks.end(),
                    [&](const GaugeMark& mark) { return std::fabs(mark.level - middle) < 0.002; });
    text(std::to_string(course.number), {kNumbers, y(middle) + (covered ? 4 : 0)}, 2.5,
         Across::Centre);
  }

  void drawCourseLine(double level) {
    if (!isHere(level)) return;
    const double block = of_.walls.blockHeight + of_.walls.joint;
    const double blocks = (level - rod_.dampCourse) / block;
    const bool whole = std::fabs(blocks - std::round(blocks)) * block < kSame;
    line(whole ? kPen035 : kPen025, {0, y(level)}, {whole ? kBlockLine : kCourseLine, y(level)});
    const bool crossed =
        std::any_of(rod_.marks.begin(), rod_.marks.end(), [&](const GaugeMark& mark) {
          return mark.level > level + kSame && mark.level < level + 0.003;
        });
    if (!crossed && y(level) + 3 < high_)
      text(levelText(level), {kNumbers + 1.5, y(level) + 1.6}, 1.4, Across::Centre);
  }

  // A label for each height that has marks, and one for each odd course.
  std::vector<RodLabel> labels(double size) const {
    std::vector<RodLabel> labels;
    const double room = area_.width() - kLabels - 1.5;
    const auto add = [&](RodLabel& label, const std::string& words, bool bold) {
      for (const std::string& each : wrapped(words, room, {size, bold}, widthOf_))
        label.lines.push_back(each);
      if (bold) label.boldLines = label.lines.size();
    };
    for (size_t i = 0; i < rod_.marks.size();) {
      const double level = rod_.marks[i].level;
      RodLabel label{y(level), kMarkLine, 0, {}, 0};
      std::string names, places;
      for (; i < rod_.marks.size() && rod_.marks[i].level < level + kSame; ++i) {
        const GaugeMark& mark = rod_.marks[i];
        names += (names.empty() ? "" : "; ") + mark.name;
        if (mark.where.find('(') != std::string::npos || mark.key.rfind("top-of", 0) == 0)
          places += (places.empty() ? "" : ", ") + mark.where;
      }
      if (!isHere(level)) continue;
      const std::string course = coursePlaceText(rod_, level);
      add(label, names, true);
      if (!places.empty()) add(label, places, false);
      if (std::fabs(level - rod_.dampCourse) < kSame) {
        add(label, levelText(level) + "; datum of this rod", false);
      } else {
        add(label, levelText(level) + "; " + fromDampCourseText(rod_, level), false);
        add(label, (course.find(' ') == std::string::npos ? "course " : "") + course, false);
      }
      labels.push_back(label);
    }
    for (const RodCourse& course : rod_.courses) {
      const double middle = (course.bottom + course.top()) / 2;
      if (course.kind == CourseKind::Whole || middle < piece_.low || middle >= piece_.high)
        continue;
      RodLabel label{y(middle), kCourseLine + 5, 0, {}, 0};
      add(label, oddCourseText(course), false);
      labels.push_back(label);
    }
    return labels;
  }

  std::vector<RodLabel> placedLabels() {
    for (size_ = kLetters;; size_ *= 0.9) {
      auto found = labels(size_);
      if (spreadLabels(found, low_ + 1, high_ - kHead, 1.7 * size_) || size_ < kSmallest)
        return found;
    }
  }

  void drawLabel(const RodLabel& label) {
    const Vec2 end{kLabels - 0.8, label.middle};
    if (label.from == kMarkLine)
      line(kPen018, {label.from, label.at}, end);
    else
      line(kPen013, {label.from, label.at}, end);
    for (size_t i = 0; i < label.lines.size(); ++i)
      text(label.lines[i], {kLabels, label.middle - 1.7 * size_ * double(i)}, size_, Across::Left,
           i < label.boldLines);
  }

  Sheet& sheet_;
  Area area_;
  const RodOfCorner& of_;
  const GaugeRod& rod_;
  RodPiece piece_;
  const TextWidth& widthOf_;
  double low_ = 0, high_ = 0, size_ = kLetters;
};

}  // namespace

void drawRodPiece(Sheet& sheet, const Area& area, const RodOfCorner& rod, const RodPiece& piece,
                  const TextWidth& widthOf) {
  Strip(sheet, area, rod, piece, widthOf).draw();
}

}  // namespace model
