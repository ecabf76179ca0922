#include "model/programme/split_stages.h"

#include <algorithm>
#include <set>

#include "model/programme/plan_stages.h"

namespace model {
namespace {

std::set<std::string> wallsIn(const std::string& list) {
  std::set<std::string> walls;
  std::string word;
  for (const char c : list + ",") {
    if (c == ',') {
      if (!word.empty()) walls.insert(word);
      word.clear();
    } else if (c != ' ') {
      word += c;
    }
  }
  return walls;
}

}  // namespace

const char* whyNotSplit(StageKind kind) {
  switch (kind) {
    case StageKind::RaiseCorners:
      return "a corner is bonded into both of its walls, course by course";
    case StageKind::SettingOut:
    case StageKind::LinesBack:
      return "all lines are checked against one another";
    case StageKind::Own:
      return "nothing of it is drawn";
    default:
      return nullptr;
  }
}

void splitStages(const Job& job, const SettingOut& settingOut, Works& works) {
  if (job.programme.splits.empty()) return;
  const Programme usual = usualProgramme(job, settingOut, works);
  for (size_t i = 0; i < job.programme.splits.size(); ++i) {
    const StageSplit& split = job.programme.splits[i];
    const auto stage = usual.find(split.stage);
    if (!stage || whyNotSplit(usual.stages[*stage].key.kind)) continue;
    const StageKey whole = usual.stages[*stage].key;
    const std::set<std::string> walls = wallsIn(split.walls);
    const auto moves = [&](const Element& e) { return walls.count(e.wall) > 0; };
    const auto has = [&](const Element& e, const StageKey& key) {
      return e.placed.stage == key || (e.removed && e.removed->stage == key);
    };
    // Something must be left of the stage.
    const bool left = std::any_of(works.elements.begin(), works.elements.end(),
                                  [&](const Element& e) { return has(e, whole) && !moves(e); });
    if (!left) continue;
    for (Element& element : works.elements) {
      if (!moves(element)) continue;
      const int part = static_cast<int>(i) + 1;
      if (element.placed.stage == whole) element.placed.stage.part = part;
      if (element.removed && element.removed->stage == whole) element.removed->stage.part = part;
    }
  }
}

void checkSplits(const ProgrammeInput& input, const Works& works, Programme& programme) {
  std::set<int> parts;
  for (const Element& element : works.elements) {
    parts.insert(element.placed.stage.part);
    if (element.removed) parts.insert(element.removed->stage.part);
  }
  for (size_t i = 0; i < input.splits.size(); ++i) {
    if (parts.count(static_cast<int>(i) + 1) > 0) continue;
    const StageSplit& split = input.splits[i];
    const std::string key = "programme.split[" + std::to_string(i) + "]";
    const auto stage = stageNamed(programme, split.stage, key + ".stage");
    if (!stage) continue;
    const std::string begins =
        "programme.split: \"" + programme.stages[*stage].id + "\" cannot be split: ";
    if (const char* why = whyNotSplit(programme.stages[*stage].key.kind)) {
      programme.faults.push_back(
          {key + ".stage", Severity::Error, begins + why, "split a stage that goes wall by wall"});
    } else {
      programme.faults.push_back(
          {key + ".walls", Severity::Error,
           begins + "\"" + split.walls + "\" has nothing of it, or all of it",
           "name walls of which it makes something, with commas between, and leave it some"});
    }
  }
}

}  // namespace model
