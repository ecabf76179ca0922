// Drawings as PDF: lines that are lines, text that can be searched, a page for each sheet.
#pragma once

#include <optional>
#include <string>

#include "model/drawing/sheet.h"
#include "model/problems.h"

namespace model {

// The whole file in memory; pages of the sheets' sizes, so that printed at 100 % a scale is true.
// The same drawing gives the same bytes: no date of today is in it. Throws std::runtime_error when
// Cairo cannot make it.
std::string pdfBytes(const Drawing& drawing);

// pdfBytes, saved atomically. Returns the problem, or nothing.
std::optional<Problem> writePdf(const Drawing& drawing, const std::string& path);

}  // namespace model
