// Jobs of the sizes in published examples, and what is read off them.
#pragma once

#include <cmath>
#include <string>

#include "model/model.h"

namespace published {

inline constexpr double kFoot = 0.3048;
inline constexpr double kInch = 0.0254;
inline constexpr double kCubicFoot = kFoot * kFoot * kFoot;

// A plain rectangle, x by y metres, on level ground.
inline model::Job rectangleJob(double x, double y) {
  model::Job job;
  job.outline = {{0, 0}, {x, 0}, {x, y}, {0, y}};
  return job;
}

template <typename Wanted>
double volumeWhere(const model::Works& works, const Wanted& wanted) {
  double sum = 0;
  for (const model::Element& e : works.elements) {
    if (wanted(e)) sum += volume(e.solid);
  }
  return sum;
}

inline double volumeOf(const model::Works& works, model::ElementKind kind) {
  return volumeWhere(works, [&](const model::Element& e) { return e.kind == kind; });
}

// The net amount of an item of the takeoff; not a number when it is not there.
inline double amountOf(const model::Model& m, const std::string& item) {
  for (const model::TakeoffRow& row : m.takeoff.rows) {
    if (row.item == item) return row.amount;
  }
  return std::nan("");
}

}  // namespace published
