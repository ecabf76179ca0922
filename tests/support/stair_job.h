// Two storeys and a stair between them that climbs along A-B, clear of every wall.
#pragma once

#include "model/job/job.h"

namespace test_support {

inline model::Job jobWithStair() {
  model::Job job;
  job.outline = {{0, 0}, {9, 0}, {9, 6}, {0, 6}};
  job.storeys = {{"Ground floor", 0}, {"First floor", 2.7}};
  model::Stair stair;
  stair.name = "Main stair";
  stair.foot = {2, 3};
  stair.up = "A-B";
  stair.width = 0.860;
  stair.risers = 14;
  stair.going = 0.235;
  job.stairs = {stair};
  return job;
}

}  // namespace test_support
