// Which stages a job has, and in which order a builder takes them.
#pragma once

#include <vector>

#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

// The stages that have something to do, first to last: those in which something of the works (or a
// string line) appears or goes, and the few that matter without leaving anything behind. Storeys
// and lifts interleave: scaffold, corners, the run between them, lift by lift; lintels after the
// lift that ends at their bearing; the next floor when the storey's last lift is up.
std::vector<StageKey> stageOrder(const SettingOut& settingOut, const Works& works);

// For each of `stages`, the indices of those that must physically be finished before it. Work that
// the job has none of hands its own predecessors on.
std::vector<std::vector<size_t>> stagePredecessors(const std::vector<StageKey>& stages);

}  // namespace model
