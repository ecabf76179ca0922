// What to load out where, lift by lift, as a table.
#pragma once

#include "model/exchange/table_part.h"

namespace model {

// Key "loading".
TablePart loadingPart(const Model& model);

// Said wherever loads are told. Never how much a scaffold bears: that is for its designer.
inline constexpr const char* kLoadingCaution =
    "Never overload a scaffold: only what its hand-over certificate allows, spread along the run "
    "and over the standards, and nothing on a loading bay that was not made as one; ask the "
    "scaffolder before packs go up";

}  // namespace model
