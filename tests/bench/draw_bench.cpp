// A frame of the demo at 1280x720 through EGL, beside a bare program that draws the same triangles
// in the same light, of the sun with its shadow and of the sky: no clock, no materials, no ink, no
// cuts.
#include <benchmark/benchmark.h>
#include <epoxy/gl.h>

#include <array>
#include <stdexcept>
#include <tuple>

#include <glm/geometric.hpp>
#include <glm/gtc/matrix_transform.hpp>
#include <glm/gtc/type_ptr.hpp>

#include "tests/bench/demo.h"
#include "viewer/draw_list.h"
#include "viewer/gl/offscreen.h"
#include "viewer/gl/render_target.h"
#include "viewer/gl/renderer.h"
#include "viewer/picture.h"

namespace bench {
namespace {

const viewer::Scene& scene() { return demoScene(); }

constexpr int kWidth = 1280, kHeight = 720;
// As the renderer's: a slow machine's frame of one sample has a smaller map.
constexpr int kShadowSize = 2048, kSmallShadowSize = 1024, kSkySize = 192;

viewer::Frame frameAt(double time, int samples) {
  viewer::PictureOptions options;
  options.time = time;
  options.frame.samples = samples;
  return viewer::frameOf(demo(), scene(), options);
}

// A moment at which much stands and something grows: the middle of the last wall piece to be begun
// in the first three quarters of the programme.
double busyTime() {
  double from = 0, middle = 0;
  for (size_t i = 0; i < scene().elements.size(); ++i) {
    const viewer::Growth& growth = scene().elements[i].placed;
    if (demo().works.elements[i].kind != model::ElementKind::OuterLeaf || !growth.moves()) continue;
    if (growth.from < from || growth.from > scene().stageCount * 0.75) continue;
    from = growth.from;
    middle = (growth.from + growth.to) / 2;
  }
  return middle;
}

std::unique_ptr<viewer::Offscreen> context() {
  std::string why;
  auto made = viewer::Offscreen::create(why);
  if (!made) throw std::runtime_error(why);
  return made;
}

const char* kBareVertex = R"(#version 330 core
layout(location = 0) in vec3 aPosition;
layout(location = 1) in vec3 aNormal;
uniform mat4 uMatrix, uShadow;
out vec4 vShadow;
out vec3 vPosition;
out vec3 vNormal;
void main() {
  gl_Position = uMatrix * vec4(aPosition, 1.0);
  vPosition = aPosition;
  vShadow = uShadow * vec4(aPosition + aNormal * 0.03, 1.0);
  vNormal = aNormal;
})";
const char* kBareFragment = R"(#version 330 core
in vec4 vShadow;
in vec3 vPosition;
in vec3 vNormal;
uniform vec3 uSun, uLow, uHigh;
uniform sampler2DShadow uMap;
uniform sampler2D uSky;
uniform float uTexel;
out vec4 oColour;
float above(vec2 at, float h) {
  return clamp(mix(uHigh.z, uLow.z, texture(uSky, at).r) - h, 0.0, 1.2);
}
void main() {
  vec3 at = vShadow.xyz * 0.5 + 0.5;
  float lit = texture(uMap, vec3(at.xy + uTexel * vec2(-0.4, -1.0), at.z)) +
              texture(uMap, vec3(at.xy + uTexel * vec2(1.0, -0.4), at.z)) +
              texture(uMap, vec3(at.xy + uTexel * vec2(0.4, 1.0), at.z)) +
              texture(uMap, vec3(at.xy + uTexel * vec2(-1.0, 0.4), at.z));
  vec2 metre = 1.0 / (uHigh.xy - uLow.xy);
  vec2 over = (vPosition.xy + vNormal.xy * 0.9 - uLow.xy) * metre;
  float h = vPosition.z + 0.05;
  float shade = above(over + metre * vec2(0.35, 0.1), h) +
                above(over + metre * vec2(-0.35, 0.5), h) +
                above(over + metre * vec2(-0.4, -0.75), h);
  vec3 c = vec3(0.7, 0.6, 0.5) * (0.55 * (1.0 - 0.085 * shade) +
                                  0.57 * max(dot(vNormal, uSun), 0.0) * lit * 0.25);
  oColour = vec4(pow(c, vec3(1.0 / 2.2)), 1.0);
})";
const char* kDepthFragment = "#version 330 core\nvoid main() {}";

