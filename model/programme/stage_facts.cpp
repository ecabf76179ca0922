// This job's numbers and words, put into what is said about its stages.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <set>
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

// Where the outer leaf is made up from its last whole course to carry the lintels that come next.
std::string madeUpUnderLintels(const Lift& lift, double outer, const SettingOut& settingOut) {
  const auto storey = static_cast<size_t>(lift.storey);
  const auto& heads = settingOut.levels.commonHead;
  const bool lintels = storey < heads.size() && heads[storey] &&
                       std::abs(*heads[storey] - lift.top) < 0.001 && outer < lift.top - 0.001;
  return lintels ? ", made up to " + levelText(lift.top) + " under the lintels" : "";
}

// The outer leaf stops on whole courses, and under the eaves lower than the inner one, clear of the
// rafters.
std::string leavesAtTop(const Lift& lift, const Job& job, const SettingOut& settingOut) {
  const double outer = outerLeafStop(job, settingOut.levels, lift.top);
  const std::string at = levelText(lift.top) + ", " + courseText(lift.top, job, settingOut);
  if (outer < lift.bottom - 0.001 || std::abs(outer - lift.top) < 0.001)
    return "Both leaves level all round at " + at;
  if (outer > settingOut.levels.outerLeafTop - 0.001)
    return "Inner leaf level all round at " + at + "; outer leaf at the eaves at " +
           levelText(outer);
  return "Inner leaf level all round at " + levelText(lift.top) + "; outer leaf at " +
         levelText(outer) + ", " + courseText(outer, job, settingOut) +
         madeUpUnderLintels(lift, outer, settingOut);
}

// Where the two leaves of a lift end.
std::string runInTo(const Lift& lift, const Job& job, const SettingOut& settingOut) {
  const double outer = outerLeafStop(job, settingOut.levels, lift.top);
  if (outer < lift.bottom - 0.001)
    return levelText(lift.top) + " with the inner leaf";  // the outer one is up already
  if (std::abs(outer - lift.top) < 0.001) return levelText(lift.top);
  return levelText(lift.top) + " with the inner leaf and " + levelText(outer) + " with the outer" +
         madeUpUnderLintels(lift, outer, settingOut);
}

std::string innerCorner(const Lift& lift, const Job& job, const SettingOut& settingOut) {
  if (std::abs(cornerTop(lift, job, settingOut) - lift.top) < 0.001) return "";
  return " (inner leaf " + levelText(lift.top) + ")";
}

// Joists that bear on what is no whole course.
std::string oddBearing(const Lift& lift, const Job& job, const SettingOut& settingOut) {
  const std::vector<double>& bearings = settingOut.levels.joistBearing;
  for (size_t i = 1; i < bearings.size(); ++i) {
    if (std::abs(bearings[i] - lift.top) > 0.001 || job.walls.course() <= 0) continue;
    const double courses = (lift.top - settingOut.levels.dampCourse) / job.walls.course();
    if (std::abs(courses - std::round(courses)) * job.walls.course() < 0.001) continue;
    return " The joists bear at " + levelText(lift.top) +
           ", which is no whole course: agree first how the inner leaf is made up to it.";
  }
  return "";
}

const Lift* liftOf(const SettingOut& settingOut, const StageKey& key) {
  for (const Lift& lift : settingOut.lifts)
    if (lift.storey == key.storey && lift.number == key.lift) return &lift;
  return nullptr;
}

// The top of what is built from the platform put up for a lift: to where the next one starts.
std::string scaffoldTo(const StageKey& key, const SettingOut& settingOut,
                       const std::vector<StageKey>& platforms) {
  const auto next = std::upper_bound(platforms.begin(), platforms.end(), key);
  const double bottom = next == platforms.end() ? 1e300 : [&] {
    const Lift* lift = liftOf(settingOut, *next);
    return lift ? lift->bottom : 1e300;
  }();
  const Lift* own = liftOf(settingOut, key);
  double top = own ? own->top : -1e300;
  if (!platforms.empty())
    for (const Lift& lift : settingOut.lifts)
      if (lift.bottom < bottom - 0.001) top = std::max(top, lift.top);
  return top < -1e299 ? "its level" : levelText(top);
}

