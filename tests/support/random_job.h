// Varied jobs without errors, for property tests.
#pragma once

#include <rapidcheck.h>

#include "model/job/job.h"

namespace test_support {

// The same job for the same seed, on every machine. Over many seeds: rectangles, L, T, U, cross
// and Z plans, corners in line, askew corners, irregular polygons, turned plans, either way round;
// with and without cellar, foundation steps, gables, upper storeys, openings, standing buildings,
// sloping ground; every kind of foundation and ground floor. validateJob finds no error in any.
model::Job seededJob(unsigned seed);

// seededJob over seeds that RapidCheck draws; it shrinks towards small seeds, which are the plainer
// jobs (seed 0 is a rectangle and nothing else).
inline rc::Gen<model::Job> randomJob() {
  return rc::gen::map(rc::gen::inRange<unsigned>(0, 100000), seededJob);
}

}  // namespace test_support