unsigned compiled(const char* vertex, const char* fragment) {
  const unsigned program = glCreateProgram();
  for (const auto& [kind, text] :
       {std::pair(GL_VERTEX_SHADER, vertex), std::pair(GL_FRAGMENT_SHADER, fragment)}) {
    const unsigned shader = glCreateShader(static_cast<GLenum>(kind));
    glShaderSource(shader, 1, &text, nullptr);
    glCompileShader(shader);
    glAttachShader(program, shader);
    glDeleteShader(shader);
  }
  glLinkProgram(program);
  return program;
}

// The least program that shows those triangles in that light.
class Bare {
 public:
  Bare(double time, int samples) {
    for (const auto& range : scene().elements) {
      if (range.appears > time || range.goes <= time) continue;
      const auto first = scene().indices.begin() + range.firstIndex;
      indices_.insert(indices_.end(), first, first + range.indexCount);
    }
    lit_ = compiled(kBareVertex, kBareFragment);
    depth_ = compiled(kBareVertex, kDepthFragment);
    glGenVertexArrays(1, &array_);
    glBindVertexArray(array_);
    glGenBuffers(2, buffers_);
    glBindBuffer(GL_ARRAY_BUFFER, buffers_[0]);
    glBufferData(GL_ARRAY_BUFFER,
                 static_cast<GLsizeiptr>(scene().vertices.size() * sizeof(viewer::Vertex)),
                 scene().vertices.data(), GL_STATIC_DRAW);
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, buffers_[1]);
    glBufferData(GL_ELEMENT_ARRAY_BUFFER, static_cast<GLsizeiptr>(indices_.size() * 4),
                 indices_.data(), GL_STATIC_DRAW);
    for (unsigned i = 0; i < 2; ++i) {
      glEnableVertexAttribArray(i);
      glVertexAttribPointer(i, 3, GL_FLOAT, GL_FALSE, sizeof(viewer::Vertex),
                            reinterpret_cast<void*>(static_cast<size_t>(i) * 12));
    }
    makeMap(map_, mapFrame_, samples > 1 ? kShadowSize : kSmallShadowSize, true);
    makeMap(sky_, skyFrame_, kSkySize, false);
  }
  ~Bare() {
    target_.free();
    glDeleteProgram(lit_);
    glDeleteProgram(depth_);
    glDeleteVertexArrays(1, &array_);
    glDeleteBuffers(2, buffers_);
    for (unsigned* texture : {&map_, &sky_}) glDeleteTextures(1, texture);
    for (unsigned* framebuffer : {&mapFrame_, &skyFrame_}) glDeleteFramebuffers(1, framebuffer);
  }
  Bare(const Bare&) = delete;
  Bare& operator=(const Bare&) = delete;

  void draw(const viewer::Frame& frame, unsigned into) {
    const glm::vec3 middle = (scene().low + scene().high) * 0.5f;
    const float radius = glm::length(scene().high - scene().low) * 0.5f;
    const glm::mat4 shadow = glm::ortho(-radius, radius, -radius, radius, 0.0f, 2 * radius) *
                             glm::lookAt(middle + frame.sun * radius, middle, glm::vec3(0, 0, 1));
    const glm::vec3 low = scene().low - 0.5f, high = scene().high + 0.5f;
    const glm::mat4 sky = glm::ortho(low.x, high.x, low.y, high.y, 0.0f, high.z - low.z) *
                          glm::translate(glm::mat4(1), glm::vec3(0, 0, -high.z));
    glBindVertexArray(array_);
    glEnable(GL_DEPTH_TEST);
    glUseProgram(depth_);
    glDisable(GL_CULL_FACE);
    const int size = frame.samples > 1 ? kShadowSize : kSmallShadowSize;
    for (const auto& [framebuffer, side, matrix] :
         {std::tuple(mapFrame_, size, shadow), std::tuple(skyFrame_, kSkySize, sky)}) {
      glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
      glViewport(0, 0, side, side);
      glClear(GL_DEPTH_BUFFER_BIT);
      elements(depth_, matrix, matrix);
    }
    target_.resize(kWidth, kHeight, frame.samples);
    target_.bind();
    glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT | GL_STENCIL_BUFFER_BIT);
    glUseProgram(lit_);
    glUniform3fv(glGetUniformLocation(lit_, "uSun"), 1, glm::value_ptr(frame.sun));
    glUniform3fv(glGetUniformLocation(lit_, "uLow"), 1, glm::value_ptr(low));
    glUniform3fv(glGetUniformLocation(lit_, "uHigh"), 1, glm::value_ptr(high));
    glUniform1f(glGetUniformLocation(lit_, "uTexel"), 0.9f / static_cast<float>(size));
    glUniform1i(glGetUniformLocation(lit_, "uSky"), 1);
    glActiveTexture(GL_TEXTURE1);
    glBindTexture(GL_TEXTURE_2D, sky_);
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, map_);
    glEnable(GL_CULL_FACE);
    constexpr double kAspect = static_cast<double>(kWidth) / kHeight;
    elements(lit_,
             frame.camera.projection(kAspect, scene().low, scene().high) * frame.camera.view(),
             shadow);
    target_.resolveInto(into);
    glDisable(GL_CULL_FACE);
    glDisable(GL_DEPTH_TEST);
  }
  size_t triangles() const { return indices_.size() / 3; }

 private:
  void elements(unsigned program, const glm::mat4& matrix, const glm::mat4& shadow) const {
    glUniformMatrix4fv(glGetUniformLocation(program, "uMatrix"), 1, GL_FALSE,
                       glm::value_ptr(matrix));
    glUniformMatrix4fv(glGetUniformLocation(program, "uShadow"), 1, GL_FALSE,
                       glm::value_ptr(shadow));
    glDrawElements(GL_TRIANGLES, static_cast<GLsizei>(indices_.size()), GL_UNSIGNED_INT, nullptr);
  }

  static void makeMap(unsigned& texture, unsigned& framebuffer, int size, bool compared) {
    glGenTextures(1, &texture);
    glBindTexture(GL_TEXTURE_2D, texture);
    glTexImage2D(GL_TEXTURE_2D, 0, GL_DEPTH_COMPONENT24, size, size, 0, GL_DEPTH_COMPONENT,
                 GL_UNSIGNED_INT, nullptr);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
    if (compared)
      glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_COMPARE_MODE, GL_COMPARE_REF_TO_TEXTURE);
    glGenFramebuffers(1, &framebuffer);
    glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_TEXTURE_2D, texture, 0);
    glDrawBuffer(GL_NONE);
    glReadBuffer(GL_NONE);
  }

  std::vector<std::uint32_t> indices_;
  unsigned lit_ = 0, depth_ = 0, array_ = 0, buffers_[2] = {0, 0};
  unsigned map_ = 0, mapFrame_ = 0, sky_ = 0, skyFrame_ = 0;
  viewer::RenderTarget target_;
};

