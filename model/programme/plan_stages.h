// What the job says of its stages, brought upon the usual ones; private to this folder.
#pragma once

#include <functional>
#include <vector>

#include "model/job/job.h"
#include "model/programme/network.h"
#include "model/programme/physical_needs.h"
#include "model/programme/programme.h"

namespace model {

inline constexpr const char* kOwnCrew = "Own crew";
inline constexpr const char* kScaffolders = "Scaffolders";

// Stages of the job's own, each straight after the stage that it follows, with the words that are
// usual for none in particular.
void addOwnStages(const ProgrammeInput& input, Programme& programme);

// Days, crews, notes and what was really done; before any stage is moved.
// `daysAt(stage, perDay)`: the days that it takes at an output. Returns the names that stages are
// to have: given to them last, so that the job's other keys find them by what they were called
// before.
using StageNames = std::vector<std::pair<StageKey, std::string>>;
StageNames applyOverrides(const ProgrammeInput& input,
                          const std::function<double(const StageKey&, double)>& daysAt,
                          Programme& programme);

// Moves stages and makes one of several, as far as `needs` lets it; `needs` is asked once, and only
// when something is to be moved.
void applyOrder(const ProgrammeInput& input,
                const std::function<std::vector<PhysicalNeed>()>& needs, Programme& programme);

// Early and late dates, floats, what is critical, and the dates of deliveries.
void schedule(const ProgrammeInput& input, Programme& programme);

// Gives stages the views that the job keeps for them.
void applyViews(const ProgrammeInput& input, Programme& programme);

// The stage that a key of the job names; nothing, with a fault added, when there is none.
std::optional<size_t> stageNamed(Programme& programme, const std::string& name,
                                 const std::string& key);

}  // namespace model
