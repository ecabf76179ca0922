#include "model/programme/calendar.h"
#include "model/programme/programme.h"
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
  return perLift(kind) || kind == StageKind::Lintels || kind == StageKind::UpperFloor;
}

std::string idOf(const StageKey& key, const std::vector<std::string>& slugs) {
  std::string id = wordsFor(key.kind).id;
  if (perStorey(key.kind)) {
    const auto storey = static_cast<size_t>(key.storey);
    id.append("-").append(storey < slugs.size() ? slugs[storey] : std::to_string(key.storey + 1));
  }
  if (perLift(key.kind)) id.append("-").append(std::to_string(key.lift));
  return id;
}

void applyOverrides(const Job& job, Programme& programme) {
  for (const StageOverride& change : job.programme.stages) {
    const auto index = programme.find(change.stage);
    if (!index) continue;  // checkProgramme says so
    Stage& stage = programme.stages[*index];
    if (change.days) stage.days = *change.days;
    if (change.note) stage.note = *change.note;
  }
  // Names last: every override is looked up by what the stages were called before.
  std::vector<std::pair<size_t, std::string>> names;
  for (const StageOverride& change : job.programme.stages) {
    const auto index = programme.find(change.stage);
    if (index && change.name) names.emplace_back(*index, *change.name);
  }
  for (const auto& [index, name] : names) programme.stages[index].name = name;
}

}  // namespace

Programme deriveProgramme(const Job& job, const SettingOut& settingOut, const Works& works) {
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
    stage.name = facts.fill(words.name, key);
    stage.what = facts.fill(words.what, key);
    stage.atEnd = facts.fill(words.atEnd, key);
    stage.caution = cautionFor(key, traits);
    stage.holdPoint = holdPointFor(key.kind);
    stage.days = days.of(key);
    stage.waitDays = usualWaitDays(key.kind, traits.beamFloor);
    stage.after = after[i];
    programme.stages.push_back(std::move(stage));
  }
  applyOverrides(job, programme);
  setDates(programme, job.programme.start);
  return programme;
}

}  // namespace model
