// This job's numbers, put into the words about its stages.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <set>

#include "model/level_text.h"
#include "model/programme/stage_words.h"

namespace model {
namespace {

using Facts = std::map<std::string, std::string>;

// "a", "a and b", "a, b and c".
std::string listed(const std::vector<std::string>& parts) {
  std::string text;
  for (size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) text += i + 1 == parts.size() ? " and " : ", ";
    text += parts[i];
  }
  return text;
}

// Each different level once, highest first.
template <typename Levels>
std::string levelsListed(const Levels& levels) {
  std::vector<std::string> texts;
  std::vector<double> sorted(levels.begin(), levels.end());
  std::sort(sorted.rbegin(), sorted.rend());
  for (double level : sorted) {
    const std::string text = levelText(level);
    if (texts.empty() || texts.back() != text) texts.push_back(text);
  }
  return texts.empty() ? "its level" : listed(texts);
}

// The storey's name as it stands in the middle of a sentence.
std::string storeyName(const Job& job, int storey) {
  if (storey < 0 || storey >= static_cast<int>(job.storeys.size())) return "building";
  std::string name = job.storeys[static_cast<size_t>(storey)].name;
  if (name.empty()) return "storey " + std::to_string(storey + 1);
  if (name[0] >= 'A' && name[0] <= 'Z') name[0] = static_cast<char>(name[0] - 'A' + 'a');
  return name;
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

// Under the eaves the outer leaf stops lower than the inner one, clear of the rafters.
std::string leavesAtTop(const Lift& lift, const Job& job, const SettingOut& settingOut) {
  const std::string at = levelText(lift.top) + ", " + courseText(lift.top, job, settingOut);
  const double outer = settingOut.levels.outerLeafTop;
  const bool eavesIn = outer > lift.bottom - 0.001 && outer < lift.top - 0.001;
  if (!eavesIn) return "Both leaves level all round at " + at;
  return "Inner leaf level all round at " + at + "; outer leaf at the eaves at " + levelText(outer);
}

void addGround(Facts& facts, const Job& job, const SettingOut& settingOut) {
  const Levels& levels = settingOut.levels;
  std::vector<std::string> demolished;
  for (const StandingBuilding& b : job.site.buildings) {
    if (b.kind != BuildingKind::Demolish) continue;
    demolished.push_back(b.name.empty() ? "a standing building" : "\"" + b.name + "\"");
  }
  std::vector<double> tops, formations;
  for (const FoundationRun& run : settingOut.foundations) {
    if (run.onCellar) continue;
    tops.push_back(run.top);
    formations.push_back(run.formation);
  }
  facts["demolished"] = listed(demolished);
  facts["topsoil"] = lengthText(job.ground.topsoil);
  facts["corners"] = settingOut.corners.empty() ? ""
                                                : settingOut.corners.front().letter + " to " +
                                                      cornerLetter(settingOut.corners.size() - 1);
  facts["foundation-width"] = lengthText(job.foundations.width);
  facts["tops"] = levelsListed(tops);
  facts["formations"] = levelsListed(formations);
  facts["cellar-formation"] = levelText(levels.cellarFormation);
  facts["cellar-slab-underside"] = levelText(levels.cellarSlabUnderside);
  facts["cellar-slab-top"] = levelText(levels.cellarSlabTop);
  facts["cellar-wall-top"] = levelText(levels.cellarWallTop);
  facts["oversite"] = levelText(levels.oversite);
  facts["slab-underside"] = levelText(levels.slabUnderside);
  facts["damp-course"] = levelText(levels.dampCourse);
}

void addStorey(Facts& facts, const StageKey& key, const Job& job, const SettingOut& settingOut) {
  const Levels& levels = settingOut.levels;
  const auto storey = static_cast<size_t>(std::max(key.storey, 0));
  const auto at = [&](const std::vector<double>& values) {
    return storey < values.size() ? levelText(values[storey]) : std::string("its level");
  };
  facts["storey"] = storeyName(job, key.storey);
  facts["structural-floor"] = at(levels.structuralFloor);
  facts["joist-bearing"] = at(levels.joistBearing);
  facts["lift"] = std::to_string(key.lift);
  facts["lift-bottom"] = facts["lift-top"] = "its level";
  facts["course"] = "its course";
  facts["leaves-at-top"] = "Both leaves level all round";
  for (const Lift& lift : settingOut.lifts) {
    if (lift.storey != key.storey || lift.number != key.lift) continue;
    facts["lift-bottom"] = levelText(lift.bottom);
    facts["lift-top"] = levelText(lift.top);
    facts["course"] = courseText(lift.top, job, settingOut);
    facts["leaves-at-top"] = leavesAtTop(lift, job, settingOut);
  }
  std::vector<double> heads;
  for (const BuiltOpening& opening : settingOut.openings) {
    if (opening.storey == key.storey && opening.head <= levels.wallTop) {
      heads.push_back(opening.head);
    }
  }
  facts["lintels"] = levelsListed(heads);
}

void addRoof(Facts& facts, const Job& job, const SettingOut& settingOut) {
  const Levels& levels = settingOut.levels;
  char pitch[32];
  std::snprintf(pitch, sizeof pitch, "%g", job.roof.pitch);
  facts["pitch"] = pitch;
  const bool gabled =
      std::any_of(settingOut.walls.begin(), settingOut.walls.end(),
                  [](const WallLine& wall) { return wall.eaves == EavesKind::Gable; });
  facts["gable-scaffold"] = gabled ? "go on up the gables as far as they need boards, " : "";
  facts["gable-boards"] = gabled ? ", and boards within reach of every gable's top" : "";
  facts["edge-boards"] = gabled ? "fascia and barge boards" : "fascia boards";
  facts["wall-top"] = levelText(levels.wallTop);
  facts["plate-top"] = levelText(levels.plateTop);
  facts["eaves"] = levelText(levels.eaves);
  facts["ridge"] = levelText(levels.ridge);
  std::vector<double> floors{levels.finishedFloor.empty() ? 0 : levels.finishedFloor.front()};
  if (job.cellar) floors.push_back(levels.cellarFinishedFloor);
  facts["finished-floors"] = levelsListed(floors);
}

}  // namespace

std::string withFacts(const char* text, const StageKey& key, const Job& job,
                      const SettingOut& settingOut) {
  Facts facts;
  addGround(facts, job, settingOut);
  addStorey(facts, key, job, settingOut);
  addRoof(facts, job, settingOut);
  const std::string words = text;
  std::string result;
  size_t from = 0;
  for (size_t open; (open = words.find('{', from)) != std::string::npos;) {
    const size_t close = words.find('}', open);
    result += words.substr(from, open - from);
    result += facts.at(words.substr(open + 1, close - open - 1));
    from = close + 1;
  }
  return result + words.substr(from);
}

std::vector<std::string> storeySlugs(const std::vector<Storey>& storeys) {
  std::vector<std::string> slugs;
  std::set<std::string> taken;
  for (size_t i = 0; i < storeys.size(); ++i) {
    std::string slug;
    for (char c : storeys[i].name) {
      if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
      const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
      if (plain)
        slug += c;
      else if (!slug.empty() && slug.back() != '-')
        slug += '-';
    }
    while (!slug.empty() && slug.back() == '-') slug.pop_back();
    constexpr std::string_view kFloor = "-floor";
    if (slug.size() > kFloor.size() && slug.ends_with(kFloor)) {
      slug.resize(slug.size() - kFloor.size());
    }
    if (slug.empty()) slug = "storey-" + std::to_string(i + 1);
    std::string unique = slug;
    for (int n = 2; !taken.insert(unique).second; ++n) unique = slug + "-" + std::to_string(n);
    slugs.push_back(unique);
  }
  return slugs;
}

}  // namespace model
