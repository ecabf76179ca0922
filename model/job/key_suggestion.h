// What to say of a key or section that a job file does not have.
#pragma once

#include <string>
#include <vector>

#include "model/job/key_table.h"

namespace model {

// The keys of a section and the sections directly inside it; "" is the top of the file.
std::vector<std::string> keysAndSectionsIn(const std::string& path);

// "[walls]" or "[[opening]]".
std::string headingOf(const TableSpec& table);

// What was most likely meant by `name` in the section, where it belongs, or what there is.
std::string keySuggestion(const std::string& path, const std::string& name);

}  // namespace model
