// Names that a word begins to spell.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace viewer {

// Those that begin so, then those that have all its words somewhere, each group in its own order;
// whatever the case. All of them for an empty text.
std::vector<std::string> namesLike(const std::vector<std::string>& names, const std::string& text);

// The name that is meant: the same but for its case, or the only one that begins so.
std::optional<std::string> nameMeant(const std::vector<std::string>& names,
                                     const std::string& text);

}  // namespace viewer
