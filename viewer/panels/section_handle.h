// The grip by which the section plane is pulled through the building.
#pragma once

#include <optional>

#include "viewer/frame.h"
#include "viewer/overlays/sheet_layout.h"
#include "viewer/scene.h"

struct ImDrawList;

namespace viewer {

// Where it stands on the sheet; nothing while there is no section or it cannot be seen.
std::optional<glm::vec2> sectionHandle(const Scene& scene, const Frame& frame,
                                       const SheetLayout& layout);
void drawSectionHandle(ImDrawList* list, const Scene& scene, const Frame& frame,
                       const SheetLayout& layout);
// Moves the plane along its normal by what a movement of `by` pixels means there, and keeps it in
// the site.
void dragSection(Section& section, const Scene& scene, const Frame& frame,
                 const SheetLayout& layout, const glm::vec2& by);

}  // namespace viewer
