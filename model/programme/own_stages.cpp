#include <algorithm>

#include "model/job/slug.h"
#include "model/programme/plan_stages.h"

namespace model {
namespace {

std::string freeId(const Programme& programme, const std::string& name, size_t number) {
  std::string id = slugOf(name);
  if (id.empty()) id = "own-" + std::to_string(number);
  const auto taken = [&] {
    return std::any_of(programme.stages.begin(), programme.stages.end(),
                       [&](const Stage& stage) { return stage.id == id; });
  };
  if (taken()) id += "-own-" + std::to_string(number);
  return id;
}

void insertAfter(Programme& programme, size_t before, Stage stage) {
  const size_t at = before + 1;
  for (Stage& each : programme.stages) {
    for (size_t& index : each.after) index += index >= at ? 1 : 0;
  }
  stage.after = {before};
  programme.stages.insert(programme.stages.begin() + static_cast<long>(at), std::move(stage));
}

}  // namespace

void addOwnStages(const ProgrammeInput& input, Programme& programme) {
  for (size_t i = 0; i < input.ownStages.size(); ++i) {
    const OwnStage& own = input.ownStages[i];
    const auto follows =
        stageNamed(programme, own.follows, "programme.own[" + std::to_string(i) + "].follows");
    if (!follows) continue;
    Stage stage;
    stage.key = {StageKind::Own, 0, static_cast<int>(i)};
    stage.id = freeId(programme, own.name, i + 1);
    stage.name = own.name;
    stage.what = "As the drawing and those who do it have it.";
    stage.atEnd = own.name + ": done.";
    stage.days = own.days;
    stage.crew = kOwnCrew;
    stage.shares = {{stage.key}};
    insertAfter(programme, *follows, std::move(stage));
  }
}

}  // namespace model
