#include "model/drawing/wrap_text.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/exchange/utf8.h"
#include "tests/model/drawing/plain_letters.h"

namespace model {
namespace {

const TextWidth kWidth = test_support::plainLetters();
const Letters kLetters{2, false};  // 1.8 mm each

TEST(Wrapped, BreaksAtSpacesFirst) {
  EXPECT_EQ(wrapped("top of concrete", 18.5, kLetters, kWidth),
            (std::vector<std::string>{"top of", "concrete"}));
}

TEST(Wrapped, BreaksAWordThatIsTooWide) {
  EXPECT_EQ(wrapped("abcdefgh", 5.5, kLetters, kWidth),
            (std::vector<std::string>{"abc", "def", "gh"}));
}

TEST(Wrapped, KeepsAMarkWithItsLetter) {
  // e and a combining acute, three times.
  for (const std::string& line : wrapped("e\u0301e\u0301e\u0301", 2, kLetters, kWidth))
    EXPECT_EQ(line, "e\u0301");
}

TEST(Wrapped, OfNothingIsOneEmptyLine) {
  EXPECT_EQ(wrapped("", 10, kLetters, kWidth), std::vector<std::string>{""});
}

TEST(Wrapped, TakesLineEndsForSpaces) {
  EXPECT_EQ(wrapped("top\r\nof\tconcrete", 100, kLetters, kWidth),
            std::vector<std::string>{"top of concrete"});
}

TEST(TextAfter, IsWhatTheLinesDoNotSay) {
  EXPECT_EQ(textAfter("top  of concrete", {"top of"}), "concrete");
  EXPECT_EQ(textAfter("abcdefgh", {"abc", "def"}), "gh");
  EXPECT_EQ(textAfter("sill", {}), "sill");
  EXPECT_EQ(textAfter("sill", {"sill"}), "");
}

RC_GTEST_PROP(Wrapped, KeepsToTheWidthAndLosesNoLetter, ()) {
  static const std::vector<std::string> words{
      "sill", "top", "of", "Преображенской", "東京都千代田区", "a", "weatherboarding", "कमरा"};
  std::string text, letters;
  for (int i = *rc::gen::inRange(0, 12); i > 0; --i) {
    const std::string word = *rc::gen::elementOf(words);
    text += (text.empty() ? "" : " ") + word;
    letters += word;
  }
  const double width = *rc::gen::inRange(4, 60);
  std::string back;
  for (const std::string& line : wrapped(text, width, kLetters, kWidth)) {
    RC_ASSERT(kWidth(line, kLetters.size, false) <= width);
    RC_ASSERT(isUtf8(line));
    for (const char c : line)
      if (c != ' ') back += c;
  }
  RC_ASSERT(back == letters);
}

TEST(Shortened, EndsWithAnEllipsisOnlyWhenItMust) {
  EXPECT_EQ(shortened("sill", 7.3, kLetters, kWidth), "sill");
  EXPECT_EQ(shortened("window sill", 9.1, kLetters, kWidth), "wind\u2026");
}

}  // namespace
}  // namespace model