unsigned boundFramebuffer() {
  int bound = 0;
  glGetIntegerv(GL_DRAW_FRAMEBUFFER_BINDING, &bound);
  return static_cast<unsigned>(bound);
}

void BM_BareDraw(benchmark::State& state) {
  const auto offscreen = context();
  const int samples = static_cast<int>(state.range(0));
  Bare bare(busyTime(), samples);
  const viewer::Frame frame = frameAt(busyTime(), samples);
  offscreen->begin(kWidth, kHeight, 1);
  bare.draw(frame, boundFramebuffer());
  glFinish();
  for (auto _ : state) {
    offscreen->begin(kWidth, kHeight, 1);
    bare.draw(frame, boundFramebuffer());
    glFinish();
  }
  state.counters["triangles"] = static_cast<double>(bare.triangles());
}
BENCHMARK(BM_BareDraw)
    ->Arg(1)
    ->Arg(4)
    ->ArgName("samples")
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();

enum class Moves { Time, Camera };

// Frame after frame, moved there and back, so that every run draws the same amount.
void frames(benchmark::State& state, const viewer::Scene& of, viewer::Frame frame, Moves moves) {
  const auto offscreen = context();
  viewer::Renderer renderer;
  renderer.setScene(of);
  offscreen->begin(kWidth, kHeight, 1);
  renderer.draw(frame, kWidth, kHeight);  // drivers finish compiling with the first frame
  glFinish();
  for (auto _ : state) {
    const double step = state.iterations() % 2 ? 1e-4 : -1e-4;
    if (moves == Moves::Time) frame.time += step;
    if (moves == Moves::Camera) frame.camera.orbit(step, 0);
    offscreen->begin(kWidth, kHeight, 1);
    renderer.draw(frame, kWidth, kHeight);
    glFinish();
  }
  state.counters["triangles"] = static_cast<double>(renderer.stats().triangles);
  state.counters["units"] = static_cast<double>(renderer.stats().units);
  state.counters["calls"] = static_cast<double>(renderer.stats().drawCalls);
}

