// A stage told in words, as one foreman would tell another.
#pragma once

#include <cstddef>
#include <string>

#include "model/programme/programme.h"

namespace viewer {

// Name, dates, what is done, what is there at its end, caution, hold point, what it waits for and
// the job's own note; lines that have nothing to say are left out. Lines are broken at 80 letters.
std::string stageWords(const model::Programme& programme, std::size_t index);
// All of them, with a line between.
std::string allStageWords(const model::Programme& programme);

}  // namespace viewer
