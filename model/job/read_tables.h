// The tables of a parsed file into a Job.
#pragma once

#include <toml++/toml.h>

#include <string>
#include <vector>

#include "model/job/known.h"
#include "model/job/parse_toml.h"
#include "model/job/read_values.h"

namespace model {

// Reads every known key of the file into `job`; unknown keys, wrong types, values out of range and
// missing keys become problems of `context`, whose places are filled in. What was left out of the
// file is not missing, but as broken as what cannot be read.
void readTables(const ParsedToml& parsed, Job& job, ReadContext& context, BrokenParts& broken);

}  // namespace model
