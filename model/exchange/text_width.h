// How wide a text is seen, so that columns of a table line up in any script.
#pragma once

#include <cstddef>
#include <string_view>

namespace model {

// Columns in a terminal: 2 for East Asian wide characters, 0 for combining marks, 1 for others.
// Bytes that are not UTF-8 count 1 each.
size_t seenWidth(std::string_view text);

}  // namespace model
