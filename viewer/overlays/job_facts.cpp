#include "viewer/overlays/job_facts.h"

#include <algorithm>
#include <cmath>

#include "model/asbuilt/as_built_rod.h"
#include "model/programme/level_made.h"

namespace viewer {
namespace {

// The scheduled level that a rod stands on.
bool isFoot(const model::ScheduledLevel& line, const model::GaugeRod& rod) {
  constexpr double kSame = 5e-4;
  const bool top = line.key.rfind("top-of-concrete", 0) == 0 || line.key == "cellar-wall-top";
  return top && std::abs(line.level - rod.foot) < kSame;
}

std::vector<CornerRod> rodsOf(const model::Model& model, const model::AsBuilt& asBuilt,
                              const std::vector<double>& times) {
  const auto& schedule = model.settingOut.schedule;
  std::vector<CornerRod> rods;
  for (model::GaugeRod& rod : model::deriveGaugeRods(model.job, model.settingOut)) {
    const auto foot =
        std::find_if(schedule.begin(), schedule.end(),
                     [&](const model::ScheduledLevel& line) { return isFoot(line, rod); });
    const double poured = foot == schedule.end() ? 0 : times[size_t(foot - schedule.begin())];
    rods.push_back({std::move(rod), std::nullopt, poured});
  }
  for (model::GaugeRod& rod : model::deriveAsBuiltRods(model.job, model.settingOut, asBuilt))
    rods[rod.corner].asBuilt = std::move(rod);
  return rods;
}

}  // namespace

JobFacts deriveJobFacts(const model::Model& model, const model::AsBuilt& asBuilt) {
  JobFacts facts;
  facts.levelTimes = model::timesOfLevels(model.settingOut, model.works, model.programme);
  facts.offsets = model::deriveOffsets(model.job, model.settingOut);
  facts.rods = rodsOf(model, asBuilt, facts.levelTimes);
  const auto heat = [&](const std::optional<size_t>& set) {
    return heatCells(model.job, model.settingOut, facts.levelTimes, asBuilt, set);
  };
  facts.heat = heat(std::nullopt);
  for (size_t set = 0; set < model.job.readings.size(); ++set) facts.sets.push_back(heat(set));
  facts.courseLines = model::courseLines(model.works, model.programme);
  facts.courseSteps = model::courseSteps(model.works, model.programme);
  facts.loading = model::deriveLoading(model.job, model.settingOut, model.works, model.programme);
  return facts;
}

}  // namespace viewer
