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

Pieces facesOf(const Scene& scene, const std::vector<const CutFill*>& cuts) {
  Pieces faces;
  for (const CutFill* cut : cuts) {
    const ElementRange& range = scene.elements[cut->element];
    faces.add(range.firstIndex, range.indexCount);
  }
  return faces;
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

CutPass::CutPass(Program& depth, Program& surface)
    : depth_(depth),
      surface_(surface),
      line_({{"cut.vert"},
             {"clock.glsl", "growth.glsl", "view.glsl", "crossing.glsl", "thick_line.glsl",
              "pen_line.glsl", "cut_line.geom"},
             {"ink.frag"}}) {}

void CutPass::setScene(const Scene& scene, const std::vector<int>& materials) {
  sheets_.upload(scene, materials);
}

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

std::vector<CutPass::Front> CutPass::frontsOf(const CutScene& of,
                                              const std::vector<const CutFill*>& cuts) {
  std::vector<Front> fronts;
  const auto together = [&of](const CutFill& a, const CutFill& b) {
    const ElementRange &p = of.scene.elements[a.element], &q = of.scene.elements[b.element];
    return a.kind == b.kind && a.plane == b.plane && p.placed == q.placed &&
           p.removed == q.removed &&
           std::abs(widthOf(a, p, of.view) - widthOf(b, q, of.view)) < 0.05f;
  };
  for (const CutFill* cut : cuts) {
    const auto found = std::find_if(fronts.begin(), fronts.end(), [&](const Front& front) {
      return together(*front.front(), *cut);
    });
    if (found == fronts.end())
      fronts.push_back({cut});
    else
      found->push_back(cut);
  }
  return fronts;
}

// A ray meets what stands of a closed thing an odd number of times where it goes in or out by the
// side that is not built yet.
unsigned CutPass::fillFront(const CutScene& of, const Front& front) {
  const ClockClips clips;
  glDisable(GL_BLEND);
  glEnable(GL_STENCIL_TEST);
  countInto();
  depth_.use();
  unsigned calls = of.gpu.drawFaces(facesOf(of.scene, front));
  fillWhereOdd();
  surface_.use();
  calls += sheets_.draw(front, of.scene, of.frame.time, surface_);
  glDisable(GL_STENCIL_TEST);
  return calls;
}

unsigned CutPass::outlineFront(const CutScene& of, const Front& front) {
  return outline(of, *front.front(), facesOf(of.scene, front), 1);
}

unsigned CutPass::fillSection(const CutScene& of, const CutFill& cut) {
  const ElementRange& range = of.scene.elements[cut.element];
  const glm::vec3 anchor = anchorOf(cut.plane, range);
  glDisable(GL_BLEND);
  glEnable(GL_STENCIL_TEST);
  countInto();
  section_->count.use();
  section_->count.set("uPlane", cut.plane);
  section_->count.set("uAnchor", anchor);
  of.gpu.drawFaces(range.firstIndex, range.indexCount);
  fillWhereOdd();
  Program& fill = section_->fill;
  fill.use();
  giveGrowth(fill, cut, range);
  fill.set("uAnchor", anchor);
  const PlaneAxes axes = axesOf(cut.plane);
  fill.set("uPlaneRight", axes.right);
  fill.set("uPlaneUp", axes.up);
  const Look look =
      lookOf(static_cast<model::Material>(of.materials[cut.element]), of.scene.coursing);
  fill.set("uFillWash", look.wash);
  fill.set("uHatch", static_cast<int>(look.hatch));
  fill.set("uFillSelected", cut.element == of.frame.selected ? 1.0f : 0.0f);
  of.gpu.drawFaces(range.firstIndex, range.indexCount);
  glDisable(GL_STENCIL_TEST);
  return 2;
}

unsigned CutPass::outline(const CutScene& of, const CutFill& cut, const Pieces& faces,
                          float widths) {
  if (!of.frame.edges) return 0;
  const ElementRange& range = of.scene.elements[cut.element];
  glEnable(GL_BLEND);
  glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
  glDepthMask(GL_FALSE);
  line_.use();
  line_.set("uWidth", widthOf(cut, range, of.view) * widths);
  giveGrowth(line_, cut, range);
  return of.gpu.drawFaces(faces);
}

unsigned CutPass::outline(const CutScene& of, const CutFill& cut, float widths) {
  return outline(of, cut, facesOf(of.scene, {&cut}), widths);
}

// Gives the programs what is the same for all cuts of a frame.
void CutPass::begin(const CutScene& of, const DrawList& list) {
  const bool sections = std::any_of(list.cuts.begin(), list.cuts.end(), [](const CutFill& cut) {
    return cut.kind == CutFill::Kind::Section;
  });
  if (sections && !section_)
    section_.reset(new SectionFill{
        {{"cut.vert"}, {"view.glsl", "crossing.glsl", "section_fill.geom"}, {"depth_only.frag"}},
        {{"cut.vert"},
         {"view.glsl", "crossing.glsl", "section_fill.geom"},
         {"clock.glsl", "growth.glsl", "light.glsl", "unit_tone.glsl", "unit_marks.glsl",
          "leaf.glsl", "surface.glsl", "hatch.glsl", "section_fill.frag"}}});
  const auto give = [&of](Program& program) {
    program.use();
    giveView(program, of.view);
    giveClock(program, of.frame);
  };
  give(line_);
  line_.set("uInkColour", encoded(kInk));
  line_.set("uAccentColour", encoded(kAccent));
  if (sections) {
    give(section_->count);
    give(section_->fill);
    giveSurface(section_->fill, of.frame, of.view, of.scene.coursing);
  }
  give(depth_);
  depth_.set("uSection", glm::vec4(0, 0, 0, -1));  // only time's cuts are counted with it
}

unsigned CutPass::draw(const Scene& scene, const GpuScene& gpu, const DrawList& list,
                       const Frame& frame, const ViewNumbers& view,
                       const std::vector<int>& materials) {
  if (list.cuts.empty()) return 0;
  const CutScene of{scene, gpu, frame, view, materials};
  begin(of, list);
  glDisable(GL_CULL_FACE);
  glStencilMask(1);
  // By material, what is filled in apart from what was there before the work.
  std::map<std::pair<int, bool>, std::vector<const CutFill*>> merging;
  std::vector<const CutFill*> single, growing;
  for (const CutFill& cut : list.cuts) {
    const ElementRange& range = scene.elements[cut.element];
    const bool section = cut.kind == CutFill::Kind::Section;
    if (seenThrough(range, frame) && !section) continue;
    const int material = materials[cut.element];
    if (!section)
      growing.push_back(&cut);
    else if (merges(material))
      merging[{material, range.soil && range.appears > 0}].push_back(&cut);
    else
      single.push_back(&cut);
  }
  unsigned calls = 0;
  // The outline goes under the fills of its own material, which leave its outer half: so there is
  // none between what is of one piece in the end.
  for (const auto& [piece, cuts] : merging) {
    for (const CutFill* cut : cuts) calls += outline(of, *cut, 2);
    for (const CutFill* cut : cuts) calls += fillSection(of, *cut);
  }
  const std::vector<Front> fronts = frontsOf(of, growing);
  for (const Front& front : fronts) calls += fillFront(of, front);
  for (const CutFill* cut : single) calls += fillSection(of, *cut);
  for (const Front& front : fronts) calls += outlineFront(of, front);
  for (const CutFill* cut : single) calls += outline(of, *cut, 1);
  return calls;
}

}  // namespace viewer
