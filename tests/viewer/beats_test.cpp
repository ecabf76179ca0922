#include "viewer/beats.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "model/model.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"
#include "viewer/day_beats.h"
#include "viewer/panels/dates_layout.h"
#include "viewer/playback.h"

namespace viewer {
namespace {

// Ends that rise, some of them twice where it rests.
Beats anyBeats() {
  Beats beats;
  double end = 0;
  const int count = *rc::gen::inRange(1, 40);
  for (int i = 0; i < count; ++i) {
    const bool rests = i > 0 && *rc::gen::inRange(0, 5) == 0;
    end += rests ? 0 : *rc::gen::inRange(1, 100) / 64.0;
    beats.add(end, *rc::gen::inRange(1, 50) / 16.0);
  }
  return beats;
}

RC_GTEST_PROP(Beats, theClockNeverRunsBackAndEndsWhereTheLastBeatDoes, ()) {
  const Beats beats = anyBeats();
  double before = 0;
  for (int i = 0; i <= 200; ++i) {
    const double time = beats.timeAt(beats.length() * i / 200);
    RC_ASSERT(time >= before);
    before = time;
  }
  RC_ASSERT(beats.timeAt(0) == 0);
  RC_ASSERT(before == double(beats.ends().back()));
  RC_ASSERT(beats.timeAt(beats.length() + 10) == before);
}

RC_GTEST_PROP(Beats, secondsAndTimesLeadToEachOther, ()) {
  const Beats beats = anyBeats();
  const double time = double(beats.ends().back()) * *rc::gen::inRange(0, 1000) / 1000.0;
  const double to = beats.secondsTo(time), from = beats.secondsFrom(time);
  RC_ASSERT(to <= from + 1e-9);
  RC_ASSERT(std::abs(beats.timeAt(to) - time) < 1e-6);
  RC_ASSERT(std::abs(beats.timeAt(from) - time) < 1e-6);
  RC_ASSERT((from > to + 1e-6) == beats.restsAt((to + from) / 2));
}

RC_GTEST_PROP(Beats, stepsOnAndBackMeetTheSameEnds, ()) {
  const Beats beats = anyBeats();
  std::vector<double> on, back;
  for (auto end = beats.nextEnd(0); end; end = beats.nextEnd(*end)) on.push_back(*end);
  for (auto end = beats.endBefore(1e9); end; end = beats.endBefore(*end)) back.push_back(*end);
  RC_ASSERT(on == std::vector<double>(back.rbegin(), back.rend()));
  RC_ASSERT(std::is_sorted(on.begin(), on.end()));
  for (const float end : beats.ends())
    RC_ASSERT(std::find(on.begin(), on.end(), double(end)) != on.end());
}

TEST(Beats, AMillionOfOneLengthTakeTheirTimeEach) {
  std::vector<float> ends;
  for (int i = 1; i <= 1000000; ++i) ends.push_back(float(i) / 65536);
  const Beats beats(ends, 0.125);
  EXPECT_EQ(beats.length(), 125000);
  for (const int i : {0, 1, 777, 65536, 999999}) {
    EXPECT_EQ(beats.timeAt(0.125 * (i + 1)), double(ends[size_t(i)]));
    EXPECT_EQ(beats.secondsTo(double(ends[size_t(i)])), 0.125 * (i + 1));
  }
}

// Every working day takes as long as any other, whatever its stage; waits are passed quickly.
RC_GTEST_PROP(DayBeats, givesEveryWorkingDayTheSameTime, ()) {
  const model::Model model = model::buildModel(*test_support::randomJob());
  const Beats beats = dayBeats(model.programme);
  RC_ASSERT(!model.programme.stages.empty());
  for (size_t i = 0; i < model.programme.stages.size(); ++i) {
    const model::Stage& stage = model.programme.stages[i];
    const double days = stage.to - stage.from;
    const double seconds = beats.secondsTo(double(i) + 1) - beats.secondsFrom(double(i));
    // Parts of days that take no time to speak of are held a moment each.
    RC_ASSERT(seconds >= days / Playback::kDaysPerSecond - 1e-3);
    RC_ASSERT(seconds <= days / Playback::kDaysPerSecond + 0.3);
    const double waits = beats.secondsFrom(double(i) + 1) - beats.secondsTo(double(i) + 1);
    RC_ASSERT((waits > 0) == (stage.waitDays > 0));
    RC_ASSERT(waits < 0.5);
  }
  RC_ASSERT(double(beats.ends().back()) == double(model.programme.stages.size()));
}

TEST(DayBeats, EndWhereTheKeysForDaysStep) {
  const model::Model model = model::buildModel(test_support::demoJob("garage"));
  const Beats beats = dayBeats(model.programme);
  double time = 0;
  for (int i = 0; i < 20; ++i) {
    const double byKey = nextDayEnd(model.programme, time);
    EXPECT_NEAR(beats.nextEnd(time + 1e-6).value_or(-1), byKey, 1e-5);
    time = byKey;
  }
}

}  // namespace
}  // namespace viewer
