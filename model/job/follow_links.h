// Where a path really ends.
#pragma once

#include <filesystem>
#include <optional>

namespace model {

// Links are followed, so that a file put in place leaves the link and changes its target, which
// need not exist. Nothing for links that go in a circle.
std::optional<std::filesystem::path> followLinks(std::filesystem::path path);

}  // namespace model
