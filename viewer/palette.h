// How each material looks: its wash, its joints and the hatch of its cut face. No OpenGL.
#pragma once

#include <glm/vec2.hpp>
#include <glm/vec3.hpp>

#include "viewer/scene.h"

namespace viewer {

// Numbers as in shaders/hatch.glsl. After the drawing conventions of ISO 128-3 and BS 1192
// practice: a hatch tells the material of a cut face without colour.
enum class Hatch {
  Plain,
  Diagonal,  // brick
  Wide,      // block: diagonals in pairs
  Speckle,   // concrete
  Earth,     // groups of strokes that turn about
  Stones,    // hardcore
  Loops,     // insulation
  Grain,     // timber
  Dense,     // metal
  Solid,     // things too thin to hatch: membranes
};

// Colours are linear. The pattern repeats every `period` metres along and up the face; a period of
// zero means that it does not.
struct Look {
  glm::vec3 wash{0.5f};
  glm::vec3 joint{0.5f};
  glm::vec2 period{0};
  float jointWidth = 0;  // metres
  float stagger = 0;     // of every other row, as a fraction of the period
  float variation = 0;   // of tone from one unit to the next
  bool coursed = false;  // rows count up from the damp course
  Hatch hatch = Hatch::Plain;
};

Look lookOf(model::Material material, const Coursing& coursing);
// Grass: topsoil seen from above.
Look grassLook();

// 0xb5654a as linear light, and as screens take it (0..1).
glm::vec3 linear(unsigned srgb);
glm::vec3 encoded(unsigned srgb);

inline constexpr unsigned kPaper = 0xf7f4ec;
inline constexpr unsigned kInk = 0x24221f;
inline constexpr unsigned kAccent = 0x0072b2;  // Okabe and Ito's blue: what is selected
inline constexpr unsigned kLevel =
    0x0072b2;  // the same: the level plane and its line, as all levels

}  // namespace viewer
