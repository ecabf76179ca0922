#include "viewer/overlays/pen.h"

#include <algorithm>
#include <cmath>

#include "viewer/line_breaks.h"
#include "viewer/reading_order.h"

namespace viewer {

ImU32 colour(unsigned rgb, float opacity) {
  return IM_COL32((rgb >> 16) & 255, (rgb >> 8) & 255, rgb & 255,
                  int(std::clamp(opacity, 0.0f, 1.0f) * 255 + 0.5f));
}

ImFont* Pen::font(Cut cut) const {
  if (cut == Cut::Heading) return lettering_.heading;
  return cut == Cut::Bold ? lettering_.bold : lettering_.text;
}

Pen Pen::sized(float factor) const {
  Pen pen = *this;
  pen.factor_ *= factor;
  return pen;
}

float Pen::lineHeight(Cut cut) const { return font(cut)->FontSize * factor_; }

glm::vec2 Pen::size(const std::string& text, Cut cut) const {
  const std::string seen = asSeen(text);
  return glmOf(
      font(cut)->CalcTextSizeA(lineHeight(cut), 1e9f, 0, seen.c_str(), seen.c_str() + seen.size()));
}

void Pen::letters(const glm::vec2& at, unsigned rgb, const std::string& text, Cut cut,
                  float opacity) const {
  // On whole pixels the letters stay crisp.
  const std::string seen = asSeen(text);
  list_->AddText(font(cut), lineHeight(cut), {std::round(at.x), std::round(at.y)},
                 colour(rgb, opacity), seen.c_str(), seen.c_str() + seen.size());
}

void Pen::record(const glm::vec2& at, const std::string& text, Cut cut) const {
  if (record_ && !text.empty()) record_->push_back({text, Box::at(at, size(text, cut))});
}

void Pen::text(const glm::vec2& at, unsigned rgb, const std::string& text, Cut cut,
               float opacity) const {
  record(at, text, cut);
  letters(at, rgb, text, cut, opacity);
}

void Pen::haloText(const glm::vec2& at, unsigned rgb, const std::string& words, Cut cut,
                   float opacity) const {
  const float r = 1.4f * unit();
  for (int i = 0; i < 8; ++i) {
    const float angle = float(i) * 0.785398f;
    letters(at + glm::vec2(std::cos(angle), std::sin(angle)) * r, ink::kPaper, words, cut,
            0.7f * opacity);
  }
  text(at, rgb, words, cut, opacity);
}

float Pen::paragraph(const glm::vec2& at, float width, unsigned rgb, const std::string& words,
                     Cut cut, bool measureOnly) const {
  // At spaces only: Dear ImGui's own breaking would part "+3.750" after its point.
  const float step = lineHeight(cut) * 1.22f;
  float y = 0;
  for (const std::string& line :
       brokenLines(words, width, [&](const std::string& part) { return size(part, cut).x; })) {
    if (!measureOnly) text(at + glm::vec2(0, y), rgb, line, cut);
    y += step;
  }
  return y;
}

std::string Pen::shortened(const std::string& words, float width, Cut cut) const {
  if (size(words, cut).x <= width) return words;
  std::string cutText = words;
  while (!cutText.empty()) {
    // Take off one whole character of UTF-8: its following bytes, then its first.
    while (cutText.size() > 1 && (static_cast<unsigned char>(cutText.back()) & 0xC0) == 0x80)
      cutText.pop_back();
    cutText.pop_back();
    while (!cutText.empty() && (cutText.back() == ' ' || cutText.back() == ',')) cutText.pop_back();
    if (size(cutText + "...", cut).x <= width) return cutText.empty() ? "" : cutText + "...";
  }
  return {};
}

Pen Pen::fitted(const std::string& words, float width, Cut cut, float least) const {
  const float wide = size(words, cut).x;
  // A hair less, for what rounding adds.
  return wide <= width ? *this : sized(std::max(least, width / wide * 0.995f));
}

void Pen::line(const glm::vec2& a, const glm::vec2& b, unsigned rgb, float width,
               float opacity) const {
  list_->AddLine(im(a), im(b), colour(rgb, opacity), width * unit());
}

void Pen::fill(const Box& box, unsigned rgb, float opacity) const {
  list_->AddRectFilled({box.left, box.top}, {box.right, box.bottom}, colour(rgb, opacity));
}

void Pen::outline(const Box& box, unsigned rgb, float width, float opacity) const {
  list_->AddRect({box.left, box.top}, {box.right, box.bottom}, colour(rgb, opacity), 0, 0,
                 width * unit());
}

void Pen::diamond(const glm::vec2& c, float r, unsigned fillRgb, unsigned lineRgb) const {
  const ImVec2 points[4] = {{c.x, c.y - r}, {c.x + r, c.y}, {c.x, c.y + r}, {c.x - r, c.y}};
  list_->AddConvexPolyFilled(points, 4, colour(fillRgb));
  list_->AddPolyline(points, 4, colour(lineRgb), ImDrawFlags_Closed, 1.4f * unit());
}

void Pen::caution(const glm::vec2& c, float r) const {
  const ImVec2 a{c.x, c.y - r}, b{c.x + r, c.y + r * 0.8f}, d{c.x - r, c.y + r * 0.8f};
  list_->AddTriangle(a, b, d, colour(ink::kCaution), 1.8f * unit());
  line({c.x, c.y - r * 0.35f}, {c.x, c.y + r * 0.25f}, ink::kCaution, 1.8f);
  line({c.x, c.y + r * 0.42f}, {c.x, c.y + r * 0.6f}, ink::kCaution, 1.8f);
}

void Pen::levelMark(const glm::vec2& p, float s, unsigned rgb, float filled, float opacity) const {
  const ImVec2 a{p.x, p.y}, b{p.x - s * 0.62f, p.y - s}, c{p.x + s * 0.62f, p.y - s};
  const ImVec2 middle{p.x, p.y - s};
  if (filled >= 1) {
    list_->AddTriangleFilled(a, c, b, colour(rgb, opacity));
    return;
  }
  if (filled > 0) list_->AddTriangleFilled(a, middle, b, colour(rgb, opacity));
  list_->AddTriangle(a, c, b, colour(rgb, opacity), 1.3f * unit());
}

void Pen::hatch(const Box& box, unsigned rgb, float spacing, float opacity) const {
  if (box.width() <= 0 || box.height() <= 0) return;
  list_->PushClipRect({box.left, box.top}, {box.right, box.bottom}, true);
  const float h = box.height();
  for (float x = box.left - h; x < box.right; x += spacing)
    line({x, box.bottom}, {x + h, box.top}, rgb, 1, opacity);
  list_->PopClipRect();
}

}  // namespace viewer
