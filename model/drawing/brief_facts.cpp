#include "model/drawing/brief_facts.h"

#include <algorithm>

#include "model/levelling/set_up.h"
#include "model/programme/level_made.h"

namespace model {

namespace {

// From when the floor that a set-up stands on is there; nothing for one that is not in the
// schedule.
std::optional<double> floorTime(const Model& model, const std::vector<double>& levelTimes,
                                const std::string& floor) {
  if (floor.empty()) return -1;
  std::string key = "cellar-slab-top";
  for (size_t i = 0; i < model.job.storeys.size(); ++i)
    if (model.job.storeys[i].name == floor) key = "structural-floor:" + std::to_string(i);
  const auto& schedule = model.settingOut.schedule;
  for (size_t i = 0; i < schedule.size(); ++i)
    if (schedule[i].key == key) return levelTimes[i];
  return std::nullopt;
}

}  // namespace

BriefFacts::BriefFacts(const Model& model)
    : model_(model),
      levelTimes_(timesOfLevels(model.settingOut, model.works, model.programme)),
      loads_(deriveLoading(model.job, model.settingOut, model.works, model.programme)),
      placed_(model.programme.stages.size()),
      removed_(model.programme.stages.size()),
      tape_(deriveTapeChecks(model.job, model.settingOut)) {
  for (const SetUp& setUp : model.job.setUps) {
    const auto instrument = instrumentOf(model.job, setUp);
    const auto from = floorTime(model, levelTimes_, setUp.floor);
    if (instrument && from) standings_.push_back({setUp.name, *instrument, *from});
  }
  for (const Element& element : model.works.elements) {
    if (const auto stage = model.programme.indexOf(element.placed.stage))
      placed_[*stage].push_back(&element);
    if (!element.removed) continue;
    if (const auto stage = model.programme.indexOf(element.removed->stage))
      removed_[*stage].push_back(&element);
  }
}

bool BriefFacts::onScaffold(size_t stage) const {
  const auto isScaffold = [](const Element* each) { return each->kind == ElementKind::Scaffold; };
  bool stands = false;
  for (size_t i = 0; i <= stage; ++i) {
    if (std::any_of(placed_[i].begin(), placed_[i].end(), isScaffold)) stands = true;
    if (std::any_of(removed_[i].begin(), removed_[i].end(), isScaffold)) stands = i == stage;
  }
  return stands;
}

std::vector<const Element*> BriefFacts::placed(size_t stage) const { return placed_[stage]; }
std::vector<const Element*> BriefFacts::removed(size_t stage) const { return removed_[stage]; }

}  // namespace model
