// A laid leaf shared out among the parts that it is built in, each with its own units.
#pragma once

#include <utility>
#include <vector>

#include "model/bond/laid_leaf.h"
#include "model/works/element.h"

namespace model {

// The units that a part holds: those with their middle in one of the rectangles of the leaf's
// elevation.
class UnitsHeld {
 public:
  explicit UnitsHeld(std::vector<Rect> rects) : rects_(std::move(rects)) {}
  bool operator()(const MasonryUnit& unit) const;
  // May there be any of a course between these levels?
  bool reaches(double bottom, double top) const;

 private:
  std::vector<Rect> rects_;
};
inline UnitsHeld unitsIn(std::vector<Rect> rects) { return UnitsHeld(std::move(rects)); }
// The whole length of a leaf, its corners too.
Rect betweenLevels(double bottom, double top);

// The works and the layer must outlive it.
class LeafParts {
 public:
  LeafParts(LaidLeaf laid, const WallLayer& layer, Works& works);

  const LaidLeaf& laid() const { return laid_; }
  // Leaves out of every part the units of one band that lie between two stations: gives them, in
  // order.
  std::vector<MasonryUnit> setAside(size_t band, double from, double to);
  // Adds the part with the units that it holds and no part before it, course after course, each
  // laid while the part grows past it. `forth`: along the wall, not back.
  void add(Element part, const UnitsHeld& holds, bool forth = true);
  // Units at a corner run on past the length of full thickness: so do these rectangles at the
  // leaf's start (or end, or both).
  std::vector<Rect> openEnded(std::vector<Rect> rects, bool atStart, bool both = false) const;

 private:
  void take(const Placement& placed, const UnitsHeld& holds, bool forth);

  LaidLeaf laid_;
  const WallLayer& layer_;
  Works& works_;
  std::vector<bool> taken_;  // units that a part has
  size_t frame_ = 0;
};

}  // namespace model
