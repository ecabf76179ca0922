#include "model/job/nearest.h"

#include <gtest/gtest.h>

namespace {

using model::editDistance;
using model::nearest;

TEST(Nearest, CountsInsertedDroppedChangedAndSwappedLetters) {
  EXPECT_EQ(editDistance("width", "width", 3), 0u);
  EXPECT_EQ(editDistance("wdth", "width", 3), 1u);
  EXPECT_EQ(editDistance("widtth", "width", 3), 1u);
  EXPECT_EQ(editDistance("wadth", "width", 3), 1u);
  EXPECT_EQ(editDistance("wdith", "width", 3), 1u);
  EXPECT_EQ(editDistance("", "abc", 3), 3u);
}

TEST(Nearest, CapitalsAndHyphensCountAsTheSame) {
  EXPECT_EQ(editDistance("Outer-Leaf", "outer_leaf", 3), 0u);
}

TEST(Nearest, StopsCountingOverTheLimit) { EXPECT_EQ(editDistance("a", "abcdefgh", 2), 3u); }

TEST(Nearest, SuggestsOnlyWhatIsNear) {
  const std::vector<std::string> known{"cavity", "joint", "top"};
  EXPECT_EQ(nearest("cavty", known), "cavity");
  EXPECT_EQ(nearest("tpo", known), "top");
  EXPECT_FALSE(nearest("wallpaper", known));
  EXPECT_FALSE(nearest("x", {}));
}

}  // namespace
