// Small text files from the disk.
#pragma once

#include <optional>
#include <string>

#include "model/problems.h"

namespace model {

// The bytes of a file, but not more than one past the most that any reader takes, whatever the file
// is (even an endless one). Nothing, and why in `fault`, when it cannot be read.
std::optional<std::string> readTextFile(const std::string& path, std::string& fault);

// The problem that a file cannot be read.
Problem unreadableFile(const std::string& path, const std::string& fault);

}  // namespace model
