#include "viewer/gl/frame_uniforms.h"

#include <epoxy/gl.h>

#include <array>
#include <cmath>

#include <glm/geometric.hpp>

#include "viewer/palette.h"

namespace viewer {

namespace {

constexpr unsigned kClips = 3;     // of clip.glsl
constexpr float kHatchPixels = 9;  // between strokes, at least

// Steps of two, so that the hatch stands still until the zoom has doubled.
float hatchSpacing(float pixel) {
  constexpr float kLeast = 0.02f;
  const float wanted = pixel * kHatchPixels / kLeast;
  return kLeast * std::exp2(std::max(0.0f, std::ceil(std::log2(wanted))));
}

}  // namespace

ViewNumbers viewNumbers(const Frame& frame, const Scene& scene, int width, int height) {
  ViewNumbers v;
  const Camera& camera = frame.camera;
  const double aspect = static_cast<double>(width) / height;
  v.viewProjection = camera.projection(aspect, scene.low, scene.high) * camera.view();
  v.eye = camera.parallel ? glm::vec4(glm::normalize(camera.eye() - camera.target), 0)
                          : glm::vec4(camera.eye(), 1);
  v.viewport = {width, height};
  const double perMetre = 2 * std::tan(camera.fieldOfView / 2) / height;
  v.atTarget = static_cast<float>(perMetre * camera.distance);
  v.pixel = camera.parallel ? v.atTarget : static_cast<float>(perMetre);
  return v;
}

void giveView(Program& program, const ViewNumbers& view) {
  program.set("uViewProjection", view.viewProjection);
  program.set("uEye", view.eye);
  program.set("uViewport", view.viewport);
  program.set("uPixel", view.pixel);
}

void giveClock(Program& program, const Frame& frame) {
  program.set("uTime", static_cast<float>(frame.time));
  program.set("uSection", frame.section.on ? frame.section.plane : glm::vec4(0, 0, 0, -1));
}

ClockClips::ClockClips() {
  for (unsigned i = 0; i < kClips; ++i) glEnable(GL_CLIP_DISTANCE0 + i);
}

ClockClips::~ClockClips() {
  for (unsigned i = 0; i < kClips; ++i) glDisable(GL_CLIP_DISTANCE0 + i);
}

void giveSurface(Program& program, const Frame& frame, const ViewNumbers& view,
                 const Coursing& coursing) {
  program.set("uCourse", glm::vec4(coursing.from, hatchSpacing(view.atTarget), 0, 0));
  program.set("uInk", linear(kInk));
  program.set("uPaper", linear(kPaper));
  program.set("uAccent", glm::vec4(linear(kAccent), 0.45f));
  program.set("uLevel", glm::vec4(linear(kLevel), frame.levelPlane ? 1 : 0));
  program.set("uLevelAt", frame.levelPlaneAt);
  program.set("uStage", static_cast<float>(frame.stage));
  // Of a thing one unit of which is meant only that is tinted.
  program.set("uSelected",
              static_cast<int>(frame.selectedUnit == kNothing ? frame.selected : kNothing));
  program.set("uNewest", static_cast<int>(frame.newest));
  program.set("uMarkCuts", frame.markCuts ? 1.0f : 0.0f);
}

void giveLooks(Program& program, const Coursing& coursing) {
  std::array<glm::vec4, 32> wash{}, joint{}, pattern{};
  const auto put = [&](size_t i, const Look& look) {
    wash[i] = glm::vec4(look.wash, look.coursed ? 1 : 0);
    joint[i] = glm::vec4(look.joint, look.jointWidth);
    pattern[i] = glm::vec4(look.period, look.stagger, look.variation);
  };
  for (size_t i = 0; i <= static_cast<size_t>(model::Material::Masonry); ++i)
    put(i, lookOf(static_cast<model::Material>(i), coursing));
  put(31, grassLook());
  program.set("uWash", wash);
  program.set("uJoint", joint);
  program.set("uPattern", pattern);
}

}  // namespace viewer
