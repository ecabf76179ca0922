#include "viewer/overlays/words.h"

#include <gtest/gtest.h>

namespace viewer {
namespace {

TEST(StageAt, BelongsToTheStageThatEndsThere) {
  EXPECT_EQ(stageAt(0, 10), 0);
  EXPECT_EQ(stageAt(0.3, 10), 0);
  EXPECT_EQ(stageAt(1, 10), 0);
  EXPECT_EQ(stageAt(1.01, 10), 1);
  EXPECT_EQ(stageAt(10, 10), 9);
  EXPECT_EQ(stageAt(99, 10), 9);
  EXPECT_EQ(stageAt(3, 0), 0);
}

TEST(DateWords, NamesTheDay) {
  EXPECT_EQ(dateWords("2027-04-12"), "Mon 12 Apr 2027");
  EXPECT_EQ(dateWords("2028-02-29"), "Tue 29 Feb 2028");
  EXPECT_EQ(dateWords("soon"), "soon");
}

TEST(IsoDateAt, GoesFromStartToFinishOfTheStage) {
  model::Programme programme;
  model::Stage stage;
  stage.start = "2027-04-12";
  stage.finish = "2027-04-16";
  programme.stages = {stage};
  EXPECT_EQ(isoDateAt(programme, 0), "2027-04-12");
  EXPECT_EQ(isoDateAt(programme, 0.5), "2027-04-14");
  EXPECT_EQ(isoDateAt(programme, 1), "2027-04-16");
  programme.stages[0].start = programme.stages[0].finish = "";
  EXPECT_EQ(isoDateAt(programme, 0.5), "");
}

TEST(ViewWords, SayWhereTheEyeStands) {
  const auto words = [](const char* name) {
    return viewWords(*standardView(name, {0, 0, 0}, {10, 8, 6}, 1.5));
  };
  EXPECT_EQ(words("plan"), "Plan, parallel");
  EXPECT_EQ(words("south"), "South elevation");
  EXPECT_EQ(words("east"), "East elevation");
  EXPECT_EQ(words("north"), "North elevation");
  EXPECT_EQ(words("west"), "West elevation");
  EXPECT_EQ(words("south-west"), "From the south-west, perspective");
  EXPECT_EQ(words("north-east"), "From the north-east, perspective");
}

TEST(ViewWords, CallASectionASectionAndSayWhereItIsCut) {
  Scene scene;
  scene.origin = {100, 20, 0};
  Frame frame;
  frame.camera = *standardView("section", {0, 0, 0}, {10, 8, 6}, 1.5);
  frame.section.on = true;
  frame.section.plane = {0, -1, 0, 4.25f};  // south of it is cut away
  EXPECT_EQ(viewWords(frame, scene), "Section at y = 24250, looking north");
  frame.camera = *standardView("east", {0, 0, 0}, {10, 8, 6}, 1.5);
  frame.section.plane = {1, 0, 0, -3};
  EXPECT_EQ(viewWords(frame, scene), "Section at x = 103000, looking west");
  frame.camera = *standardView("south-west", {0, 0, 0}, {10, 8, 6}, 1.5);
  EXPECT_EQ(viewWords(frame, scene), "From the south-west, perspective, cut at x = 103000");
  frame.section.on = false;
  EXPECT_EQ(viewWords(frame, scene), "From the south-west, perspective");
}

TEST(ViewWords, DoNotCallAnElevationThatShowsTheCutEdgeOnASection) {
  Scene scene;
  Frame frame;
  frame.camera = *standardView("south", {0, 0, 0}, {10, 8, 6}, 1.5);
  frame.section.on = true;
  frame.section.plane = {1, 0, 0, -3};
  EXPECT_EQ(viewWords(frame, scene), "South elevation, cut at x = 3000");
}

TEST(StringGroupName, SaysTheWallOnceAndBothEdgesTogether) {
  EXPECT_EQ(stringGroupName({"A-B outer face", "A-B inner face", "A-B foundation outer edge",
                             "A-B foundation inner edge"}),
            "A-B: outer face, inner face, foundation edges");
  EXPECT_EQ(stringGroupName({"C-D outer face", "C-D inner face"}), "C-D: outer face, inner face");
  EXPECT_EQ(stringGroupName({"C-D outer face", "C-D foundation outer edge"}),
            "C-D: outer face, foundation outer edge");
  EXPECT_EQ(stringGroupName({"E-F outer face"}), "E-F outer face");
}

TEST(CourseWords, CountFromTheDampCourse) {
  model::Model m;
  m.settingOut.levels.dampCourse = -0.15;
  EXPECT_EQ(courseWords(m, -0.15), "course 0");
  EXPECT_EQ(courseWords(m, -0.15 + 8 * 0.075), "course 8");
  EXPECT_EQ(courseWords(m, -0.15 - 2 * 0.075), "course -2");
  EXPECT_EQ(courseWords(m, -0.15 + 8.4 * 0.075), "course 8.4");
}

}  // namespace
}  // namespace viewer
