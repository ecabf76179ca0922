#include "model/takeoff/tally.h"

#include <cmath>
#include <limits>

namespace model {
namespace {

constexpr double kNothing = 1e-9;
// What rounding in the last digits must not turn into one more brick.
constexpr double kHair = 1e-9;

TakeoffRow rowOf(const TakeoffItem& item, double amount, const std::string& stage) {
  TakeoffRow row;
  row.item = item.item;
  row.amount = amount;
  row.unit = nameOf(item.unit);
  row.waste = item.waste;
  row.order = orderOf(amount, item.waste, item.step);
  row.basis = item.basis;
  row.stage = stage;
  return row;
}

}  // namespace

double orderOf(double amount, double waste, double step) {
  if (step <= 0) return amount;
  const double steps = amount * (1 + waste) / step;
  return std::ceil(steps - kHair * std::max(1.0, steps)) * step;
}

void Tally::add(const TakeoffItem& item, double amount, const StageKey& stage) {
  if (!(std::abs(amount) > kNothing)) return;
  const auto [found, isNew] = index_.emplace(item.item, sums_.size());
  if (isNew) sums_.push_back({item, {}});
  sums_[found->second].byStage[stage] += amount;
}

Takeoff Tally::finish(const Programme& programme) const {
  Takeoff takeoff;
  for (const Sum& sum : sums_) {
    double total = 0;
    for (const auto& [stage, amount] : sum.byStage) total += amount;
    takeoff.rows.push_back(rowOf(sum.item, total, ""));
  }
  for (const Stage& stage : programme.stages) {
    for (const Sum& sum : sums_) {
      const auto found = sum.byStage.find(stage.key);
      if (found == sum.byStage.end()) continue;
      takeoff.byStage.push_back(rowOf(sum.item, found->second, stage.name));
    }
  }
  return takeoff;
}

}  // namespace model
