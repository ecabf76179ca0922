// What the marks on units that are not whole mean, and how many of each stand. The marks themselves
// are drawn with the units: shaders/unit_marks.glsl.
#include <algorithm>
#include <string>
#include <vector>

#include "viewer/overlays/overlay_sheet.h"
#include "viewer/unit_words.h"

namespace viewer {
namespace {

// As shaders/unit_marks.glsl has them; Okabe and Ito's colours again.
struct MarkLook {
  const char* name;
  std::vector<model::Piece> pieces;
  unsigned rgb;
  float spacing;               // units between strokes
  bool up, rise, fall, level;  // which way they run
};

const std::vector<MarkLook>& looks() {
  using enum model::Piece;
  static const std::vector<MarkLook> kLooks{
      {"half, three-quarter", {Half, ThreeQuarter}, 0xf0e442, 7, true, false, false, false},
      {"closer", {Closer}, 0x56b4e9, 3.5f, true, false, false, false},
      {"cut to length", {Cut}, 0x0072b2, 5, false, true, false, false},
      {"split", {Split}, 0xcc79a7, 4, false, false, false, true},
      {"cut to the rake", {Raked}, 0x009e73, 5, false, false, true, false},
      {"special", {Special}, 0xe69f00, 6, false, true, true, false}};
  return kLooks;
}

void drawSwatch(const Pen& pen, const Box& box, const MarkLook& look) {
  const float u = pen.unit(), step = look.spacing * u, tall = box.height();
  pen.fill(box, look.rgb, 0.85f);
  pen.list()->PushClipRect({box.left, box.top}, {box.right, box.bottom}, true);
  const auto stroke = [&](const glm::vec2& a, const glm::vec2& b) {
    pen.line(a, b, ink::kInk, 1.3f, 0.8f);
  };
  for (float x = box.left - tall; x < box.right; x += step) {
    if (look.up && x >= box.left) stroke({x, box.top}, {x, box.bottom});
    if (look.rise) stroke({x, box.bottom}, {x + tall, box.top});
    if (look.fall) stroke({x, box.top}, {x + tall, box.bottom});
  }
  for (float y = box.top; look.level && y < box.bottom; y += step)
    stroke({box.left, y}, {box.right, y});
  pen.list()->PopClipRect();
  pen.outline(box, ink::kInk, 1);
}

std::string countWords(long bricks, long blocks) {
  std::string words;
  if (bricks) words = std::to_string(bricks) + (bricks == 1 ? " brick" : " bricks");
  if (blocks)
    words +=
        (words.empty() ? "" : ", ") + std::to_string(blocks) + (blocks == 1 ? " block" : " blocks");
  return words;
}

struct Line {
  const MarkLook* look;
  std::string words;
};

}  // namespace

void drawCutUnits(OverlaySheet& sheet) {
  const PieceCounts counts = piecesStanding(sheet.model, sheet.scene, sheet.frame.time);
  std::vector<Line> lines;
  for (const MarkLook& look : looks()) {
    long bricks = 0, blocks = 0;
    for (const model::Piece piece : look.pieces) {
      bricks += counts.bricks[static_cast<size_t>(piece)];
      blocks += counts.blocks[static_cast<size_t>(piece)];
    }
    if (bricks + blocks > 0)
      lines.push_back({&look, std::string(look.name) + ": " + countWords(bricks, blocks)});
  }
  const std::string whole = countWords(counts.bricks[0], counts.blocks[0]);
  std::string heading = whole.empty() ? "No brick or block is laid yet" : "Whole: " + whole;
  const Pen& pen = sheet.pen;
  const float u = pen.unit(), line = pen.lineHeight() * 1.25f, swatch = 26 * u;
  float wide = pen.size(heading).x - swatch - 8 * u;
  for (const Line& each : lines) wide = std::max(wide, pen.size(each.words).x);
  const auto place = freeCorner(sheet, {swatch + 8 * u + wide + 16 * u,
                                        line * static_cast<float>(lines.size() + 1) + 14 * u});
  if (!place) return;
  pen.fill(*place, ink::kCard, 0.95f);
  pen.outline(*place, ink::kInk, 1.2f);
  glm::vec2 at{place->left + 7 * u, place->top + 7 * u};
  pen.text(at - glm::vec2(0, 2 * u), ink::kInk, heading);
  for (const Line& each : lines) {
    at.y += line;
    drawSwatch(pen, {at.x, at.y, at.x + swatch, at.y + line - 5 * u}, *each.look);
    pen.text(at + glm::vec2(swatch + 8 * u, -2 * u), ink::kInk, each.words);
  }
  sheet.taken.push_back(place->grown(3 * u));
}

}  // namespace viewer
