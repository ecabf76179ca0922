// How long each stage takes, from how much of it there is.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/job/masonry.h"
#include "model/programme/stage_words.h"
#include "model/works/element.h"

namespace model {

// What most of a stage's days go into, and how fast.
struct StageRate {
  std::string what;   // "spoil", "bricks"
  std::string unit;   // "m3"
  double amount = 0;  // in it
  double perDay = 0;  // in a working day
};

// Working days of one small crew (foreman, bricklayers as the job has them, labourer, hired
// digger), from the quantities of what appears or goes in each stage and common output rates.
// Brickwork and blockwork go by their units, each cut one like a whole one, and no stage raises a
// wall by more than the job's limit for each of its days. The works are gone through once.
class UsualDays {
 public:
  UsualDays(const LayingRates& laying, const Works& works);
  // In halves, at least 0.5.
  double of(const StageKey& stage) const;
  // The same with another output for what most of it goes into; as it is when nothing is counted.
  double at(const StageKey& stage, double perDay) const;
  // Nothing for stages whose days no quantity measures.
  std::optional<StageRate> rateOf(const StageKey& stage) const;

 private:
  void countLaid(const LayingRates& laying, const Element& leaf);
  void count(const StageKey& stage, const StageRate& counted, double slowness);
  double rounded(const StageKey& stage, double days) const;
  // No more than the job's limit in height in each of `days` days.
  void countRise(const LayingRates& laying, const Element& element, double days = 1);

  struct Counted {
    StageRate rate;
    double days = 0;
  };
  struct Rise {
    double from = 0, to = 0;  // levels
    double days = 0;          // that it takes at least
  };
  const Counted* mostOf(const StageKey& stage) const;

  std::map<StageKey, std::vector<Counted>> counted_;
  std::map<StageKey, Rise> rises_;
};

// Calendar days that must pass after the stage before what stands on it may start.
double usualWaitDays(StageKind kind, const StageTraits& traits);

}  // namespace model
