#include "model/exchange/utf8.h"

#include <gtest/gtest.h>

namespace model {
namespace {

TEST(Utf8, AcceptsEveryLengthOfCharacter) {
  EXPECT_TRUE(isUtf8(""));
  EXPECT_TRUE(isUtf8("Obstgarten 12"));
  EXPECT_TRUE(isUtf8("\xC3\xA9 \xE2\x82\xAC \xF0\x9F\x8F\xA0"));
  EXPECT_TRUE(isUtf8("\xF4\x8F\xBF\xBF"));  // U+10FFFF, the last one
}

// RFC 3629 section 3: overlong forms, surrogates and values past U+10FFFF are not UTF-8.
TEST(Utf8, RefusesWhatRfc3629Forbids) {
  EXPECT_FALSE(isUtf8("\xC0\xAF"));          // overlong "/"
  EXPECT_FALSE(isUtf8("\xE0\x80\xAF"));      // the same in three bytes
  EXPECT_FALSE(isUtf8("\xED\xA0\x80"));      // surrogate
  EXPECT_FALSE(isUtf8("\xF4\x90\x80\x80"));  // U+110000
  EXPECT_FALSE(isUtf8("\xF8\x88\x80\x80\x80"));
}

TEST(Utf8, RefusesBrokenSequences) {
  EXPECT_FALSE(isUtf8("caf\xE9"));  // Latin-1
  EXPECT_FALSE(isUtf8("\x80"));
  EXPECT_FALSE(isUtf8("\xE2\x82"));
  EXPECT_FALSE(isUtf8("\xE2\x28\xA1"));
}

}  // namespace
}  // namespace model
