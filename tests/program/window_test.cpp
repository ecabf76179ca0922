// The real window on a virtual screen, driven by mouse and keyboard, its picture looked at.
#include "tests/program/window_fixture.h"
#include "tests/support/folders.h"

namespace window_test {
namespace {

TEST_F(WindowTest, AnExampleOpensPlayingAndStopsAtTheFirstTouch) {
  openJob(demo("orchard-house.toml"));
  ASSERT_TRUE(eventually([&] { return showsTape(screen_->shot()); }));
  EXPECT_TRUE(eventually([&] { return screen_->title() == "Orchard house - Stringcourse"; }));
  const double first = hook(screen_->shot());
  EXPECT_TRUE(eventually([&] { return hook(screen_->shot()) > first + 0.005; }));
  screen_->hand("key space");
  // However slow the machine: it has stopped once the hook stays for two seconds.
  EXPECT_TRUE(eventually([&] {
    const double at = hook(screen_->shot());
    std::this_thread::sleep_for(std::chrono::seconds(2));
    return std::abs(hook(screen_->shot()) - at) < 0.0005;
  }));
  EXPECT_LT(hook(screen_->shot()), 0.9) << "before it would have ended by itself";
}

TEST_F(WindowTest, KeysPlayPauseAndStep) {
  openCopyOf("garage.toml");
  waitForTape();
  screen_->hand("key Home");
  EXPECT_TRUE(eventually([&] { return hook(screen_->shot()) < 0.01; }));
  const Shot start = settle();
  screen_->hand("key Right Right");
  EXPECT_TRUE(eventually([&] { return hook(screen_->shot()) > 0.015; }));
  const Shot stepped = settle();
  EXPECT_GT(start.differences(stepped, 42, 20, 800, 60), 200) << "another stage's name";
  screen_->hand("key Left Left");
  EXPECT_TRUE(eventually([&] { return hook(screen_->shot()) < 0.01; }));
  screen_->hand("key space");
  EXPECT_TRUE(eventually([&] { return hook(screen_->shot()) > 0.02; }));
  screen_->hand("key space");
  const double paused = hook(settle());
  std::this_thread::sleep_for(std::chrono::seconds(1));
  EXPECT_NEAR(hook(screen_->shot()), paused, 0.002);
  screen_->hand("key End");
  EXPECT_TRUE(eventually([&] { return hook(screen_->shot()) > 0.99; }));
}

TEST_F(WindowTest, PullingTheTapeScrubsTheBuilding) {
  openCopyOf("orchard-house.toml");
  waitForTape();
  const Shot finished = settle();
  const auto [left, right] = tapeEnds(finished);
  const auto at = [](int x) { return " mousemove " + std::to_string(x) + " 665"; };
  screen_->hand(at(right - 8) + " mousedown 1" + at(right - 150) + at((left + right) / 2));
  EXPECT_TRUE(eventually([&] { return std::abs(hook(screen_->shot()) - 0.5) < 0.04; }));
  screen_->hand("mouseup 1 mousemove 600 60");
  const Shot half = settle();
  EXPECT_NEAR(hook(half), 0.5, 0.04);
  EXPECT_GT(drawingDiffers(finished, half), 5000);
  // And back: the picture is what it was.
  screen_->hand("key End mousemove 600 60");
  EXPECT_TRUE(eventually([&] { return drawingDiffers(finished, screen_->shot()) == 0; }));
}

TEST_F(WindowTest, WheelAndDragMoveTheEyeAndNothingMovesByItself) {
  openCopyOf("garage.toml");
  waitForTape();
  const Shot before = settle();
  screen_->hand("mousemove 460 380 click 4 click 4 click 4");
  EXPECT_TRUE(eventually([&] { return drawingDiffers(before, screen_->shot()) > 10000; }));
  const Shot nearer = settle();
  EXPECT_NEAR(hook(nearer), hook(before), 0.002);
  screen_->hand("mousemove 460 380 mousedown 1 mousemove 520 390 mousemove 600 400 mouseup 1");
  EXPECT_TRUE(eventually([&] { return drawingDiffers(nearer, screen_->shot()) > 10000; }));
  const Shot turned = settle();
  std::this_thread::sleep_for(std::chrono::milliseconds(1500));
  EXPECT_EQ(drawingDiffers(turned, screen_->shot()), 0);
}

TEST_F(WindowTest, IdleCostsNothing) {
  openCopyOf("orchard-house.toml");
  waitForTape();
  settle();
  const auto spent = [&] {
    const double before = screen_->processorTime();
    std::this_thread::sleep_for(std::chrono::seconds(3));
    return screen_->processorTime() - before;
  };
  // Once the stages' own views are chosen, beside.
  double last = spent();
  for (int tries = 0; last >= 0.15 && tries < 20; ++tries) last = spent();
  EXPECT_LT(last, 0.15);
}

TEST_F(WindowTest, TheRodSetsTheLevelPlaneAndEscapeTakesItAway) {
  openCopyOf("garage.toml");
  waitForTape();
  const Shot before = settle();
  screen_->hand("mousemove 1219 300 click 1 mousemove 600 60");
  EXPECT_TRUE(
      eventually([&] { return screen_->shot().count(kLevels, 1234, 270, 1280, 360) > 60; }));
  EXPECT_GT(drawingDiffers(before, settle()), 2000);
  screen_->hand("key Escape");
  EXPECT_TRUE(eventually([&] { return drawingDiffers(before, screen_->shot()) == 0; }));
}

TEST_F(WindowTest, ClickingAThingSaysWhatItIs) {
  openCopyOf("garage.toml");
  waitForTape();
  const Shot before = settle();
  // The middle of the drawing area is the building.
  screen_->hand("mousemove 574 340 click 1");
  EXPECT_TRUE(eventually([&] { return cardPixels(screen_->shot()) > cardPixels(before) + 10000; }));
  screen_->hand("key Escape");
  EXPECT_TRUE(eventually([&] { return drawingDiffers(before, screen_->shot()) == 0; }));
}

TEST_F(WindowTest, TheTouchThatStopsTheExampleAsksNothing) {
  openJob(demo("garage.toml"));
  // Well into the walls, so that there is a thing under the pointer.
  ASSERT_TRUE(eventually([&] { return hook(screen_->shot()) > 0.55; }, 90));
  screen_->hand("mousemove 574 340 click 1");
  const Shot stopped = settle();
  EXPECT_LT(cardPixels(stopped), 5000) << "no card yet";
  // Wherever the example has come to: one of these may be sky, or the handle of a section.
  bool told = false;
  for (const char* place : {"574 340", "540 400", "620 400"}) {
    if (told) break;
    screen_->hand(std::string("mousemove ") + place + " click 1");
    told = eventually([&] { return cardPixels(screen_->shot()) > 10000; }, 15);
  }
  EXPECT_TRUE(told);
  EXPECT_NEAR(hook(settle()), hook(stopped), 0.002);
}

TEST_F(WindowTest, WhatIsSelectedStaysSelectedWhenTheFileIsReadAgain) {
  openCopyOf("garage.toml");
  waitForTape();
  screen_->hand("mousemove 574 340 click 1");
  const auto card = [&] { return cardPixels(screen_->shot()) > 10000; };
  ASSERT_TRUE(eventually(card));
  std::string renamed = read(job_);
  renamed.replace(renamed.find("Gabled garage"), 13, "Other garage");
  write(renamed);
  ASSERT_TRUE(eventually([&] { return screen_->title() == "Other garage - Stringcourse"; }));
  settle();
  EXPECT_TRUE(card());
}

TEST_F(WindowTest, AFileThatGoesIsMissedAndFoundAgain) {
  openCopyOf("garage.toml");
  waitForTape();
  const Shot before = settle();
  std::filesystem::rename(job_, job_ + ".away");
  // A card with words, somewhere over the drawing.
  EXPECT_TRUE(eventually([&] {
    return screen_->shot().count(kCard, 60, 60, 770, 590) >
           before.count(kCard, 60, 60, 770, 590) + 5000;
  }));
  EXPECT_TRUE(showsTape(settle()));
  std::filesystem::rename(job_ + ".away", job_);
  EXPECT_TRUE(eventually([&] { return drawingDiffers(before, screen_->shot()) == 0; }));
}

TEST_F(WindowTest, TabsSlideSheetsInAndOut) {
  openCopyOf("garage.toml");
  waitForTape();
  const Shot before = settle();
  for (const int y : {60, 250, 330}) {
    screen_->hand("mousemove 16 " + std::to_string(y) + " click 1");
    EXPECT_TRUE(eventually([&] { return screen_->shot().count(kCard, 60, 60, 420, 560) > 40000; }))
        << y;
    screen_->hand("key Escape mousemove 600 60");
    EXPECT_TRUE(eventually([&] { return screen_->shot().count(kCard, 60, 60, 420, 560) < 20000; }))
        << y;
  }
  EXPECT_LT(drawingDiffers(before, settle()), 3000) << "the building is back where it was";
}

TEST_F(WindowTest, ClickingTheTitleBlocksFieldsEditsTheFile) {
  openCopyOf("orchard-house.toml");
  waitForTape();
  const std::string before = read(job_);
  // Escape leaves the field and the file.
  openField(850, 575);
  screen_->hand("type nothing");
  screen_->hand("key Escape");
  settle();
  EXPECT_EQ(read(job_), before);
  openField(850, 575);
  screen_->hand("type Mill");
  screen_->hand("key Return");
  EXPECT_TRUE(eventually([&] { return screen_->title() == "Mill - Stringcourse"; }));
  EXPECT_NE(read(job_).find("name = \"Mill\""), std::string::npos);
  // Comments stay: all but the one line is as it was.
  std::string back = read(job_);
  back.replace(back.find("\"Mill\""), 6, "\"Orchard house\"");
  EXPECT_EQ(back, before);
}

TEST_F(WindowTest, AFieldThatCannotBeReadShowsWhyAndWritesNothing) {
  openCopyOf("orchard-house.toml");
  waitForTape();
  const std::string before = read(job_);
  const Shot plain = settle();
  openField(860, 680);
  screen_->hand("type high");
  screen_->hand("key Return");
  EXPECT_TRUE(eventually([&] {
    return plain.differences(screen_->shot(), 822, 480, 1168, 556) > 1500;
  })) << "a card over the title block";
  EXPECT_EQ(read(job_), before);
  settle();
  screen_->hand("type 0.250");
  screen_->hand("key Return");
  EXPECT_TRUE(eventually([&] { return read(job_) != before; }));
  EXPECT_NE(read(job_).find("level = 0.25"), std::string::npos);
}

TEST_F(WindowTest, KeysTurnMoveAndGoNearerAndBack) {
  openCopyOf("garage.toml");
  waitForTape();
  const Shot before = settle();
  const std::pair<const char*, const char*> ways[] = {{"key shift+Right", "key shift+Left"},
                                                      {"key ctrl+Up", "key ctrl+Down"},
                                                      {"key equal", "key minus"},
                                                      {"click 6", "click 7"}};
  screen_->hand("mousemove 574 340");
  for (const auto& [there, back] : ways) {
    screen_->hand(there);
    EXPECT_TRUE(eventually([&] { return drawingDiffers(before, screen_->shot()) > 5000; }, 15))
        << there;
    EXPECT_NEAR(hook(settle()), hook(before), 0.002) << "the tape stays";
    screen_->hand(back);
    EXPECT_TRUE(eventually([&] { return drawingDiffers(before, screen_->shot()) < 1500; }, 15))
        << back;
  }
}

TEST_F(WindowTest, ALevelIsTypedAndNudged) {
  openCopyOf("garage.toml");
  waitForTape();
  const Shot before = settle();
  const auto plane = [&] { return screen_->shot().count(kLevels, 1142, 30, 1280, 700); };
  screen_->hand("mousemove 600 60 key r");
  settle();
  screen_->hand("type 1.234");
  screen_->hand("key Return");
  EXPECT_TRUE(eventually([&] { return plane() > 60; }));
  const Shot typed = settle();
  EXPECT_GT(drawingDiffers(before, typed), 1000);
  screen_->hand("key Prior");
  EXPECT_TRUE(eventually([&] { return drawingDiffers(typed, screen_->shot()) > 300; }));
  screen_->hand("key Next");
  EXPECT_TRUE(eventually([&] { return drawingDiffers(typed, screen_->shot()) < 50; }));
}

TEST_F(WindowTest, LBringsTheColumnOfLevelsAndTakesItAway) {
  openCopyOf("garage.toml");
  waitForTape();
  const Shot before = settle();
  const auto words = [](const Shot& shot) { return shot.count(0x00456d, 748, 22, 1106, 551); };
  EXPECT_EQ(words(before), 0) << "off is off";
  screen_->hand("key l");
  EXPECT_TRUE(eventually([&] { return words(screen_->shot()) > 500; }));
  settle();
  screen_->hand("key l");
  EXPECT_TRUE(eventually([&] { return words(screen_->shot()) == 0; }));
  // The building eases back into its place, slowly on a busy machine.
  EXPECT_TRUE(eventually([&] { return drawingDiffers(before, screen_->shot()) < 3000; }));
}

// What each of them draws is looked at in pictures; here that the keys reach it, and take it back.
TEST_F(WindowTest, KeysSwitchWhatIsShownAndBack) {
  openCopyOf("garage.toml");
  waitForTape();
  screen_->hand("mousemove 600 60");
  const Shot before = settle();
  for (const char* key : {"c", "d", "u", "s", "g", "p"}) {
    screen_->hand(std::string("key ") + key);
    EXPECT_TRUE(eventually([&] { return drawingDiffers(before, screen_->shot()) > 150; })) << key;
    settle();
    // Seeing through has two steps: the ground, then all but the stage's work.
    if (std::string(key) == "g") screen_->hand("key g");
    screen_->hand(std::string("key ") + key);
    EXPECT_TRUE(eventually([&] { return drawingDiffers(before, screen_->shot()) == 0; })) << key;
    settle();
  }
}

TEST_F(WindowTest, TwoClicksMeasure) {
  openCopyOf("garage.toml");
  waitForTape();
  screen_->hand("mousemove 600 60 key m");
  const Shot before = settle();
  screen_->hand("mousemove 520 340 sleep 0.5 click 1");
  const Shot first = settle();
  screen_->hand("mousemove 640 330 sleep 0.5 click 1");
  // The line between them and the card with the figures are in the colour of levels.
  const auto drawn = [](const Shot& shot) { return shot.count(kLevels, 60, 116, 1100, 552); };
  EXPECT_TRUE(eventually([&] { return drawn(screen_->shot()) > drawn(before) + 100; }));
  EXPECT_GT(drawingDiffers(first, settle()), 1000);
}

TEST_F(WindowTest, VBringsBackTheStagesOwnView) {
  openCopyOf("garage.toml");
  waitForTape();
  const Shot own = settle();
  screen_->hand("key 1");
  EXPECT_TRUE(eventually([&] { return drawingDiffers(own, screen_->shot()) > 10000; }));
  settle();
  screen_->hand("key v");
  EXPECT_TRUE(eventually([&] { return drawingDiffers(own, screen_->shot()) < 300; }));
}

TEST_F(WindowTest, ABadFileShowsItsProblemsAndKeepsTheBuilding) {
  openCopyOf("garage.toml");
  waitForTape();
  const Shot before = settle();
  const std::string good = read(job_);
  write(good + "\n[roof2]\npitch = \"steep\"\n");
  EXPECT_TRUE(eventually([&] { return screen_->shot().count(kCard, 60, 120, 420, 560) > 80000; }))
      << "the sheet of problems";
  EXPECT_TRUE(showsTape(screen_->shot()));
  EXPECT_NEAR(hook(screen_->shot()), hook(before), 0.002);
  std::string renamed = good;
  renamed.replace(renamed.find("Gabled garage"), 13, "Other garage");
  write(renamed);
  EXPECT_TRUE(eventually([&] { return screen_->title() == "Other garage - Stringcourse"; }));
  EXPECT_TRUE(eventually([&] { return screen_->shot().count(kCard, 60, 120, 420, 560) < 20000; }))
      << "the sheet has gone";
  EXPECT_LT(drawingDiffers(before, settle()), 3000) << "the eye stays where it was";
}

TEST_F(WindowTest, ReadingsAreReadAgainWhenTheirFileChanges) {
  const auto writeReadings = [&](const std::string& row) {
    std::ofstream(folder_ / "first.csv") << "kind,target,at,value\n" << row << "\n";
  };
  writeReadings("level,damp-course,A,0.004");
  write(read(demo("garage.toml")) + "\n[[readings]]\nname = \"First\"\nfile = \"first.csv\"\n");
  openJob(job_);
  waitForTape();
  const auto sheet = [&] { return screen_->shot().count(kCard, 60, 120, 420, 560); };
  EXPECT_LT(sheet(), 20000);
  writeReadings("level,damp-course,Nowhere,0.004");
  EXPECT_TRUE(eventually([&] { return sheet() > 80000; })) << "the sheet of problems";
  EXPECT_TRUE(showsTape(screen_->shot()));
  writeReadings("level,damp-course,B,0.003");
  EXPECT_TRUE(eventually([&] { return sheet() < 20000; })) << "the sheet has gone";
}

TEST_F(WindowTest, StartingWithABadFileShowsProblemsUntilItIsPutRight) {
  write("[outline]\ncorners = [[0, 0], [5000, 0]]\n");
  openJob(job_);
  EXPECT_TRUE(eventually([&] { return screen_->shot().count(kCard, 60, 120, 420, 560) > 80000; }));
  EXPECT_FALSE(showsTape(screen_->shot()));
  write(read(demo("smallest.toml")));
  EXPECT_TRUE(eventually([&] { return showsTape(screen_->shot()); }));
}

TEST_F(WindowTest, WithoutADisplaySaysSoAndEndsWithThree) {
  const std::string error = (folder_ / "error").string();
  const int status =
      std::system(("env -u DISPLAY -u WAYLAND_DISPLAY " + test_support::buildFolder() +
                   "/stringcourse " + demo("smallest.toml") + " 2> " + error + " > /dev/null")
                      .c_str());
  EXPECT_EQ(WEXITSTATUS(status), 3);
  for (const char* says : {"OpenGL 3.3", "`levels`", "`takeoff`", "`stages`", "`check`", "`share`",
                           "`picture`, `film` and `walkthrough` need no display"})
    EXPECT_NE(read(error).find(says), std::string::npos) << says;
}

}  // namespace
}  // namespace window_test
