// Writing a changed job back without disturbing the user's text.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "model/job/job.h"
#include "model/problems.h"

namespace model {

// Returns `text` with the values that differ between what it says and `job` replaced, and keys that
// are missing added to their tables; comments, order, spacing and units style elsewhere stay.
// `text` must read without error. readJob(writeJob(text, job)) gives `job`.
std::string writeJob(std::string_view text, const Job& job);

// A fresh file with every section, commented: what `stringcourse new` writes.
std::string starterJob();

// The reference of every key as Markdown: unit, default, range, meaning, example. Made from the
// same table that the reader works from.
std::string keyReference();

// Writes to a temporary file beside `path`, flushes it to the disk and renames it over `path`. On
// failure the old file is untouched; returns the problem, or nothing.
std::optional<Problem> saveAtomically(const std::string& path, std::string_view bytes);
// The same for a file that lies in memory in parts, one after the other.
std::optional<Problem> saveAtomically(const std::string& path,
                                      std::span<const std::string_view> parts);

}  // namespace model
