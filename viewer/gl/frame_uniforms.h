// The uniforms that most programs share, by the files of shaders/ that declare them.
#pragma once

#include "viewer/frame.h"
#include "viewer/gl/program.h"
#include "viewer/scene.h"

namespace viewer {

// What the camera gives, worked out once a frame.
struct ViewNumbers {
  glm::mat4 viewProjection{1};
  glm::vec4 eye{0, 0, 0, 1};
  glm::vec2 viewport{1, 1};
  float pixel = 0.001f;    // metres: at the target, or per metre of distance
  float atTarget = 0.01f;  // a pixel at the camera's target, metres
};
ViewNumbers viewNumbers(const Frame& frame, const Scene& scene, int width, int height);

void giveView(Program& program, const ViewNumbers& view);  // view.glsl
void giveClock(Program& program, const Frame& frame);      // clock.glsl

// While there is one, what programs with clip.glsl draw is cut off by the clock and the section.
// Other programs must not draw then: what they draw might be cut by anything.
class ClockClips {
 public:
  ClockClips();
  ~ClockClips();
  ClockClips(const ClockClips&) = delete;
  ClockClips& operator=(const ClockClips&) = delete;
};

void giveSurface(Program& program, const Frame& frame, const ViewNumbers& view,
                 const Coursing& coursing);                  // surface.glsl
void giveLooks(Program& program, const Coursing& coursing);  // surface.vert; once a scene

}  // namespace viewer
