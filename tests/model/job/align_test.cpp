#include "model/job/align.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace {

std::string aligned(const std::string& before, const std::string& now) {
  std::string text;
  for (const auto& row : model::align(before.size(), now.size(),
                                      [&](size_t i, size_t j) { return before[i] == now[j]; })) {
    text += row.before ? before[*row.before] : '.';
    text += row.now ? now[*row.now] : '.';
    text += ' ';
  }
  return text;
}

TEST(Align, KeepsWhatStayed) {
  EXPECT_EQ(aligned("abc", "abc"), "aa bb cc ");
  EXPECT_EQ(aligned("abc", "ac"), "aa b. cc ");
  EXPECT_EQ(aligned("ac", "abc"), "aa .b cc ");
  EXPECT_EQ(aligned("abc", "axc"), "aa bx cc ");
  EXPECT_EQ(aligned("", "ab"), ".a .b ");
  EXPECT_EQ(aligned("ab", ""), "a. b. ");
  EXPECT_EQ(aligned("abcd", "bd"), "a. bb c. dd ");
}

RC_GTEST_PROP(Align, EveryItemIsThereOnceInOrder,
              (const std::vector<bool>& b, const std::vector<bool>& n)) {
  size_t nextBefore = 0, nextNow = 0;
  for (const auto& row :
       model::align(b.size(), n.size(), [&](size_t i, size_t j) { return b[i] == n[j]; })) {
    RC_ASSERT(row.before || row.now);
    if (row.before) RC_ASSERT(*row.before == nextBefore++);
    if (row.now) RC_ASSERT(*row.now == nextNow++);
  }
  RC_ASSERT(nextBefore == b.size());
  RC_ASSERT(nextNow == n.size());
}

}  // namespace
