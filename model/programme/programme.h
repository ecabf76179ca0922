// The stages of the job in the order a builder works, and the clock they define.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/problems.h"
#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

// Work of one key inside a stage: it runs from `from` to `to` of the stage's own clock.
struct StageShare {
  StageKey key;
  double from = 0, to = 1;
};

struct Stage {
  StageKey key;
  std::string id;             // stable, for files and commands: "dig-cellar", "run-in-ground-2"
  std::string name;           // plain: "Dig the cellar"
  std::string what;           // what is done
  std::string atEnd;          // what is there at its end
  std::string caution;        // empty when none is due
  std::string holdPoint;      // empty, or who looks at what before work goes on
  double days = 1;            // working days
  double waitDays = 0;        // after it, days of the calendar, for curing; as the month has it
  std::string start, finish;  // ISO dates, early or as they were; empty when no start is given
  std::vector<size_t> after;  // indices of stages that must be finished
  std::string note;           // the job's own
  std::string crew;           // who does it
  std::string lateStart, lateFinish;  // ISO dates that hold up nothing
  double floatDays = 0;               // working days that it may slip without moving the end
  double freeDays = 0;                // the same without moving any other stage
  bool critical = false;
  double percent = 0;              // done, of 100
  bool started = false;            // really; `start` is that day
  std::string notice;              // what the client will notice
  std::string decision;            // what the client must have decided by its start
  double from = 0, to = 0;         // early, in working days from the first morning on site
  std::vector<StageShare> shares;  // its own key and those of the stages done with it
  std::optional<size_t> view;      // the job's own: into ProgrammeInput::views
};

struct DatedDelivery {
  std::string what;
  size_t stage = 0;
  std::string date;  // ISO; empty when no start is given
};

// What the job asks of its programme and cannot have.
struct ProgrammeFault {
  std::string key;  // "programme.stage[2].follows"
  Severity severity = Severity::Error;
  std::string what, instead;
};

struct Programme {
  std::vector<Stage> stages;
  std::vector<DatedDelivery> deliveries;  // by date
  std::vector<ProgrammeFault> faults;     // what they ask for is left out
  double workingDays = 0;                 // from the first morning to the end
  std::string asAt;                       // newest date of what was really done; may be empty

  // The stage that has the work of a key.
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

// Only stages that have something to do in this job, in the order in which they are taken. Names,
// days, order and all else that job.programme says are in it, but for what it cannot have: see
// Programme::faults. Dates by the critical path method over what must be finished before what, one
// crew doing one stage after another, and the job's own links.
Programme deriveProgramme(const Job& job, const SettingOut& settingOut, const Works& works);

// The same before the job changes anything: its stages in their usual order, without dates.
Programme usualProgramme(const Job& job, const SettingOut& settingOut, const Works& works);

// Indices of the elements that stand at time t: placed (begun) and not wholly removed.
std::vector<size_t> standingAt(const Programme& programme, const Works& works, double t);

}  // namespace model
