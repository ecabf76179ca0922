// What the parts of the setting-out plan share. Private to this folder.
#pragma once

#include <string>

#include "model/drawing/dimension_line.h"
#include "model/drawing/setting_out_plan.h"

namespace model {

inline const Pen kMediumPen{kPen035, LineType::Continuous};
inline const Pen kFinePen{kPen018, LineType::Continuous};
inline const Pen kConcretePen{kPen025, LineType::Dashed};
inline const Pen kStringPen{kPen013, LineType::Chain};
inline const Pen kBoundaryPen{kPen050, LineType::Chain};

// A name in its usual letters with its middle at a point of the paper.
Text nameAt(const PlanPaper& plan, Layer layer, const std::string& words, const Vec2& paper);

// There is room for the line of a dimension, with its ticks.
bool isClear(const PlanPaper& plan, const DimensionLine& line);

}  // namespace model