void demoFrames(benchmark::State& state, Moves moves, bool edges) {
  viewer::Frame frame = frameAt(busyTime(), static_cast<int>(state.range(0)));
  frame.edges = edges;
  frames(state, scene(), frame, moves);
}

void BM_Frame(benchmark::State& state) { demoFrames(state, Moves::Time, true); }
BENCHMARK(BM_Frame)
    ->Arg(1)
    ->Arg(4)
    ->ArgName("samples")
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();

void BM_FrameWithoutInk(benchmark::State& state) { demoFrames(state, Moves::Time, false); }
BENCHMARK(BM_FrameWithoutInk)
    ->Arg(1)
    ->Arg(4)
    ->ArgName("samples")
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();

void BM_OrbitFrame(benchmark::State& state) { demoFrames(state, Moves::Camera, true); }
BENCHMARK(BM_OrbitFrame)
    ->Arg(1)
    ->Arg(4)
    ->ArgName("samples")
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();

// From nothing, context and shaders included, to the first picture.
void BM_BareFirstFrame(benchmark::State& state) {
  for (auto _ : state) {
    const auto offscreen = context();
    Bare bare(busyTime(), 1);
    offscreen->begin(kWidth, kHeight, 1);
    bare.draw(frameAt(busyTime(), 1), boundFramebuffer());
    glFinish();
  }
}
BENCHMARK(BM_BareFirstFrame)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime()->UseRealTime();

void BM_FirstFrame(benchmark::State& state) {
  for (auto _ : state) {
    const auto offscreen = context();
    viewer::Renderer renderer;
    renderer.setScene(scene());
    offscreen->begin(kWidth, kHeight, 1);
    renderer.draw(frameAt(busyTime(), 1), kWidth, kHeight);
    glFinish();
  }
}
BENCHMARK(BM_FirstFrame)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime()->UseRealTime();

// ---- bricks -----------------------------------------------------------------

// Everything stands and every brick and block is drawn one by one, however far off.
viewer::Frame brickwise(const viewer::Scene& of) {
  viewer::Frame frame = frameAt(of.stageCount, 1);
  frame.camera = *viewer::standardView("south-west", of.low, of.high, 16.0 / 9);
  frame.unitPixel = 1e9f;
  frame.edges = false;
  return frame;
}

const viewer::Scene& manyBricks(int houses) {
  static int made = 0;
  static viewer::Scene scene;
  if (made != houses) scene = viewer::buildScene(copies(houses));
  made = houses;
  return scene;
}

const char* kBareBricks = R"(#version 330 core
layout(location = 0) in uvec4 aUnit;
uniform mat4 uMatrix;
uniform vec3 uLow, uHigh;
flat out vec3 vColour;
void main() {
  vec3 corner = vec3(gl_VertexID & 1, gl_VertexID >> 1 & 1, gl_VertexID >> 2 & 1);
  vec3 at = mix(uLow, uHigh, vec3(aUnit.xyz & 1023u) / 1023.0);
  vColour = vec3(0.7, 0.4, 0.3) * (0.6 + 0.2 * corner.z + 0.1 * corner.y);
  gl_Position = uMatrix * vec4(at + corner * vec3(0.215, 0.1025, 0.065), 1.0);
})";
const char* kBareBricksFragment = R"(#version 330 core
flat in vec3 vColour;
out vec4 oColour;
void main() { oColour = vec4(vColour, 1.0); })";

