// Cameras that show the building in the part of the sheet that is left for it.
#pragma once

#include <optional>
#include <string>

#include "viewer/camera.h"
#include "viewer/overlays/sheet_layout.h"
#include "viewer/scene.h"

namespace viewer {

// About how much wider than high the building looks.
double shapeOf(const Scene& scene);

// The camera, turned as it is, that shows the box in the middle of the drawing area.
Camera framed(const Camera& camera, const glm::vec3& low, const glm::vec3& high,
              const SheetLayout& layout);

// The same for the building with what stands round its walls: in perspective what is seen of it
// over the ground, or all of it when one sees under the ground too.
Camera framedBuilding(const Camera& camera, const Scene& scene, const SheetLayout& layout,
                      bool underGround);

// A standard view that shows in the drawing area the building, or in plan the site; nothing for an
// unknown name.
std::optional<Camera> fittedView(const std::string& name, const Scene& scene,
                                 const SheetLayout& layout, bool underGround = false);

}  // namespace viewer
