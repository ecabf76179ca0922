// The designer's sheet, with the real typeface.
#include "model/drawing/designer_sheet.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <map>
#include <set>

#include "model/checks/check_building.h"
#include "model/exchange/designer_table.h"
#include "tests/model/drawing/booklet_sample.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"
#include "tests/support/random_readings.h"

namespace model {
namespace {

using namespace test_support;

struct Made {
  Model model;
  AsBuilt built;
  DesignerSheetFacts facts;
  Drawing drawing;

  explicit Made(const Job& job, const KeyPlaces& places = {})
      : model(buildModel(job)), built(deriveAsBuilt(job, model.settingOut)) {
    facts =
        designerSheetFacts(model, built, places, checkBuilding(job, model.settingOut, "", places));
    drawing = drawDesignerSheet(model, built, facts, {"2027-03-01"}, letters());
  }
  std::string words() const {
    std::string all;
    for (const Sheet& sheet : drawing.sheets) all += wordsOf(sheet);
    return all;
  }
  bool has(const std::string& some) const { return words().find(some) != std::string::npos; }
  const SheetQuestion* about(const std::string& what) const {
    for (const SheetQuestion& question : facts.questions)
      if (question.about == what) return &question;
    return nullptr;
  }
  const SheetLevel& level(const std::string& key) const {
    for (const SheetLevel& each : facts.levels)
      if (each.key == key) return each;
    throw std::runtime_error("no level " + key);
  }
};

Made madeOf(const std::string& text) {
  ReadResult read = readJob(text, "job.toml");
  if (!read.job) throw std::runtime_error(format(read.problems.front()));
  return Made(*read.job, read.places);
}

constexpr const char* kOutline =
    "[outline]\ncorners = [[0, 0], [6740, 0], [6740, 4490], [0, 4490]]\n";

// How often a word stands by itself in a table.
std::map<std::string, int> cellsOf(const Drawing& drawing) {
  std::map<std::string, int> cells;
  for (const Sheet& sheet : drawing.sheets)
    for (const Text& text : sheet.texts)
      if (text.layer == Layer::Tables && !text.bold) ++cells[text.text];
  return cells;
}

// What is wrong with it; empty when every row is there once.
std::string notOnce(const Made& made) {
  std::set<std::string> keys, asked;
  for (const SheetLevel& level : made.facts.levels)
    if (!keys.insert(level.key).second) return "twice " + level.key;
  for (const ScheduledLevel& level : made.model.settingOut.schedule)
    if (!keys.count(level.key)) return "no " + level.key;
  // What is assumed is asked.
  for (const SheetLevel& level : made.facts.levels)
    if (level.source.origin == Origin::Assumed && level.source.questions.empty())
      return "not asked: " + level.key;
  for (const SheetDimension& each : made.facts.dimensions)
    if (each.source.origin == Origin::Assumed && each.source.questions.empty())
      return "not asked: " + each.part + " " + each.what;
  if (made.facts.openings.size() != made.model.settingOut.openings.size()) return "openings";
  std::set<size_t> openings;
  for (const SheetOpening& opening : made.facts.openings)
    if (!openings.insert(opening.opening).second) return "an opening twice";
  size_t number = 0;
  for (const SheetQuestion& question : made.facts.questions) {
    if (question.number != ++number) return "a number";
    if (!asked.insert(question.about + "|" + question.text).second) return "asked twice";
    if (question.text.empty() || question.about.empty()) return "an empty question";
    if (question.stage && *question.stage >= made.model.programme.stages.size()) return "a stage";
  }
  const auto cells = cellsOf(made.drawing);
  const auto once = [&](const std::string& name) {
    const auto found = cells.find(name);
    return found != cells.end() && found->second == 1;
  };
  for (size_t i = 1; i <= made.facts.levels.size(); ++i)
    if (!once("L" + std::to_string(i))) return "L" + std::to_string(i);
  for (size_t i = 1; i <= made.facts.openings.size(); ++i)
    if (!once("O" + std::to_string(i))) return "O" + std::to_string(i);
  for (size_t i = 1; i <= number; ++i)
    if (!once("Q" + std::to_string(i))) return "Q" + std::to_string(i);
  return "";
}

TEST(DesignerSheet, OfEveryDemoAndOfOddJobsIsTidyAndHasEveryRowOnce) {
  std::vector<Job> jobs{longWindedJob(), manyStagesJob(60), namelessJob()};
  for (const std::string& name : demoNames()) jobs.push_back(demoJob(name));
  for (const Job& job : jobs) {
    const Made made(job);
    EXPECT_EQ(untidy(made.drawing), "") << job.name.substr(0, 40);
    EXPECT_EQ(notOnce(made), "") << job.name.substr(0, 40);
    const size_t pages = made.drawing.sheets.size();
    for (size_t i = 0; i < pages; ++i)
      EXPECT_TRUE(
          says(made.drawing.sheets[i], std::to_string(i + 1) + " of " + std::to_string(pages)));
  }
}

RC_GTEST_PROP(DesignerSheet, OfAnyJobHasEveryLevelAndOpeningOnceAndNoQuestionTwice, ()) {
  const Made made(*randomJob());
  RC_ASSERT(untidy(made.drawing) == "");
  RC_ASSERT(notOnce(made) == "");
}

RC_GTEST_PROP(DesignerSheet, OfAnyReadingsTellsAllThatAreOut, ()) {
  RandomReadings drawn = randomReadings(*rc::gen::inRange<unsigned>(0, 100000));
  drawn.job.site.benchMark = BenchMark{"Peg", {-1, -1}, 0.1};
  ReadingSet set;
  set.name = "Drawn";
  set.rows = drawn.rows;
  drawn.job.readings = {set};
  const Made made(drawn.job);
  RC_ASSERT(untidy(made.drawing) == "");
  RC_ASSERT(notOnce(made) == "");
  size_t out = 0;
  for (const Deviation& d : made.built.deviations) out += d.latest && d.verdict == Verdict::Out;
  RC_ASSERT(made.facts.off.size() == out);
  const auto cells = cellsOf(made.drawing);
  for (const OffReading& off : made.facts.off) {
    const Deviation& d = made.built.deviations[off.deviation];
    RC_ASSERT(cells.count("R" + std::to_string(d.row + 1)) == 1);
    RC_ASSERT(!off.touches.empty());
  }
}

TEST(DesignerSheet, TellsGivenFromWorkedOutFromAssumed) {
  const Made made =
      madeOf(std::string(kOutline) + "[walls]\ndamp_course = -0.150\n[roof]\npitch = 35\n");
  const auto& damp = made.level("damp-course").source;
  EXPECT_EQ(damp.origin, Origin::Given);
  EXPECT_EQ(damp.words, "line 4");
  EXPECT_TRUE(damp.questions.empty());
  EXPECT_EQ(made.level("ridge").source.origin, Origin::WorkedOut);
  const auto& plate = made.level("wall-top").source;
  EXPECT_EQ(plate.origin, Origin::Assumed);
  EXPECT_NE(plate.words.find("the last storey's floor + 2.400"), std::string::npos) << plate.words;
  // What rests on it says so, by the number of the question.
  const SheetQuestion* asked = made.about("Wall plate");
  ASSERT_TRUE(asked);
  for (const char* key : {"wall-top", "plate-top", "ridge", "eaves"}) {
    const auto& of = made.level(key).source.questions;
    EXPECT_NE(std::find(of.begin(), of.end(), asked->number), of.end()) << key;
  }
  const auto& floor = made.level("finished-floor:0").source.questions;
  EXPECT_EQ(std::find(floor.begin(), floor.end(), asked->number), floor.end());
  for (const SheetDimension& each : made.facts.dimensions) {
    if (each.what == "pitch") {
      EXPECT_EQ(each.value, "35\u00b0");
      EXPECT_EQ(each.source.origin, Origin::Given);
    }
    if (each.what == "through both leaves") {
      EXPECT_EQ(each.value, "302.5");
      EXPECT_EQ(each.source.origin, Origin::WorkedOut);
    }
    if (each.what == "cavity, with its insulation") {
      EXPECT_EQ(each.source.origin, Origin::Assumed);
    }
  }
}

TEST(DesignerSheet, AsksForWhatIsLeftOutAndNotForWhatIsGiven) {
  const Made bare = madeOf(kOutline);
  for (const char* about : {"The drawing", "Bench mark", "Ground before the work", "Foundations",
                            "Walls", "Damp course", "Slopes of the roof"})
    EXPECT_TRUE(bare.about(about)) << about;
  EXPECT_FALSE(bare.about("Cellar"));
  EXPECT_FALSE(bare.about("Upper floors"));
  const Made given = madeOf(
      std::string("[job]\ndrawing = \"12/3 A\"\n[site]\nbench_mark = { name = \"Peg\", at = [0, "
                  "-3000], level = 0.1 }\nspots = [{ at = [0, 0], level = -0.2 }]\n") +
      kOutline +
      "[walls]\ndamp_course = 0\nrender = 0\nbricks = \"UK\"\ncavity = 100\ninsulation = "
      "100\ninner_leaf = 100\n[roof]\npitch = 40\neaves = 300\n");
  for (const char* about : {"The drawing", "Bench mark", "Ground before the work", "Walls",
                            "Damp course", "Slopes of the roof"})
    EXPECT_FALSE(given.about(about)) << about;
  EXPECT_TRUE(given.about("Foundations"));
  EXPECT_EQ(given.facts.levels.front().key, "bench-mark:0");
  EXPECT_NE(bare.about("Foundations")->assumed.find("width 600"), std::string::npos);
}

TEST(DesignerSheet, AnswersAreWantedByTheFirstStageThatRestsOnThem) {
  Job job = boxJob();
  const Made made(job);
  const SheetQuestion* walls = made.about("Walls");
  ASSERT_TRUE(walls && walls->stage);
  EXPECT_EQ(*walls->stage, *made.model.programme.find("set-out"));
  EXPECT_NE(
      wantedBy(made.model.programme, *walls).find(std::to_string(*walls->stage + 1) + ": Set out"),
      std::string::npos)
      << wantedBy(made.model.programme, *walls);
  size_t last = 0;
  for (const SheetQuestion& question : made.facts.questions) {
    if (!question.stage) continue;
    EXPECT_GE(*question.stage, last) << question.about;
    last = *question.stage;
  }
  EXPECT_EQ(wantedBy(made.model.programme, *walls).find("by "), 0u);
  job.programme.start = "";
  EXPECT_EQ(wantedBy(Made(job).model.programme, *walls).find("before stage "), 0u);
}

TEST(DesignerSheet, NumbersInARowAreTold) {
  EXPECT_EQ(numberRuns({}), "");
  EXPECT_EQ(numberRuns({4}), "4");
  EXPECT_EQ(numberRuns({1, 2}), "1, 2");
  EXPECT_EQ(numberRuns({1, 2, 3, 7, 9, 10, 11, 12}), "1 to 3, 7, 9 to 12");
}

TEST(DesignerSheet, OffersTheSmallMovesOfABrokenBond) {
  Job job = boxJob();
  Opening window;
  window.name = "Larder window";
  window.wall = "A-B";
  window.from = "A";
  window.at = 1.4;
  window.width = 0.95;
  job.openings.push_back(window);
  const Made made(job);
  const SheetQuestion* bond = made.about("Bond of wall A-B");
  ASSERT_TRUE(bond);
  EXPECT_TRUE(bond->at);
  EXPECT_NE(bond->text.find("Larder window"), std::string::npos);
  EXPECT_NE(bond->text.find("52.5 towards corner B (or 60 towards A)"), std::string::npos)
      << bond->text;
  EXPECT_NE(bond->text.find("40 narrower"), std::string::npos) << bond->text;
  EXPECT_TRUE(made.has("4 bricks, +40"));
}

TEST(DesignerSheet, SaysWhatWasReadWhatIsOutAndWhatItTouches) {
  const Made made(demoJob("orchard-house"));
  const auto& concrete = made.level("top-of-concrete").asRead;
  ASSERT_TRUE(concrete);
  EXPECT_GT(concrete->readings, 4u);
  EXPECT_EQ(made.facts.off.size(), 3u);
  for (const OffReading& off : made.facts.off)
    EXPECT_TRUE(made.has(made.built.deviations[off.deviation].place.words));
  // The job's own question, at its place, before anything that comes after the pour.
  const SheetQuestion* own = made.about("Top of concrete, corner E");
  ASSERT_TRUE(own);
  EXPECT_EQ(own->by, AskedBy::Job);
  ASSERT_TRUE(own->at && own->stage);
  EXPECT_GT(made.model.programme.stages[*own->stage].start, "2027-05-19");
  EXPECT_TRUE(made.has("May the first bed") || made.has("may the first bed"));
}

TEST(DesignerSheet, OfManyOpeningsInAnyScriptRepeatsItsHeadings) {
  Job job;
  job.name = "بيت الحجر, 東京の石";
  job.outline = {{0, 0}, {200, 0}, {200, 9}, {0, 9}};
  for (int i = 0; i < 140; ++i) {
    Opening opening;
    opening.name = (i % 2 ? "台所の窓 " : "نافذة ") + std::to_string(i);
    opening.wall = i % 2 ? "A-B" : "C-D";
    opening.from = i % 2 ? "A" : "C";
    const int pair = i / 2;
    opening.at = 1.4 + 2.7 * pair;
    opening.width = 0.91;
    job.openings.push_back(opening);
  }
  const Made made(job);
  EXPECT_EQ(untidy(made.drawing), "");
  EXPECT_EQ(notOnce(made), "");
  size_t pages = 0;
  for (const Sheet& sheet : made.drawing.sheets)
    if (says(sheet, "Openings, continued")) {
      ++pages;
      EXPECT_TRUE(says(sheet, "name") && says(sheet, "wall")) << wordsOf(sheet);
    }
  EXPECT_GE(pages, 2u);
  EXPECT_TRUE(made.has("台所の窓 7"));
}

TEST(DesignerTable, HasARowForEachAndNumbersThemAsTheSheetDoes) {
  const Made made(demoJob("orchard-house"));
  const Table table = designerTable(made.model, made.built, made.facts);
  std::map<std::string, size_t> rows;
  for (const auto& row : table.rows) {
    ASSERT_EQ(row.size(), table.columns.size());
    ++rows[row[0]];
    if (row[0] != "deviation") {
      EXPECT_EQ(row[1], std::to_string(rows[row[0]]));
    }
  }
  EXPECT_EQ(rows["level"], made.facts.levels.size());
  EXPECT_EQ(rows["dimension"], made.facts.dimensions.size());
  EXPECT_EQ(rows["opening"], made.facts.openings.size());
  EXPECT_EQ(rows["question"], made.facts.questions.size());
  EXPECT_EQ(rows["deviation"], made.facts.off.size());
}

}  // namespace
}  // namespace model
