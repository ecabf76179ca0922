// What one frame shows: everything that may change without touching a buffer.
#pragma once

#include <cstdint>
#include <optional>

#include <glm/vec3.hpp>
#include <glm/vec4.hpp>

#include "viewer/camera.h"

namespace viewer {

inline constexpr std::uint32_t kNothing = 0xffffffffu;

struct Section {
  bool on = false;
  glm::vec4 plane{0, 1, 0, 0};  // dot(plane, (p, 1)) > 0 is cut away; local coordinates
};

// What is drawn as if it were glass.
enum class SeeThrough { Nothing, Ground, Others };  // others: all but the stage's own work

inline SeeThrough nextOf(SeeThrough now) { return SeeThrough((int(now) + 1) % 3); }

struct Frame {
  double time = 0;  // programme clock
  Camera camera;
  Section section;
  SeeThrough seeThrough = SeeThrough::Nothing;
  // Faint outlines of what the stage and the next one still bring, dashed ones of what the stage
  // has taken away.
  bool ghosts = false;
  bool profiles = true;  // profile boards and pegs, which belong to the string lines
  bool levelPlane = false;
  float levelPlaneAt = 0;                 // local z
  glm::vec3 sun{0.4f, -0.5f, 0.75f};      // towards the sun, unit
  std::uint32_t selected = kNothing;      // element
  std::uint32_t selectedUnit = kNothing;  // of it, into Scene::units; then it alone is tinted
  // What has come last while it is played by piece, tinted a little: an element, or a unit as
  // above.
  std::uint32_t newest = kNothing, newestUnit = kNothing;
  bool markCuts = false;  // units that are not whole are marked
  int stage = 0;          // being built now: full colour; earlier ones calmer
  // Quality, from dear to cheap in software: samples, then shadows. One sample is legible: the ink
  // has soft edges of its own and covers the outlines. It also takes a smaller shadow map.
  bool shadows = true;
  bool edges = true;
  int samples = 4;
  // Masonry is drawn unit by unit, its mortar recessed, where a pixel is smaller than this (metres,
  // about the recess: further off it could not be seen); else as a flat face with the same bond.
  float unitPixel = 0.0035f;
};

}  // namespace viewer
