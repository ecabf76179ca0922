#include "model/checks/level_beds.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "model/checks/parts.h"
#include "model/level_text.h"

namespace model {
namespace {

// A tie takes up so much: common practice, no source; it must never fall inwards.
constexpr double kLevelEnough = 0.005;
constexpr long kTenths = 10000;  // of a millimetre, in a metre

// Tops of the courses of each leaf of a wall, in tenths of a millimetre.
struct Beds {
  std::set<long> outer, inner;
};

}  // namespace

std::vector<UnevenBed> unevenBeds(const Works& works, double dampCourse) {
  std::vector<std::string> order;
  std::map<std::string, Beds> walls;
  for (const Element& leaf : works.elements) {
    if (leaf.unitCount == 0 || leaf.wall.empty()) continue;
    const bool outer = leaf.kind == ElementKind::OuterLeaf;
    if (!outer && leaf.kind != ElementKind::InnerLeaf) continue;
    const auto [wall, isNew] = walls.try_emplace(leaf.wall);
    if (isNew) order.push_back(leaf.wall);
    std::set<long>& beds = outer ? wall->second.outer : wall->second.inner;
    long last = -1;
    for (size_t i = leaf.firstUnit; i < leaf.firstUnit + leaf.unitCount; ++i) {
      const MasonryUnit& unit = works.units[i];
      if (unit.z1 < dampCourse || unit.piece == Piece::Raked) continue;
      const long top = std::lround(unit.z1 * kTenths);
      if (top != last) beds.insert(top);
      last = top;
    }
  }
  std::map<long, UnevenBed> found;
  for (const std::string& name : order) {
    const Beds& beds = walls[name];
    if (beds.outer.empty() || beds.inner.empty()) continue;
    const long highest = std::min(*beds.outer.rbegin(), *beds.inner.rbegin());
    for (const long bed : beds.inner) {
      if (bed >= highest) break;
      const auto over = beds.outer.lower_bound(bed);
      long off = *over - bed;
      if (over != beds.outer.begin() && bed - *std::prev(over) < off) off = *std::prev(over) - bed;
      if (std::labs(off) <= kLevelEnough * kTenths) continue;
      UnevenBed& uneven = found[bed];
      uneven.level = double(bed) / kTenths;
      if (std::fabs(double(off)) > std::fabs(uneven.off * kTenths))
        uneven.off = double(off) / kTenths;
      uneven.walls.push_back(name);
    }
  }
  std::vector<UnevenBed> all;
  for (auto& [level, bed] : found) {
    bed.last = bed.level;
    const bool goesOn = !all.empty() && all.back().walls == bed.walls &&
                        std::fabs(all.back().off - bed.off) < 1.5 / kTenths;
    if (goesOn)
      all.back().last = bed.level;
    else
      all.push_back(std::move(bed));
  }
  return all;
}

std::string unevenBedText(const UnevenBed& bed) {
  const bool several = bed.last > bed.level;
  return (several ? "the block beds from " + levelText(bed.level) + " to " + levelText(bed.last)
                  : "the block bed at " + levelText(bed.level)) +
         " (" + (bed.walls.size() == 1 ? "wall " : "walls ") + listed(bed.walls) +
         (several ? ") are " : ") is ") + lengthText(std::fabs(bed.off)) +
         (bed.off > 0 ? " under" : " over") + " the nearest brick bed";
}

}  // namespace model
