// What the parts of the setting-out plan share. Private to this folder.
#pragma once

#include <string>
#include <vector>

#include "model/drawing/dimension_line.h"
#include "model/drawing/setting_out_plan.h"

namespace model {

inline const Pen kMediumPen{kPen035, LineType::Continuous};
inline const Pen kFinePen{kPen018, LineType::Continuous};
inline const Pen kConcretePen{kPen025, LineType::Dashed};
inline const Pen kStringPen{kPen013, LineType::Chain};
inline const Pen kLimitPen{kPen035, LineType::Dashed};
inline const Pen kBoundaryPen{kPen050, LineType::Chain};

// A name in its usual letters with its middle at a point of the paper.
Text nameAt(const PlanPaper& plan, Layer layer, const std::string& words, const Vec2& paper);

// The point of a figure that is farthest inside it, near enough: where its name stands best.
Vec2 middleOf(const Polygon& polygon);

// The text round where it stands, nearest first: 12 places a ring, `step` mm further out each.
std::vector<Text> around(const Text& text, double step, int rings);

// On either side of a line on the paper and along it, turned as it runs, `off` mm from it.
std::vector<Text> besideLine(const Text& text, const Vec2& a, const Vec2& b, double off);

// The best of the places is taken and drawn; false when none is free. See ClearSpace::place.
bool put(PlanPaper& plan, const std::vector<Text>& places, int most = 1000);

// A limit of a distance, given in the job.
bool isDrawnOnPlan(const LimitTest& limit);

// There is room for the line of a dimension, with its ticks.
bool isClear(const PlanPaper& plan, const DimensionLine& line);

}  // namespace model
