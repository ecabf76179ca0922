#include "viewer/panels/dates_layout.h"

#include <gtest/gtest.h>

#include "model/model.h"
#include "model/programme/calendar.h"
#include "tests/support/demo_job.h"

namespace viewer {
namespace {

model::Programme demo(const std::string& start = "2027-04-12") {
  model::Job job = test_support::demoJob("orchard-house");
  job.programme.start = start;
  return model::buildModel(job).programme;
}

TEST(DatesChart, BarsRunFromTheFirstDayToTheDayAfterTheLast) {
  const model::Programme programme = demo();
  const DatesChart chart = datesChart(programme);
  ASSERT_EQ(chart.rows.size(), programme.stages.size());
  EXPECT_TRUE(chart.dated);
  for (size_t i = 0; i < chart.rows.size(); ++i) {
    const model::Stage& stage = programme.stages[i];
    EXPECT_EQ(model::isoDate(chart.rows[i].start), stage.start);
    EXPECT_EQ(model::isoDate(chart.rows[i].finish - 1), stage.finish);
    EXPECT_GE(chart.rows[i].lateFinish, chart.rows[i].finish);
    EXPECT_GE(chart.rows[i].start, chart.first);
    EXPECT_LE(chart.rows[i].lateFinish, chart.last);
  }
}

TEST(DatesChart, WithoutAStartDaysAreWorkingDays) {
  const model::Programme programme = demo("");
  const DatesChart chart = datesChart(programme);
  EXPECT_FALSE(chart.dated);
  EXPECT_EQ(chart.first, 0);
  EXPECT_NEAR(double(chart.last), programme.workingDays, 1.0);
  for (const DatesRow& row : chart.rows) EXPECT_LT(row.start, row.finish);
}

TEST(DatesChart, TheEndOfABarIsTakenHoldOfBeforeItsBody) {
  const DatesRow row{10, 14, 14, 14};
  const DatesScale scale{10, 100, 20};
  EXPECT_EQ(partAt(row, scale, 178, 6), BarPart::End);
  EXPECT_EQ(partAt(row, scale, 185, 6), BarPart::End);
  EXPECT_EQ(partAt(row, scale, 140, 6), BarPart::Body);
  EXPECT_EQ(partAt(row, scale, 90, 6), BarPart::None);
  EXPECT_EQ(partAt(row, scale, 200, 6), BarPart::None);
}

TEST(DatesChart, ABarPulledToItsOwnEndIsAsLongAsItWas) {
  const model::Programme programme = demo();
  const DatesChart chart = datesChart(programme);
  for (size_t i = 0; i < chart.rows.size(); ++i) {
    EXPECT_NEAR(daysWhenPulled(programme, i, chart, double(chart.rows[i].finish)),
                programme.stages[i].days, 0.5)
        << programme.stages[i].id;
    EXPECT_EQ(daysWhenPulled(programme, i, chart, double(chart.rows[i].start) - 3), 0.5);
  }
}

TEST(DatesChart, DaysAreSteppedThroughThereAndBackAgain) {
  const model::Programme programme = demo();
  double time = 0;
  std::vector<double> ends{0};
  while (time < double(programme.stages.size())) {
    const double next = nextDayEnd(programme, time);
    ASSERT_GT(next, time);
    ends.push_back(time = next);
  }
  EXPECT_GT(ends.size(), programme.stages.size()) << "long stages have several days";
  for (size_t i = ends.size(); i-- > 1;) {
    EXPECT_NEAR(dayEndBefore(programme, time), ends[i - 1], 1e-9);
    time = ends[i - 1];
  }
  EXPECT_EQ(dayEndBefore(programme, 0), 0);
}

}  // namespace
}  // namespace viewer
