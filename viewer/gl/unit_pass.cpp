#include "viewer/gl/unit_pass.h"

#include <epoxy/gl.h>

#include <array>

namespace viewer {

namespace {

// Corners as shaders/unit.vert takes them: of the profile, at the back, of which face.
constexpr std::uint16_t id(int face, int corner, bool back) {
  return static_cast<std::uint16_t>(corner | (back ? 8 : 0) | face << 4);
}

constexpr int kSides = 6 * 6, kMortarSides = 5 * 6;  // indices of a box; less its underside
constexpr int kRakedSides = 3 * (3 + 3 + 10);

// Each face twice three corners, anticlockwise from outside, the underside last; then the same of a
// unit whose top has two slopes.
std::array<std::uint16_t, kSides + kRakedSides> corners() {
  struct Quad {
    int face;
    std::array<int, 4> corner;
    std::array<bool, 4> back;
  };
  constexpr Quad kFront{0, {0, 1, 2, 4}, {false, false, false, false}};
  constexpr Quad kBack{1, {1, 0, 4, 2}, {true, true, true, true}};
  constexpr Quad kUnderside{2, {0, 0, 1, 1}, {false, true, true, false}};
  constexpr Quad kEnd{3, {1, 1, 2, 2}, {false, true, true, false}};
  constexpr Quad kTop{4, {4, 2, 2, 4}, {false, false, true, true}};
  constexpr Quad kStart{6, {0, 0, 4, 4}, {true, false, false, true}};
  constexpr Quad kSlopeA{4, {3, 2, 2, 3}, {false, false, true, true}};
  constexpr Quad kSlopeB{5, {4, 3, 3, 4}, {false, false, true, true}};
  std::array<std::uint16_t, kSides + kRakedSides> all{};
  size_t n = 0;
  const auto quad = [&](const Quad& q) {
    for (const size_t i : {0u, 1u, 2u, 0u, 2u, 3u}) all[n++] = id(q.face, q.corner[i], q.back[i]);
  };
  const auto fan = [&](int face, const std::array<int, 5>& corner, bool back) {
    for (const size_t i : {0u, 1u, 2u, 0u, 2u, 3u, 0u, 3u, 4u})
      all[n++] = id(face, corner[i], back);
  };
  for (const Quad& q : {kFront, kBack, kEnd, kTop, kStart, kUnderside}) quad(q);
  fan(0, {0, 1, 2, 3, 4}, false);
  fan(1, {1, 0, 4, 3, 2}, true);
  for (const Quad& q : {kEnd, kSlopeA, kSlopeB, kStart, kUnderside}) quad(q);
  return all;
}

const void* at(size_t offset) { return reinterpret_cast<const void*>(offset); }

template <typename T>
std::uint64_t fill(unsigned buffer, const std::vector<T>& data) {
  glBindBuffer(GL_ARRAY_BUFFER, buffer);
  const size_t bytes = data.size() * sizeof(T);
  glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(bytes), data.data(), GL_STATIC_DRAW);
  return bytes;
}

}  // namespace

UnitPass::UnitPass() {
  glGenVertexArrays(1, &plain_);
  glGenVertexArrays(1, &raked_);
  for (unsigned* buffer : {&plainBuffer_, &rakedBuffer_, &indexBuffer_}) glGenBuffers(1, buffer);
  const auto indices = corners();
  for (const unsigned array : {plain_, raked_}) {
    glBindVertexArray(array);
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, indexBuffer_);
    glEnableVertexAttribArray(0);
    glVertexAttribDivisor(0, 1);
  }
  glEnableVertexAttribArray(1);
  glVertexAttribDivisor(1, 1);
  glBufferData(GL_ELEMENT_ARRAY_BUFFER, sizeof indices, indices.data(), GL_STATIC_DRAW);
  glBindVertexArray(0);
}

UnitPass::~UnitPass() {
  glDeleteVertexArrays(1, &plain_);
  glDeleteVertexArrays(1, &raked_);
  for (unsigned* buffer : {&plainBuffer_, &rakedBuffer_, &indexBuffer_}) glDeleteBuffers(1, buffer);
}

