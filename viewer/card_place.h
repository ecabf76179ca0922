// Where a card stands without covering what it speaks of. No OpenGL, no drawing.
#pragma once

#include <array>
#include <vector>

#include "viewer/frame.h"
#include "viewer/overlays/box.h"
#include "viewer/scene.h"

namespace viewer {

using SeenTriangle = std::array<glm::vec2, 3>;  // pixels

// The triangles of one thing as they fall on the sheet; those behind the eye are left out.
std::vector<SeenTriangle> seenTriangles(const Scene& scene, const Frame& frame, const Box& sheet,
                                        std::uint32_t element);

bool covers(const Box& box, const SeenTriangle& triangle);

// In a corner of the room or at the middle of one of its sides, bottom right first: the first place
// that covers nothing of the thing; where there is none, the one that covers least of it.
Box cardPlace(const glm::vec2& size, const Box& room, const std::vector<SeenTriangle>& thing);

}  // namespace viewer
