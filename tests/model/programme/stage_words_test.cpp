#include "model/programme/stage_words.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/model/programme/small_works.h"

namespace model {
namespace {

std::vector<StageKind> allKinds() {
  std::vector<StageKind> kinds;
  for (int k = static_cast<int>(StageKind::SiteSetUp); k <= static_cast<int>(StageKind::Completion);
       ++k) {
    kinds.push_back(static_cast<StageKind>(k));
  }
  return kinds;
}

std::string filled(const char* text, const StageKey& key, const Job& job, const SettingOut& out) {
  return StageFacts(job, out, Works{}).fill(text, key);
}

std::string everythingSaid(StageKind kind, const Job& job, const SettingOut& out) {
  const StageKey key{kind, 0, 1};
  std::string all;
  StageTraits beams, slab;
  beams.beamFloor = beams.slopedDig = beams.blinding = true;
  beams.besideCellar = beams.scaffold = true;
  slab.besideCellar = slab.scaffold = true;
  slab.scaffoldLifts = {{StageKind::ScaffoldLift, 0, 1}};
  beams.cellarWalls = CellarWallKind::FilledCavity;
  slab.cellarWalls = CellarWallKind::HollowBlock;
  for (const StageTraits& traits : {StageTraits{}, beams, slab}) {
    const StageWords& words = wordsFor(kind, traits);
    for (const char* text : {words.name, words.what, words.atEnd})
      all += filled(text, key, job, out) + " ";
    all += cautionFor(key, traits) + " " + holdPointFor(kind, traits) + " ";
  }
  return all;
}

TEST(StageWords, EveryKindHasANameItsWorkAndItsEnd) {
  std::set<std::string> ids;
  for (StageKind kind : allKinds()) {
    const StageWords& words = wordsFor(kind);
    EXPECT_STRNE(words.name, "");
    EXPECT_STRNE(words.what, "");
    EXPECT_STRNE(words.atEnd, "");
    EXPECT_TRUE(ids.insert(words.id).second) << words.id;
  }
}

TEST(StageWords, EveryNumberIsFilledIn) {
  for (StageKind kind : allKinds()) {
    EXPECT_EQ(everythingSaid(kind, Job{}, twoStoreys()).find_first_of("{}"), std::string::npos);
    EXPECT_EQ(everythingSaid(kind, Job{}, SettingOut{}).find_first_of("{}"), std::string::npos);
  }
}

TEST(StageWords, NothingIsPromisedAndNoProgrammersWordIsUsed) {
  for (StageKind kind : allKinds()) {
    std::string all = everythingSaid(kind, Job{}, twoStoreys());
    for (char& c : all) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    for (const char* word : {" safe", "guarantee", "entity", "mesh", "object", "approved"}) {
      EXPECT_EQ(all.find(word), std::string::npos) << word << " in: " << all;
    }
  }
}

TEST(StageWords, EveryCautionDefersToTheCompetent) {
  int cautions = 0;
  for (StageKind kind : allKinds()) {
    const std::string caution = cautionFor({kind});
    if (caution.empty()) continue;
    ++cautions;
    EXPECT_TRUE(caution.ends_with(
        "Reminder only: follow local law, your risk assessment and competent people."));
  }
  EXPECT_GE(cautions, 15);
}

TEST(StageWords, TheCrewReadsTheLevelsOfThisJob) {
  SettingOut out = twoStoreys();
  out.levels.cellarFormation = -3.075;
  FoundationRun deep, shallow, onWall;
  shallow.top = -0.975;
  deep.top = -1.2;
  onWall.top = -0.3;
  onWall.onCellar = true;
  out.foundations = {deep, shallow, deep, onWall};
  const Job job;
  EXPECT_NE(filled(wordsFor(StageKind::CellarDig).what, {StageKind::CellarDig}, job, out)
                .find("formation at -3.075"),
            std::string::npos);
  EXPECT_NE(filled(wordsFor(StageKind::FoundationPour).what, {StageKind::FoundationPour}, job, out)
                .find("top of concrete -0.975 and -1.200."),
            std::string::npos);
  EXPECT_NE(
      filled(wordsFor(StageKind::RaiseCorners).what, {StageKind::RaiseCorners, 0, 1}, job, out)
          .find("Raise the corners to +1.350, course 18"),
      std::string::npos);
}

TEST(StageWords, UnderTheEavesTheOuterLeafStopsLower) {
  SettingOut out = twoStoreys();
  out.levels.outerLeafTop = 4.875;
  const auto atEnd = [&](int storey, int lift) {
    return filled(wordsFor(StageKind::RunIn).atEnd, {StageKind::RunIn, storey, lift}, Job{}, out);
  };
  EXPECT_EQ(atEnd(1, 2),
            "Inner leaf level all round at +5.100, course 68; outer leaf at the eaves at +4.875.");
  EXPECT_EQ(atEnd(1, 1), "Both leaves level all round at +3.750, course 50.");
}

TEST(StageWords, KeepTheStoreysOwnSpelling) {
  Job job;
  job.storeys = {{"Ground Floor", 0}, {"\xc3\x89tage", 2.7}, {"ATTIC", 5.4}};
  const auto name = [&](int storey) {
    return filled(wordsFor(StageKind::RunIn).name, {StageKind::RunIn, storey, 1}, job,
                  twoStoreys());
  };
  EXPECT_EQ(name(0), "Run in the walls, lift 1, Ground Floor");
  EXPECT_EQ(name(1), "Run in the walls, lift 1, \xc3\x89tage");
  EXPECT_EQ(name(2), "Run in the walls, lift 1, ATTIC");
}

TEST(StageWords, HighLiftsAreWarnedOfWhatFallsAndLowOnesOfDust) {
  StageTraits traits;
  traits.scaffold = true;
  traits.scaffoldLifts = {{StageKind::ScaffoldLift, 0, 2}, {StageKind::ScaffoldLift, 1, 1}};
  const std::string low = cautionFor({StageKind::RunIn, 0, 1}, traits);
  const std::string high = cautionFor({StageKind::RunIn, 1, 1}, traits);
  EXPECT_NE(low.find("dust"), std::string::npos);
  EXPECT_NE(high.find("nobody below"), std::string::npos);
}

TEST(StageWords, EachLiftIsWorkedFromThePlatformThatWasPutUpForIt) {
  StageTraits traits;
  traits.scaffold = true;
  traits.scaffoldLifts = {{StageKind::ScaffoldLift, 0, 2}};
  const auto from = [&](int storey, int lift, const std::string& words) {
    return cautionFor({StageKind::RunIn, storey, lift}, traits).find("handed over for " + words) !=
           std::string::npos;
  };
  EXPECT_FALSE(from(0, 1, "")) << "from the ground";
  EXPECT_TRUE(from(0, 2, "this lift"));
  EXPECT_TRUE(from(0, 3, "lift 2"));
  EXPECT_TRUE(from(1, 1, "the lift under this storey"));
}

TEST(StageWords, WithoutScaffoldNobodyIsSentOntoOne) {
  StageTraits traits;
  for (const StageKind kind : {StageKind::Fascia, StageKind::WindowsAndDoors, StageKind::RunIn})
    EXPECT_EQ(cautionFor({kind, 1, 3}, traits).find("scaffold"), std::string::npos);
}

TEST(StageWords, BothLeavesLevelsAreSaidWhereTheyDiffer) {
  SettingOut out = twoStoreys();
  out.lifts = {{0, 1, 0, 1.35}, {0, 2, 1.35, 2.458}};
  out.levels.outerLeafTop = 5.1;
  const Job job;
  const auto said = [&](const char* text, StageKind kind, int lift) {
    return filled(text, {kind, 0, lift}, job, out);
  };
  const std::string corners =
      said(wordsFor(StageKind::RaiseCorners).what, StageKind::RaiseCorners, 2);
  EXPECT_NE(corners.find("to +2.400, course 32 (inner leaf +2.458)"), std::string::npos) << corners;
  const std::string run = said(wordsFor(StageKind::RunIn).what, StageKind::RunIn, 2);
  EXPECT_NE(run.find("up to +2.458 with the inner leaf and +2.400 with the outer"),
            std::string::npos)
      << run;
  EXPECT_NE(run.find("The joists bear at +2.458, which is no whole course"), std::string::npos);
  const std::string low = said(wordsFor(StageKind::RunIn).what, StageKind::RunIn, 1);
  EXPECT_NE(low.find("up to +1.350. Both"), std::string::npos) << low;
}

TEST(StageWords, LintelsOnNoWholeCourseAreBeddedOnWhatIsMadeUpForThem) {
  SettingOut out = twoStoreys();
  out.lifts = {{0, 1, 0, 1.35}, {0, 2, 1.35, 2.083}};
  out.levels.outerLeafTop = 5.1;
  out.levels.commonHead = {2.083, std::nullopt};
  EXPECT_EQ(filled(wordsFor(StageKind::RunIn).atEnd, {StageKind::RunIn, 0, 2}, Job{}, out),
            "Inner leaf level all round at +2.083; outer leaf at +2.025, course 27, made up to "
            "+2.083 under the lintels.");
}

TEST(StoreySlugs, StoreysAreNamedPlainlyAndApart) {
  const auto slugs = [](std::vector<std::string> names) {
    std::vector<Storey> storeys;
    for (const std::string& name : names) storeys.push_back({name, 0});
    return storeySlugs(storeys);
  };
  EXPECT_EQ(slugs({"Ground floor", "First floor"}), (std::vector<std::string>{"ground", "first"}));
  EXPECT_EQ(slugs({"Attic", "attic", "ATTIC floor"}),
            (std::vector<std::string>{"attic", "attic-2", "attic-3"}));
  EXPECT_EQ(slugs({"", "--", "1\xc3\xa8re"}),
            (std::vector<std::string>{"storey-1", "storey-2", "storey-3"}));
}

}  // namespace
}  // namespace model
