#include "model/in_parallel.h"

#include <gtest/gtest.h>

#include <atomic>
#include <stdexcept>
#include <vector>

namespace model {
namespace {

TEST(InParallel, DoesEveryPieceOnceAndIsDoneWhenItComesBack) {
  for (const std::size_t count : {0u, 1u, 2u, 3u, 1000u}) {
    std::vector<int> done(count);
    inParallel(count, [&](std::size_t i) { ++done[i]; });
    EXPECT_EQ(done, std::vector<int>(count, 1));
  }
}

TEST(InParallel, CanBeUsedInsideAPiece) {
  std::atomic<int> done{0};
  inParallel(5, [&](std::size_t) { inParallel(7, [&](std::size_t) { ++done; }); });
  EXPECT_EQ(done, 35);
}

TEST(InParallel, ThrowsWhatTheLowestPieceThrewOnceAllAreDone) {
  std::atomic<int> done{0};
  try {
    inParallel(50, [&](std::size_t i) {
      ++done;
      if (i == 9 || i == 31) throw std::runtime_error(i == 9 ? "nine" : "thirty-one");
    });
    FAIL() << "nothing was thrown";
  } catch (const std::runtime_error& error) {
    EXPECT_STREQ(error.what(), "nine");
  }
  EXPECT_EQ(done, 50);
}

}  // namespace
}  // namespace model
