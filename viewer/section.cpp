#include "viewer/section.h"

namespace viewer {

Section standardSection(const glm::vec3& low, const glm::vec3& high) {
  Section section;
  section.on = true;
  // Not quite the middle, where partitions and ridges like to be.
  section.plane = {0, -1, 0, low.y + (high.y - low.y) * 0.43f};
  return section;
}

}  // namespace viewer
