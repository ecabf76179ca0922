// What a stage itself makes: what has come by its end, and what it has laid bare by taking away.
#pragma once

#include <cstdint>
#include <vector>

#include <glm/vec2.hpp>
#include <glm/vec3.hpp>

#include "viewer/picking.h"
#include "viewer/scene.h"

namespace viewer {

struct StageWork {
  std::vector<std::uint32_t> made;   // elements that have come in the stage and still stand
  std::vector<std::uint32_t> taken;  // elements that have gone in it
  glm::vec3 low{0}, high{0};         // round all of them, local
  bool none() const { return made.empty() && taken.empty(); }
};

// `stage` is an index into the programme.
StageWork stageWork(const Scene& scene, int stage);

// The same without what is built in out of sight in the very stage, such as ties and insulation in
// a cavity: no view can show that. All of it where there would be little left.
StageWork shownWork(const Scene& scene, const Picker& picker, int stage);

// Numbers that fill the square of 0..1 evenly as they count up.
glm::vec2 spread(size_t number);

// A small piece of a surface of the work, with the way out of what stands there.
struct WorkPoint {
  glm::vec3 at{0};
  glm::vec3 normal{0};  // unit
  float area = 0;       // square metres that it stands for
};

// About `count` points over the surfaces of what was made, and about as many over those that were
// laid bare: where the hole of a dig meets the ground, or a wall comes out of its forms. The same
// for the same scene.
std::vector<WorkPoint> workPoints(const Scene& scene, const Picker& picker, const StageWork& work,
                                  int stage, int count);

}  // namespace viewer
