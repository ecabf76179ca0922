// The words of carry_level.h.
#include "model/level_text.h"
#include "model/levelling/carry_level.h"
#include "model/levelling/staff_text.h"

namespace model {
namespace {

std::string moveText(const CarryStep& step, size_t number) {
  const std::string name = "change point " + std::to_string(number);
  std::string text = name + (step.onFloor ? " on the floor at " : " on the ground at ") +
                     levelText(step.changeLevel) + ": foresight " + staffText(step.foresight);
  if (step.tape) {
    text += "; tape plumb " + std::string(*step.tape < 0 ? "down " : "up ") +
            lengthText(*step.tape < 0 ? -*step.tape : *step.tape) + " to " + levelText(step.mark);
    if (step.next) text += " and make a mark there";
  }
  if (step.next) {
    text += "; set up again with the line at about " + levelText(step.next->collimation) +
            ", backsight about " + staffText(step.next->backsight);
  }
  return text;
}

}  // namespace

std::vector<std::string> carryTexts(const CarryPlan& plan, double level) {
  std::vector<std::string> texts;
  if (!plan.reached) {
    return {"no ground on the way can be read from here: set the instrument up nearer"};
  }
  for (size_t i = 0; i < plan.steps.size(); ++i) texts.push_back(moveText(plan.steps[i], i + 1));
  if (plan.reading) {
    texts.push_back((plan.steps.empty() ? "read " : "then read about ") + staffText(*plan.reading) +
                    " for " + levelText(level));
  }
  return texts;
}

}  // namespace model
