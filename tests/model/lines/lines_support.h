// Jobs for tests of lines, and the same site moved.
#pragma once

#include <cmath>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "model/lines/set_out_lines.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace lines_test {

using namespace model;

// A plain rectangle on a big level site.
inline Job rectangle(double x, double y) {
  Job job;
  job.outline = {{0, 0}, {x, 0}, {x, y}, {0, y}};
  job.site.boundary = {{-20, -20}, {x + 20, -20}, {x + 20, y + 20}, {-20, y + 20}};
  return job;
}

struct Derived {
  Job job;
  SettingOut out;
  SetOutLines lines;

  explicit Derived(Job from)
      : job(std::move(from)), out(deriveSettingOut(job)), lines(deriveLines(job, out)) {}
};

// A turn about the origin, then a move.
struct Motion {
  double turn = 0;  // radians
  Vec2 move{0, 0};

  Vec2 operator()(const Vec2& p) const {
    const double c = std::cos(turn), s = std::sin(turn);
    return Vec2{p.x * c - p.y * s, p.x * s + p.y * c} + move;
  }
};

// Everything on the site, its boundary given outright: one that is left open is square to the axes.
inline Job moved(Job job, const Motion& motion) {
  job.site.boundary = siteBoundary(job);
  for (Outline* outline : {&job.outline, &job.site.boundary}) {
    for (Vec2& p : *outline) p = motion(p);
  }
  if (job.cellar) {
    for (Vec2& p : job.cellar->outline) p = motion(p);
  }
  for (StandingBuilding& building : job.site.buildings) {
    for (Vec2& p : building.outline) p = motion(p);
  }
  for (SpotLevel& spot : job.site.spots) spot.at = motion(spot.at);
  if (job.site.benchMark) job.site.benchMark->at = motion(job.site.benchMark->at);
  for (BenchMark& mark : job.site.marks) mark.at = motion(mark.at);
  return job;
}

}  // namespace lines_test
