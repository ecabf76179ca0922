#include "viewer/scene_units.h"

#include <algorithm>
#include <array>

#include "viewer/leaf_meetings.h"
#include "viewer/leaf_table.h"

namespace viewer {

namespace {

std::int32_t signedOf(std::uint32_t bits) { return static_cast<std::int32_t>(bits); }

constexpr std::size_t kDepths = 8;  // that a leaf's units may have: see leaf_table.h

// The units laid last in a course, of each depth: beside a thick wall's headers lie stretchers
// before and behind.
class LastLaid {
 public:
  // Where mortar lies between the unit and one laid before it.
  std::uint32_t jointsOf(const model::MasonryUnit& u) {
    if (used_ > 0 && course_ != u.z0) {
      last_.fill(nullptr);
      used_ = 0;
    }
    course_ = u.z0;
    std::uint32_t joints = 0;
    for (std::size_t depth = 0; depth < used_; ++depth) {
      const model::MasonryUnit* before = last_[depth];
      if (!before) continue;
      if (u.s0 >= before->s1 && u.s0 - before->s1 < kWidestJoint) joints |= kJointAtStart;
      if (before->s0 >= u.s1 && before->s0 - u.s1 < kWidestJoint) joints |= kJointAtEnd;
    }
    return joints;
  }
  void lay(const model::MasonryUnit& u, std::size_t depth) {
    last_[depth] = &u;
    used_ = std::max(used_, depth + 1);
  }

 private:
  std::array<const model::MasonryUnit*, kDepths> last_{};
  std::size_t used_ = 0;  // of them
  double course_ = 0;     // its underside
};

}  // namespace

void packUnits(const UnitsOf& of, std::span<const model::MasonryUnit> units,
               std::span<const std::uint8_t> depths, UnitInstance* out) {
  const float span = of.to - of.from;
  LastLaid laid;
  for (std::size_t i = 0; i < units.size(); ++i) {
    const model::MasonryUnit& u = units[i];
    const std::int32_t s0 = tenths(u.s0), z0 = tenths(u.z0);
    const auto station = static_cast<std::uint32_t>(s0 - of.s);
    const auto level = static_cast<std::uint32_t>(z0 - of.z);
    const auto length = static_cast<std::uint32_t>(std::min(tenths(u.s1) - s0, 0x3fff));
    const auto height = static_cast<std::uint32_t>(std::min(tenths(u.z1) - z0, 0xfff));
    std::uint32_t what = of.element | static_cast<std::uint32_t>(u.piece) << kPieceShift |
                         static_cast<std::uint32_t>(depths[i]) << kDepthShift;
    what |= u.mitredStart ? kMitredStart : 0;
    what |= u.mitredEnd ? kMitredEnd : 0;
    what |= laid.jointsOf(u);
    laid.lay(u, depths[i]);
    out[i] = {(station & 0xfffffu) | length << 20,
              (level & 0x3ffffu) | height << 18 | (length >> 12) << 30, of.from + span * u.when,
              what};
  }
}

void addUnits(const model::Works& works, Scene& scene) {
  if (works.units.empty()) return;
  LeafTable table = buildLeafTable(works);
  scene.units.resize(works.units.size());
  scene.modelUnits.resize(works.units.size());
  std::vector<std::uint32_t> placeOf(works.units.size());
  std::uint32_t next = 0;
  for (const std::uint32_t e : scene.order) {
    const model::Element& element = works.elements[e];
    ElementRange& range = scene.elements[e];
    if (element.unitCount == 0) continue;
    range.leaf = table.leaves[element.frame];
    range.firstUnit = next;
    range.unitCount = static_cast<std::uint32_t>(element.unitCount);
    const glm::uvec4* header = &table.texels[range.leaf];
    packUnits({e, signedOf(header[1].x), signedOf(header[0].x), range.placed.from, range.placed.to},
              {works.units.data() + element.firstUnit, element.unitCount},
              {table.depths.data() + element.firstUnit, element.unitCount}, &scene.units[next]);
    for (std::size_t i = 0; i < element.unitCount; ++i) {
      placeOf[element.firstUnit + i] = next + static_cast<std::uint32_t>(i);
      scene.modelUnits[next + i] = static_cast<std::uint32_t>(element.firstUnit + i);
    }
    next += range.unitCount;
  }
  scene.units.resize(next);
  scene.modelUnits.resize(next);
  for (const auto& [unit, what] : table.joints) scene.units[placeOf[unit]].what |= what;
  for (const std::uint32_t e : scene.order) {
    ElementRange& range = scene.elements[e];
    range.firstRaked = static_cast<std::uint32_t>(scene.raked.size());
    for (std::uint32_t i = range.firstUnit; i < range.firstUnit + range.unitCount; ++i) {
      const model::MasonryUnit& unit = works.units[scene.modelUnits[i]];
      if (unit.piece == model::Piece::Raked)
        scene.raked.push_back({scene.units[i], unit.rake0, unit.rake1});
    }
    range.rakedCount = static_cast<std::uint32_t>(scene.raked.size()) - range.firstRaked;
    const auto [low, high] = std::equal_range(
        table.neighbours.begin(), table.neighbours.end(), std::array<std::uint32_t, 2>{e, 0},
        [](const auto& a, const auto& b) { return a[0] < b[0]; });
    range.firstNeighbour = static_cast<std::uint32_t>(low - table.neighbours.begin());
    range.neighbourCount = static_cast<std::uint32_t>(high - low);
  }
  scene.neighbours.reserve(table.neighbours.size());
  for (const auto& [element, neighbour] : table.neighbours) scene.neighbours.push_back(neighbour);
  scene.leaves = std::move(table.texels);
}

}  // namespace viewer
