// No key of a job file is dead: each changes something that is handed on, in a job that uses it.
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <set>

#include "model/exchange/bond_tables.h"
#include "model/exchange/glb.h"
#include "model/exchange/line_tables.h"
#include "model/exchange/loading_table.h"
#include "model/exchange/programme_tables.h"
#include "model/exchange/reading_tables.h"
#include "model/exchange/report_table.h"
#include "model/exchange/tables.h"
#include "model/job/key_table.h"
#include "model/job/read_job.h"
#include "model/programme/calendar.h"
#include "tests/support/demo_job.h"

namespace model {
namespace {

// Where the sun stands, and from where a stage is looked at, are only drawn.
const std::set<std::string> kOnlyDrawn{"site.latitude", "site.north", "programme.view"};

// Where a wall ends and what it meets there: one cannot be changed without the other.
const std::set<std::string> kOnlyTogether{"junction.wall", "junction.corner", "junction.building"};

// Tables of keys that the setting out hands on, in tables of its own.
const std::set<std::string> kOfTheLines{"site.bench_mark", "site.mark", "site.grid", "setting_out",
                                        "limit"};
// Where it was read from and what was read, which is told apart from what is built.
const std::set<std::string> kOfTheReadings{"set_up", "readings", "tolerance", "question"};

std::string pathOf(const KeySpec& key) { return std::string(key.table) + "." + key.name; }

std::string outputs(const Job& job) {
  const Model model = buildModel(job);
  std::string all;
  for (const Table& table : {levelsTable(model), takeoffTable(model, true), stagesTable(model)}) {
    all += write(table, TableStyle::Json) + write(table, TableStyle::People);
  }
  for (const TablePart& part : bondParts(model, deriveDryBond(job, model.settingOut)))
    all += write(part.table, TableStyle::Json);
  return all + write(loadingPart(model).table, TableStyle::Json) + glbBytes(model);
}

// What each set-up reads, and what each reading comes to.
std::string readingsHandedOn(const Job& job) {
  const Model model = buildModel(job);
  const SetOutLines lines = deriveLines(job, model.settingOut);
  std::string all;
  for (const SetUp& setUp : job.setUps) {
    all += write(levelsTable(model, setUp), TableStyle::Json) + levelsTable(model, setUp).title +
           write(pegsTable(model, lines, &setUp), TableStyle::Json);
  }
  const AsBuilt built = deriveAsBuilt(job, model.settingOut);
  for (const ReadingPart& part : readingParts(job, model.settingOut, built)) {
    all += write(part.table, TableStyle::Json);
    for (const std::string& words : part.words) all += words;
  }
  return all + write(reportTable(job, built), TableStyle::Json) + glbBytes(model);
}

std::string linesHandedOn(const Job& job) {
  const Model model = buildModel(job);
  const SetOutLines lines = deriveLines(job, model.settingOut);
  std::string all = write(pegsTable(model, lines), TableStyle::Json) + glbBytes(model);
  for (const LinePart& part : lineParts(model, lines)) all += write(part.table, TableStyle::Json);
  return all;
}

// Dates, events and the stages with all that is said of them.
std::string programmeHandedOn(const Job& job) {
  const Model model = buildModel(job);
  std::string all = write(stagesTable(model), TableStyle::Json);
  for (const TablePart& part : {datesPart(model), eventsPart(model), ratesPart(model)}) {
    all += write(part.table, TableStyle::Json);
    for (const std::string& words : part.words) all += words;
  }
  for (const Stage& stage : model.programme.stages) all += stage.notice + "\n";
  if (const auto start = dayNumber(job.programme.start))
    all += write(lookAheadPart(model, *start, 60).table, TableStyle::Json);
  return all;
}

// A job that says all that can be said of its programme.
Job plannedJob(const Job& from) {
  Job job = from;
  job.programme.start = "2027-01-04";
  job.programme.exceptions = {{"2027-01-11", "2027-01-12", 4, "Shut"}};
  for (int month = 1; month <= 12; ++month) job.programme.months.push_back({month, 10.0, 2});
  const auto changed = [&](const char* stage, const auto& set) {
    job.programme.stages.emplace_back();
    job.programme.stages.back().stage = stage;
    set(job.programme.stages.back());
  };
  job.programme.stages.clear();
  changed("dig-cellar", [](StageOverride& c) {
    c.name = "Dig it";
    c.perDay = 20;
    c.waitDays = 2;
    c.crew = "Diggers";
    c.holdPoint = "Look";
    c.note = "Narrow";
    c.notice = "Lorries";
    c.decision = "Which";
  });
  changed("floor-finish", [](StageOverride& c) { c.follows = "windows-and-doors"; });
  changed("lines-back", [](StageOverride& c) { c.with = "pour-foundations"; });
  changed("rafters", [](StageOverride& c) { c.days = 4; });
  changed("site-set-up", [](StageOverride& c) {
    c.started = "2027-01-04";
    c.percent = 50;
  });
  changed("demolish", [](StageOverride& c) { c.finished = "2027-01-06"; });
  job.programme.splits = {{"run-in-ground-1", "A-B", "One side"}};
  job.programme.ownStages = {{"Drains", "backfill-trenches", 2}};
  job.programme.links = {
      {"floor-finish", "outside-works", LinkKind::FinishStart, 3, LagKind::Working},
      {"windows-and-doors", "outside-works", LinkKind::FinishStart, 60, LagKind::Calendar}};
  job.programme.deliveries = {{"Bricks", "corners-ground-1", 3}};
  return job;
}

// Jobs that between them use every key: the demonstration, as it is and built otherwise.
std::vector<Job> jobs() {
  const Job demo = test_support::demoJob("orchard-house");
  std::vector<Job> all{demo};
  // One reading is held against nothing, which names its file.
  all[0].readings[0].rows.push_back(all[0].readings[0].rows[0]);
  all[0].readings[0].rows.back().at = "pin 999";
  Job& render = all.emplace_back(demo);
  render.walls.render = 0.020;
  render.stairs.pop_back();  // along a wall of the cellar, which it would not let be moved
  Job& battered = all.emplace_back(demo);
  battered.ground.batter = 60;
  battered.foundations.blinding = 0.050;
  Job& open = all.emplace_back(demo);  // levels left to be worked out
  open.foundations = Foundations{};
  open.walls.top.reset();
  open.walls.dampCourse.reset();
  open.cellar.reset();
  open.stairs.pop_back();     // from it
  open.setUps.clear();        // and marks that no set-up names
  open.settingOut.tape = 12;  // shorter than the longest diagonal
  Job& deep = all.emplace_back(open);
  deep.foundations.kind = FoundationKind::TrenchFill;
  Job& plain = all.emplace_back();  // steps and edges as the defaults have them
  plain.outline = {{0, 0}, {9, 0}, {9, 6}, {0, 6}};
  plain.site.benchMark = BenchMark{"Gate pier", {-12, -12}, 0.2};  // without a boundary
  plain.foundations.top = -0.975;
  plain.foundations.steps = {{"A-B", 2, 6, -1.2}};
  plain.airBricks = {{"A-B", "B", 3.4, -0.077}};
  plain.roof.edges = {{"D-A", EavesKind::Gable}, {"B-C", EavesKind::Gable, 0.225}};
  plain.movementJoints = {{"A-B", "B", 2.6, 0.016}};
  StageOverride& strip = plain.programme.stages.emplace_back();
  strip.stage = "strip";
  strip.name = "Strip";
  strip.days = 3;
  strip.note = "Keep it";
  GardenWall& garden = plain.gardenWalls.emplace_back();
  garden.line = {{-6, -8}, {-0.15, -8}};
  garden.pierBricks = 1.5;
  garden.pierEvery = 2.4;
  garden.corbelCourses = 1;
  GardenWall& thin = plain.gardenWalls.emplace_back();
  thin.line = {{-6, -11}, {-0.15, -11}};
  thin.bricks = 0.5;
  for (const JunctionKind kind : {JunctionKind::StarterTies, JunctionKind::Toothed}) {
    Job& joined = all.emplace_back();
    joined.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
    StandingBuilding house;
    house.name = "House";
    house.outline = {{-1, 4.49}, {6.74, 4.49}, {6.74, 10}, {-1, 10}};
    house.height = 5;
    joined.site.buildings.push_back(house);
    joined.cavityBarriers = {{"A-B", "A", 2.1, std::nullopt, 0.1},
                             {"D-A", "D", std::nullopt, 1.05, 0.1}};
    joined.dampCourseSteps = {{"A-B", "B", 1.2, 2.2, 2}};
    joined.corbels = {{"A-B", 1.8, 2, 0.006}, {"D-A", 1.8, 2, 0.006}};
    joined.junctions.push_back({"B-C", "C", "House", kind});
  }
  for (const CellarWallKind kind : {CellarWallKind::FilledCavity, CellarWallKind::HollowBlock}) {
    Job& blocks = all.emplace_back();
    blocks.outline = {{0, 0}, {9, 0}, {9, 6}, {0, 6}};
    blocks.cellar = Cellar{};
    blocks.cellar->kind = kind;
    blocks.cellar->wall = 0.390;
  }
  // Storeys whose names the texts to try have.
  Job& stacked = all.emplace_back();
  stacked.outline = {{0, 0}, {9, 0}, {9, 6}, {0, 6}};
  stacked.storeys = {{"A", 0}, {"B", 2.7}, {"3", 5.4}};
  Stair& flight = stacked.stairs.emplace_back();
  flight.foot = {2, 1.2};
  flight.up = "A-B";
  flight.risers = 14;
  flight.well = 2.7;
  // Piers in no brick size, and an upper window 90 beside the one below it.
  Job& askew = all.emplace_back();
  askew.outline = {{0, 0}, {9.03, 0}, {9.03, 6.05}, {0, 6.05}};
  askew.storeys = {Storey{}, Storey{"First floor", 2.7}};
  askew.openings = {{"Below", OpeningKind::Window, "A-B", "A", 1.790, 0.910, {}, {}},
                    {"Above", OpeningKind::Window, "A-B", "A", 1.880, 0.910, {}, {}}};
  askew.openings[1].storey = 1;
  askew.roof.edges = {{"D-A", EavesKind::Gable}};
  return all;
}

void shift(double& number, double by) { number += by; }
void shift(std::optional<double>& number, double by) { number = number.value_or(0) + by; }

// Moves what lies furthest west, south, east or north.
void moveASide(Outline& outline, int which) {
  const auto reach = [&](const Vec2& p) {
    const double along = which % 2 == 0 ? p.x : p.y;
    return which % 4 < 2 ? -along : along;
  };
  double most = -1e300;
  for (const Vec2& p : outline) most = std::max(most, reach(p));
  for (Vec2& p : outline) {
    if (reach(p) < most - 1e-6) continue;
    p += which % 2 == 0 ? Vec2{0.1, 0} : Vec2{0, 0.1};
  }
}

// Other values that the key may take, written to `slot`; false when there are no more.
bool change(const KeySpec& key, const Slot& slot, int attempt) {
  static constexpr double kSteps[] = {0.075, -0.075, 0.01, -0.01, 0.45, -0.45, 1, -1, 5, -5};
  const bool numeric =
      std::holds_alternative<double*>(slot) || std::holds_alternative<std::optional<double>*>(slot);
  if (numeric) {
    if (attempt >= static_cast<int>(std::size(kSteps))) return false;
    if (auto* plain = std::get_if<double*>(&slot)) shift(**plain, kSteps[attempt]);
    if (auto* maybe = std::get_if<std::optional<double>*>(&slot)) shift(**maybe, kSteps[attempt]);
    return true;
  }
  if (key.kind == ValueKind::Choice) {
    if (attempt >= static_cast<int>(choicesOf(key).size())) return false;
    setChoice(slot, attempt);
    return true;
  }
  static const std::vector<std::string> kTexts{
      "Another",         "A-B",         "B-C",     "A",          "B", "3", "Nail in kerb", "cellar",
      "cellar-slab-top", "another.csv", "rafters", "site-set-up"};
  if (attempt >= static_cast<int>(kTexts.size())) return false;
  const std::string& text = kTexts[static_cast<size_t>(attempt)];
  if (key.kind == ValueKind::Date) {
    **std::get_if<std::string*>(&slot) = "2031-05-12";
  } else if (auto* plain = std::get_if<std::string*>(&slot)) {
    **plain = text;
  } else if (auto* maybe = std::get_if<std::optional<std::string>*>(&slot)) {
    **maybe = text;
  } else if (auto* whole = std::get_if<int*>(&slot)) {
    if (key.kind == ValueKind::Count)
      **whole = attempt + 1;
    else
      **whole = **whole == 0 ? 1 : 0;  // a storey
  } else if (auto* point = std::get_if<Vec2*>(&slot)) {
    **point += Vec2{0.1, 0.05};
  } else if (auto* outline = std::get_if<Outline*>(&slot)) {
    if ((*outline)->empty()) return false;
    moveASide(**outline, attempt);
  }
  return true;
}

using HandOn = std::function<std::string(const Job&)>;

bool changesSomething(const KeySpec& key, const std::vector<Job>& all,
                      const std::vector<std::string>& before, const HandOn& handOn) {
  for (size_t i = 0; i < all.size(); ++i) {
    const size_t count = findTable(key.table)->count(all[i]);
    for (size_t item = 0; item < count; ++item) {
      for (int attempt = 0;; ++attempt) {
        Job job = all[i];
        if (!change(key, key.slot(job, item), attempt)) break;
        if (hasErrors(validateJob(job, "", {})) || sameJob(job, all[i])) continue;
        if (handOn(job) != before[i]) return true;
      }
    }
  }
  return false;
}

// Sanitizers make every key a matter of minutes: with them, every eighth.
#ifdef STRINGCOURSE_SANITIZED
constexpr size_t kEvery = 8;
#else
constexpr size_t kEvery = 1;
#endif

TEST(EveryKey, ChangesSomethingThatIsHandedOn) {
  const std::vector<Job> all = jobs();
  const std::vector<Job> planned{plannedJob(all[0])};
  std::vector<std::string> before, linesBefore, readingsBefore;
  const std::vector<std::string> plannedBefore{programmeHandedOn(planned[0])};
  for (const Job& job : all) {
    for (const Problem& problem : validateJob(job, "", {})) {
      EXPECT_NE(problem.severity, Severity::Error) << format(problem);
    }
    before.push_back(outputs(job));
    linesBefore.push_back(linesHandedOn(job));
    readingsBefore.push_back(readingsHandedOn(job));
  }
  size_t place = 0;
  for (const KeySpec& key : keyTable()) {
    if (place++ % kEvery != 0) continue;
    if (kOnlyDrawn.count(pathOf(key)) || kOnlyTogether.count(pathOf(key))) continue;
    if (kOnlyDrawn.count(pathOf(key)) || kOnlyDrawn.count(key.table)) continue;
    const bool lines = kOfTheLines.count(key.table) > 0;
    if (std::string_view(key.table).starts_with("programme")) {
      EXPECT_TRUE(changesSomething(key, planned, plannedBefore, programmeHandedOn)) << pathOf(key);
      continue;
    }
    const bool readings = kOfTheReadings.count(key.table) > 0;
    EXPECT_TRUE(readings ? changesSomething(key, all, readingsBefore, readingsHandedOn)
                : lines  ? changesSomething(key, all, linesBefore, linesHandedOn)
                         : changesSomething(key, all, before, outputs))
        << pathOf(key);
  }
}

}  // namespace
}  // namespace model
