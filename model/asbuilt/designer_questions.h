// What the designer is asked: the job's own questions, and what follows from readings that are out.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/as_built.h"

namespace model {

struct DesignerQuestion {
  std::string about;  // "Top of concrete, corner E", "Top of concrete"
  std::string text;
  bool ofJob = false;  // asked in the job file, in its own words
  // Into AsBuilt::deviations: of readings that are out, the one most off.
  std::optional<size_t> deviation = std::nullopt;
};

// The job's in its order; then one for each kind of target in each set with readings that are out
// and count, unless the job asks about that very reading; then which answer is built where rafters
// change. Those that follow say what was read and allowed, and ask: nothing is judged.
std::vector<DesignerQuestion> designerQuestions(const Job& job, const AsBuilt& built);

}  // namespace model
