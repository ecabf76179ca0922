// One stage told in words says everything that is known of it.
#include "viewer/commands/stage_words.h"

#include <gtest/gtest.h>

#include <sstream>

#include "model/model.h"
#include "tests/support/demo_job.h"

namespace viewer {
namespace {

std::string unbroken(const std::string& text) {
  std::string out;
  std::istringstream words(text);
  for (std::string word; words >> word;) out += (out.empty() ? "" : " ") + word;
  return out;
}

TEST(StageWords, SayWhatIsDoneWhatIsThereAndTheCautionOfEveryStage) {
  const model::Model model = model::buildModel(test_support::demoJob("orchard-house"));
  const auto& stages = model.programme.stages;
  int cautions = 0, holds = 0;
  for (size_t i = 0; i < stages.size(); ++i) {
    const std::string words = unbroken(stageWords(model.programme, i));
    for (const std::string& said : {stages[i].name, stages[i].id, stages[i].what, stages[i].atEnd,
                                    stages[i].caution, stages[i].holdPoint, stages[i].note})
      EXPECT_NE(words.find(unbroken(said)), std::string::npos) << words << "\n" << said;
    EXPECT_EQ(words.find("Caution") != std::string::npos, !stages[i].caution.empty()) << words;
    cautions += !stages[i].caution.empty();
    holds += !stages[i].holdPoint.empty();
    for (const size_t before : stages[i].after)
      EXPECT_NE(words.find(stages[before].name), std::string::npos);
  }
  EXPECT_GT(cautions, 5);
  EXPECT_GT(holds, 3);
}

TEST(StageWords, KeepToEightyLettersALine) {
  const model::Model model = model::buildModel(test_support::demoJob("orchard-house"));
  std::istringstream lines(allStageWords(model.programme));
  for (std::string line; std::getline(lines, line);) EXPECT_LE(line.size(), 84u) << line;
}

}  // namespace
}  // namespace viewer
