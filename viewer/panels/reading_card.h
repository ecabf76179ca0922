// The small card by the pointer: level, staff reading, cut or fill of the point under it.
#pragma once

#include <string>
#include <vector>

#include "viewer/overlays/box.h"

struct ImDrawList;

namespace viewer {

// Beside the pointer and `off` from it, inside the room: on whichever of its four sides there is
// space, so that the point itself is never covered.
Box readingCardPlace(const glm::vec2& pointer, const glm::vec2& size, const Box& room, float off);

// The first line is the heaviest.
void drawReadingCard(ImDrawList* list, const std::vector<std::string>& words,
                     const glm::vec2& pointer, const Box& room);

}  // namespace viewer
