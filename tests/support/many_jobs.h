// The demo jobs and many drawn ones, for claims that hold of every job.
#pragma once

#include <gtest/gtest.h>

#include "model/model.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace test_support {

// Calls the check with every demo job's model and with those of forty drawn jobs.
template <typename Check>
void forManyJobs(const Check& check) {
  constexpr unsigned kDrawnJobs = 40;
  for (const std::string& name : demoNames()) {
    SCOPED_TRACE(name);
    check(model::buildModel(demoJob(name)));
  }
  for (unsigned seed = 1; seed <= kDrawnJobs; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    check(model::buildModel(seededJob(seed)));
  }
}

}  // namespace test_support
