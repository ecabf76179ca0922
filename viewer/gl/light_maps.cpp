#include "viewer/gl/light_maps.h"

#include <epoxy/gl.h>

#include <array>
#include <cmath>

#include <glm/geometric.hpp>
#include <glm/gtc/matrix_transform.hpp>

#include "viewer/gl/frame_uniforms.h"

namespace viewer {

namespace {

constexpr int kSunSize = 2048;
constexpr int kSmallSunSize = 1024;  // for slow machines
constexpr int kSkySize = 192;        // coarse on purpose: what it shades is soft

// The box as the sun sees it, in a square; and how large a texel is.
glm::mat4 sunMatrix(const glm::vec3& sun, const glm::vec3& low, const glm::vec3& high, int size,
                    float& texel) {
  const glm::vec3 middle = (low + high) * 0.5f;
  const float radius = glm::length(high - low) * 0.5f + 0.5f;
  const glm::vec3 up = std::abs(sun.z) > 0.99f ? glm::vec3(0, 1, 0) : glm::vec3(0, 0, 1);
  const glm::mat4 view = glm::lookAt(middle + sun * radius, middle, up);
  glm::vec3 least(1e30f), most(-1e30f);
  for (int i = 0; i < 8; ++i) {
    const glm::vec3 corner(i & 1 ? high.x : low.x, i & 2 ? high.y : low.y, i & 4 ? high.z : low.z);
    const glm::vec3 seen(view * glm::vec4(corner, 1));
    least = glm::min(least, seen);
    most = glm::max(most, seen);
  }
  texel = std::max(most.x - least.x, most.y - least.y) / static_cast<float>(size);
  return glm::ortho(least.x, most.x, least.y, most.y, -most.z - 0.5f, -least.z + 0.5f) * view;
}

// Straight down; y up in the map.
glm::mat4 skyMatrix(const glm::vec3& low, const glm::vec3& high) {
  glm::mat4 m(1);
  m[0][0] = 2 / (high.x - low.x);
  m[1][1] = 2 / (high.y - low.y);
  m[2][2] = -2 / (high.z - low.z);
  m[3] = {-(high.x + low.x) / (high.x - low.x), -(high.y + low.y) / (high.y - low.y),
          (high.z + low.z) / (high.z - low.z), 1};
  return m;
}

bool sameLight(const Frame& a, const Frame& b) {
  return a.time == b.time && a.profiles == b.profiles && a.sun == b.sun &&
         a.section.on == b.section.on && (!a.section.on || a.section.plane == b.section.plane) &&
         a.seeThrough == b.seeThrough &&
         (a.seeThrough != SeeThrough::Others || a.stage == b.stage) &&
         (a.samples > 1) == (b.samples > 1);
}

// A depth texture that can be drawn into. Leaves its framebuffer bound.
void makeDepths(unsigned& texture, unsigned& framebuffer, int size, bool compared) {
  glGenTextures(1, &texture);
  glBindTexture(GL_TEXTURE_2D, texture);
  glTexImage2D(GL_TEXTURE_2D, 0, GL_DEPTH_COMPONENT24, size, size, 0, GL_DEPTH_COMPONENT,
               GL_UNSIGNED_INT, nullptr);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
  // Outside the map is open sky and sun.
  const std::array<float, 4> far{1, 1, 1, 1};
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_BORDER);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_BORDER);
  glTexParameterfv(GL_TEXTURE_2D, GL_TEXTURE_BORDER_COLOR, far.data());
  if (compared) {
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_COMPARE_MODE, GL_COMPARE_REF_TO_TEXTURE);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_COMPARE_FUNC, GL_LEQUAL);
  }
  glGenFramebuffers(1, &framebuffer);
  glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
  glFramebufferTexture2D(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_TEXTURE_2D, texture, 0);
  glDrawBuffer(GL_NONE);
  glReadBuffer(GL_NONE);
}

void freeDepths(unsigned& texture, unsigned& framebuffer) {
  if (framebuffer) glDeleteFramebuffers(1, &framebuffer);
  if (texture) glDeleteTextures(1, &texture);
  texture = framebuffer = 0;
}

}  // namespace

void LightMaps::forget() { fresh_ = sun_.fresh = sky_.fresh = false; }

LightMaps::LightMaps(Program& depth) : depth_(depth), sun_(true), sky_(false) {}

LightMaps::~LightMaps() {
  for (Map* map : {&sun_, &sky_}) {
    for (Depths* depths : {&map->still, &map->all})
      freeDepths(depths->texture, depths->framebuffer);
  }
}

