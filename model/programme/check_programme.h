// What the job says about stages, held against the stages it really has.
#pragma once

#include "model/job/read_job.h"
#include "model/programme/programme.h"

namespace model {

// Warnings: a stage named in the job that this programme does not have (with the nearest it has),
// or named twice. Positions are looked up in `places`, which may be empty.
Problems checkProgramme(const Job& job, const Programme& programme, const std::string& file,
                        const KeyPlaces& places);

}  // namespace model
