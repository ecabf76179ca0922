#include "viewer/gl/renderer.h"

#include <epoxy/gl.h>

#include <algorithm>

#include "viewer/draw_list.h"
#include "viewer/gl/cut_pass.h"
#include "viewer/gl/frame_uniforms.h"
#include "viewer/gl/gpu_scene.h"
#include "viewer/gl/light_maps.h"
#include "viewer/gl/program.h"
#include "viewer/gl/render_target.h"
#include "viewer/gl/unit_pass.h"
#include "viewer/palette.h"

namespace viewer {

namespace {

constexpr float kInkWidth = 1.5f;                     // pixels
constexpr float kGoneStrength = 0.5f, kGoneDash = 9;  // pixels from dash to dash
constexpr float kSeeThroughOpacity = 0.25f;
constexpr float kGlassOpacity = 0.5f;  // one pane: the sky in it over what is behind it

void blend() {
  glEnable(GL_BLEND);
  glBlendFuncSeparate(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA, GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
}

}  // namespace

struct Renderer::Impl {
  Program depth{{"clock.glsl", "clip.glsl", "view.glsl", "depth.vert"}, {"depth_only.frag"}};
  Program surface{{"clock.glsl", "clip.glsl", "view.glsl", "surface.vert"},
                  {"light.glsl", "unit_tone.glsl", "unit_marks.glsl", "leaf.glsl", "surface.glsl",
                   "surface.frag"}};
  Program ink{{"view.glsl", "ink.vert"},
              {"clock.glsl", "view.glsl", "thick_line.glsl", "pen_line.glsl", "ink.geom"},
              {"ink.frag"}};
  Program sheet{{"view.glsl", "plane.vert"}, {"plane.frag"}};
  GpuScene gpu;
  LightMaps light{depth};
  UnitPass units;
  std::unique_ptr<CutPass> cutPass;  // made with the first cut: its shaders are large
  RenderTarget target;
  unsigned nothing = 0;  // a vertex array without attributes
  Scene numbers;         // the scene without its large arrays
  std::vector<int> materials;
  DrawList list;
  RenderStats stats;
  std::uint64_t unitBytes = 0;

