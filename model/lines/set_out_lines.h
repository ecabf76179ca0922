// What to set out: boards and their marks, lines against the site, checks by tape, limits, pegs.
//
// Worked out when somebody asks for it, not by buildModel. Everything here is read off the job and
// its SettingOut; no height or offset is worked out again.
#pragma once

#include <vector>

#include "model/job/job.h"
#include "model/lines/boards.h"
#include "model/lines/limits.h"
#include "model/lines/pegs.h"
#include "model/lines/tape.h"
#include "model/lines/wall_runs.h"
#include "model/settingout/setting_out.h"

namespace model {

struct SetOutLines {
  BoardPlan boards;
  std::vector<SetOutLine> lines;  // by wall
  std::vector<ParallelGroup> parallels;
  TapeChecks tape;
  std::vector<LimitTest> limits;
  std::vector<SetOutPeg> pegs;
};

// A pure function of a job free of errors and its setting-out.
SetOutLines deriveLines(const Job& job, const SettingOut& settingOut);

}  // namespace model