void LightMaps::look(Map& map, const glm::mat4& matrix, int size) {
  if (map.matrix != matrix || map.size != size) map.fresh = false;
  map.matrix = matrix;
  if (map.size == size) return;
  map.size = size;
  for (Depths* depths : {&map.still, &map.all}) freeDepths(depths->texture, depths->framebuffer);
}

unsigned LightMaps::draw(Map& map, const Frame& frame, const Pieces& still, const Pieces& moving,
                         const GpuScene& scene, const DrawUnits& units) {
  unsigned calls = 0;
  depth_.use();
  depth_.set("uViewProjection", map.matrix);
  giveClock(depth_, frame);
  const auto into = [&map](Depths& depths) {
    if (!depths.texture) makeDepths(depths.texture, depths.framebuffer, map.size, map.compared);
    glBindFramebuffer(GL_FRAMEBUFFER, depths.framebuffer);
    glViewport(0, 0, map.size, map.size);
  };
  if (!map.fresh || map.drawn != still) {
    into(map.still);
    glClear(GL_DEPTH_BUFFER_BIT);
    calls += scene.drawFaces(still);
    map.drawn = still;
    map.fresh = true;
  }
  map.moving = !moving.empty() || units;
  if (!map.moving) return calls;
  into(map.all);
  glBindFramebuffer(GL_READ_FRAMEBUFFER, map.still.framebuffer);
  glBlitFramebuffer(0, 0, map.size, map.size, 0, 0, map.size, map.size, GL_DEPTH_BUFFER_BIT,
                    GL_NEAREST);
  calls += scene.drawFaces(moving);
  return calls + (units ? units(map.matrix) : 0);
}

unsigned LightMaps::update(const Frame& frame, const glm::vec3& low, const glm::vec3& high,
                           const DrawList& list, const GpuScene& scene, const DrawUnits& units) {
  if (!frame.shadows || (fresh_ && sameLight(frame, drawn_))) return 0;
  low_ = low - 0.5f;
  high_ = high + 0.5f;
  const int size = frame.samples > 1 ? kSunSize : kSmallSunSize;
  look(sun_, sunMatrix(frame.sun, low_, high_, size, texel_), size);
  look(sky_, skyMatrix(low_, high_), kSkySize);
  glEnable(GL_DEPTH_TEST);
  glDepthFunc(GL_LEQUAL);
  glDepthMask(GL_TRUE);
  glDisable(GL_CULL_FACE);  // the far side closes what is still growing
  glDisable(GL_BLEND);
  glDisable(GL_STENCIL_TEST);
  const ClockClips clips;
  glEnable(GL_POLYGON_OFFSET_FILL);
  glPolygonOffset(1.5f, 2.0f);
  unsigned calls = draw(sun_, frame, list.still, list.moving, scene, units);
  glDisable(GL_POLYGON_OFFSET_FILL);
  calls += draw(sky_, frame, list.sky, list.moving, scene, units);
  drawn_ = frame;
  fresh_ = true;
  return calls;
}

void LightMaps::give(Program& program, const Frame& frame, int firstUnit) const {
  glActiveTexture(GL_TEXTURE0 + static_cast<unsigned>(firstUnit));
  glBindTexture(GL_TEXTURE_2D, sun_.texture());
  glActiveTexture(GL_TEXTURE0 + static_cast<unsigned>(firstUnit) + 1);
  glBindTexture(GL_TEXTURE_2D, sky_.texture());
  program.set("uShadowMap", firstUnit);
  program.set("uSkyMap", firstUnit + 1);
  const glm::mat4 toTexture =
      glm::scale(glm::translate(glm::mat4(1), glm::vec3(0.5f)), glm::vec3(0.5f));
  program.set("uShadowMatrix", toTexture * sun_.matrix);
  program.set("uShadowTexel", frame.shadows ? texel_ : 0.0f);
  program.set("uSun", frame.sun);
  // A section is there to be looked into.
  program.set("uSkyShade", !frame.shadows ? 0.0f : frame.section.on ? 0.035f : 0.085f);
  program.set("uSkyBox", glm::vec4(low_.x, low_.y, 1 / std::max(1e-3f, high_.x - low_.x),
                                   1 / std::max(1e-3f, high_.y - low_.y)));
  program.set("uSkyHeights", glm::vec2(high_.z, low_.z - high_.z));
}

}  // namespace viewer
