// Walking about the job at eye height: through doors, from storey to storey, to the windows.
#pragma once

#include <optional>
#include <vector>

#include "model/model.h"
#include "viewer/camera.h"
#include "viewer/picking.h"
#include "viewer/stair_walk.h"

namespace viewer {

class Walking {
 public:
  static constexpr float kEye = 1.60f;  // metres over the floor

  // Of a scene made from this model; both must outlive it.
  Walking(const model::Model& model, const Scene& scene);

  // Stands on the ground before the building's first door, or else before its south side, and looks
  // at it.
  void begin(const Meets& meets);
  // Stands with the feet at that place and looks that way on plan.
  void putAt(const glm::vec3& feet, const model::Vec2& way);
  // Metres ahead and to the right. Walls, windows, guarding and piles stop one, doors open. One
  // steps up and down a little, glides up and down a stair that stands, and does not go over an
  // edge. False when something is in the way.
  bool step(float ahead, float right, const Meets& meets);
  // Radians, to the right and up.
  void look(double right, double up);
  // To the floor over or under this one, at the same place or, where there is a stairwell or
  // nothing, at the end of a stair; false when there is none there.
  bool climb(int by, const Meets& meets);
  // To the next window that one can look out of, standing; false when none stands yet.
  bool toWindow(const Meets& meets, double time);

  Camera camera() const;
  const glm::vec3& feet() const { return feet_; }

 private:
  std::optional<float> floorUnder(const glm::vec3& from, const Meets& meets) const;
  bool isDoor(std::uint32_t element) const;
  bool barred(const glm::vec3& from, const glm::vec3& way, float length, const Meets& meets) const;
  bool barredAt(glm::vec3 at, const glm::vec3& way, float length, const Meets& meets) const;
  bool standsAt(const glm::vec3& at, float level, const Meets& meets);
  glm::vec3 ahead() const;

  const model::Model* model_;
  const Scene* scene_;
  StairWalk stairs_;
  glm::vec3 feet_{0, 0, 0};
  double azimuth_ = 0, elevation_ = 0;  // as a camera's: positive looks down
  // Of all its parts, in the order of the works.
  struct Pane {
    size_t element = 0;  // one of them
    glm::vec3 low{0, 0, 0}, high{0, 0, 0};
  };
  std::vector<Pane> windows_;
  size_t window_ = 0;  // the next to go to
};

}  // namespace viewer
