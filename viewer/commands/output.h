// Writing results where the user asked for them.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "model/problems.h"
#include "viewer/commands/exit_code.h"

namespace viewer {

// To standard output; kProblems with a message when it cannot be written (a full disk).
int printOut(std::string_view text);

// Saved whole or not at all; kProblems with a message when it cannot be.
int saveOut(const std::string& path, std::string_view bytes);

// What to say when `out` is the job file itself, under whatever name; nothing when it is not.
std::optional<std::string> wouldReplaceJob(const std::string& job, const std::string& out);

// What to say when the name's ending promises another kind of file than is written; `what` begins
// the words "... is written as .png".
std::optional<std::string> otherEnding(const std::string& out, const std::string& ending,
                                       const std::string& what);

// The message for a wrong command line; returns kUsage.
int wrongUsage(const std::string& what);

}  // namespace viewer
