// How the joists of a floor are trimmed round a well: trimming joists beside it, wall to wall;
// trimmers between them at its ends; and the joists that are cut, which end at the trimmers.
#pragma once

#include <vector>

#include "model/geometry/polygon.h"
#include "model/job/job.h"

namespace model {

struct Span {
  double low = 1e300, high = -1e300;
};
Span spanAlong(const Polygon& polygon, const Vec2& direction);

// A rectangle whose sides lie along u and v.
Polygon boxOnPlan(const Vec2& u, const Vec2& v, const Span& along, const Span& square);

class Trimming {
 public:
  // Of a floor whose joists lie along v; `thick`: how many joists side by side.
  Trimming(const UpperFloor& floor, const Polygon& area, const Polygon& well, const Vec2& u,
           const Vec2& v, int thick);

  std::vector<Regions> joists, trimmers;

  // A joist on the line u = `line`, less what is cut out of it or has a trimming joist in its
  // place.
  Regions without(const Regions& joist, double line, double width) const;
  // Lines of further joists, where otherwise two neighbours lay further apart than the drawing has
  // them.
  std::vector<double> between(const std::vector<double>& lines, const UpperFloor& floor) const;

 private:
  struct Beside {
    Span across, length;
  };
  Vec2 u_, v_;
  Span across_, along_;         // the well
  double thick_ = 0;            // metres
  std::vector<Beside> beside_;  // where trimming joists lie
};

}  // namespace model
