#include "viewer/gl/cut_pass.h"

#include <epoxy/gl.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include <glm/geometric.hpp>

#include "viewer/palette.h"

namespace viewer {

namespace {

constexpr float kSectionWidth = 2.6f;  // pixels: a cut is outlined heavier than an edge
constexpr float kFrontWidth = 1.1f;

// A point in the plane near the middle of the box, from which fans are drawn.
glm::vec3 anchorOf(const CutFill& cut, const ElementRange& range) {
  const glm::vec3 middle = (range.low + range.high) * 0.5f;
  const glm::vec3 normal(cut.plane);
  return middle - normal * (glm::dot(normal, middle) + cut.plane.w);
}

// In pixels. Layers that are few pixels thick would be all outline: theirs is finer.
float widthOf(const CutFill& cut, const ElementRange& range, const ViewNumbers& view) {
  const float usual = cut.kind == CutFill::Kind::Section ? kSectionWidth : kFrontWidth;
  return usual * std::clamp(range.thickness / view.atTarget * 0.06f, 0.3f, 1.0f);
}

// Whether pieces of the material that touch are one in the end: ground, and masonry laid lift by
// lift. Concrete keeps its construction joints, timber its pieces.
bool merges(int material) {
  using enum model::Material;
  switch (static_cast<model::Material>(material)) {
    case Earth:
    case Topsoil:
    case Hardcore:
    case Brick:
    case Block:
    case Insulation:
    case Masonry:
      return true;
    default:
      return false;
  }
}

void countInto() {
  glColorMask(GL_FALSE, GL_FALSE, GL_FALSE, GL_FALSE);
  glDepthMask(GL_FALSE);
  glDisable(GL_DEPTH_TEST);
  glStencilFunc(GL_ALWAYS, 0, 1);
  glStencilOp(GL_INVERT, GL_INVERT, GL_INVERT);
}

void fillWhereOdd() {
  glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  glDepthMask(GL_TRUE);
  glEnable(GL_DEPTH_TEST);
  glStencilFunc(GL_EQUAL, 1, 1);
  glStencilOp(GL_KEEP, GL_ZERO, GL_ZERO);
}

}  // namespace

CutPass::CutPass()
    : count_({{"cut.vert"}, {"view.glsl", "crossing.glsl", "cut_fill.geom"}, {"depth_only.frag"}}),
      fill_({{"cut.vert"},
             {"view.glsl", "crossing.glsl", "cut_fill.geom"},
             {"clock.glsl", "growth.glsl", "light.glsl", "surface.glsl", "hatch.glsl",
              "cut_fill.frag"}}),
      line_({{"cut.vert"},
             {"view.glsl", "crossing.glsl", "thick_line.glsl", "cut_line.geom"},
             {"clock.glsl", "growth.glsl", "cut_line.frag"}}) {}

void CutPass::giveGrowth(Program& program, const CutFill& cut, const ElementRange& range) {
  program.set("uPlane", cut.plane);
  program.set("uCutKind", static_cast<int>(cut.kind));
  const auto give = [&](const Growth& g, const char* front, const char* times) {
    program.set(front, glm::vec4(g.direction, g.low));
    program.set(times, glm::vec3(g.high, g.from, g.moves() ? g.to : g.from));
  };
  give(range.placed, "uPlacedFront", "uPlacedTimes");
  give(range.removed, "uRemovedFront", "uRemovedTimes");
}

void CutPass::giveFill(const CutFill& cut, const ElementRange& range, const Coursing& coursing,
                       int material, const Frame& frame) {
  const glm::vec3 normal(cut.plane);
  const bool level = std::abs(normal.z) > 0.99f;
  const glm::vec3 right =
      level ? glm::vec3(1, 0, 0) : glm::normalize(glm::cross(glm::vec3(0, 0, 1), normal));
  const Look look = lookOf(static_cast<model::Material>(material), coursing);
  fill_.set("uNormal", normal);
  fill_.set("uPlaneRight", right);
  fill_.set("uPlaneUp", glm::cross(normal, right));
  fill_.set("uFillWash", look.wash);
  fill_.set("uFillJoint", glm::vec4(look.joint, look.jointWidth));
  fill_.set("uFillPattern", glm::vec4(look.period, look.stagger, look.variation));
  fill_.set("uFillFrame", glm::vec4(range.wallStart, range.along));
  const bool now = range.appears >= static_cast<float>(frame.stage);
  fill_.set("uFillState", glm::vec4(range.wallPhase + (look.coursed ? 2.0f : 0.0f), 0,
                                    range.soil ? 0.9f : (now ? 1.0f : 0.0f),
                                    cut.element == frame.selected ? 1.0f : 0.0f));
  fill_.set("uHatch", static_cast<int>(look.hatch));
  fill_.set("uOpacity", 1.0f);
}

unsigned CutPass::fill(const CutScene& of, const CutFill& cut) {
  const ElementRange& range = of.scene.elements[cut.element];
  const glm::vec3 anchor = anchorOf(cut, range);
  glDisable(GL_BLEND);
  glEnable(GL_STENCIL_TEST);
  countInto();
  count_.use();
  count_.set("uPlane", cut.plane);
  count_.set("uAnchor", anchor);
  of.gpu.drawFaces(range.firstIndex, range.indexCount);
  fillWhereOdd();
  fill_.use();
  giveGrowth(fill_, cut, range);
  giveFill(cut, range, of.scene.coursing, of.materials[cut.element], of.frame);
  fill_.set("uAnchor", anchor);
  of.gpu.drawFaces(range.firstIndex, range.indexCount);
  glDisable(GL_STENCIL_TEST);
  return 2;
}

unsigned CutPass::outline(const CutScene& of, const CutFill& cut, float widths) {
  if (!of.frame.edges) return 0;
  const ElementRange& range = of.scene.elements[cut.element];
  glEnable(GL_BLEND);
  glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
  glDepthMask(GL_FALSE);
  line_.use();
  line_.set("uWidth", widthOf(cut, range, of.view) * widths);
  giveGrowth(line_, cut, range);
  return of.gpu.drawFaces(range.firstIndex, range.indexCount);
}

unsigned CutPass::draw(const Scene& scene, const GpuScene& gpu, const DrawList& list,
                       const Frame& frame, const ViewNumbers& view, const LightMaps& light,
                       const std::vector<int>& materials) {
  if (list.cuts.empty()) return 0;
  const CutScene of{scene, gpu, frame, view, materials};
  for (Program* program : {&count_, &fill_, &line_}) {
    program->use();
    giveView(*program, view);
    giveClock(*program, frame);
  }
  line_.set("uInkColour", encoded(kInk));
  fill_.use();
  giveSurface(fill_, frame, view, scene.coursing);
  light.give(fill_, frame, 1);
  glDisable(GL_CULL_FACE);
  glStencilMask(1);
  // By material, what is filled in apart from what was there before the work.
  std::map<std::pair<int, bool>, std::vector<const CutFill*>> merging;
  std::vector<const CutFill*> single;
  for (const CutFill& cut : list.cuts) {
    const ElementRange& range = scene.elements[cut.element];
    const bool section = cut.kind == CutFill::Kind::Section;
    if (frame.seeThroughGround && range.soil && !section) continue;
    const int material = materials[cut.element];
    if (section && merges(material))
      merging[{material, range.soil && range.appears > 0}].push_back(&cut);
    else
      single.push_back(&cut);
  }
  unsigned calls = 0;
  // The outline goes under the fills of its own material, which leave its outer half: so there is
  // none between what is of one piece in the end.
  for (const auto& [piece, cuts] : merging) {
    for (const CutFill* cut : cuts) calls += outline(of, *cut, 2);
    for (const CutFill* cut : cuts) calls += fill(of, *cut);
  }
  for (const CutFill* cut : single) calls += fill(of, *cut);
  for (const CutFill* cut : single) calls += outline(of, *cut, 1);
  return calls;
}

}  // namespace viewer
