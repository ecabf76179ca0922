#include <utility>

#include "model/programme/plan_stages.h"
#include "model/programme/programme.h"
#include "model/programme/split_stages.h"
#include "model/programme/stage_days.h"
#include "model/programme/stage_order.h"
#include "model/programme/stage_words.h"

namespace model {
namespace {

bool perLift(StageKind kind) {
  return kind == StageKind::ScaffoldLift || kind == StageKind::RaiseCorners ||
         kind == StageKind::RunIn;
}

bool perStorey(StageKind kind) {
  return perLift(kind) || kind == StageKind::Lintels || kind == StageKind::UpperFloor ||
         kind == StageKind::Stairs;
}

bool byScaffolders(StageKind kind) {
  return kind == StageKind::ScaffoldLift || kind == StageKind::ScaffoldRoof ||
         kind == StageKind::StrikeScaffold;
}

std::string idOf(const StageKey& key, const std::vector<std::string>& slugs) {
  std::string id = wordsFor(key.kind).id;
  if (perStorey(key.kind)) {
    const auto storey = static_cast<size_t>(key.storey);
    id.append("-").append(storey < slugs.size() ? slugs[storey] : std::to_string(key.storey + 1));
  }
  if (perLift(key.kind)) id.append("-").append(std::to_string(key.lift));
  if (key.part > 0) id.append("-part-").append(std::to_string(key.part));
  return id;
}

std::string nameOf(const StageKey& key, const std::string& usual, const ProgrammeInput& input) {
  if (key.part < 1 || static_cast<size_t>(key.part) > input.splits.size()) return usual;
  const StageSplit& split = input.splits[static_cast<size_t>(key.part) - 1];
  return split.name.empty() ? usual + ", " + split.walls : split.name;
}

}  // namespace

Programme usualProgramme(const Job& job, const SettingOut& settingOut, const Works& works) {
  Programme programme;
  const std::vector<StageKey> order = stageOrder(settingOut, works);
  const std::vector<std::vector<size_t>> after = stagePredecessors(order);
  const std::vector<std::string> slugs = storeySlugs(job.storeys);
  const StageTraits traits = traitsOf(job, settingOut, works);
  const StageFacts facts(job, settingOut, works);
  const UsualDays days(job.laying, works);
  for (size_t i = 0; i < order.size(); ++i) {
    const StageKey& key = order[i];
    const StageWords& words = wordsFor(key.kind, traits);
    Stage stage;
    stage.key = key;
    stage.id = idOf(key, slugs);
    stage.name = nameOf(key, facts.fill(words.name, key), job.programme);
    stage.what = facts.fill(words.what, key);
    stage.atEnd = facts.fill(words.atEnd, key);
    stage.caution = cautionFor(key, traits);
    stage.holdPoint = holdPointFor(key.kind, traits);
    stage.days = days.of(key);
    stage.waitDays = usualWaitDays(key.kind, traits);
    stage.after = after[i];
    stage.crew = byScaffolders(key.kind) ? kScaffolders : kOwnCrew;
    stage.shares = {{key}};
    programme.stages.push_back(std::move(stage));
  }
  return programme;
}

Programme deriveProgramme(const Job& job, const SettingOut& settingOut, const Works& works) {
  Programme programme = usualProgramme(job, settingOut, works);
  checkSplits(job.programme, works, programme);
  addOwnStages(job.programme, programme);
  const StageNames names = applyOverrides(
      job.programme,
      [&](const StageKey& stage, double perDay) {
        return UsualDays(job.laying, works).at(stage, perDay);
      },
      programme);
  applyOrder(
      job.programme,
      [&] {
        std::vector<StageKey> usual;
        for (const Stage& stage : programme.stages) usual.push_back(stage.key);
        return physicalNeeds(usual, works);
      },
      programme);
  schedule(job.programme, programme);
  applyViews(job.programme, programme);
  for (const auto& [key, name] : names) {
    for (Stage& stage : programme.stages)
      if (stage.key == key) stage.name = name;
  }
  return programme;
}

}  // namespace model
