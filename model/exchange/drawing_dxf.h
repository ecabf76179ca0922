// Drawings as DXF, in the plain text form of release 12, which every CAD library reads.
//
// A sheet with a plan is written full size: one unit is one real millimetre and a point of the plan
// has the coordinates of the job's drawing. What is laid round the plan (tables, border) stands
// where it stands on the paper, enlarged by the scale. Further sheets stand to the right of it.
#pragma once

#include <optional>
#include <string>

#include "model/drawing/sheet.h"
#include "model/problems.h"

namespace model {

// The whole file in memory; the same drawing gives the same bytes. Characters beyond ASCII are
// written as the form has them (\U+0416); those beyond the sixteen bits of that as U+FFFD.
std::string dxfBytes(const Drawing& drawing);

// dxfBytes, saved atomically. Returns the problem, or nothing.
std::optional<Problem> writeDxf(const Drawing& drawing, const std::string& path);

}  // namespace model
