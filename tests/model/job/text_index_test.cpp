#include "model/job/text_index.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace {

using model::LineIndex;

TEST(LineIndex, ColumnsCountCharactersNotBytes) {
  const LineIndex lines("a\nB\xC3\xA4\xE2\x82\xACx\n");
  EXPECT_EQ(lines.offsetOf({2, 1}), 2u);
  EXPECT_EQ(lines.offsetOf({2, 3}), 5u);
  EXPECT_EQ(lines.offsetOf({2, 4}), 8u);
  EXPECT_EQ(lines.placeOf(8).line, 2);
  EXPECT_EQ(lines.placeOf(8).column, 4);
}

TEST(LineIndex, ALineEndsBeforeItsBreak) {
  const LineIndex lines("one\r\ntwo\nthree");
  EXPECT_EQ(lines.lineEnd(1), 3u);
  EXPECT_EQ(lines.lineEnd(2), 8u);
  EXPECT_EQ(lines.lineEnd(3), 14u);
  EXPECT_EQ(lines.lineStart(9), 14u);
}

RC_GTEST_PROP(LineIndex, PlacesAndOffsetsAreOneToOneInPlainText, (const std::string& any)) {
  std::string text;
  for (const char c : any) text += (c & 1) ? '\n' : 'x';
  const LineIndex lines(text);
  for (size_t i = 0; i <= text.size(); ++i) RC_ASSERT(lines.offsetOf(lines.placeOf(i)) == i);
}

std::string cleaned(std::string_view text, size_t problems) {
  model::Problems found;
  const model::CleanedText clean = model::cleanedText(text, "f", found);
  EXPECT_EQ(found.size(), problems) << text;
  return clean.text;
}

// The ill-formed sequences are those of the Unicode Standard, version 15, section 3.9, table 3-8
// and the text before it.
TEST(CleanedText, EveryKindOfBadUtf8IsFound) {
  EXPECT_EQ(cleaned("fine \xC3\xA4 \xE2\x82\xAC \xF0\x9F\x8F\xA0", 0).size(), 16u);
  EXPECT_EQ(cleaned("a\xC0\xAFz", 1), "a??z");            // overlong
  EXPECT_EQ(cleaned("a\xE0\x9F\x80z", 1), "a???z");       // overlong
  EXPECT_EQ(cleaned("a\xED\xA0\x80z", 1), "a???z");       // surrogate
  EXPECT_EQ(cleaned("a\xF4\x90\x80\x80z", 1), "a????z");  // over U+10FFFF
  EXPECT_EQ(cleaned("a\xE2\x82", 1), "a??");              // cut short
  EXPECT_EQ(cleaned(std::string_view("a\0b", 3), 1), "a?b");
}

TEST(CleanedText, SaysOnceWhereTheFirstIsAndHowManyMoreThereAre) {
  model::Problems found;
  model::cleanedText("name = \"Caf\xE9\" # d\xE9j\xE0\n", "f", found);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].place.column, 12);
  EXPECT_NE(found[0].what.find("2 more places are no text either"), std::string::npos);
}

TEST(CleanedText, TheByteOrderMarkIsLeftOut) {
  EXPECT_EQ(cleaned("\xEF\xBB\xBF"
                    "a",
                    0),
            "a");
}

TEST(NestingProblem, CountsOnlyBracketsThatAreNotText) {
  EXPECT_FALSE(model::nestingProblem("a = \"[[[[[[[[[[[[\" # [[[[[[[[[[[[[[", "f"));
  EXPECT_FALSE(model::nestingProblem("a = [[1.5, 2.5], [3.5, 4.5], [5.5, 6.5], [1.5, 2.5]]", "f"));
  EXPECT_TRUE(model::nestingProblem("a = [[[[[[[[[1]]]]]]]]]", "f"));
  EXPECT_TRUE(model::nestingProblem("a.b.c.d.e.f.g.h.i.j = 1", "f"));
}

}  // namespace
