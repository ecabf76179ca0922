// The tables of a parsed file into a Job.
#pragma once

#include <toml++/toml.h>

#include <set>
#include <string>

#include "model/job/read_values.h"

namespace model {

// What could not be read, by path up to the first key: "walls", "opening[2]". Checks on meaning
// keep off these, so that one slip is one message.
using BrokenParts = std::set<std::string>;

// Reads every known key of `root` into `job`; unknown keys, wrong types, values out of range and
// missing keys become problems of `context`, whose places are filled in. Without `whole` some of
// the file was left out, and nothing is said about missing keys.
void readTables(const toml::table& root, bool whole, Job& job, ReadContext& context,
                BrokenParts& broken);

}  // namespace model
