#include "model/levelling/carry_level.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

namespace model {
namespace {

constexpr int kSamples = 80;            // along the way to the target
constexpr size_t kMostMoves = 8;        // more is another day's work
constexpr double kShortestSight = 1.5;  // nearer, the instrument does not focus
constexpr double kStaffEnd = 0.1;       // kept off both ends of the staff
constexpr double kMarkHeight = 1.0;     // of a mark on the side of a dig, over its bottom
constexpr double kLeastGain = 0.2;      // of the line, for a set-up to be worth it

struct Sample {
  Vec2 at{0, 0};
  double ground = 0;
};

class Carrier {
 public:
  Carrier(const Instrument& instrument, Vec2 stand, Vec2 target, double level,
          const std::function<double(Vec2)>& ground, const Tripod& tripod)
      : first_(instrument), target_(target), level_(level), tripod_(tripod) {
    for (int i = 0; i <= kSamples; ++i) {
      const Vec2 at = glm::mix(stand, target, static_cast<double>(i) / kSamples);
      way_.push_back({at, ground(at)});
    }
  }

  CarryPlan plan() const {
    CarryPlan plan;
    if (readable(first_.collimation)) {
      plan.reached = true;
      plan.reading = first_.collimation - level_;
      return plan;
    }
    plan = overChangePoints();
    return plan.reached ? plan : byTape();
  }

 private:
  bool readable(double line) const {
    return readStaff({line, first_.staff}, level_, way_.back().ground).canBeRead();
  }

  // The instrument's line has to go up; else down.
  bool upwards() const {
    const StaffReading sight = readStaff(first_, level_, way_.back().ground);
    return sight.reach != Reach::StaffTooShort;
  }

  bool inReach(double line, double ground) const {
    return line - ground >= kStaffEnd && line - ground <= first_.staff - kStaffEnd;
  }

  static bool farEnough(Vec2 a, Vec2 b) { return glm::distance(a, b) >= kShortestSight; }

  // The next line from a standing with its backsight on a change point: one that reads the target
  // with the tripod as near as may be to its usual height, else as far towards it as it goes.
  std::optional<double> lineFrom(double ground, double mark) const {
    const double least = std::max(ground + tripod_.least, mark + kStaffEnd);
    const double most = std::min(ground + tripod_.most, mark + first_.staff - kStaffEnd);
    if (least > most) return std::nullopt;
    const double usual = std::clamp(ground + tripod_.usual, least, most);
    // Over the point and the ground that lies on it, and no more than a staff over the point.
    const double lowest = std::max(level_, way_.back().ground);
    const double highest = std::max(lowest, level_ + first_.staff - kStaffEnd);
    return std::clamp(std::clamp(usual, lowest, highest), least, most);
  }

  // From a line that cannot read the target, the change point and standing that can, the nearest
  // first; else those that gain most.
  std::optional<CarryStep> bestMove(double line, Vec2 stand) const {
    std::optional<CarryStep> best;
    bool bestReads = false;
    for (const Sample& change : way_) {
      if (!inReach(line, change.ground) || !farEnough(change.at, stand)) continue;
      for (const Sample& next : way_) {
        if (!farEnough(change.at, next.at)) continue;
        const auto to = lineFrom(next.ground, change.ground);
        if (!to || (upwards() ? *to - line : line - *to) < (readable(*to) ? 0 : kLeastGain))
          continue;
        const bool reads = readable(*to);
        if (best && (bestReads || !reads)) {
          const double before = best->next->collimation;
          const bool gains = upwards() ? *to > before + 1e-9 : *to < before - 1e-9;
          if (bestReads || !gains) continue;
        }
        best = CarryStep{
            change.at,    change.ground, line - change.ground,
            std::nullopt, change.ground, CarryStep::Standing{next.at, *to, *to - change.ground}};
        bestReads = reads;
      }
    }
    return best;
  }

  CarryPlan overChangePoints() const {
    CarryPlan plan;
    double line = first_.collimation;
    Vec2 stand = way_.front().at;
    while (plan.steps.size() < kMostMoves) {
      const auto move = bestMove(line, stand);
      if (!move) break;
      plan.steps.push_back(*move);
      line = move->next->collimation;
      stand = move->next->at;
      if (!readable(line)) continue;
      plan.reached = true;
      plan.reading = line - level_;
      break;
    }
    return plan;
  }

  // The open ground nearest to the target that the instrument reads.
  const Sample* lastInReach() const {
    const auto found = std::find_if(way_.rbegin(), way_.rend(), [&](const Sample& s) {
      return inReach(first_.collimation, s.ground) && farEnough(s.at, way_.front().at);
    });
    return found == way_.rend() ? nullptr : &*found;
  }

  CarryPlan byTape() const {
    CarryPlan plan;
    const Sample* edge = lastInReach();
    if (!edge) return plan;
    CarryStep step;
    step.changePoint = edge->at;
    step.changeLevel = edge->ground;
    step.foresight = first_.collimation - edge->ground;
    step.mark = level_;
    if (!upwards()) standBelow(*edge, step);
    step.tape = step.mark - edge->ground;
    plan.reached = true;
    if (step.next) plan.reading = step.next->collimation - level_;
    plan.steps.push_back(step);
    return plan;
  }

  // A mark on the side of the dig below the edge, and a standing on its bottom from which both it
  // and the target can be read; when there is none, the tape goes to the level itself.
  void standBelow(const Sample& edge, CarryStep& step) const {
    for (const Sample& next : way_) {
      const double line = next.ground + tripod_.usual;
      if (line > edge.ground || !readable(line) || !farEnough(edge.at, next.at) ||
          !farEnough(next.at, target_))
        continue;
      // Whole decimetres are easily held on a tape.
      step.mark = std::round((next.ground + kMarkHeight) * 10) / 10;
      step.next = CarryStep::Standing{next.at, line, line - step.mark};
      return;
    }
  }

  Instrument first_;
  Vec2 target_;
  double level_;
  Tripod tripod_;
  std::vector<Sample> way_;  // from the instrument to the target
};

}  // namespace

size_t CarryPlan::setUps() const {
  return 1 + static_cast<size_t>(std::count_if(steps.begin(), steps.end(), [](const CarryStep& s) {
           return s.next.has_value();
         }));
}

CarryPlan carryLevel(const Instrument& instrument, Vec2 stand, Vec2 target, double level,
                     const std::function<double(Vec2)>& ground, const Tripod& tripod) {
  return Carrier(instrument, stand, target, level, ground, tripod).plan();
}

}  // namespace model
