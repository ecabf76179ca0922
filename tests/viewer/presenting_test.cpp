#include "viewer/presenting.h"

#include <GLFW/glfw3.h>
#include <gtest/gtest.h>

namespace viewer {
namespace {

Playback ofStages(int count) {
  Playback playback;
  playback.setStageCount(count);
  return playback;
}

void untilItStops(Playback& playback) {
  for (int i = 0; i < 1000 && playback.playing(); ++i) playback.advance(0.05);
}

TEST(Presenting, NextPlaysOneStageAndStopsAtItsEnd) {
  ViewState state;
  Playback playback = ofStages(5);
  Presenting presenting;
  presenting.begin(state, playback);
  for (int stage = 1; stage <= 5; ++stage) {
    presenting.next(playback);
    EXPECT_TRUE(playback.playing());
    untilItStops(playback);
    EXPECT_EQ(playback.time(), stage);
  }
  presenting.next(playback);
  EXPECT_FALSE(playback.playing()) << "after the last there is none";
  EXPECT_EQ(playback.time(), 5);
}

TEST(Presenting, AHurriedHandSeesTheEndOfTheStageAtOnce) {
  ViewState state;
  Playback playback = ofStages(3);
  Presenting presenting;
  presenting.begin(state, playback);
  presenting.next(playback);
  playback.advance(0.5);
  presenting.next(playback);
  EXPECT_EQ(playback.time(), 1);
  EXPECT_FALSE(playback.playing());
  presenting.back(playback);
  EXPECT_EQ(playback.time(), 0);
}

TEST(Presenting, WhatWasShownBeforeComesBack) {
  ViewState state;
  Playback playback = ofStages(3);
  state.tab = Tab::Levels;
  state.overlays.levels = true;
  state.overlays.lines = false;
  state.switches.levelPlane = true;
  playback.setSpeed(2);
  playback.setRound(Round::Stage);
  playback.setPace(Pace::Piece);
  Presenting presenting;
  presenting.begin(state, playback);
  EXPECT_TRUE(presenting.on());
  EXPECT_TRUE(state.overlays.clientWords);
  EXPECT_FALSE(state.overlays.levels || state.overlays.tape || state.overlays.rod);
  EXPECT_EQ(state.tab, Tab::None);
  EXPECT_TRUE(state.followStages);
  EXPECT_EQ(playback.pace(), Pace::Stage) << "a page key plays a stage in seconds";
  presenting.toggleDark();
  presenting.end(state, playback);
  EXPECT_EQ(playback.pace(), Pace::Piece);
  EXPECT_FALSE(presenting.on() || presenting.dark());
  EXPECT_EQ(state.tab, Tab::Levels);
  EXPECT_TRUE(state.overlays.levels && state.overlays.tape && state.overlays.rod);
  EXPECT_FALSE(state.overlays.clientWords || state.overlays.lines || state.followStages);
  EXPECT_TRUE(state.switches.levelPlane && playback.round() == Round::Stage);
  EXPECT_EQ(playback.speed(), 2);
}

TEST(Presenting, KeyboardsAndRemotesAreUnderstood) {
  using Act = Presenting::Act;
  for (int key : {GLFW_KEY_PAGE_DOWN, GLFW_KEY_RIGHT, GLFW_KEY_SPACE})
    EXPECT_EQ(Presenting::actOf(key), Act::Next);
  for (int key : {GLFW_KEY_PAGE_UP, GLFW_KEY_LEFT}) EXPECT_EQ(Presenting::actOf(key), Act::Back);
  for (int key : {GLFW_KEY_B, GLFW_KEY_PERIOD}) EXPECT_EQ(Presenting::actOf(key), Act::Dark);
  for (int key : {GLFW_KEY_ESCAPE, GLFW_KEY_F5}) EXPECT_EQ(Presenting::actOf(key), Act::End);
  EXPECT_EQ(Presenting::actOf(GLFW_KEY_L), Act::None);
}

TEST(Playback, PlayingTheWholeGoesOnPastTheEndOfAStage) {
  Playback playback = ofStages(3);
  playback.playStage();
  untilItStops(playback);
  playback.play();
  untilItStops(playback);
  EXPECT_EQ(playback.time(), 3);
}

}  // namespace
}  // namespace viewer