std::string ofLift(const std::string& name, const StageKey& key, const Job& job,
                   const SettingOut& settingOut) {
  const Lift* lift = liftOf(settingOut, key);
  if (name == "run-in-to") return lift ? runInTo(*lift, job, settingOut) : "its level";
  if (name == "inner-corner") return lift ? innerCorner(*lift, job, settingOut) : "";
  if (name == "odd-bearing") return lift ? oddBearing(*lift, job, settingOut) : "";
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

std::string degreesText(double degrees) {
  char text[32];
  std::snprintf(text, sizeof text, "%.1f", degrees);
  std::string tenths = text;
  if (tenths.ends_with(".0")) tenths.erase(tenths.size() - 2);
  return tenths;
}

StageTraits traitsOf(const Job& job, const SettingOut& settingOut, const Works& works) {
  StageTraits traits;
  traits.beamFloor = job.groundFloor.kind == GroundFloorKind::Suspended;
  traits.slopedDig = job.ground.batter < kUprightBatter;
  if (job.cellar) traits.cellarWalls = job.cellar->kind;
  traits.blinding = job.foundations.blinding > 0;
  for (const Element& e : works.elements) {
    traits.besideCellar |= isLeanFill(e);
    traits.scaffold |= e.kind == ElementKind::Scaffold;
  }
  traits.scaffoldLifts = scaffoldLifts(works);
  addOwnCautions(job, settingOut, traits);
  for (const Element& e : works.elements)
    if (e.kind == ElementKind::CavityBarrier)
      traits.alsoMindIn[e.placed.stage] =
          "Cavity barriers fit tight to both leaves and to each other, with nothing behind them "
          "left open, and are seen and photographed before they are hidden.";
  for (const auto& [stage, text] : corbelCautions(job, settingOut)) {
    std::string& here = traits.alsoMindIn[stage];
    here += (here.empty() ? "" : " ") + text;
  }
  return traits;
}

std::vector<StageKey> scaffoldLifts(const Works& works) {
  std::set<StageKey> stages;
  for (const Element& e : works.elements)
    if (e.placed.stage.kind == StageKind::ScaffoldLift) stages.insert(e.placed.stage);
  return {stages.begin(), stages.end()};
}

StageFacts::StageFacts(const Job& job, const SettingOut& settingOut, const Works& works)
    : job_(job), settingOut_(settingOut) {
  addGroundFacts(job, settingOut, works, facts_);
  addGardenFacts(job, works, facts_);
  addBuildingFacts(job, settingOut, works, facts_);
  for (const Element& e : works.elements)
    if (e.kind == ElementKind::Lintel) lintels_[e.placed.stage].push_back(e.underside);
  scaffoldLifts_ = scaffoldLifts(works);
  joined_ = junctionWork(job, settingOut);
  for (const auto& [stage, text] : corbelWork(job, settingOut)) joined_[stage] += text;
  for (const Element& e : works.elements) {
    if (e.kind == ElementKind::CavityBarrier) barriers_.insert(e.placed.stage);
    if (e.kind == ElementKind::CavityTray && e.id.find("/long cavity tray/") != std::string::npos)
      longTrays_.insert(e.placed.stage);
    if (e.kind == ElementKind::DampCourse && e.id.find("/damp course/step ") != std::string::npos)
      steps_.insert(e.placed.stage);
    if (e.kind == ElementKind::JointFiller) joints_.insert(e.placed.stage);
  }
}

// What is built in between the leaves of a lift, and in them.
std::string StageFacts::asTheyRise(const StageKey& key) const {
  std::vector<std::string> rising;
  if (job_.walls.cavity > 0) rising.push_back("ties");
  if (job_.walls.cavity > 0 && job_.walls.insulation > 0) rising.push_back("insulation");
  if (barriers_.count(key)) rising.push_back("cavity barriers");
  if (longTrays_.count(key)) rising.push_back("the cavity trays over level barriers");
  if (steps_.count(key)) rising.push_back("the stepped damp course with its tray");
  if (joints_.count(key)) rising.push_back("the filler of the movement joints");
  return rising.empty() ? "" : ", " + inSeries(rising) + " as they rise";
}

std::string StageFacts::factOf(const std::string& name, const StageKey& key) const {
  if (const auto found = facts_.find(name); found != facts_.end()) return found->second;
  const auto storey = static_cast<size_t>(std::max(key.storey, 0));
  const auto at = [&](const std::vector<double>& values) {
    return storey < values.size() ? levelText(values[storey]) : std::string("its level");
  };
  if (name == "storey") return storeyName(job_, key.storey);
  if (name == "lift") return std::to_string(key.lift);
  if (name == "as-they-rise") return asTheyRise(key);
  if (name == "joined") {
    const auto joined = joined_.find(key);
    return joined == joined_.end() ? "" : joined->second;
  }
  if (const auto words = stairFact(name, key, job_, settingOut_)) return *words;
  if (name == "structural-floor") return at(settingOut_.levels.structuralFloor);
  if (name == "joist-bearing") return at(settingOut_.levels.joistBearing);
  const auto lintels = lintels_.find(key);
  if (name == "lintels")
    return levelsInSeries(lintels == lintels_.end() ? std::vector<double>{} : lintels->second);
  if (name == "rising-lintels")
    return lintels == lintels_.end() ? ""
                                     : " Bed the lintels at " + levelsInSeries(lintels->second) +
                                           " as the wall comes up to them, with full bearings.";
  if (name == "scaffold-to") return scaffoldTo(key, settingOut_, scaffoldLifts_);
  for (const char* known : {"course", "leaves-at-top", "lift-top", "lift-bottom", "corner-top",
                            "run-in-to", "inner-corner", "odd-bearing"})
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
