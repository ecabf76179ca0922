// Every level of the job, with where it comes from and what was read of it.
#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "model/designer/sheet_parts.h"
#include "model/walls/leaf_plan.h"

namespace model {

namespace {

constexpr double kSame = 5e-4;  // metres

// What a level follows from: the keys that say it, or, where none does or they are left out, those
// that it is worked out from.
struct Roots {
  std::vector<KeyRef> own, from;
  std::string words;  // how it is worked out
};

// "sill" of "sill:kitchen window", "formation" of "formation 2".
std::string familyOf(const std::string& key) { return key.substr(0, key.find_first_of(": ")); }

size_t numberOf(const std::string& key) {
  const size_t colon = key.find(':');
  return colon == std::string::npos ? 0 : size_t(std::atoi(key.c_str() + colon + 1));
}

// Whose sill or head a line of the schedule is; those that share a level share the line.
std::vector<size_t> openingsAt(const SettingOut& out, const ScheduledLevel& level) {
  const std::string family = familyOf(level.key);
  std::vector<size_t> openings;
  if (family != "sill" && family != "head") return openings;
  for (size_t i = 0; i < out.openings.size(); ++i) {
    const double its = family == "head" ? out.openings[i].head : out.openings[i].sill;
    if (std::lround(its * 1e4) == std::lround(level.level * 1e4)) openings.push_back(i);
  }
  return openings;
}

class LevelRoots {
 public:
  explicit LevelRoots(const SheetData& data) : data_(data), job_(data.model.job) {}

  Roots of(const ScheduledLevel& level) const {
    const std::string family = familyOf(level.key);
    if (family == "sill" || family == "head") return openings(level, family);
    if (family == "ground-high" || family == "ground-low") return ground();
    if (family == "top-of-concrete") return concrete(level);
    if (family == "blinding" || family == "formation") return underConcrete(family);
    if (family.starts_with("cellar-")) return cellar(family);
    if (family == "ridge" || family == "eaves" || family.ends_with("-top")) return roof(family);
    return floors(family, numberOf(level.key));
  }

 private:
  using Keys = std::vector<KeyRef>;

  // The keys, and what they rest on themselves where they are left out.
  Keys dampCourse() const { return {{"walls", "damp_course"}, {"storey", "floor", 0}}; }
  Keys plateBed() const {
    return joined({{"walls", "top"}, {"storey", "floor", job_.storeys.size() - 1}}, dampCourse());
  }
  static Keys joined(Keys a, const Keys& b) {
    a.insert(a.end(), b.begin(), b.end());
    return a;
  }
  Keys spots() const { return {{"site.spots", "level", 0}}; }
  // The general level of the concrete, with what it is worked out from.
  Keys generalConcrete() const {
    return joined(joined({{"foundations", "top"},
                          {"foundations", "kind"},
                          {"foundations", "thickness"},
                          {"foundations", "blinding"},
                          {"ground", "good_ground"}},
                         dampCourse()),
                  spots());
  }

  Roots openings(const ScheduledLevel& level, const std::string& family) const {
    Roots roots;
    const SettingOut& out = data_.model.settingOut;
    for (const size_t i : openingsAt(out, level)) {
      const BuiltOpening& opening = out.openings[i];
      roots.own.push_back({"opening", family == "head" ? "head" : "sill", opening.jobIndex});
      roots.from.push_back({"storey", "floor", size_t(opening.storey)});
    }
    return roots;
  }

  Roots ground() const {
    Roots roots;
    if (job_.site.spots.empty())
      roots.own = spots();
    else
      roots.words = "from the spot levels given";
    return roots;
  }

  Roots concrete(const ScheduledLevel& level) const {
    Roots roots;
    for (size_t i = 0; i < job_.foundations.steps.size(); ++i)
      if (std::abs(job_.foundations.steps[i].top - level.level) < kSame)
        roots.own.push_back({"foundations.step", "top", i});
    if (!roots.own.empty()) return roots;
    roots.own.push_back({"foundations", "top"});
    roots.from = generalConcrete();
    return roots;
  }

  Roots underConcrete(const std::string& family) const {
    const bool formation = family == "formation";
    return {{},
            generalConcrete(),
            formation ? "under the concrete and its blinding" : "under the concrete"};
  }

  Roots cellar(const std::string& family) const {
    if (family == "cellar-floor") return {{{"cellar", "floor"}}, {}, ""};
    if (family == "cellar-wall-top") {
      Roots roots = floors("slab-underside", 0);
      roots.words = "the underside of the floor over it";
      return roots;
    }
    Keys keys{{"cellar", "floor"}, {"cellar", "make_up"}};
    if (family != "cellar-slab-top") keys.push_back({"cellar", "slab"});
    if (family == "cellar-formation") keys.push_back({"cellar", "blinding"});
    return {{}, keys, "down from the cellar's floor"};
  }

  Roots roof(const std::string& family) const {
    if (family == "wall-top") return {{{"walls", "top"}}, plateBed(), ""};
    Keys keys = joined(plateBed(), {{"roof", "plate_depth"}});
    if (family == "plate-top") return {{}, keys, "the plate on its bed"};
    keys = joined(keys, {{"roof", "pitch"}, {"walls", "outer_leaf"}, {"walls", "cavity"}});
    if (family == "outer-leaf-top") return {{}, keys, "whole courses, clear under the rafters"};
    keys = joined(keys, {{"roof", "eaves"}, {"roof", "rafter_depth"}, {"roof", "covering"}});
    if (family == "eaves") return {{}, keys, "from the plate down the pitch, over the covering"};
    return {{}, joined(keys, {{"roof.edge", "kind", 0}}), "from the eaves up the pitch"};
  }

