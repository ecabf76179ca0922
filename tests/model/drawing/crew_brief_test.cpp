// The crew's brief of the demonstration jobs, of drawn ones and of odd ones, with the real
// typeface.
#include "model/drawing/crew_brief.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/decimal_text.h"
#include "model/drawing/stage_craft.h"
#include "model/level_text.h"
#include "model/programme/level_made.h"
#include "tests/model/drawing/booklet_sample.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

using namespace test_support;

Drawing briefOf(const Model& model, bool pictures = true) {
  return drawCrewBrief(model, pictures ? anyPictures(model, 864, 544) : StagePictures{},
                       {std::nullopt, "2027-03-01"}, letters());
}

bool has(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

TEST(CrewBrief, OfEveryDemoIsTidyWithAndWithoutPictures) {
  for (const std::string& name : demoNames()) {
    const Model model = buildModel(demoJob(name));
    for (const bool pictures : {true, false}) {
      const Drawing drawing = briefOf(model, pictures);
      EXPECT_EQ(untidy(drawing), "") << name;
      for (const Sheet& sheet : drawing.sheets) {
        EXPECT_EQ(sheet.width, 210) << name;
        EXPECT_EQ(sheet.height, 297) << name;
      }
    }
  }
}

TEST(CrewBrief, OfOddJobsIsTidy) {
  for (const Job& job : {longWindedJob(), manyStagesJob(60), namelessJob()}) {
    const Model model = buildModel(job);
    for (const bool pictures : {true, false})
      EXPECT_EQ(untidy(briefOf(model, pictures)), "") << job.name.substr(0, 40);
  }
}

RC_GTEST_PROP(CrewBrief, OfAnyJobIsTidyAndHasAPageForEachStage, ()) {
  const Model model = buildModel(*randomJob());
  const Drawing drawing = briefOf(model, *rc::gen::arbitrary<bool>());
  RC_ASSERT(untidy(drawing) == "");
  for (size_t i = 0; i < model.programme.stages.size(); ++i)
    RC_ASSERT(pageOf(drawing, model, i) != nullptr);
}

TEST(CrewBrief, HasSixtyStagesInItsContentsWithTheirPages) {
  const Model model = buildModel(manyStagesJob(60));
  ASSERT_EQ(model.programme.stages.size(), 60u);
  const Drawing drawing = briefOf(model);
  std::string contents;
  size_t before = 0;
  for (; !has(wordsOf(drawing.sheets.at(before)), "Stage 1 of 60"); ++before)
    contents += wordsOf(drawing.sheets[before]);
  ASSERT_EQ(drawing.sheets.size(), before + 60);
  for (size_t i = 0; i < 60; ++i) {
    EXPECT_TRUE(has(contents, std::to_string(i + 1) + " " + model.programme.stages[i].name));
    EXPECT_TRUE(says(drawing.sheets[before + i],
                     std::to_string(before + i + 1) + " of " + std::to_string(before + 60)));
  }
}

TEST(CrewBrief, HasEveryLevelThatComesToBeInAStageOnItsPage) {
  const Model model = buildModel(demoJob("orchard-house"));
  const Drawing drawing = briefOf(model);
  const auto times = timesOfLevels(model.settingOut, model.works, model.programme);
  size_t told = 0;
  for (size_t i = 0; i < times.size(); ++i) {
    if (times[i] <= 0 || times[i] >= kNever) continue;
    const auto stage = size_t(std::ceil(times[i] - 1e-9)) - 1;
    const Sheet* page = pageOf(drawing, model, stage);
    ASSERT_TRUE(page);
    EXPECT_TRUE(has(wordsOf(*page), levelText(model.settingOut.schedule[i].level)))
        << model.settingOut.schedule[i].name << " on " << model.programme.stages[stage].name;
    ++told;
  }
  EXPECT_GT(told, 20u);
}

// The line of the set-up in the cellar is at -0.905 + 1.500 = +0.595, so its bottom at -3.075 reads
// 3.670; that by the gate, at 0.185 + 1.240 = 1.425, is nearer an eye's height for the finished
// floor at 0.000 and reads 1.425.
TEST(CrewBrief, GivesWhatIsReadOnTheStaff) {
  const Model model = buildModel(demoJob("orchard-house"));
  const Drawing drawing = briefOf(model);
  const auto page = [&](const char* stage) {
    return wordsOf(*pageOf(drawing, model, *model.programme.find(stage)));
  };
  EXPECT_TRUE(has(page("dig-cellar"), "-3.075 3.670 Cellar")) << page("dig-cellar");
  EXPECT_TRUE(has(page("floor-finish"), "0.000 1.425 Site")) << page("floor-finish");
  // What stands on a floor is of no use before the floor is there.
  EXPECT_FALSE(has(page("floor-first"), " Plate "));
  EXPECT_TRUE(has(page("wall-plate"), " Plate, upside down")) << page("wall-plate");
}

TEST(CrewBrief, HasTheQuantitiesOfTheTakeoffByStage) {
  const Model model = buildModel(demoJob("orchard-house"));
  const Drawing drawing = briefOf(model);
  size_t told = 0;
  for (size_t i = 0; i < model.programme.stages.size(); ++i) {
    const std::string page = wordsOf(*pageOf(drawing, model, i));
    const bool cut = has(page, "takeoff --by-stage");
    size_t here = 0;
    for (const TakeoffRow& row : model.takeoff.byStage) {
      if (row.stage != model.programme.stages[i].name) continue;
      const int places = row.unit == "no." ? 0 : 2;
      const std::string words = row.item + " " + decimalText(row.amount, places) + " " +
                                decimalText(row.order, places) + " " + row.unit;
      if (has(page, words))
        ++here;
      else
        EXPECT_TRUE(cut) << words << "\n" << page;
    }
    told += here;
  }
  EXPECT_GT(told, 100u);
}

TEST(CrewBrief, SaysWhatIsThereBeforeAndAfterAndWhereBricksStand) {
  const Model model = buildModel(demoJob("orchard-house"));
  const Drawing drawing = briefOf(model);
  const size_t stage = *model.programme.find("corners-ground-2");
  const std::string page = wordsOf(*pageOf(drawing, model, stage));
  const auto& stages = model.programme.stages;
  EXPECT_TRUE(has(page, "After stage " + std::to_string(stage) + ": " + stages[stage - 1].atEnd));
  EXPECT_TRUE(has(page, stages[stage].what));
  EXPECT_TRUE(has(page, stages[stage].atEnd));
  EXPECT_TRUE(has(page, stages[stage].caution));
  EXPECT_TRUE(has(page, "Load out, by wall"));
  EXPECT_TRUE(has(page, "Never overload a scaffold"));
  // Corners of the second lift go from course 19 to 28: +2.100 of 75 a course.
  EXPECT_TRUE(has(page, "outer leaf 19 28 +2.100")) << page;
  const std::string ground =
      wordsOf(*pageOf(drawing, model, *model.programme.find("corners-ground-1")));
  EXPECT_FALSE(has(ground, "Never overload a scaffold")) << "there is none yet";
}

TEST(CrewBrief, ForSettingOutHasTheLinesAndTheTape) {
  const Model model = buildModel(demoJob("orchard-house"));
  const Drawing drawing = briefOf(model);
  const std::string page = wordsOf(*pageOf(drawing, model, *model.programme.find("set-out")));
  const FaceDistances& faces = model.settingOut.faceDistances;
  EXPECT_TRUE(has(page, "outer face 0 all"));
  EXPECT_TRUE(has(page, "inner face " + lengthText(faces.innerFace) + " inside all")) << page;
  EXPECT_TRUE(has(page, "foundation outer edge " + lengthText(-faces.foundationOuter) + " outside"))
      << page;
  EXPECT_TRUE(has(page, "side A-B 11240"));
  EXPECT_TRUE(has(page, "diagonal A-C 12772")) << "sqrt(11240^2 + 6065^2)";
}

TEST(CrewBrief, ForAStairHasTheFloorsItStandsBetween) {
  const Model model = buildModel(demoJob("orchard-house"));
  const std::string page =
      wordsOf(*pageOf(briefOf(model), model, *model.programme.find("stairs-first")));
  EXPECT_TRUE(has(page, "floor at the top: Main stair +2.700")) << page;
  EXPECT_TRUE(has(page, "floor at the foot: Main stair 0.000")) << page;
}

TEST(CrewBrief, OfOneStageIsOnePage) {
  const Model model = buildModel(demoJob("garage"));
  const size_t stage = *model.programme.find("pour-foundations");
  const Drawing drawing =
      drawCrewBrief(model, anyPictures(model, 864, 544), {stage, ""}, letters());
  ASSERT_EQ(drawing.sheets.size(), 1u);
  EXPECT_EQ(untidy(drawing), "");
  EXPECT_TRUE(pageOf(drawing, model, stage));
  EXPECT_TRUE(says(drawing.sheets[0], "1 of 1"));
  ASSERT_EQ(drawing.sheets[0].pictures.size(), 1u);
  EXPECT_NEAR(drawing.sheets[0].pictures[0].area.width(), kBriefPictureWidth, 1e-9);
}

TEST(CrewBrief, KeepsAPicturesProportions) {
  const Model model = buildModel(demoJob("smallest"));
  for (const auto& [width, height] : {std::pair{100, 400}, {400, 100}, {1, 1}}) {
    const Drawing drawing =
        drawCrewBrief(model, anyPictures(model, width, height), {0, ""}, letters());
    const Area area = drawing.sheets.at(0).pictures.at(0).area;
    EXPECT_NEAR(area.width() / area.height(), double(width) / height, 1e-9);
  }
}

TEST(CrewBrief, NeedsFormsOnlyForCellarWallsThatAreCastBetweenThem) {
  for (const CellarWallKind walls :
       {CellarWallKind::Concrete, CellarWallKind::FilledCavity, CellarWallKind::HollowBlock}) {
    Job job;
    job.cellar.emplace().kind = walls;
    std::string all;
    for (const StageKind stage : {StageKind::CellarForms, StageKind::CellarWalls}) {
      if (stage == StageKind::CellarForms && walls == CellarWallKind::HollowBlock) continue;
      const StageCraft* craft = craftOf(stage, job);
      ASSERT_TRUE(craft);
      all += std::string(craft->tools) + craft->plant;
      for (const auto& lines : {craft->order, craft->watch})
        for (const char* line : linesOf(lines)) all += line;
    }
    const bool cast = walls == CellarWallKind::Concrete;
    EXPECT_EQ(all.find("orms") != std::string::npos, cast) << all;
    EXPECT_EQ(all.find("lock") != std::string::npos, !cast) << all;
  }
}

TEST(CrewBrief, HasWordsOfPracticeForEveryKindOfStage) {
  for (const std::string& name : demoNames()) {
    const Model model = buildModel(demoJob(name));
    const Drawing drawing = briefOf(model);
    for (size_t i = 0; i < model.programme.stages.size(); ++i) {
      const std::string page = wordsOf(*pageOf(drawing, model, i));
      for (const char* part : {"Order of work", "Watch out", "Tools and plant"})
        EXPECT_TRUE(has(page, part)) << name << " " << model.programme.stages[i].id;
    }
  }
}

}  // namespace
}  // namespace model
