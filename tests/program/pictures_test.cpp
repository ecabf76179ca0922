// Pictures and walkthroughs by the real program, looked at for the thing that should be on them.
#include <gtest/gtest.h>

#include <array>
#include <nlohmann/json.hpp>
#include <set>

#include "tests/program/program_fixture.h"
#include "tests/support/csv_reader.h"
#include "tests/support/folders.h"
#include "tests/support/png_reader.h"

namespace program_test {
namespace {

namespace fs = std::filesystem;
using test_support::difference;
using test_support::Difference;
using test_support::Picture;
using test_support::readPng;

constexpr int kNoOpenGl = 3;

class Pictures : public InFolder {
 protected:
  // A picture of the demo with these options added; empty, with a failure, when there is none.
  Picture demo(const std::vector<std::string>& options) {
    return of(demoPath("orchard-house"), options);
  }
  Picture of(const std::string& job, const std::vector<std::string>& options) {
    const std::string out = inFolder("picture-" + std::to_string(++made_) + ".png");
    std::vector<std::string> call{"picture", job, "--out", out};
    if (std::find(options.begin(), options.end(), "--size") == options.end()) {
      call.insert(call.end(), {"--size", "640x360"});
    }
    call.insert(call.end(), options.begin(), options.end());
    const ProgramRun run = stringcourse(call);
    EXPECT_EQ(run.exitCode, 0) << run.err;
    return readPng(out);
  }

