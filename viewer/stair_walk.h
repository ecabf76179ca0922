// Stairs as one walks on them: where one's feet are, gliding over the steps, and what is near.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "model/model.h"
#include "viewer/picking.h"

namespace viewer {

// What a ray meets first among all that stands now.
using Meets = std::function<std::optional<Pick>(const Ray&)>;

class StairWalk {
 public:
  // Of a scene made from this model; both must outlive it.
  StairWalk(const model::Model& model, const Scene& scene) : model_(&model), scene_(&scene) {}

  // The level of the feet of one who stands at a place whose floor, or step, is at its z: from half
  // a going before the first riser to half a going behind the last they rise evenly. Nothing where
  // no stair stands.
  std::optional<float> level(const glm::vec3& floor, const Meets& meets) const;
  // Within reach of a stair, or of the guarding round its well, standing or not.
  bool near(const glm::vec3& feet) const;
  // On a flight, and going up or down it.
  bool isAlong(const glm::vec3& feet, const glm::vec3& way) const;
  // Where the stairs from or to a finished floor begin and end on it.
  std::vector<glm::vec3> endsAt(float level) const;

 private:
  // In the flight's own coordinates.
  struct Place {
    double s = 0, q = 0, z = 0;
  };
  Place placeOf(const model::StairFlight& flight, const glm::vec3& local) const;
  glm::vec3 local(const model::StairFlight& flight, const Place& place) const;
  bool stands(const model::StairFlight& flight, const Meets& meets) const;

  const model::Model* model_;
  const Scene* scene_;
};

}  // namespace viewer