std::uint64_t UnitPass::upload(const Scene& scene) {
  looksAreOld_ = true;
  return fill(plainBuffer_, scene.units) + fill(rakedBuffer_, scene.raked);
}

Program& UnitPass::surface(const Coursing& coursing) {
  if (!surface_)
    surface_.reset(
        new Program{{"clock.glsl", "clip.glsl", "view.glsl", "unit_tone.glsl", "unit.vert"},
                    {"light.glsl", "unit_tone.glsl", "unit_marks.glsl", "leaf.glsl", "surface.glsl",
                     "surface.frag"}});
  surface_->use();
  if (looksAreOld_) giveLooks(*surface_, coursing);
  looksAreOld_ = false;
  return *surface_;
}

unsigned UnitPass::drawPieces(Program& program, const Pieces& pieces, bool raked,
                              bool mortar) const {
  if (pieces.empty()) return 0;
  program.set("uRaked", raked ? 1 : 0);
  program.set("uMortar", mortar ? 1 : 0);
  glBindVertexArray(raked ? raked_ : plain_);
  glBindBuffer(GL_ARRAY_BUFFER, raked ? rakedBuffer_ : plainBuffer_);
  const GLsizei stride = raked ? sizeof(RakedInstance) : sizeof(UnitInstance);
  const GLsizei corners = (raked ? kRakedSides : mortar ? kMortarSides : kSides);
  const size_t first = raked ? kSides * sizeof(std::uint16_t) : 0;
  for (size_t i = 0; i < pieces.first.size(); ++i) {
    const size_t start = static_cast<size_t>(pieces.first[i]) * static_cast<size_t>(stride);
    program.set("uFirstUnit", static_cast<int>(pieces.first[i]));
    glVertexAttribIPointer(0, 4, GL_UNSIGNED_INT, stride, at(start));
    if (raked)
      glVertexAttribPointer(1, 2, GL_FLOAT, GL_FALSE, stride, at(start + sizeof(UnitInstance)));
    glDrawElementsInstanced(GL_TRIANGLES, corners, GL_UNSIGNED_SHORT, at(first),
                            static_cast<GLsizei>(pieces.count[i]));
  }
  return static_cast<unsigned>(pieces.first.size());
}

unsigned UnitPass::draw(const Frame& frame, const Pieces& plain, const Pieces& raked) {
  surface_->set("uUnitPixel", frame.unitPixel);
  unsigned calls = 0;
  for (const bool mortar : {false, true}) {
    surface_->set("uSelectedUnit",
                  frame.selectedUnit == kNothing ? -1 : static_cast<int>(frame.selectedUnit));
    surface_->set("uNewestUnit",
                  frame.newestUnit == kNothing ? -1 : static_cast<int>(frame.newestUnit));
    calls += drawPieces(*surface_, plain, false, mortar);
    surface_->set("uSelectedUnit", -1);
    surface_->set("uNewestUnit", -1);
    calls += drawPieces(*surface_, raked, true, mortar);
  }
  return calls;
}

unsigned UnitPass::drawDepths(const Frame& frame, const glm::mat4& matrix, const GpuScene& gpu,
                              const Pieces& plain, const Pieces& raked) {
  if (plain.empty() && raked.empty()) return 0;
  if (!depth_)
    depth_.reset(
        new Program{{"clock.glsl", "clip.glsl", "view.glsl", "unit_tone.glsl", "unit.vert"},
                    {"depth_only.frag"}});
  depth_->use();
  giveClock(*depth_, frame);
  depth_->set("uViewProjection", matrix);
  gpu.bindElements(0);
  gpu.bindLeaves(3);
  depth_->set("uElements", 0);
  depth_->set("uLeaves", 3);
  return drawPieces(*depth_, plain, false, false) + drawPieces(*depth_, raked, true, false);
}

}  // namespace viewer
