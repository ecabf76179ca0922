// What the job says about stages, held against the stages it really has.
#pragma once

#include "model/job/read_job.h"
#include "model/programme/programme.h"

namespace model {

// The programme's faults as problems of the file. Positions are looked up in `places`, which may be
// empty.
Problems checkProgramme(const Programme& programme, const std::string& file,
                        const KeyPlaces& places);

}  // namespace model