  void giveSurfaces(Program& program, const Frame& frame, const ViewNumbers& view);
  void drawUnits(const Frame& frame, const ViewNumbers& view);
  void drawFaces(const Frame& frame, const ViewNumbers& view);
  void drawSeeThrough();
  void drawGlass();
  void drawInk(const Frame& frame, const ViewNumbers& view);
  void drawSheet(const Frame& frame, const ViewNumbers& view);
  void drawAll(const Frame& frame, const ViewNumbers& view);
};

Renderer::Renderer() : impl_(std::make_unique<Impl>()) { glGenVertexArrays(1, &impl_->nothing); }

Renderer::~Renderer() {
  glDeleteVertexArrays(1, &impl_->nothing);
  impl_->target.free();
}

const RenderStats& Renderer::stats() const { return impl_->stats; }

void Renderer::setScene(const Scene& scene) {
  Impl& r = *impl_;
  r.gpu.upload(scene);
  r.stats.bytesUploaded = r.gpu.bytesUploaded() + (r.unitBytes += r.units.upload(scene));
  r.numbers = Scene{};
  r.numbers.origin = scene.origin;
  r.numbers.elements = scene.elements;
  r.numbers.order = scene.order;
  r.numbers.low = scene.low;
  r.numbers.high = scene.high;
  r.numbers.coursing = scene.coursing;
  r.numbers.stageCount = scene.stageCount;
  r.numbers.units = scene.units;  // when each is laid
  r.numbers.raked = scene.raked;
  r.numbers.neighbours = scene.neighbours;
  r.materials.assign(scene.elements.size(), 0);
  for (size_t i = 0; i < scene.elements.size(); ++i) {
    const ElementRange& range = scene.elements[i];
    if (range.indexCount == 0) continue;
    const Vertex& v = scene.vertices[scene.indices[range.firstIndex]];
    r.materials[i] = static_cast<int>(v.material & ~kCutFace);
  }
  r.surface.use();
  giveLooks(r.surface, scene.coursing);
  r.light.forget();
  if (r.cutPass) r.cutPass->setScene(r.numbers, r.materials);
}

void Renderer::Impl::giveSurfaces(Program& program, const Frame& frame, const ViewNumbers& view) {
  gpu.bindElements(0);
  gpu.bindLeaves(3);
  program.use();
  giveView(program, view);
  giveClock(program, frame);
  giveSurface(program, frame, view, numbers.coursing);
  program.set("uElements", 0);
  program.set("uLeaves", 3);
  light.give(program, frame, 1);
  program.set("uOpacity", 1.0f);
}

void Renderer::Impl::drawUnits(const Frame& frame, const ViewNumbers& view) {
  if (list.laying.empty() && list.layingRaked.empty() && list.units.empty() &&
      list.unitsRaked.empty())
    return;
  giveSurfaces(units.surface(numbers.coursing), frame, view);
  stats.drawCalls += units.draw(frame, list.units, list.unitsRaked);
  stats.drawCalls += units.draw(frame, list.laying, list.layingRaked);
  stats.units = list.laid;
  stats.triangles += stats.units * 22;
}

void Renderer::Impl::drawFaces(const Frame& frame, const ViewNumbers& view) {
  glEnable(GL_DEPTH_TEST);
  glDepthFunc(GL_LEQUAL);
  glDepthMask(GL_TRUE);
  glEnable(GL_CULL_FACE);
  glCullFace(GL_BACK);
  glDisable(GL_BLEND);
  const ClockClips clips;
  if (frame.samples <= 1) {
    // Depth of what is still first, so that every pixel's colour is worked out once. With samples
    // software drivers work out what is hidden all the same.
    glColorMask(GL_FALSE, GL_FALSE, GL_FALSE, GL_FALSE);
    depth.use();
    giveView(depth, view);
    giveClock(depth, frame);
    stats.drawCalls += gpu.drawFaces(list.seen);
    glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  }
  drawUnits(frame, view);
  giveSurfaces(surface, frame, view);
  stats.drawCalls += gpu.drawFaces(list.seen);
  stats.drawCalls += gpu.drawFaces(list.moving);
  stats.triangles += (list.seen.total() + list.moving.total()) / 3;
}

// Depth first and colour after, so that only the nearest soil is laid over what is behind it.
void Renderer::Impl::drawSeeThrough() {
  if (list.seeThrough.empty()) return;
  const ClockClips clips;
  surface.use();
  glEnable(GL_DEPTH_TEST);
  glDepthMask(GL_TRUE);
  glEnable(GL_CULL_FACE);
  glColorMask(GL_FALSE, GL_FALSE, GL_FALSE, GL_FALSE);
  stats.drawCalls += gpu.drawFaces(list.seeThrough);
  glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  blend();
  surface.set("uOpacity", kSeeThroughOpacity);
  stats.drawCalls += gpu.drawFaces(list.seeThrough);
  stats.triangles += list.seeThrough.total() / 3 * 2;
}

// One layer a pane, the face towards the eye; panes behind panes are seen through both.
void Renderer::Impl::drawGlass() {
  if (list.glass.empty()) return;
  const ClockClips clips;
  surface.use();
  surface.set("uOpacity", kGlassOpacity);
  glEnable(GL_DEPTH_TEST);
  glDepthMask(GL_FALSE);
  glEnable(GL_CULL_FACE);
  blend();
  stats.drawCalls += gpu.drawFaces(list.glass);
  stats.triangles += list.glass.total() / 3;
}

void Renderer::Impl::drawInk(const Frame& frame, const ViewNumbers& view) {
  if (!frame.edges) return;
  ink.use();
  giveView(ink, view);
  giveClock(ink, frame);
  gpu.bindElements(0);
  ink.set("uElements", 0);
  ink.set("uWidth", kInkWidth);
  ink.set("uSelected", static_cast<int>(frame.selected));
  ink.set("uStage", static_cast<float>(frame.stage));
  ink.set("uInkColour", encoded(kInk));
  ink.set("uAccentColour", encoded(kAccent));
  ink.set("uFaint", 0.0f);
  ink.set("uStrength", 1.0f);
  ink.set("uDash", 0.0f);
  ink.set("uSince", static_cast<float>(list.goneSince));
  glEnable(GL_DEPTH_TEST);
  glDepthMask(GL_FALSE);
  glDisable(GL_CULL_FACE);
  blend();
  stats.drawCalls += gpu.drawEdges(list.edges);
  ink.set("uStrength", 0.45f);
  stats.drawCalls += gpu.drawEdges(list.seeThroughEdges);
  ink.set("uFaint", 1.0f);
  ink.set("uStrength", 0.22f);
  stats.drawCalls += gpu.drawEdges(list.comingEdges);
  // As drawings have what is taken down.
  ink.set("uFaint", 2.0f);
  ink.set("uStrength", kGoneStrength);
  ink.set("uDash", kGoneDash);
  stats.drawCalls += gpu.drawEdges(list.goneEdges);
}

void Renderer::Impl::drawSheet(const Frame& frame, const ViewNumbers& view) {
  if (!frame.levelPlane) return;
  sheet.use();
  giveView(sheet, view);
  sheet.set("uSheet", glm::vec4(numbers.low.x, numbers.low.y, numbers.high.x, numbers.high.y));
  sheet.set("uLevelAt", frame.levelPlaneAt);
  sheet.set("uSheetColour", glm::vec4(encoded(kLevel), 0.13f));
  glEnable(GL_DEPTH_TEST);
  glDepthMask(GL_FALSE);
  glDisable(GL_CULL_FACE);
  blend();
  glBindVertexArray(nothing);
  glDrawArrays(GL_TRIANGLE_STRIP, 0, 4);
  ++stats.drawCalls;
}

void Renderer::Impl::drawAll(const Frame& frame, const ViewNumbers& view) {
  const glm::vec3 paper = encoded(kPaper);
  glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  glDepthMask(GL_TRUE);
  glStencilMask(0xff);
  glDisable(GL_SCISSOR_TEST);
  glClearColor(paper.r, paper.g, paper.b, 1);
  glClearDepth(1);
  glClearStencil(0);
  glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT | GL_STENCIL_BUFFER_BIT);
  drawFaces(frame, view);
  if (!list.cuts.empty()) {
    if (!cutPass) {
      cutPass = std::make_unique<CutPass>(depth, surface);
      cutPass->setScene(numbers, materials);
    }
    stats.drawCalls += cutPass->draw(numbers, gpu, list, frame, view, materials);
  }
  drawInk(frame, view);
  drawSeeThrough();
  drawGlass();
  drawSheet(frame, view);
}

void Renderer::draw(const Frame& frame, int width, int height) {
  if (width <= 0 || height <= 0) return;
  Impl& r = *impl_;
  int bound = 0, samples = 0, stencil = 0;
  glGetIntegerv(GL_DRAW_FRAMEBUFFER_BINDING, &bound);
  glGetIntegerv(GL_SAMPLES, &samples);
  glGetFramebufferAttachmentParameteriv(
      GL_DRAW_FRAMEBUFFER, bound ? GL_STENCIL_ATTACHMENT : GL_STENCIL,
      bound ? GL_FRAMEBUFFER_ATTACHMENT_OBJECT_TYPE : GL_FRAMEBUFFER_ATTACHMENT_STENCIL_SIZE,
      &stencil);
  r.stats.triangles = r.stats.drawCalls = r.stats.units = 0;
  const ViewNumbers view = viewNumbers(frame, r.numbers, width, height);
  listFor(r.numbers, frame, r.list, {view.viewProjection, view.eye, view.pixel});
  LightMaps::DrawUnits casters;
  if (!r.list.laying.empty() || !r.list.layingRaked.empty())
    casters = [&](const glm::mat4& matrix) {
      return r.units.drawDepths(frame, matrix, r.gpu, r.list.laying, r.list.layingRaked);
    };
  r.stats.drawCalls += r.light.update(frame, r.numbers.low, r.numbers.high, r.list, r.gpu, casters);
  // A framebuffer with samples of its own, or one that wants none, is drawn into directly.
  const bool direct = stencil != 0 && (samples > 1 || frame.samples <= 1);
  if (direct) {
    glBindFramebuffer(GL_FRAMEBUFFER, static_cast<unsigned>(bound));
    glViewport(0, 0, width, height);
  } else {
    r.target.resize(width, height, frame.samples);
    r.target.bind();
  }
  Frame shown = frame;
  if (frame.stage >= r.numbers.stageCount - 1) shown.stage = -1;  // finished: all in full colour
  r.drawAll(shown, view);
  if (!direct) {
    r.target.resolveInto(static_cast<unsigned>(bound));
    glBindFramebuffer(GL_FRAMEBUFFER, static_cast<unsigned>(bound));
    glViewport(0, 0, width, height);
  }
  glBindVertexArray(0);
  glUseProgram(0);
  glDisable(GL_DEPTH_TEST);
  glDisable(GL_CULL_FACE);
  glDepthMask(GL_TRUE);
  glActiveTexture(GL_TEXTURE0);
}

}  // namespace viewer
