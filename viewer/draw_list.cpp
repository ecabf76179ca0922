#include "viewer/draw_list.h"

#include <algorithm>

#include <glm/geometric.hpp>
#include <glm/matrix.hpp>

namespace viewer {

namespace {

constexpr float kSkyThickness = 0.08f;  // metres

// How a box lies to a plane: -1 wholly on the kept side, +1 wholly cut away, 0 both.
int sideOf(const ElementRange& range, const glm::vec4& plane) {
  const glm::vec3 normal(plane);
  const float centre = glm::dot(normal, (range.low + range.high) * 0.5f) + plane.w;
  const float reach = glm::dot(glm::abs(normal), range.high - range.low) * 0.5f;
  if (centre - reach >= 0) return 1;
  return centre + reach <= 0 ? -1 : 0;
}

void addFront(const Growth& growth, CutFill::Kind kind, std::uint32_t element, double time,
              std::vector<CutFill>& cuts) {
  if (!growth.moves() || time <= growth.from || time >= growth.to) return;
  cuts.push_back({kind, element, frontPlane(growth, kind, growth.frontAt(time))});
}

// Some of it may be on the screen.
bool inView(const ElementRange& range, const glm::mat4& viewProjection) {
  const glm::mat4 rows = glm::transpose(viewProjection);
  for (const glm::vec4& plane : {rows[3] + rows[0], rows[3] - rows[0], rows[3] + rows[1],
                                 rows[3] - rows[1], rows[3] + rows[2]}) {
    const glm::vec3 normal(plane);
    const float centre = glm::dot(normal, (range.low + range.high) * 0.5f) + plane.w;
    if (centre + glm::dot(glm::abs(normal), range.high - range.low) * 0.5f < 0) return false;
  }
  return true;
}

// Metres that a pixel covers where the thing is nearest; 0 when nobody says.
float pixelAt(const ElementRange& range, const NearView& view) {
  if (view.eye.w == 0) return view.pixel;
  const glm::vec3 eye(view.eye);
  return glm::distance(glm::clamp(eye, range.low, range.high), eye) * view.pixel;
}

bool isNear(const ElementRange& range, const Frame& frame, const NearView& view) {
  if (view.pixel <= 0 || !inView(range, view.viewProjection)) return false;
  return pixelAt(range, view) < frame.unitPixel;
}

// From far off, what is made of parts much smaller than a pixel is left out, and of what is made of
// parts of a few pixels the lines, which would run into one another.
constexpr float kUnseen = 0.25f, kUnlined = 2.0f;  // pixels

bool isLaying(const ElementRange& range, double time) {
  return range.unitCount > 0 && range.appears <= time && time < range.complete &&
         range.placed.moves();
}

// Fills `unitwise` and says whether there is any.
bool findUnitwise(const Scene& scene, const Frame& frame, const NearView& view,
                  std::vector<std::uint8_t>& unitwise) {
  unitwise.assign(scene.elements.size(), 0);
  if (scene.units.empty()) return false;
  std::vector<std::uint32_t> found;
  for (const std::uint32_t i : scene.order) {
    const ElementRange& range = scene.elements[i];
    if (range.placed.from > frame.time) break;
    if (range.unitCount == 0 || !standsAt(range, frame.time)) continue;
    if (isLaying(range, frame.time) || isNear(range, frame, view)) found.push_back(i);
  }
  // Walls take turns at a corner: units of one beside the flat face of another would leave a gap.
  for (const std::uint32_t i : found) {
    const ElementRange& range = scene.elements[i];
    unitwise[i] = 1;
    for (std::uint32_t n = 0; n < range.neighbourCount; ++n)
      unitwise[scene.neighbours[range.firstNeighbour + n]] = 1;
  }
  return !found.empty();
}

// A call costs more than so many units that are sent for nothing.
constexpr std::uint32_t kSentForNothing = 400;

// The units of an element that have been laid; they come in that order. Returns how many.
std::uint64_t addUnits(const Scene& scene, const ElementRange& range, double time, Pieces& plain,
                       Pieces& raked) {
  const auto isLaid = [time](const UnitInstance& unit) {
    return static_cast<double>(unit.appears) <= time;
  };
  const auto first = scene.units.begin() + range.firstUnit;
  const auto laid = std::partition_point(first, first + range.unitCount, isLaid);
  plain.add(range.firstUnit, static_cast<std::uint32_t>(laid - first), kSentForNothing);
  const auto cut = scene.raked.begin() + range.firstRaked;
  const auto cutLaid = std::partition_point(
      cut, cut + range.rakedCount, [&](const RakedInstance& unit) { return isLaid(unit.unit); });
  raked.add(range.firstRaked, static_cast<std::uint32_t>(cutLaid - cut), kSentForNothing);
  return static_cast<std::uint64_t>(laid - first);
}

}  // namespace

glm::vec4 frontPlane(const Growth& growth, CutFill::Kind kind, float front) {
  const glm::vec4 plane = glm::vec4(growth.direction, -front) / glm::length(growth.direction);
  // What is placed stands behind its front, what is removed in front of it.
  return kind == CutFill::Kind::Removed ? -plane : plane;
}

void Pieces::add(std::uint32_t from, std::uint32_t size, std::uint32_t gap) {
  if (size == 0) return;
  if (!first.empty()) {
    const std::uint32_t end = first.back() + count.back();
    if (end <= from && from - end <= gap) {
      count.back() = from + size - first.back();
      return;
    }
  }
  first.push_back(from);
  count.push_back(size);
}

std::uint64_t Pieces::total() const {
  std::uint64_t sum = 0;
  for (const std::uint32_t n : count) sum += n;
  return sum;
}

bool ofStage(const ElementRange& range, int stage) {
  constexpr float kTiny = 1e-4f;  // of a stage
  const auto within = [&](float moment) {
    return moment >= float(stage) - kTiny && moment < float(stage) + 1 - kTiny;
  };
  return within(range.appears) || within(range.removed.from);
}

bool seenThrough(const ElementRange& range, const Frame& frame) {
  switch (frame.seeThrough) {
    case SeeThrough::Ground:
      return range.soil;
    case SeeThrough::Others:
      return !ofStage(range, frame.stage);
    case SeeThrough::Nothing:
      break;
  }
  return false;
}

bool standsAt(const ElementRange& range, double time) {
  return range.appears <= time && time < range.goes;
}

void listFor(const Scene& scene, const Frame& frame, DrawList& list, const NearView& view) {
  for (Pieces* p : {&list.still, &list.seen, &list.laying, &list.layingRaked, &list.units,
                    &list.unitsRaked, &list.moving, &list.sky, &list.seeThrough, &list.glass,
                    &list.edges, &list.seeThroughEdges, &list.comingEdges, &list.goneEdges})
    p->clear();
  list.cuts.clear();
  list.laid = 0;
  list.goneSince = frame.stage;
  const bool unitwise = findUnitwise(scene, frame, view, list.unitwise_);
  const double coming = frame.ghosts ? frame.stage + 2.0 : frame.time;
  for (const std::uint32_t i : scene.order) {
    const ElementRange& range = scene.elements[i];
    if (range.placed.from > frame.time && range.placed.from > coming) break;  // nor any after it
    if (range.profile && !frame.profiles) continue;
    if (range.appears > frame.time) {
      if (range.appears < coming) list.comingEdges.add(range.firstEdge, range.edgeCount);
      continue;
    }
    if (frame.ghosts && range.fades <= frame.time && range.goes > float(frame.stage))
      list.goneEdges.add(range.firstEdge, range.edgeCount);
    if (range.goes <= frame.time) continue;
    const int side = frame.section.on ? sideOf(range, frame.section.plane) : -1;
    if (side > 0) continue;
    const float pixel = pixelAt(range, view);
    if (range.grain < pixel * kUnseen) continue;
    const bool lined = range.grain >= pixel * kUnlined;
    const bool seeThrough = seenThrough(range, frame);
    const bool still = side < 0 && range.complete <= frame.time && frame.time < range.fades;
    const bool laying = isLaying(range, frame.time),
               byUnit = unitwise && list.unitwise_[i] && !seeThrough;
    // What the section cuts throws its shadow by its units too.
    if (laying || (byUnit && !still))
      list.laid += addUnits(scene, range, frame.time, list.laying, list.layingRaked);
    else if (byUnit)
      list.laid += addUnits(scene, range, frame.time, list.units, list.unitsRaked);
    if (still && !byUnit && !seeThrough && !range.glass)
      list.seen.add(range.firstIndex, range.indexCount);
    if (!laying && (still || !byUnit))
      (seeThrough    ? list.seeThrough
       : range.glass ? list.glass
       : still       ? list.still
                     : list.moving)
          .add(range.firstIndex, range.indexCount);
    if (still && !seeThrough && !range.glass && range.thickness > kSkyThickness)
      list.sky.add(range.firstIndex, range.indexCount);
    if (!laying && lined)
      (seeThrough ? list.seeThroughEdges : list.edges).add(range.firstEdge, range.edgeCount);
    if (!laying) addFront(range.placed, CutFill::Kind::Placed, i, frame.time, list.cuts);
    addFront(range.removed, CutFill::Kind::Removed, i, frame.time, list.cuts);
    if (side == 0) {
      const float length = glm::length(glm::vec3(frame.section.plane));
      list.cuts.push_back({CutFill::Kind::Section, i, frame.section.plane / length});
    }
  }
}

}  // namespace viewer
