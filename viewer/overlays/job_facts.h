// What overlays tell of a job that takes working out: once for each job, not for each frame.
#pragma once

#include <optional>
#include <vector>

#include "model/asbuilt/as_built.h"
#include "model/model.h"
#include "model/programme/course_times.h"
#include "model/settingout/gauge_rod.h"
#include "model/settingout/offsets.h"
#include "model/takeoff/loading.h"
#include "viewer/overlays/heat_map.h"

namespace viewer {

// The gauge rod of a corner, and the one that its concrete as read asks for.
struct CornerRod {
  model::GaugeRod drawn;
  std::optional<model::GaugeRod> asBuilt;  // from deriveAsBuiltRods
  double poured = 0;                       // when what it stands on is there, programme's clock
};

struct JobFacts {
  std::vector<double> levelTimes;           // of the schedule's lines, from timesOfLevels
  std::vector<model::SiteOffset> offsets;   // from deriveOffsets
  std::vector<CornerRod> rods;              // of every corner, in their order
  std::vector<HeatCell> heat;               // of the latest readings
  std::vector<std::vector<HeatCell>> sets;  // the same of each of Job::readings alone

  std::vector<model::CourseLine> courseLines;  // from courseLines
  std::vector<model::CourseStep> courseSteps;  // from courseSteps
  std::vector<model::LiftLoad> loading;        // from deriveLoading, for the sheet of quantities

  const std::vector<HeatCell>& heatOf(const std::optional<size_t>& set) const {
    return set && *set < sets.size() ? sets[*set] : heat;
  }
};

// `asBuilt` is deriveAsBuilt() of this job.
JobFacts deriveJobFacts(const model::Model& model, const model::AsBuilt& asBuilt);

}  // namespace viewer
