// Adding up: what is counted, in which stage, and how it is sold.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "model/programme/programme.h"
#include "model/takeoff/takeoff.h"

namespace model {

// One thing to order or to do. `step` is the smallest amount it is sold in.
struct TakeoffItem {
  std::string item;
  Unit unit = Unit::CubicMetre;
  double waste = 0;
  double step = 0;  // 0: not ordered, the amount is for planning
  std::string basis;
};

// Sums amounts by item, and by item and stage. Items keep the order in which they first came.
class Tally {
 public:
  void add(const TakeoffItem& item, double amount, const StageKey& stage);
  Takeoff finish(const Programme& programme) const;

 private:
  struct Sum {
    TakeoffItem item;
    std::map<StageKey, double> byStage;
  };
  std::vector<Sum> sums_;
  std::map<std::string, size_t> index_;
};

// amount * (1 + waste) rounded up to whole steps; the amount itself when there is no step.
double orderOf(double amount, double waste, double step);

}  // namespace model
