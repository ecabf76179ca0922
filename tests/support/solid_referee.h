// Independent checks on solids: volume and overlap by slicing them level, not by the formulas that
// the model itself uses.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "model/geometry/solid.h"

namespace model::test {

// Cubic metres, by summing level slices between every two heights at which the solid has points:
// there the area of the slice runs as a square polynomial, so two slices give it exactly.
double slicedVolume(const Solid& solid);

// The area of the level slice, square metres.
double sliceArea(const Solid& solid, double z);

// About how much of `a` and `b` stands in the same place, cubic metres. Zero for solids that only
// touch: a common skin thinner than 0.05 mm does not count. Looks at level slices at several
// heights of their common range, so that it finds anything 1 mm thick.
double overlap(const Solid& a, const Solid& b);

struct Overlap {
  size_t a, b;    // indices into the list
  double volume;  // cubic metres
};

// Every pair of the list that overlaps, found by sorting their bounds; null entries are left out.
std::vector<Overlap> overlaps(const std::vector<const Solid*>& solids);
// The same of the pairs for which `asked` says true.
std::vector<Overlap> overlaps(const std::vector<const Solid*>& solids,
                              const std::function<bool(size_t, size_t)>& asked);

}  // namespace model::test
