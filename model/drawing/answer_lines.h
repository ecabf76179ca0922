// Lines on which the designer answers by hand. Private to this folder.
#pragma once

#include <string>
#include <vector>

#include "model/drawing/report_pages.h"

namespace model {

inline constexpr double kAnswerHeight = 27;  // mm

// Rules for the answer, and for name and date. Before the first each of `boxes` has a square to be
// ticked.
void drawAnswer(ReportFlow& flow, const TextWidth& widthOf,
                const std::vector<std::string>& boxes = {});

}  // namespace model
