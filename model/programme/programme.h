// The stages of the job in the order a builder works, and the clock they define.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

struct Stage {
  StageKey key;
  std::string id;             // stable, for files and commands: "dig-cellar", "run-in-1-2"
  std::string name;           // plain: "Dig the cellar"
  std::string what;           // what is done
  std::string atEnd;          // what is there at its end
  std::string caution;        // empty when none is due
  std::string holdPoint;      // empty, or who looks at what before work goes on
  double days = 1;            // working days
  double waitDays = 0;        // after it, for curing
  std::string start, finish;  // ISO dates; empty when the job gives no start
  std::vector<size_t> after;  // indices of stages that must be finished
  std::string note;           // the job's own
};

struct Programme {
  std::vector<Stage> stages;

  std::optional<size_t> indexOf(const StageKey& key) const;
  // By id, number ("12", from 1), or name without regard to case; a unique beginning of a name is
  // enough. Nothing when none or several match.
  std::optional<size_t> find(const std::string& text) const;
};

// The clock: stage i (from 0) runs from i to i + 1. At time i + 1 stage i is complete and nothing
// of stage i + 1 has begun. Things that were there from the start have time -1.
double timeAt(const Programme& programme, const Placement& placement, const Vec3& p);
// A removal that never happens.
inline constexpr double kNever = 1e9;

// Only stages that have something to do in this job. Names, days and notes from job.programme.
Programme deriveProgramme(const Job& job, const SettingOut& settingOut, const Works& works);

// Indices of the elements that stand at time t: placed (begun) and not wholly removed.
std::vector<size_t> standingAt(const Programme& programme, const Works& works, double t);

}  // namespace model