 private:
  int made_ = 0;
};

// Pixels unlike the paper in the top left corner.
int inked(const Picture& picture) {
  int count = 0;
  for (int y = 0; y < picture.height; ++y) {
    for (int x = 0; x < picture.width; ++x) count += picture.at(x, y) != picture.at(0, 0);
  }
  return count;
}

TEST_F(Pictures, APictureHasItsSizeAndSomethingOnIt) {
  const Picture picture = demo({"--size", "400x300"});
  ASSERT_EQ(picture.width, 400);
  ASSERT_EQ(picture.height, 300);
  EXPECT_GT(inked(picture), 400 * 300 / 10);
}

TEST_F(Pictures, TheSameCallGivesTheSamePicture) {
  const Picture first = demo({"--stage", "run-in-ground-1"});
  const Picture second = demo({"--stage", "run-in-ground-1"});
  EXPECT_EQ(difference(first, second).pixels, 0);
}

TEST_F(Pictures, DiggingTheCellarChangesTheGroundInsideThePlot) {
  const Picture before = demo({"--stage", "dig-cellar", "--at", "0", "--view", "plan"});
  const Picture half = demo({"--stage", "dig-cellar", "--at", "0.5", "--view", "plan"});
  const Picture after = demo({"--stage", "dig-cellar", "--at", "1", "--view", "plan"});
  const Difference dug = difference(before, after);
  EXPECT_GT(dug.pixels, 500);
  EXPECT_GT(dug.left, before.width / 2 - before.width / 6) << "the cellar is under the east end";
  EXPECT_LT(dug.right, before.width);
  EXPECT_GT(difference(half, after).pixels, 100);
  EXPECT_GT(difference(half, before).pixels, 100);
}

// The blue of levels, which the instrument that is read from has too.
int blue(const Picture& picture) {
  int count = 0;
  for (int y = 0; y < picture.height; ++y) {
    for (int x = 0; x < picture.width; ++x) count += picture.at(x, y) == 0x0072b2;
  }
  return count;
}

TEST_F(Pictures, ASetUpBringsItsInstrumentAndTheReadingsFromIt) {
  const Picture without = demo({"--size", "1280x720", "--show", "levels,rod"});
  const Picture site = demo({"--size", "1280x720", "--show", "levels,rod", "--set-up", "Site"});
  const Picture plate = demo({"--size", "1280x720", "--show", "levels,rod", "--set-up", "plate"});
  // Staff readings stand where courses do, at the right of the column of levels, and are others
  // from each set-up.
  EXPECT_GT(difference(without, site).pixels, 2000);
  EXPECT_GT(difference(site, plate).pixels, 2000);
  const Picture bare = demo({"--size", "1280x720", "--view", "plan"});
  const Picture seen =
      demo({"--size", "1280x720", "--view", "plan", "--show", "instrument", "--set-up", "Site"});
  EXPECT_EQ(blue(bare), 0);
  EXPECT_GT(blue(seen), 200) << "tripod, sight and staff";
}

TEST_F(Pictures, AnUnknownSetUpIsAnsweredWithThoseThereAre) {
  const ProgramRun run = stringcourse(
      {"picture", demoPath("orchard-house"), "--set-up", "Roof", "--out", inFolder("none.png")});
  EXPECT_EQ(run.exitCode, 2);
  EXPECT_NE(run.err.find("--set-up knows no \"Roof\"; there are Site, Cellar, Plate"),
            std::string::npos)
      << run.err;
  EXPECT_FALSE(fs::exists(inFolder("none.png")));
  const ProgramRun none = stringcourse(
      {"picture", demoPath("smallest"), "--set-up", "Site", "--out", inFolder("none.png")});
  EXPECT_EQ(none.exitCode, 2);
  EXPECT_NE(none.err.find("the job has no set-ups"), std::string::npos) << none.err;
}

TEST_F(Pictures, GaugeRodsStandBesideTheCorners) {
  const Picture without = demo({"--size", "1280x720", "--stage", "damp-course"});
  const Picture with =
      demo({"--size", "1280x720", "--stage", "damp-course", "--show", "gauge-rods"});
  const auto lath = [](const Picture& picture) {
    int count = 0;
    for (int y = 0; y < picture.height; ++y) {
      for (int x = 0; x < picture.width; ++x) {
        const auto p = picture.at(x, y);
        const int red = int(p >> 16), green = int(p >> 8 & 255), blue = int(p & 255);
        count +=
            std::abs(red - 0xef) < 4 && std::abs(green - 0xe0) < 4 && std::abs(blue - 0xbd) < 5;
      }
    }
    return count;
  };
  EXPECT_GT(lath(with), lath(without) + 1000);
}

TEST_F(Pictures, WallsRiseWithinTheirStage) {
  const Picture early = demo({"--stage", "run-in-ground-1", "--at", "0.2"});
  const Picture late = demo({"--stage", "run-in-ground-1", "--at", "0.9"});
  EXPECT_GT(difference(early, late).pixels, 300);
}

TEST_F(Pictures, AStageIsTheSameByIdNumberAndName) {
  const Picture byId = demo({"--stage", "strip-topsoil"});
  const Picture byName = demo({"--stage", "Strip the topsoil"});
  EXPECT_EQ(difference(byId, byName).pixels, 0);
  const auto stages =
      nlohmann::json::parse(stringcourse({"stages", demoPath("orchard-house"), "--json"}).out);
  for (const auto& stage : stages) {
    if (stage["id"] != "strip-topsoil") continue;
    const Picture byNumber = demo({"--stage", stage["number"].dump()});
    EXPECT_EQ(difference(byId, byNumber).pixels, 0);
  }
}

TEST_F(Pictures, SeveralStagesGoIntoAFolder) {
  const auto set = [this](const std::string& stages, const std::string& out) {
    return stringcourse({"picture", demoPath("smallest"), "--stage", stages, "--size", "160x120",
                         "--out", inFolder(out)});
  };
  const ProgramRun run = set("4-5,2", "set/");
  ASSERT_EQ(run.exitCode, 0) << run.err;
  const auto names = namesIn(inFolder("set"));
  ASSERT_EQ(names.size(), 3u);
  const std::vector<std::string> numbers{"02-", "04-", "05-"};
  for (size_t i = 0; i < 3; ++i) {
    EXPECT_TRUE(names[i].starts_with(numbers[i])) << names[i];
    EXPECT_NE(run.out.find(names[i]), std::string::npos) << run.out;
  }
  const Picture alone = of(demoPath("smallest"), {"--stage", "4", "--size", "160x120"});
  EXPECT_EQ(difference(alone, readPng(inFolder("set/" + names[1]))).pixels, 0);
  EXPECT_EQ(set("3", "set/").exitCode, 0) << "one more, beside them";
  EXPECT_EQ(namesIn(inFolder("set")).size(), 4u);
  ASSERT_EQ(set("all", "every").exitCode, 0);
  const auto stages =
      nlohmann::json::parse(stringcourse({"stages", demoPath("smallest"), "--json"}).out);
  EXPECT_EQ(namesIn(inFolder("every")).size(), stages.size());
}

TEST_F(Pictures, OfSeveralStagesEachFromItsOwnViewAreAsEachAlone) {
  const std::vector<std::string> asked{"strip-topsoil", "cavity-fill", "windows-and-doors"};
  const ProgramRun run = stringcourse({"picture", demoPath("garage"), "--stage",
                                       asked[0] + "," + asked[1] + "," + asked[2], "--view",
                                       "stage", "--size", "160x120", "--out", inFolder("set/")});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  const auto names = namesIn(inFolder("set"));
  ASSERT_EQ(names.size(), asked.size());
  for (size_t i = 0; i < asked.size(); ++i) {
    const Picture alone =
        of(demoPath("garage"), {"--stage", asked[i], "--view", "stage", "--size", "160x120"});
    EXPECT_EQ(difference(alone, readPng(inFolder("set/" + names[i]))).pixels, 0) << asked[i];
  }
}

TEST_F(Pictures, SeeThroughAllButTheStagesWorkShowsWhatAWallHides) {
  const std::vector<std::string> plain{"--stage", "cavity-fill", "--view", "south-west"};
  std::vector<std::string> through = plain;
  through.push_back("--see-through=others");
  EXPECT_GT(difference(demo(plain), demo(through)).pixels, 1000);
  const ProgramRun wrong = stringcourse(
      {"picture", demoPath("garage"), "--see-through=walls", "--out", inFolder("a.png")});
  EXPECT_EQ(wrong.exitCode, 2);
  EXPECT_NE(wrong.err.find("neither \"ground\" nor \"others\""), std::string::npos) << wrong.err;
}

TEST_F(Pictures, SeveralStagesNeedAFolderAndStagesThatThereAre) {
  const std::vector<std::array<std::string, 3>> wrongs{
      {"1-3", "a.png", "one file for 3 stages; name a folder"},
      {"1-999", "set/", "are numbered 1 to"},
      {"1,chimney", "set/", "there is no one stage \"chimney\""},
      {"3", "a.jpg", "written as .png"}};
  for (const auto& [stages, out, told] : wrongs) {
    const ProgramRun run =
        stringcourse({"picture", demoPath("smallest"), "--stage", stages, "--out", inFolder(out)});
    EXPECT_EQ(run.exitCode, 2) << told;
    EXPECT_NE(run.err.find(told), std::string::npos) << run.err;
  }
  EXPECT_TRUE(left().empty());
}

TEST_F(Pictures, StoppingASetLeavesWholePictures) {
  ProgramSettings settings;
  settings.interruptWhen = [&] { return namesIn(inFolder("set")).size() >= 3; };
  const ProgramRun run = stringcourse({"picture", demoPath("orchard-house"), "--stage", "all",
                                       "--size", "320x200", "--out", inFolder("set")},
                                      settings);
  EXPECT_EQ(run.exitCode, 130) << run.err;
  const auto names = namesIn(inFolder("set"));
  EXPECT_LT(names.size(), 30u);
  for (const std::string& name : names) EXPECT_EQ(readPng(inFolder("set/" + name)).width, 320);
}

TEST_F(Pictures, EveryViewShowsTheBuildingItsOwnWay) {
  const std::string help = stringcourse({"picture", "--help"}).out;
  std::set<std::string> seen;
  const std::vector<std::string> views{"plan", "north",      "south",      "east",
                                       "west", "north-east", "south-west", "section"};
  for (const std::string& view : views) {
    EXPECT_NE(help.find(view), std::string::npos);
    const Picture picture = demo({"--view", view});
    EXPECT_GT(inked(picture), 640 * 360 / 50) << view;
    seen.emplace(picture.rgba.begin(), picture.rgba.end());
  }
  EXPECT_EQ(seen.size(), views.size());
}

// The building is framed in what these leave free, so pictures are compared that leave the same.
TEST_F(Pictures, TheTitleBlockTheTapeAndTheCaptionAreWhereTheyBelong) {
  const auto show = [this](const std::string& what) {
    return demo({"--size", "1280x720", "--show", what});
  };
  const Picture both = show("title,tape");
  std::string renamed = contents(demoPath("orchard-house"));
  renamed.replace(renamed.find("\"Orchard house\""), 15, "\"Quince cottage in the lane\"");
  for (const char* readings : {"orchard-house-concrete.csv", "orchard-house-walls.csv"})
    std::filesystem::copy(test_support::sourceFolder() + "/assets/jobs/" + readings,
                          inFolder(readings));
  const Difference title = difference(
      of(writeFile("renamed.toml", renamed), {"--size", "1280x720", "--show", "title,tape"}), both);
  EXPECT_GT(title.pixels, 300);
  EXPECT_GT(title.left, 640);
  EXPECT_GT(title.top, 360);
  const Difference tape = difference(show("title"), both);
  EXPECT_GT(tape.pixels, 5000);
  EXPECT_GT(tape.top, 480);
  const Picture caption = show("caption");
  int lettered = 0;
  for (int y = 0; y < 110; ++y) {
    for (int x = 0; x < 640; ++x) lettered += caption.at(x, y) != caption.at(0, 0);
  }
  EXPECT_GT(lettered, 500);
}

TEST_F(Pictures, LevelsLinesCornersAndDimensionsEachAddInk) {
  const Picture bare = demo({"--stage", "set-out"});
  for (const char* overlay : {"levels", "corners", "dimensions", "lines"}) {
    EXPECT_GT(difference(bare, demo({"--stage", "set-out", "--show", overlay})).pixels, 50)
        << overlay;
  }
}

TEST_F(Pictures, ASectionTakesItsSideAway) {
  const Picture whole = demo({"--view", "south"});
  const Picture cut = demo({"--view", "south", "--section", "south"});
  EXPECT_GT(difference(whole, cut).pixels, 2000);
  const Picture at = demo({"--view", "south", "--section", "y=2000"});
  EXPECT_GT(difference(at, whole).pixels, 2000);
  EXPECT_GT(difference(at, cut).pixels, 200) << "another place to cut";
  EXPECT_EQ(difference(at, demo({"--view", "south", "--section", "y=2 m"})).pixels, 0);
}

TEST_F(Pictures, ASectionIsLookedAtSquarely) {
  const Picture west = demo({"--view", "west", "--section", "x=2000"});
  EXPECT_EQ(difference(west, demo({"--view", "section", "--section", "x=2000"})).pixels, 0);
  const Picture north = demo({"--view", "north", "--section", "north"});
  EXPECT_EQ(difference(north, demo({"--view", "section", "--section", "north"})).pixels, 0);
}

TEST_F(Pictures, SeeingThroughTheGroundShowsWhatIsUnderIt) {
  EXPECT_GT(
      difference(demo({"--view", "south"}), demo({"--view", "south", "--see-through"})).pixels,
      2000);
}

TEST_F(Pictures, WithoutOpenGlThereIsAReasonAndNoFile) {
  ProgramSettings none;  // no vendor of OpenGL is to be found
  none.environment = {{"__EGL_VENDOR_LIBRARY_FILENAMES", "/nonexistent.json"}};
  const ProgramRun run =
      stringcourse({"picture", demoPath("smallest"), "--out", inFolder("a.png")}, none);
  EXPECT_EQ(run.exitCode, kNoOpenGl);
  EXPECT_NE(run.err.find("OpenGL"), std::string::npos);
  EXPECT_TRUE(left().empty());
  const ProgramRun walk =
      stringcourse({"walkthrough", demoPath("smallest"), "--out", inFolder("w")}, none);
  EXPECT_EQ(walk.exitCode, kNoOpenGl);
  EXPECT_TRUE(fs::exists(inFolder("w/levels.csv"))) << "the tables need no OpenGL";
}

TEST_F(Pictures, AWalkthroughWritesWhatItSaysAndSaysWhatItWrites) {
  const ProgramRun run = stringcourse(
      {"walkthrough", demoPath("smallest"), "--out", inFolder("w/deeper"), "--size", "320x200"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  std::set<std::string> said;
  std::istringstream lines(run.out);
  for (std::string line; std::getline(lines, line);) {
    const std::string path = line.substr(0, line.find("  "));
    EXPECT_TRUE(fs::exists(path)) << line;
    said.insert(fs::path(path).filename().string());
  }
  const auto names = namesIn(inFolder("w/deeper"));
  EXPECT_EQ(said, std::set<std::string>(names.begin(), names.end()));
  const auto stages =
      nlohmann::json::parse(stringcourse({"stages", demoPath("smallest"), "--json"}).out);
  size_t pictures = 0;
  for (const std::string& name : names) {
    if (!name.ends_with(".png")) continue;
    ++pictures;
    EXPECT_EQ(readPng(inFolder("w/deeper/" + name)).width, 320) << name;
  }
  EXPECT_EQ(pictures, stages.size());
  EXPECT_EQ(said.count("smallest.glb"), 1u);
  const auto levels = test_support::readCsv(contents(inFolder("w/deeper/levels.csv")));
  EXPECT_EQ(contents(inFolder("w/deeper/levels.csv")),
            stringcourse({"levels", demoPath("smallest"), "--csv"}).out);
  EXPECT_GT(levels.size(), 5u);
  EXPECT_EQ(said.count("contents.txt"), 1u);
  EXPECT_NE(run.err.find("/" + std::to_string(said.size() - 1) + "]"), std::string::npos)
      << "a line tells how far it has come";
}

TEST_F(Pictures, AWalkthroughTakesAwayWhatAnEarlierOneWroteAndNothingElse) {
  const std::vector<std::string> size{"--size", "160x90", "--out", inFolder("w")};
  const auto walk = [&](const std::string& job) {
    std::vector<std::string> call{"walkthrough", job};
    call.insert(call.end(), size.begin(), size.end());
    return stringcourse(call);
  };
  ASSERT_EQ(walk(demoPath("orchard-house")).exitCode, 0);
  const auto earlier = namesIn(inFolder("w"));
  const std::string note = writeFile("w/my notes.txt", "ring the scaffolder");
  const std::string own = writeFile("w/99-my-own.png", "not a picture of ours");
  const std::string changed = inFolder("w/06-blind-cellar.png");
  ASSERT_TRUE(fs::exists(changed));
  writeFile("w/06-blind-cellar.png", "drawn upon");

  const ProgramRun run = walk(demoPath("smallest"));
  ASSERT_EQ(run.exitCode, 0) << run.err;
  EXPECT_NE(run.err.find("06-blind-cellar.png"), std::string::npos) << "it says what it left";
  std::set<std::string> expected{"my notes.txt", "99-my-own.png", "06-blind-cellar.png"};
  std::istringstream lines(run.out);
  for (std::string line; std::getline(lines, line);)
    expected.insert(fs::path(line.substr(0, line.find("  "))).filename().string());
  const auto names = namesIn(inFolder("w"));
  EXPECT_EQ(std::set<std::string>(names.begin(), names.end()), expected);
  EXPECT_EQ(contents(note), "ring the scaffolder");
  EXPECT_EQ(contents(own), "not a picture of ours");
  EXPECT_EQ(contents(changed), "drawn upon");
  EXPECT_TRUE(std::find(earlier.begin(), earlier.end(), "orchard-house.glb") != earlier.end());
  EXPECT_FALSE(fs::exists(inFolder("w/orchard-house.glb")));
}

TEST_F(Pictures, AWalkthroughOfABadJobLeavesTheEarlierOne) {
  ASSERT_EQ(stringcourse(
                {"walkthrough", demoPath("smallest"), "--size", "160x90", "--out", inFolder("w")})
                .exitCode,
            0);
  const auto names = namesIn(inFolder("w"));
  const std::string bad = writeFile("bad.toml", "[outline]\ncorners = [[0, 0], [1, 1]]\n");
  EXPECT_EQ(stringcourse({"walkthrough", bad, "--out", inFolder("w")}).exitCode, 1);
  EXPECT_EQ(namesIn(inFolder("w")), names);
}

TEST_F(Pictures, AWalkthroughLeavesAContentsFileThatIsNotItsOwn) {
  fs::create_directories(inFolder("w"));
  const std::string own = writeFile("w/contents.txt", "chapter one\n0123456789abcdef  a.txt\n");
  const ProgramRun run =
      stringcourse({"walkthrough", demoPath("smallest"), "--out", inFolder("w")});
  EXPECT_EQ(run.exitCode, 1);
  EXPECT_NE(run.err.find("contents.txt"), std::string::npos);
  EXPECT_EQ(namesIn(inFolder("w")), (std::vector<std::string>{"contents.txt"}));
  EXPECT_EQ(contents(own), "chapter one\n0123456789abcdef  a.txt\n");
}

TEST_F(Pictures, StoppingAWalkthroughLeavesWholeFilesOnly) {
  ProgramSettings settings;
  settings.interruptWhen = [&] { return namesIn(inFolder("w")).size() >= 10; };
  const ProgramRun run = stringcourse(
      {"walkthrough", demoPath("orchard-house"), "--out", inFolder("w"), "--size", "320x200"},
      settings);
  EXPECT_EQ(run.exitCode, 130);
  EXPECT_NE(run.err.find("Stopped"), std::string::npos);
  const auto names = namesIn(inFolder("w"));
  EXPECT_GE(names.size(), 8u);
  EXPECT_LT(names.size(), 30u) << "it stopped";
  for (const std::string& name : names) {
    if (name.ends_with(".png")) {
      EXPECT_EQ(readPng(inFolder("w/" + name)).width, 320) << name;
    } else {
      EXPECT_TRUE(name.ends_with(".csv") || name.ends_with(".glb") || name == "report.pdf" ||
                  name == "designer-sheet.pdf" || name == "contents.txt")
          << name;
    }
    EXPECT_NE(run.out.find(name), std::string::npos) << name << " is told of";
    if (name == "contents.txt") continue;
    EXPECT_NE(contents(inFolder("w/contents.txt")).find("  " + name + "\n"), std::string::npos)
        << name << " is listed";
  }
}

}  // namespace
}  // namespace program_test
