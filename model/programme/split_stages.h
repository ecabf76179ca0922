// Stages that the job has done wall by wall.
#pragma once

#include "model/programme/programme.h"

namespace model {

// Gives the walls that ProgrammeInput::splits names a part of their stage of their own: what is
// placed, or taken away, for them in it has StageKey::part set to the number of the split, from 1.
// Does nothing for a split that cannot be; deriveProgramme() names those.
void splitStages(const Job& job, const SettingOut& settingOut, Works& works);

// Why a kind of stage cannot be split by walls; null when it can.
const char* whyNotSplit(StageKind kind);

// Faults of the job's splits, held against works that have been split.
void checkSplits(const ProgrammeInput& input, const Works& works, Programme& programme);

}  // namespace model
