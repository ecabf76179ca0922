// The camera: orbits a point, in perspective or parallel projection. No OpenGL.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <glm/mat4x4.hpp>
#include <glm/vec2.hpp>
#include <glm/vec3.hpp>

namespace viewer {

struct Ray {
  glm::vec3 from, direction;  // direction is a unit vector
};

// Angles in radians. azimuth 0 looks north (+y); pi/2 looks east. elevation is how far the eye is
// above the target's horizon, pi/2 looks straight down.
struct Camera {
  glm::vec3 target{0, 0, 0};
  double distance = 20;
  double azimuth = 0.7;
  double elevation = 0.5;
  double fieldOfView = 0.7;  // vertical
  bool parallel = false;     // then the height of the view is that at `distance`

  glm::vec3 eye() const;
  glm::mat4 view() const;
  glm::mat4 projection(double aspect, const glm::vec3& low, const glm::vec3& high) const;
  // Through a pixel; x right, y down, both 0..1 over the window.
  Ray rayThrough(const glm::vec2& at, double aspect) const;
  // Where a point falls, 0..1 x right y down, z = metres in front of the eye, along the view;
  // nothing when behind the eye.
  std::optional<glm::vec3> project(const glm::vec3& p, double aspect) const;

  void orbit(double deltaAzimuth, double deltaElevation);
  void pan(const glm::vec2& by, double aspect);  // in window fractions
  void zoomTo(const glm::vec2& at, double factor, double aspect);
  // Turns nothing; moves back until the box fills the view with a margin.
  void frame(const glm::vec3& low, const glm::vec3& high, double aspect);
  // Keeps the target by the box and the eye within sight of it, so that nobody gets lost.
  void keepSensible(const glm::vec3& low, const glm::vec3& high);
  // Raises the eye of a perspective view to `level` at least: never under the ground.
  void keepAbove(double level);
};

// "plan", "north", "south", "east", "west" (elevations, named by the face that is seen),
// "north-east" ... (from that corner), "section". Nothing for an unknown name.
std::optional<Camera> standardView(const std::string& name, const glm::vec3& low,
                                   const glm::vec3& high, double aspect);
// All names standardView knows, for help texts.
const std::vector<std::string>& standardViewNames();

// Between two cameras, eased, the short way round; t in 0..1.
Camera between(const Camera& a, const Camera& b, double t);

}  // namespace viewer
