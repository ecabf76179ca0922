// Jobs for the tests of the roof: plain ones, and plans at random with hips and gables.
#pragma once

#include <string>
#include <vector>

#include "model/settingout/setting_out.h"
#include "model/works/element.h"
#include "tests/support/random_plans.h"

namespace model::test {

struct RoofedJob {
  Job job;
  SettingOut settingOut;
  Works works;  // plates, rafters, covering, and both leaves of the walls
};

RoofedJob roofed(Job job);
// All hips but the walls named. Throws when the roof is refused.
RoofedJob roofed(const Outline& outline, double pitch = 40,
                 const std::vector<std::string>& gables = {}, double spacing = 0.4);

// Plans of wings in line, some turned, some skewed, with gables where they can be.
std::vector<RoofedJob> roofedAtRandom(unsigned seed, int count);

std::vector<const Element*> ofKind(const Works& works, ElementKind kind);

}  // namespace model::test
