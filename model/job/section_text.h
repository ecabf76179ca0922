// New text for parts of a job that a file does not have yet.
#pragma once

#include <string>

#include "model/job/key_table.h"

namespace model {

// "width = 600" for each key of the table that must be there or is not at its default, joined by
// `separator`. `index` is which of a repeated table.
std::string keysText(const TableSpec& table, const Job& job, size_t index,
                     const std::string& separator);

// A whole section with its heading, lines ended with `newLine`.
std::string sectionText(const TableSpec& table, const Job& job, size_t index,
                        const std::string& newLine);

// A whole file of `job`, without comments.
std::string freshText(const Job& job);

}  // namespace model
