// This job's numbers and words, put into what is said about its stages.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <stdexcept>

#include "model/level_text.h"
#include "model/programme/fact_text.h"
#include "model/programme/stage_words.h"
#include "model/settingout/coursing.h"
#include "model/works/cellar_dig.h"
#include "model/works/ground_parts.h"

namespace model {
namespace {

// As the job spells it.
std::string storeyName(const Job& job, int storey) {
  if (storey < 0 || storey >= static_cast<int>(job.storeys.size())) return "the building";
  const std::string& name = job.storeys[static_cast<size_t>(storey)].name;
  return name.empty() ? "storey " + std::to_string(storey + 1) : name;
}

std::string courseText(double level, const Job& job, const SettingOut& settingOut) {
  if (job.walls.course() <= 0) return "its course";
  const double courses = (level - settingOut.levels.dampCourse) / job.walls.course();
  const double whole = std::round(courses);
  const bool exact = std::abs(courses - whole) * job.walls.course() < 0.001;
  char text[48];
  std::snprintf(text, sizeof text, exact ? "course %.0f" : "%.1f courses up", courses);
  return text;
}

// Where the corners of a lift end: the gauge rod goes by the outer leaf's courses.
double cornerTop(const Lift& lift, const Job& job, const SettingOut& settingOut) {
  const double outer = outerLeafStop(job, settingOut.levels, lift.top);
  return outer > lift.bottom + 0.001 ? outer : lift.top;
}

// The outer leaf stops on whole courses, and under the eaves lower than the inner one, clear of the
// rafters.
std::string leavesAtTop(const Lift& lift, const Job& job, const SettingOut& settingOut) {
  const double outer = outerLeafStop(job, settingOut.levels, lift.top);
  const std::string at = levelText(lift.top) + ", " + courseText(lift.top, job, settingOut);
  if (outer < lift.bottom - 0.001 || std::abs(outer - lift.top) < 0.001)
    return "Both leaves level all round at " + at;
  if (outer < lift.top)
    return "Inner leaf level all round at " + at + "; outer leaf at the eaves at " +
           levelText(outer);
  return "Inner leaf level all round at " + levelText(lift.top) + "; outer leaf at " +
         levelText(outer) + ", " + courseText(outer, job, settingOut);
}

const Lift* liftOf(const SettingOut& settingOut, const StageKey& key) {
  for (const Lift& lift : settingOut.lifts)
    if (lift.storey == key.storey && lift.number == key.lift) return &lift;
  return nullptr;
}

std::string lintelHeads(const SettingOut& settingOut, int storey) {
  std::vector<double> heads;
  for (const BuiltOpening& opening : settingOut.openings) {
    if (opening.storey == storey && opening.head <= settingOut.levels.wallTop)
      heads.push_back(opening.head);
  }
  return levelsInSeries(heads);
}

std::string ofLift(const std::string& name, const StageKey& key, const Job& job,
                   const SettingOut& settingOut) {
  const Lift* lift = liftOf(settingOut, key);
  if (name == "course")
    return lift ? courseText(cornerTop(*lift, job, settingOut), job, settingOut) : "its course";
  if (name == "leaves-at-top")
    return lift ? leavesAtTop(*lift, job, settingOut) : "Both leaves level all round";
  if (!lift) return "its level";
  if (name == "corner-top") return levelText(cornerTop(*lift, job, settingOut));
  return levelText(name == "lift-top" ? lift->top : lift->bottom);
}

}  // namespace

std::string inSeries(const std::vector<std::string>& parts) {
  std::string text;
  for (size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) text += i + 1 == parts.size() ? " and " : ", ";
    text += parts[i];
  }
  return text;
}

std::string levelsInSeries(std::vector<double> levels) {
  std::sort(levels.rbegin(), levels.rend());
  std::vector<std::string> texts;
  for (const double level : levels) {
    const std::string text = levelText(level);
    if (texts.empty() || texts.back() != text) texts.push_back(text);
  }
  return texts.empty() ? "its level" : inSeries(texts);
}

StageTraits traitsOf(const Job& job, const SettingOut&, const Works& works) {
  StageTraits traits;
  traits.beamFloor = job.groundFloor.kind == GroundFloorKind::Suspended;
  traits.slopedDig = job.ground.batter < kUprightBatter;
  traits.blinding = job.foundations.blinding > 0;
  for (const Element& e : works.elements) {
    traits.besideCellar |= isLeanFill(e);
    traits.scaffold |= e.kind == ElementKind::Scaffold;
  }
  return traits;
}

StageFacts::StageFacts(const Job& job, const SettingOut& settingOut, const Works& works)
    : job_(job), settingOut_(settingOut) {
  addGroundFacts(job, settingOut, works, facts_);
  addBuildingFacts(job, settingOut, works, facts_);
}

std::string StageFacts::factOf(const std::string& name, const StageKey& key) const {
  if (const auto found = facts_.find(name); found != facts_.end()) return found->second;
  const auto storey = static_cast<size_t>(std::max(key.storey, 0));
  const auto at = [&](const std::vector<double>& values) {
    return storey < values.size() ? levelText(values[storey]) : std::string("its level");
  };
  if (name == "storey") return storeyName(job_, key.storey);
  if (name == "lift") return std::to_string(key.lift);
  if (name == "structural-floor") return at(settingOut_.levels.structuralFloor);
  if (name == "joist-bearing") return at(settingOut_.levels.joistBearing);
  if (name == "lintels") return lintelHeads(settingOut_, key.storey);
  for (const char* known : {"course", "leaves-at-top", "lift-top", "lift-bottom", "corner-top"})
    if (name == known) return ofLift(name, key, job_, settingOut_);
  throw std::logic_error("no fact is called " + name);
}

std::string StageFacts::fill(const char* text, const StageKey& key) const {
  const std::string words = text;
  std::string result;
  size_t from = 0;
  for (size_t open; (open = words.find('{', from)) != std::string::npos;) {
    const size_t close = words.find('}', open);
    result += words.substr(from, open - from);
    result += factOf(words.substr(open + 1, close - open - 1), key);
    from = close + 1;
  }
  return result + words.substr(from);
}

}  // namespace model
