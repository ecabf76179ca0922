// Which parts of the buffers one frame draws. No OpenGL.
#pragma once

#include <cstdint>
#include <vector>

#include <glm/mat4x4.hpp>
#include <glm/vec4.hpp>

#include "viewer/frame.h"
#include "viewer/scene.h"

namespace viewer {

// Neighbouring pieces of an index or edge buffer, joined where they touch.
struct Pieces {
  std::vector<std::uint32_t> first, count;

  // A piece that begins up to `gap` after the last one is joined to it, with what lies between.
  void add(std::uint32_t from, std::uint32_t size, std::uint32_t gap = 0);
  void clear() { first.clear(), count.clear(); }
  bool empty() const { return first.empty(); }
  std::uint64_t total() const;
  bool operator==(const Pieces&) const = default;
};

// A face that time or the section has cut open and that is closed with a flat fill.
struct CutFill {
  enum class Kind { Placed, Removed, Section };
  Kind kind = Kind::Section;
  std::uint32_t element = 0;
  glm::vec4 plane{0};  // outward normal of the fill, unit; dot(plane, (p, 1)) > 0 is gone
};

// The plane at which a thing that grows or goes stops, when that has got to `front` along its way.
glm::vec4 frontPlane(const Growth& growth, CutFill::Kind kind, float front);

// Where masonry is near enough to be drawn unit by unit: the eye and the size of a pixel as in
// shaders/view.glsl, and what of the world is seen. By default nowhere.
struct NearView {
  glm::mat4 viewProjection{1};
  glm::vec4 eye{0, 0, 0, 1};
  float pixel = 0;  // 0: nothing is near
};

struct DrawList {
  Pieces still;            // of Scene::indices: wholly there, so that no clock is asked
  Pieces seen;             // of still: without what is drawn unit by unit
  Pieces moving;           // growing, going or cut by the section
  Pieces seeThrough;       // of Scene::indices: what is seen through
  Pieces glass;            // the same: laid over everything else, throws no shadow
  Pieces sky;              // still ones that are large enough to darken a corner
  Pieces edges;            // of Scene::edges
  Pieces seeThroughEdges;  // the same split
  Pieces comingEdges;      // of what the stage and the next one still bring
  Pieces goneEdges;        // of what the stage has taken away, or is taking
  int goneSince = 0;       // that stage
  // Of Scene::units and Scene::raked: what is being laid or is near and cut by the section; what
  // else is near, which throws its shadow by its faces.
  // Between pieces may be some that are not laid yet; their own clock hides them.
  Pieces laying, layingRaked, units, unitsRaked;
  std::uint64_t laid = 0;  // units of all four that there are
  std::vector<CutFill> cuts;

 private:
  friend void listFor(const Scene&, const Frame&, DrawList&, const NearView&);
  std::vector<std::uint8_t> unitwise_;  // by element, whether it is drawn unit by unit
};

// Fills `list` from scratch, keeping its memory.
void listFor(const Scene& scene, const Frame& frame, DrawList& list, const NearView& view = {});

// True when it comes or goes in that stage of the programme.
bool ofStage(const ElementRange& range, int stage);

// True when the frame draws it as if it were glass.
bool seenThrough(const ElementRange& range, const Frame& frame);

// True when the element has something standing at that time.
bool standsAt(const ElementRange& range, double time);

}  // namespace viewer
