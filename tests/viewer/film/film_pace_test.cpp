#include "viewer/film/film_pace.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <numeric>

namespace viewer {
namespace {

double total(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

TEST(FilmPace, SharesTheFilmByWorkingDays) {
  const FilmPace pace({1, 2, 3, 2}, 0, 82);
  ASSERT_EQ(pace.seconds().size(), 4u);
  EXPECT_NEAR(pace.seconds()[0], 10, 1e-6);
  EXPECT_NEAR(pace.seconds()[1], 20, 1e-6);
  EXPECT_NEAR(pace.seconds()[2], 30, 1e-6);
  EXPECT_NEAR(total(pace.seconds()), 80, 1e-9) << "two seconds rest on the end";
}

TEST(FilmPace, GivesShortStagesTimeToBeReadAndLongOnesNoMoreThanTheirPart) {
  const FilmPace pace({0.01, 0, 1, 1, 1, 1, 1, 1, 1, 1000}, 0, 102);
  EXPECT_NEAR(pace.seconds()[0], 2.5, 1e-6);
  EXPECT_NEAR(pace.seconds()[1], 2.5, 1e-6);
  EXPECT_NEAR(pace.seconds()[9], 40, 1e-6);
}

TEST(FilmPace, RunsFromTheFirstStageToTheEndOfTheLastAndRestsThere) {
  const FilmPace pace({1, 1}, 7, 10);
  EXPECT_EQ(pace.at(0), 7);
  EXPECT_NEAR(pace.at(2.25), 7.5, 1e-9);
  EXPECT_NEAR(pace.at(6.75), 8.5, 1e-9);
  EXPECT_EQ(pace.at(9.5), 9) << "the last tenth";
  EXPECT_EQ(pace.at(10), 9);
  EXPECT_EQ(pace.at(99), 9);
}

RC_GTEST_PROP(FilmPace, IsAsLongAsAskedWithinItsBoundsAndNeverGoesBack, ()) {
  const auto days = *rc::gen::nonEmpty(rc::gen::container<std::vector<double>>(
      rc::gen::map(rc::gen::inRange(0, 4000), [](int n) { return n / 100.0; })));
  const double length = *rc::gen::inRange(1, 500);
  const FilmPace pace(days, 3, length);
  const double playing = length - std::min(length * 0.1, 2.0);
  RC_ASSERT(std::abs(total(pace.seconds()) - playing) < 1e-6 * playing);
  for (size_t i = 0; i < days.size(); ++i) {
    RC_ASSERT(pace.seconds()[i] > 0);
    for (size_t j = 0; j < days.size(); ++j)
      if (days[i] <= days[j]) RC_ASSERT(pace.seconds()[i] <= pace.seconds()[j] + 1e-9);
  }
  double before = 0;
  for (int i = 0; i <= 100; ++i) {
    const double now = pace.at(length * i / 100);
    RC_ASSERT(now >= before);
    before = now;
  }
  RC_ASSERT(before == 3 + static_cast<double>(days.size()));
}

}  // namespace
}  // namespace viewer
