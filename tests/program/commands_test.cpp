// The real program, as a user starts it: every command on every demo job, and what it says and
// leaves behind when something is wrong.
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "tests/program/program_fixture.h"
#include "tests/support/csv_reader.h"

namespace program_test {
namespace {

namespace fs = std::filesystem;
using test_support::demoNames;

using Commands = InFolder;

TEST_F(Commands, EveryTableOfEveryDemoReadsAsCsvAndAsJsonAndTheyAgree) {
  for (const std::string& demo : demoNames()) {
    for (const std::vector<std::string>& command : std::vector<std::vector<std::string>>{
             {"check"}, {"levels"}, {"takeoff"}, {"takeoff", "--by-stage"}, {"stages"}}) {
      std::vector<std::string> csvCall = command, jsonCall = command, peopleCall = command;
      for (auto* call : {&csvCall, &jsonCall, &peopleCall}) call->push_back(demoPath(demo));
      csvCall.push_back("--csv");
      jsonCall.push_back("--json");
      const ProgramRun csvRun = stringcourse(csvCall), jsonRun = stringcourse(jsonCall);
      ASSERT_EQ(csvRun.exitCode, 0) << demo << " " << command[0] << csvRun.err;
      ASSERT_EQ(jsonRun.exitCode, 0);
      EXPECT_EQ(stringcourse(peopleCall).exitCode, 0);
      const auto rows = test_support::readCsv(csvRun.out);
      const auto json = nlohmann::json::parse(jsonRun.out);
      ASSERT_EQ(rows.size(), json.size() + 1) << demo << " " << command[0];
      for (size_t i = 0; i < json.size(); ++i) {
        ASSERT_EQ(rows[i + 1].size(), rows[0].size());
        ASSERT_EQ(json[i].size(), rows[0].size());
        for (size_t c = 0; c < rows[0].size(); ++c) {
          const auto& value = json[i].at(rows[0][c]);
          if (value.is_number()) {
            EXPECT_DOUBLE_EQ(value.get<double>(), std::stod(rows[i + 1][c]));
          } else {
            EXPECT_EQ(value.is_null() ? "" : value.get<std::string>(), rows[i + 1][c]);
          }
        }
      }
    }
  }
}

TEST_F(Commands, LevelsOfTheDemoAreThoseOfItsDrawing) {
  const auto levels =
      nlohmann::json::parse(stringcourse({"levels", demoPath("orchard-house"), "--json"}).out);
  const auto has = [&](const std::string& name, double level) {
    return std::any_of(levels.begin(), levels.end(), [&](const auto& row) {
      return row["name"] == name && std::abs(row["level m"].template get<double>() - level) < 5e-4;
    });
  };
  EXPECT_TRUE(has("top of concrete", -0.975));
  EXPECT_TRUE(has("top of concrete", -1.200));
  EXPECT_TRUE(has("cellar formation", -3.075));
  EXPECT_TRUE(has("top of cellar slab", -2.725));
  EXPECT_TRUE(has("damp course", 0.000));
}

TEST_F(Commands, TheDemoHasAtLeast25StagesEachWithItsWords) {
  const auto stages =
      nlohmann::json::parse(stringcourse({"stages", demoPath("orchard-house"), "--json"}).out);
  EXPECT_GE(stages.size(), 25u);
  for (const auto& stage : stages) {
    for (const char* key : {"id", "name", "what", "at its end", "start", "finish"}) {
      EXPECT_NE(stage[key], "") << stage["id"] << " " << key;
    }
    EXPECT_GE(stage["days"], 0.5);
  }
}

TEST_F(Commands, StagesOfTheTakeoffAddUpToTheWhole) {
  for (const std::string& demo : demoNames()) {
    const auto whole =
        nlohmann::json::parse(stringcourse({"takeoff", demoPath(demo), "--json"}).out);
    const auto parts = nlohmann::json::parse(
        stringcourse({"takeoff", demoPath(demo), "--by-stage", "--json"}).out);
    for (const auto& row : whole) {
      double sum = 0;
      int count = 0;
      for (const auto& part : parts) {
        if (part["item"] != row["item"]) continue;
        sum += part["net"].get<double>();
        ++count;
      }
      // Each figure is rounded as it is shown.
      const double rounding = row["unit"] == "no." ? 0.5 : 0.005;
      EXPECT_NEAR(sum, row["net"].get<double>(), rounding * (count + 1)) << demo << row["item"];
    }
  }
}

TEST_F(Commands, ShareWritesAGlbOfEveryDemo) {
  for (const std::string& demo : demoNames()) {
    const std::string out = inFolder(demo + ".glb");
    const ProgramRun run = stringcourse({"share", demoPath(demo), "--out", out});
    ASSERT_EQ(run.exitCode, 0) << run.err;
    const std::string glb = contents(out);
    ASSERT_GT(glb.size(), 1000u);
    EXPECT_EQ(glb.substr(0, 4), "glTF");
  }
  EXPECT_EQ(left().size(), demoNames().size()) << "and leaves nothing else";
}

TEST_F(Commands, NewMakesAJobThatChecksAndNeverOverwrites) {
  const std::string job = inFolder("house.toml");
  ASSERT_EQ(stringcourse({"new", job}).exitCode, 0);
  EXPECT_EQ(stringcourse({"check", job}).exitCode, 0);
  const std::string before = contents(job);
  const ProgramRun again = stringcourse({"new", job});
  EXPECT_EQ(again.exitCode, 1);
  EXPECT_NE(again.err.find("already"), std::string::npos);
  EXPECT_EQ(contents(job), before);
}

TEST_F(Commands, ABadJobEndsWithItsProblemsAndWithoutAFile) {
  const std::string job = writeFile("bad.toml",
                                    "[outline]\ncorners = [[0, 0], [5000, 0], [5000, 4000], [0, "
                                    "4000]]\n[roof]\npitch = 400\npich = 40\n");
  for (const std::vector<std::string>& command :
       std::vector<std::vector<std::string>>{{"check", job},
                                             {"levels", job},
                                             {"takeoff", job},
                                             {"stages", job},
                                             {"share", job, "--out", inFolder("a.glb")},
                                             {"picture", job, "--out", inFolder("a.png")},
                                             {"walkthrough", job, "--out", inFolder("folder")}}) {
    const ProgramRun run = stringcourse(command);
    EXPECT_EQ(run.exitCode, 1) << command[0];
    EXPECT_NE(run.err.find(job + ":4:"), std::string::npos) << command[0] << ": " << run.err;
    EXPECT_NE(run.err.find(job + ":5:"), std::string::npos) << "all problems in one go";
    EXPECT_EQ(left(), (std::vector<std::string>{"bad.toml"})) << command[0];
  }
}

TEST_F(Commands, WarningsAloneAreNoFailure) {
  const std::string job = writeFile("warn.toml",
                                    "[outline]\ncorners = [[0, 0], [5000, 0], [5000, 4000], [0, "
                                    "4000]]\n[[programme.stage]]\nstage = \"dig-trenchs\"\n");
  const ProgramRun run = stringcourse({"check", job});
  EXPECT_EQ(run.exitCode, 0) << run.err;
  EXPECT_NE(run.err.find("warning"), std::string::npos);
  EXPECT_NE(run.err.find("dig-trenches"), std::string::npos);
}

// The reader cannot know it: where a slope comes out of the ground is for the ground to say.
TEST_F(Commands, NothingIsBuiltWhenASlopeOfTheDigRunsUnderABuilding) {
  const std::string job = writeFile("slope.toml", R"([outline]
corners = [[0, 0], [8000, 0], [8000, 6000], [0, 6000]]
[cellar]
[ground]
batter = 45
[[site.building]]
name = "Barn"
outline = [[9800, 1000], [12000, 1000], [12000, 5000], [9800, 5000]]
foundation_depth = 4000
)");
  for (const char* command : {"check", "levels", "stages"}) {
    const ProgramRun run = stringcourse({command, job});
    EXPECT_EQ(run.exitCode, 1) << command;
    EXPECT_NE(run.err.find("slope.toml:5:1: error: "), std::string::npos) << run.err;
    EXPECT_NE(run.err.find("under \"Barn\""), std::string::npos) << run.err;
  }
  EXPECT_EQ(stringcourse({"share", job, "--out", inFolder("slope.glb")}).exitCode, 1);
  EXPECT_FALSE(fs::exists(inFolder("slope.glb")));
}

TEST_F(Commands, ProblemsOfReaderAndChecksComeInTheOrderOfTheFile) {
  const std::string job = writeFile("both.toml", R"([outline]
corners = [[0, 0], [8000, 0], [8000, 6000], [0, 6000]]
[site]
spots = [{ at = [0, 0], level = -0.8 }]
[foundations]
top = -0.7
width = 900
[walls]
cavity = 120
)");
  const std::string said = stringcourse({"check", job}).err;
  const size_t strip = said.find("both.toml:5:2"), ground = said.find("both.toml:6:1"),
               cavity = said.find("both.toml:8:2");
  EXPECT_NE(cavity, std::string::npos) << said;
  EXPECT_LT(strip, ground) << said;
  EXPECT_LT(ground, cavity) << said;
}

TEST_F(Commands, AMissingJobIsNamed) {
  const ProgramRun run = stringcourse({"levels", inFolder("nowhere.toml")});
  EXPECT_EQ(run.exitCode, 1);
  EXPECT_NE(run.err.find("nowhere.toml"), std::string::npos);
  EXPECT_EQ(run.out, "");
}

TEST_F(Commands, AWrongCommandLineSaysWhatThereIs) {
  const std::string job = demoPath("smallest");
  struct Case {
    std::vector<std::string> arguments;
    std::string says;
  };
  for (const Case& c : std::vector<Case>{
           {{"frobnicate"}, "takeoff"},
           {{"levels"}, "job"},
           {{"levels", job, "--xml"}, "--xml"},
           {{"levels", job, "--csv", "--json"}, "--"},
           {{"picture", job}, "--out"},
           {{"picture", job, "--out", inFolder("a.png"), "--view", "moon"}, "south-west"},
           {{"picture", job, "--out", inFolder("a.png"), "--size", "big"}, "1280x720"},
           {{"picture", job, "--out", inFolder("a.png"), "--size", "1x1"}, "1280x720"},
           {{"picture", job, "--out", inFolder("a.png"), "--size", "99999x99999"}, "1280x720"},
           {{"picture", job, "--out", inFolder("a.png"), "--show", "ghosts"}, "dimensions"},
           {{"picture", job, "--out", inFolder("a.png"), "--stage", "nope"}, "dig-trenches"},
           {{"picture", job, "--out", inFolder("a.png"), "--at", "7"}, "0 to 1"},
           {{"picture", job, "--out", inFolder("a.png"), "--section", "up"}, "north"},
           {{"picture", job, "--out", inFolder("a.jpg")}, "a.png"},
           {{"picture", job, "--out", inFolder("a")}, "a.png"},
           {{"share", job, "--out", inFolder("a.obj")}, "a.glb"},
           {{"new", inFolder("a.json")}, "a.toml"},
           {{"picture", job, "--out", inFolder("a.png"), "--show", "none,levels"}, "alone"},
           {{"picture", job, "--out", inFolder("a.png"), "--section", "x=99000"},
            "the building from"},
           {{"picture", job, "--out", inFolder("a.png"), "--section", "y=nan"}, "north"},
           {{"walkthrough", job, "--out", inFolder("w"), "--show", "strings"}, "lines"},
           {{"walkthrough", job, "--out", inFolder("w"), "--size", "0x0"}, "1280x720"}}) {
    const ProgramRun run = stringcourse(c.arguments);
    EXPECT_EQ(run.exitCode, 2) << c.arguments[0] << run.err;
    EXPECT_NE(run.err.find(c.says), std::string::npos) << c.says << " in: " << run.err;
    EXPECT_EQ(run.out, "");
  }
  EXPECT_TRUE(left().empty());
}

TEST_F(Commands, TheJobItselfIsNeverWrittenOver) {
  const std::string words = contents(demoPath("smallest"));
  const std::string job = writeFile("mine.toml", words);
  for (const std::string command : {"picture", "share"}) {
    const ProgramRun run = stringcourse({command, job, "--out", inFolder("./mine.toml")});
    EXPECT_EQ(run.exitCode, 2) << command;
    EXPECT_NE(run.err.find("is the job file itself"), std::string::npos) << run.err;
    EXPECT_EQ(contents(job), words) << command;
  }
}

TEST_F(Commands, EveryCommandHasHelpWithAnExample) {
  for (const char* command : {"check", "levels", "takeoff", "stages", "report", "picture", "share",
                              "walkthrough", "new"}) {
    const ProgramRun run = stringcourse({command, "--help"});
    EXPECT_EQ(run.exitCode, 0) << command;
    EXPECT_NE(run.out.find(std::string("  stringcourse ") + command), std::string::npos) << command;
  }
  const ProgramRun all = stringcourse({"--help"});
  EXPECT_EQ(all.exitCode, 0);
  EXPECT_NE(all.out.find("Exit status"), std::string::npos);
  const ProgramRun version = stringcourse({"--version"});
  EXPECT_EQ(version.exitCode, 0);
  EXPECT_EQ(version.out.rfind("stringcourse ", 0), 0u);
}

TEST_F(Commands, AFullDiskIsAMessage) {
  if (!fs::exists("/dev/full")) GTEST_SKIP() << "no /dev/full here";
  ProgramSettings full;
  full.outTo = "/dev/full";
  const ProgramRun run = stringcourse({"levels", demoPath("smallest")}, full);
  EXPECT_EQ(run.exitCode, 1);
  EXPECT_NE(run.err.find("could not be written"), std::string::npos);
}

TEST_F(Commands, AFolderThatIsNotThereIsAMessage) {
  const ProgramRun run =
      stringcourse({"share", demoPath("smallest"), "--out", inFolder("no/such/folder/a.glb")});
  EXPECT_EQ(run.exitCode, 1);
  EXPECT_NE(run.err.find("a.glb"), std::string::npos);
  EXPECT_TRUE(left().empty());
}

}  // namespace
}  // namespace program_test
