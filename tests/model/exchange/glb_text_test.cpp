#include "model/exchange/glb_text.h"

#include <gtest/gtest.h>

#include <limits>
#include <nlohmann/json.hpp>

namespace model {
namespace {

std::string quoted(const std::string& text) {
  std::string out;
  appendQuoted(out, text);
  return out;
}

TEST(GlbText, ReadsBackAsTheVeryText) {
  for (const std::string& text :
       {std::string("Wall A-B"), std::string("8'-3 1/2\" \\ sill"), std::string("a\nb\tc\x01"),
        std::string("\xC3\xA9t\xC3\xA9 \xF0\x9F\x8F\xA0"), std::string()}) {
    EXPECT_EQ(nlohmann::json::parse(quoted(text)), text);
  }
}

TEST(GlbText, RefusesWhatIsNotUtf8) { EXPECT_THROW(quoted("caf\xE9"), std::runtime_error); }

TEST(GlbText, WritesNumbersThatReadBackTheSame) {
  for (const float number : {0.1f, -3.0750000476837f, 1e-5f, 123456.79f, 0.0f}) {
    std::string out;
    appendNumber(out, number);
    EXPECT_EQ(nlohmann::json::parse(out).get<float>(), number) << out;
  }
}

TEST(GlbText, SaysOnlyWhatThereIsToSay) {
  GlbExtras stages;
  stages.say("stage", std::string_view("Dig"));
  GlbExtras extras;
  EXPECT_TRUE(extras.empty());
  extras.say("wall", std::string_view(""));
  extras.say("list", std::vector<GlbExtras>{});
  EXPECT_TRUE(extras.empty());
  extras.say("level", -0.00001);  // no negative nothing
  extras.say(stages);
  extras.say("list", std::vector<GlbExtras>{stages, stages});
  std::string out;
  extras.appendTo(out);
  EXPECT_EQ(out, R"({"level":0,"stage":"Dig","list":[{"stage":"Dig"},{"stage":"Dig"}]})");
}

TEST(GlbText, SaysNumbersToATenthOfAMillimetre) {
  for (const auto& [number, said] : {std::pair(1.25, "1.25"), std::pair(-0.0005, "-0.0005"),
                                     std::pair(-3.07504, "-3.075"), std::pair(120000.0, "120000"),
                                     std::pair(12.34567, "12.3457"), std::pair(1e300, "1e+300")}) {
    GlbExtras extras;
    extras.say("level", number);
    std::string out;
    extras.appendTo(out);
    EXPECT_EQ(out, std::string("{\"level\":") + said + "}");
  }
}

TEST(GlbText, RefusesLevelsThatAreNotFinite) {
  GlbExtras extras;
  EXPECT_THROW(extras.say("level", std::numeric_limits<double>::infinity()), std::runtime_error);
}

}  // namespace
}  // namespace model
