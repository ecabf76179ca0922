#include "viewer/panels/reading_card.h"

#include <algorithm>

#include "viewer/overlays/pen.h"

namespace viewer {

Box readingCardPlace(const glm::vec2& pointer, const glm::vec2& size, const Box& room, float off) {
  const bool right = pointer.x + off + size.x <= room.right;
  const bool below = pointer.y + off + size.y <= room.bottom;
  glm::vec2 at{right ? pointer.x + off : pointer.x - off - size.x,
               below ? pointer.y + off : pointer.y - off - size.y};
  // Where neither side has room for the width, the height alone keeps it off the point.
  at.x = std::clamp(at.x, room.left, std::max(room.left, room.right - size.x));
  at.y = std::max(at.y, room.top);
  const Box card = Box::at(at, size);
  if (!card.contains(pointer)) return card;
  return Box::at({at.x, pointer.y + off}, size);
}

void drawReadingCard(ImDrawList* list, const std::vector<std::string>& words,
                     const glm::vec2& pointer, const Box& room) {
  if (words.empty()) return;
  const Pen pen(list);
  const float u = pen.unit(), most = std::min(400 * u, room.width() - 18 * u);
  const auto cut = [](size_t i) { return i == 0 ? Cut::Bold : Cut::Text; };
  float width = 0, height = 12 * u;
  for (size_t i = 0; i < words.size(); ++i) width = std::max(width, pen.size(words[i], cut(i)).x);
  width = std::min(width + 1, most);
  for (size_t i = 0; i < words.size(); ++i)
    height += pen.paragraph({0, 0}, width, ink::kInk, words[i], cut(i), true);
  const Box card = readingCardPlace(pointer, {width + 18 * u, height}, room, 18 * u);
  pen.fill(card, ink::kCard);
  pen.outline(card, ink::kLevels, 1.4f);
  glm::vec2 at{card.left + 9 * u, card.top + 6 * u};
  for (size_t i = 0; i < words.size(); ++i)
    at.y +=
        pen.paragraph(at, width, i == 0 ? ink::kInk : ink::kLevelWords, words[i], cut(i), false);
}

}  // namespace viewer