  Roots floors(const std::string& family, size_t storey) const {
    if (family == "damp-course") return {{{"walls", "damp_course"}}, dampCourse(), ""};
    if (family == "finished-floor") return {{{"storey", "floor", storey}}, {}, ""};
    if (family == "lift") return {{}, plateBed(), "height of a lift, common practice"};
    if (family == "joist-bearing" || family == "ceiling" || storey > 0) {
      const size_t of = family == "ceiling" ? storey + 1 : storey;
      Keys keys{{"storey", "floor", of}, {"upper_floor", "finish"}};
      if (family != "structural-floor")
        keys = joined(keys, {{"upper_floor", "deck"}, {"upper_floor", "joist_depth"}});
      if (family == "ceiling") keys.push_back({"upper_floor", "ceiling"});
      return {{}, keys, "down from the finished floor"};
    }
    Keys keys{{"storey", "floor", 0}, {"ground_floor", "screed"}, {"ground_floor", "insulation"}};
    if (family != "structural-floor") keys.push_back({"ground_floor", "slab"});
    if (family == "oversite") keys.push_back({"ground_floor", "hardcore"});
    return {{}, keys, "down from the finished floor"};
  }

  const SheetData& data_;
  const Job& job_;
};

// Of openings that share a line where some are given and some are not.
std::string partlyWords(const SheetData& data, const std::vector<KeyRef>& own) {
  std::vector<std::string> given;
  for (const KeyRef& key : own) {
    if (!data.given.given(key)) continue;
    const auto& openings = data.model.settingOut.openings;
    for (size_t i = 0; i < openings.size(); ++i)
      if (openings[i].jobIndex == key.index)
        given.push_back(openingLabel(data.model.settingOut, i));
  }
  return "given for " + listedWords(given) + "; for the others: ";
}

// Lines of the job file, each once.
std::string linesOf(const SheetData& data, const std::vector<KeyRef>& keys) {
  std::vector<std::string> numbers;
  for (const KeyRef& key : keys) {
    std::string line = data.given.line(key);
    if (line.empty()) continue;
    line = line.substr(line.find(' ') + 1);
    if (std::find(numbers.begin(), numbers.end(), line) == numbers.end()) numbers.push_back(line);
  }
  if (numbers.empty()) return {};
  return (numbers.size() == 1 ? "line " : "lines ") + listedWords(numbers);
}

Source sourceOfLevel(const SheetData& data, const Roots& roots, const QuestionsOfKeys& asked) {
  Source source;
  const auto given =
      size_t(std::count_if(roots.own.begin(), roots.own.end(),
                           [&](const KeyRef& key) { return data.given.given(key); }));
  if (!roots.own.empty() && given == roots.own.size()) {
    source.words = linesOf(data, roots.own);
    return source;
  }
  for (const KeyRef& key : roots.own) restOn(data, key, asked, source);
  for (const KeyRef& key : roots.from) restOn(data, key, asked, source);
  if (roots.own.empty()) {
    source.origin = Origin::WorkedOut;
    source.words = roots.words;
    return source;
  }
  source.origin = Origin::Assumed;
  if (given > 0) source.words = partlyWords(data, roots.own);
  for (const KeyRef& key : roots.own) {
    if (data.given.given(key)) continue;
    source.words += std::string(key.table) == "site.spots"
                        ? "level ground 0.150 below 0.000: no spot levels are given"
                        : data.given.whenAbsent(key);
    break;
  }
  return source;
}

// The readings of a line of the schedule.
std::optional<LevelAsRead> asRead(const SheetData& data, const ScheduledLevel& level) {
  LevelAsRead found;
  const std::string family = familyOf(level.key);
  for (size_t i = 0; i < data.built.deviations.size(); ++i) {
    const Deviation& d = data.built.deviations[i];
    if (!d.latest || d.kind != ReadingKind::Level || familyOf(d.target) != family) continue;
    if (std::abs(d.design - level.level) > kSame) continue;
    if (d.target.find(':') != std::string::npos && numberOf(d.target) != numberOf(level.key))
      continue;
    if (found.readings == 0 ||
        std::abs(d.off) > std::abs(data.built.deviations[found.deviation].off))
      found.deviation = i;
    ++found.readings;
  }
  if (found.readings == 0) return std::nullopt;
  return found;
}

void addMarks(const SheetData& data, std::vector<SheetLevel>& levels) {
  const Site& site = data.model.job.site;
  const auto add = [&](const BenchMark& mark, const KeyRef& key) {
    SheetLevel level;
    level.key = "bench-mark:" + std::to_string(levels.size());
    level.name = "bench mark";
    level.where = mark.name;
    level.level = mark.level;
    level.source.words = data.given.line(key);
    levels.push_back(std::move(level));
  };
  if (site.benchMark) add(*site.benchMark, {"site.bench_mark", "level"});
  for (size_t i = 0; i < site.marks.size(); ++i) add(site.marks[i], {"site.mark", "level", i});
}

}  // namespace

std::vector<SheetLevel> sheetLevels(const SheetData& data, const QuestionsOfKeys& asked) {
  std::vector<SheetLevel> levels;
  addMarks(data, levels);
  const LevelRoots roots(data);
  for (const ScheduledLevel& line : data.model.settingOut.schedule) {
    SheetLevel level;
    level.key = line.key;
    level.name = line.name;
    level.where = line.where;
    level.level = line.level;
    level.openings = openingsAt(data.model.settingOut, line);
    level.source = sourceOfLevel(data, roots.of(line), asked);
    level.asRead = asRead(data, line);
    levels.push_back(std::move(level));
  }
  return levels;
}

}  // namespace model
