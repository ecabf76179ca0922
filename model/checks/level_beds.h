// Whether ties can lie level from leaf to leaf.
#pragma once

#include <string>
#include <vector>

#include "model/works/element.h"

namespace model {

// A bed of the inner leaf that no bed of the outer one is level with, so that no tie goes there.
struct UnevenBed {
  double level = 0;                // top of the inner leaf's course
  double last = 0;                 // of the highest of several that follow one another, as much off
  double off = 0;                  // of the nearest bed of the outer leaf; + when that is higher
  std::vector<std::string> walls;  // where, in their order
};

// Between the damp course and the heads of the leaves, lowest first.
std::vector<UnevenBed> unevenBeds(const Works& works, double dampCourse);

// "the block bed at +2.100 (walls A-B and B-C) is 15 under the nearest brick bed".
std::string unevenBedText(const UnevenBed& bed);

}  // namespace model
