// The client's booklet, with the real typeface.
#include "model/drawing/client_booklet.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/drawing/client_words.h"
#include "model/programme/date_words.h"
#include "tests/model/drawing/booklet_sample.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

using namespace test_support;

Drawing bookletOf(const Model& model, bool pictures = true) {
  return drawClientBooklet(model, pictures ? anyPictures(model, 1204, 756) : StagePictures{}, {},
                           letters());
}

bool has(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

TEST(ClientBooklet, OfEveryDemoAndOfOddJobsIsTidy) {
  std::vector<Job> jobs{longWindedJob(), manyStagesJob(60), namelessJob()};
  for (const std::string& name : demoNames()) jobs.push_back(demoJob(name));
  for (const Job& job : jobs) {
    const Model model = buildModel(job);
    for (const bool pictures : {true, false})
      EXPECT_EQ(untidy(bookletOf(model, pictures)), "") << job.name.substr(0, 40);
  }
}

RC_GTEST_PROP(ClientBooklet, OfAnyJobIsTidyAndHasAPageForEachStage, ()) {
  const Model model = buildModel(*randomJob());
  const Drawing drawing = bookletOf(model);
  RC_ASSERT(untidy(drawing) == "");
  for (size_t i = 0; i < model.programme.stages.size(); ++i)
    RC_ASSERT(pageOf(drawing, model, i) != nullptr);
}

TEST(ClientBooklet, SaysWhereHolesAreCutIntoTheHouseThatStands) {
  for (const JunctionKind kind : {JunctionKind::Toothed, JunctionKind::StarterTies}) {
    Job job;
    job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
    StandingBuilding& house = job.site.buildings.emplace_back();
    house.name = "House";
    house.outline = {{-1, 4.49}, {6.74, 4.49}, {6.74, 10}, {-1, 10}};
    house.height = 1.5;  // no higher than the first lift
    job.junctions.push_back({"B-C", "C", "House", kind});
    const Model model = buildModel(job);
    for (size_t i = 0; i < model.programme.stages.size(); ++i) {
      const StageKey& key = model.programme.stages[i].key;
      const bool cut =
          kind == JunctionKind::Toothed && key.kind == StageKind::RaiseCorners && key.lift == 1;
      EXPECT_EQ(has(clientStage(model, i).notice, "Holes are cut into the wall"), cut)
          << model.programme.stages[i].name;
    }
  }
}

TEST(ClientBooklet, SaysWhatIsToBeDecidedByWhenInFrontAndOnThePage) {
  Job job = boxJob();
  StageOverride other;
  other.stage = "ground-slab";
  other.decision = "Where the stove stands";
  other.notice = "Lorries until noon";
  job.programme.stages.push_back(other);
  const Model model = buildModel(job);
  const Drawing drawing = bookletOf(model);
  const size_t stage = *model.programme.find("ground-slab");
  const std::string by = dateWords(model.programme.stages[stage].start);
  EXPECT_TRUE(has(wordsOf(drawing.sheets[0]), by + " Where the stove stands")) << by;
  const std::string page = wordsOf(*pageOf(drawing, model, stage));
  EXPECT_TRUE(has(page, "Please decide by " + by + " Where the stove stands."));
  EXPECT_TRUE(has(page, "Lorries until noon"));
  EXPECT_FALSE(has(page, "Nothing is to be decided"));
  EXPECT_TRUE(has(wordsOf(*pageOf(drawing, model, 0)), "Nothing is to be decided for this stage."));
}

TEST(ClientBooklet, WithoutDatesDecisionsAreWantedBeforeTheirStage) {
  Job job = namelessJob();
  StageOverride other;
  other.stage = "completion";
  other.decision = "Who gets the keys?";
  job.programme.stages.push_back(other);
  const Model model = buildModel(job);
  const size_t stage = *model.programme.find("completion");
  EXPECT_TRUE(has(wordsOf(*pageOf(bookletOf(model), model, stage)),
                  "before stage " + std::to_string(stage + 1) + " begins Who gets the keys?"));
}

// Words that the trade knows and its clients do not.
TEST(ClientBooklet, ExplainsItselfWithoutTheTradesWords) {
  for (const std::string& name : demoNames()) {
    const Model model = buildModel(demoJob(name));
    for (size_t i = 0; i < model.programme.stages.size(); ++i) {
      const ClientStage words = clientStage(model, i);
      for (const std::string& text : {words.title, words.what, words.notice, words.atEnd}) {
        EXPECT_FALSE(text.empty()) << model.programme.stages[i].id;
        EXPECT_EQ(text.find('{'), std::string::npos) << text;
        for (const char* jargon :
             {"formation", "oversite", "lintel", "damp course", "blinding", "wall plate", "rafter",
              "soffit", "lift ", "leaf", "leaves ", "course ", "hold point", "screed", "gauge"})
          EXPECT_FALSE(has(text, jargon)) << text;
      }
    }
  }
}

TEST(ClientBooklet, SpeaksOfPanelsOnlyWhereTheCellarIsCastBetweenThem) {
  for (const CellarWallKind kind :
       {CellarWallKind::Concrete, CellarWallKind::FilledCavity, CellarWallKind::HollowBlock}) {
    Job job = demoJob("orchard-house");
    job.cellar->kind = kind;
    const Model model = buildModel(job);
    bool panels = false, blocks = false;
    for (size_t i = 0; i < model.programme.stages.size(); ++i) {
      const StageKind stage = model.programme.stages[i].key.kind;
      if (stage != StageKind::CellarForms && stage != StageKind::CellarWalls) continue;
      const ClientStage words = clientStage(model, i);
      const std::string all = words.title + words.what + words.notice + words.atEnd;
      panels = panels || has(all, "anels") || has(all, "Mould");
      blocks = blocks || has(all, "blocks");
      for (const char* jargon : {"leaf", "leaves ", "course ", "lift ", "cores"})
        EXPECT_FALSE(has(all, jargon)) << all;
    }
    EXPECT_EQ(panels, kind == CellarWallKind::Concrete);
    EXPECT_EQ(blocks, kind != CellarWallKind::Concrete);
  }
}

TEST(ClientBooklet, NamesTheStepsOfAStoreysWalls) {
  const Model model = buildModel(demoJob("orchard-house"));
  EXPECT_EQ(clientStage(model, *model.programme.find("run-in-ground-2")).title,
            "The walls of the ground floor, step 2 of 3");
  EXPECT_EQ(clientStage(model, *model.programme.find("floor-first")).title,
            "The floor of the first floor");
}

TEST(ClientBooklet, LeavesOutHoldPoints) {
  const Model model = buildModel(demoJob("orchard-house"));
  for (const Sheet& sheet : bookletOf(model).sheets) {
    EXPECT_FALSE(has(wordsOf(sheet), "Building control"));
    EXPECT_FALSE(has(wordsOf(sheet), "HOLD POINT"));
  }
}

TEST(ClientBooklet, KeepsTheNameOfTheJobsOwnStages) {
  Job job = boxJob();
  job.programme.ownStages.push_back({"Küche einbauen 台所", "ground-slab", 2});
  const Model model = buildModel(job);
  const Drawing drawing = bookletOf(model);
  bool found = false;
  for (const Sheet& sheet : drawing.sheets) found = found || says(sheet, "Küche einbauen 台所");
  EXPECT_TRUE(found);
}

}  // namespace
}  // namespace model
