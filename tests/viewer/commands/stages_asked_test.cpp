#include "viewer/commands/stages_asked.h"

#include <gtest/gtest.h>

namespace viewer {
namespace {

model::Programme programme() {
  model::Programme result;
  for (const char* id : {"strip-topsoil", "dig-cellar", "walls-1", "walls-2", "roof"}) {
    model::Stage stage;
    stage.id = stage.name = id;
    result.stages.push_back(stage);
  }
  result.stages[3].name = "Walls, upper";
  return result;
}

std::vector<size_t> asked(const std::string& text) {
  std::vector<size_t> stages;
  const auto wrong = readStages(text, programme(), stages);
  EXPECT_FALSE(wrong) << *wrong;
  return stages;
}

std::string refused(const std::string& text) {
  std::vector<size_t> stages;
  return readStages(text, programme(), stages).value_or("");
}

using Stages = std::vector<size_t>;

TEST(StagesAsked, AreTheLastWhenNoneIsNamed) { EXPECT_EQ(asked(""), Stages{4}); }

TEST(StagesAsked, AreTakenByNumberRangeIdAndName) {
  EXPECT_EQ(asked("2"), Stages{1});
  EXPECT_EQ(asked("all"), (Stages{0, 1, 2, 3, 4}));
  EXPECT_EQ(asked("5,1-2"), (Stages{0, 1, 4}));
  EXPECT_EQ(asked("roof,2-3,3"), (Stages{1, 2, 4})) << "each once";
  EXPECT_EQ(asked("walls-2"), Stages{3}) << "an id with a number is no range";
  EXPECT_EQ(asked("Walls, upper"), Stages{3}) << "a name with a comma is no list";
}

TEST(StagesAsked, AreRefusedWithWhatThereIs) {
  EXPECT_NE(refused("3-9").find("1 to 5"), std::string::npos);
  EXPECT_NE(refused("0-2").find("1 to 5"), std::string::npos);
  EXPECT_NE(refused("4-2").find("goes up"), std::string::npos);
  EXPECT_NE(refused("1,chimney").find("dig-cellar"), std::string::npos);
  EXPECT_NE(refused("1,,2").find("between two commas"), std::string::npos);
}

TEST(StagesAsked, NameTheirPicturesByNumberAndId) {
  EXPECT_EQ(stagePictureName(programme(), 1), "02-dig-cellar.png");
}

}  // namespace
}  // namespace viewer