// As many boxes as there are bricks, each from 16 bytes, one colour, no mortar, no light: scattered
// over the same ground.
void BM_BareBricks(benchmark::State& state) {
  const auto offscreen = context();
  const viewer::Scene& of = manyBricks(static_cast<int>(state.range(0)));
  const viewer::Frame frame = brickwise(of);
  std::vector<std::array<std::uint32_t, 4>> records(of.units.size());
  std::uint32_t random = 1;
  for (auto& record : records)
    for (auto& word : record) word = (random = random * 1664525u + 1013904223u) >> 8;
  const std::array<std::uint16_t, 36> kBox{0, 1, 5, 0, 5, 4, 1, 3, 7, 1, 7, 5, 3, 2, 6, 3, 6, 7,
                                           2, 0, 4, 2, 4, 6, 4, 5, 7, 4, 7, 6, 0, 2, 3, 0, 3, 1};
  const unsigned program = compiled(kBareBricks, kBareBricksFragment);
  unsigned array = 0, buffers[2] = {0, 0};
  glGenVertexArrays(1, &array);
  glBindVertexArray(array);
  glGenBuffers(2, buffers);
  glBindBuffer(GL_ARRAY_BUFFER, buffers[0]);
  glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(records.size() * 16), records.data(),
               GL_STATIC_DRAW);
  glEnableVertexAttribArray(0);
  glVertexAttribIPointer(0, 4, GL_UNSIGNED_INT, 16, nullptr);
  glVertexAttribDivisor(0, 1);
  glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, buffers[1]);
  glBufferData(GL_ELEMENT_ARRAY_BUFFER, sizeof kBox, kBox.data(), GL_STATIC_DRAW);
  const glm::mat4 matrix = frame.camera.projection(16.0 / 9, of.low, of.high) * frame.camera.view();
  const auto drawOnce = [&] {
    offscreen->begin(kWidth, kHeight, 1);
    glEnable(GL_DEPTH_TEST);
    glEnable(GL_CULL_FACE);
    glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
    glUseProgram(program);
    glUniformMatrix4fv(glGetUniformLocation(program, "uMatrix"), 1, GL_FALSE,
                       glm::value_ptr(matrix));
    glUniform3fv(glGetUniformLocation(program, "uLow"), 1, glm::value_ptr(of.low));
    glUniform3fv(glGetUniformLocation(program, "uHigh"), 1, glm::value_ptr(of.high));
    glBindVertexArray(array);
    glDrawElementsInstanced(GL_TRIANGLES, 36, GL_UNSIGNED_SHORT, nullptr,
                            static_cast<GLsizei>(records.size()));
    glFinish();
  };
  drawOnce();
  for (auto _ : state) drawOnce();
  state.counters["bricks"] = static_cast<double>(records.size());
  glDeleteBuffers(2, buffers);
  glDeleteVertexArrays(1, &array);
  glDeleteProgram(program);
}
BENCHMARK(BM_BareBricks)
    ->Arg(1)
    ->Arg(66)
    ->ArgName("houses")
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();

// Every brick and block of so many houses; 66 have a million.
void BM_Bricks(benchmark::State& state) {
  const viewer::Scene& of = manyBricks(static_cast<int>(state.range(0)));
  frames(state, of, brickwise(of), Moves::Camera);
  state.counters["bricks"] = static_cast<double>(of.units.size());
}
BENCHMARK(BM_Bricks)
    ->Arg(1)
    ->Arg(66)
    ->ArgName("houses")
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();

// From a few steps off a corner of the demo: near masonry brick by brick, or all of it flat.
void BM_NearFrame(benchmark::State& state) {
  viewer::Frame frame = frameAt(scene().stageCount, 1);
  frame.camera.target = scene().local({0.6, 0, 1.4});
  frame.camera.distance = 2.5;
  frame.camera.elevation = 0.2;
  if (!state.range(0)) frame.unitPixel = 0;
  frames(state, scene(), frame, Moves::Camera);
}
BENCHMARK(BM_NearFrame)
    ->Arg(0)
    ->Arg(1)
    ->ArgName("bricks")
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();

// What of such a frame is only choosing what to draw.
void BM_ListOfCopies(benchmark::State& state) {
  const int count = static_cast<int>(state.range(0));
  const viewer::Scene many = viewer::buildScene(copies(count));
  viewer::Frame frame = frameAt(busyTime(), 1);
  viewer::DrawList list;
  for (auto _ : state) {
    frame.time += 1e-6;
    viewer::listFor(many, frame, list);
    benchmark::DoNotOptimize(list.laid);
  }
  state.counters["cuts"] = static_cast<double>(list.cuts.size());
  state.counters["edges"] = static_cast<double>(list.edges.total());
  state.counters["pieces"] = static_cast<double>(list.seen.first.size() + list.edges.first.size());
}
BENCHMARK(BM_ListOfCopies)->Arg(1)->Arg(100)->Unit(benchmark::kMillisecond);

// A scrubbed frame over a growing estate, the whole of it in view.
void BM_FrameOfCopies(benchmark::State& state) {
  const int count = static_cast<int>(state.range(0));
  const viewer::Scene many = viewer::buildScene(copies(count));
  viewer::Frame frame = frameAt(busyTime(), 1);
  frame.camera = *viewer::standardView("south-west", many.low, many.high, 16.0 / 9);
  frames(state, many, frame, Moves::Time);
  state.SetComplexityN(count);
}
BENCHMARK(BM_FrameOfCopies)
    ->RangeMultiplier(10)
    ->Range(1, 1000)
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime()
    ->Complexity();

}  // namespace
}  // namespace bench
