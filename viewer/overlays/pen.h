// Draws lines, shapes and lettering the way the sheet has them, into a Dear ImGui draw list.
#pragma once

#include <string>
#include <vector>

#include <imgui.h>

#include "viewer/fonts.h"
#include "viewer/overlays/box.h"

namespace viewer {

// The sheet's colours, 0xRRGGBB. Strings have one hue, levels another (both from M. Okabe and
// K. Ito's set, "Color Universal Design", 2008); everything else is paper and ink.
namespace ink {
inline constexpr unsigned kPaper = 0xf7f4ec;
inline constexpr unsigned kCard = 0xfdfbf5;
inline constexpr unsigned kInk = 0x24221f;
inline constexpr unsigned kSoft = 0x4f4a42;   // second words
inline constexpr unsigned kFaint = 0xb9b1a1;  // rules
inline constexpr unsigned kLevels = 0x0072b2;
inline constexpr unsigned kStrings = 0xd55e00;
// The same hues for words: dark enough to be read in sunlight.
inline constexpr unsigned kLevelWords = 0x00456d;
inline constexpr unsigned kStringWords = 0x843700;
inline constexpr unsigned kCaution = 0x8a2f00;
inline constexpr unsigned kTape = 0xf2d05a;
inline constexpr unsigned kTapeDone = 0xe3b93a;
inline constexpr unsigned kRod = 0xefe0bd;
}  // namespace ink

enum class Cut { Text, Bold, Heading };

inline ImVec2 im(const glm::vec2& p) { return {p.x, p.y}; }
inline glm::vec2 glmOf(const ImVec2& p) { return {p.x, p.y}; }
ImU32 colour(unsigned rgb, float opacity = 1);

// A text as it was put on the sheet.
struct DrawnText {
  std::string text;
  Box box;
};

class Pen {
 public:
  // What is lettered is also written down in `record`, when there is one.
  explicit Pen(ImDrawList* list, std::vector<DrawnText>* record = nullptr)
      : list_(list), record_(record), lettering_(letteringNow()) {}

  // The same pen with letters `factor` times as large.
  Pen sized(float factor) const;

  float unit() const { return lettering_.unit; }
  ImDrawList* list() const { return list_; }
  float lineHeight(Cut cut = Cut::Text) const;

  glm::vec2 size(const std::string& text, Cut cut = Cut::Text) const;
  void text(const glm::vec2& at, unsigned rgb, const std::string& text, Cut cut = Cut::Text,
            float opacity = 1) const;
  // With a thin edge of paper round it, to be read over the drawing.
  void haloText(const glm::vec2& at, unsigned rgb, const std::string& text, Cut cut = Cut::Text,
                float opacity = 1) const;
  // Breaks lines at words; returns the height used. Draws nothing when `measureOnly`.
  float paragraph(const glm::vec2& at, float width, unsigned rgb, const std::string& text,
                  Cut cut = Cut::Text, bool measureOnly = false) const;
  // The text, or as much of it with three dots as fits.
  std::string shortened(const std::string& text, float width, Cut cut = Cut::Text) const;
  // The pen with letters as much smaller as the text needs to fit, but no smaller than `least`.
  Pen fitted(const std::string& text, float width, Cut cut = Cut::Text, float least = 0.75f) const;

  // Widths in units.
  void line(const glm::vec2& a, const glm::vec2& b, unsigned rgb, float width = 1,
            float opacity = 1) const;
  void fill(const Box& box, unsigned rgb, float opacity = 1) const;
  void outline(const Box& box, unsigned rgb, float width = 1, float opacity = 1) const;
  void diamond(const glm::vec2& centre, float radius, unsigned fillRgb, unsigned lineRgb) const;
  // A warning triangle, point up, with a stroke inside.
  void caution(const glm::vec2& centre, float radius) const;
  // The mark of a level: a triangle standing on its point, its left share filled.
  void levelMark(const glm::vec2& point, float size, unsigned rgb, float filled,
                 float opacity = 1) const;
  void hatch(const Box& box, unsigned rgb, float spacing, float opacity = 1) const;

 private:
  ImFont* font(Cut cut) const;
  void letters(const glm::vec2& at, unsigned rgb, const std::string& text, Cut cut,
               float opacity) const;
  void record(const glm::vec2& at, const std::string& text, Cut cut) const;

  ImDrawList* list_;
  std::vector<DrawnText>* record_;
  Lettering lettering_;
  float factor_ = 1;
};

}  // namespace viewer
