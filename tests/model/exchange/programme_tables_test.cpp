#include "model/exchange/programme_tables.h"

#include <gtest/gtest.h>

#include <map>

#include "model/exchange/event_calendar.h"
#include "model/exchange/site_events.h"
#include "model/programme/calendar.h"
#include "tests/support/demo_job.h"

namespace model {
namespace {

const Model& demo() {
  static const Model model = [] {
    Job job = test_support::demoJob("orchard-house");
    job.programme.deliveries = {{"Facing bricks; 6 packs, by crane", "corners-ground-1", 1}};
    return buildModel(job);
  }();
  return model;
}

TEST(ProgrammeTables, DatesHaveARowForEachStageAndFloatsOfTheNetwork) {
  const TablePart part = datesPart(demo());
  ASSERT_EQ(part.table.rows.size(), demo().programme.stages.size());
  for (const auto& row : part.table.rows) ASSERT_EQ(row.size(), part.table.columns.size());
  EXPECT_EQ(part.table.rows.front()[5], demo().programme.stages.front().start);
  EXPECT_EQ(part.table.rows.back()[11], "critical");
}

TEST(ProgrammeTables, RatesTimesDaysAreTheAmount) {
  const TablePart part = ratesPart(demo());
  size_t counted = 0;
  for (const auto& row : part.table.rows) {
    if (row[4].empty()) continue;
    ++counted;
    EXPECT_GT(std::stod(row[4]), 0) << row[1];
    EXPECT_GT(std::stod(row[6]), 0) << row[1];
    EXPECT_GE(std::stod(row[7]) + 0.5, std::stod(row[4]) / std::stod(row[6])) << row[1];
  }
  EXPECT_GT(counted, 20u);
}

TEST(ProgrammeTables, EventsAreInOrderOfTheirDates) {
  const std::vector<SiteEvent> events = siteEvents(demo());
  EXPECT_GT(events.size(), 10u);
  bool delivery = false, muck = false;
  for (size_t i = 0; i < events.size(); ++i) {
    if (i > 0) {
      EXPECT_LE(events[i - 1].date, events[i].date);
    }
    delivery |= events[i].kind == SiteEventKind::Delivery;
    muck |= events[i].kind == SiteEventKind::MuckAway;
    EXPECT_FALSE(events[i].text.empty());
  }
  EXPECT_TRUE(delivery && muck);
}

TEST(ProgrammeTables, ALookAheadHasEachDayOnceAtLeastAndWeekendsAreNotWorked) {
  const TablePart part = lookAheadPart(demo(), *dayNumber("2027-04-12"), 14);
  std::map<std::string, int> rows;
  for (const auto& row : part.table.rows) ++rows[row[0]];
  EXPECT_EQ(rows.size(), 14u);
  for (const auto& row : part.table.rows) {
    if (row[1] == "Sat" || row[1] == "Sun") {
      EXPECT_EQ(row[3], "no work");
    }
  }
  EXPECT_EQ(part.table.rows.front()[3], "begins and ends");
}

TEST(ProgrammeTables, TwoPlansAreComparedByTheirStages) {
  Job job = demo().job;
  EXPECT_TRUE(comparisonPart(demo(), demo()).table.rows.empty());
  StageOverride slower;
  slower.stage = "dig-cellar";
  slower.days = 9;
  job.programme.stages.push_back(slower);
  const Model later = buildModel(job);
  const TablePart part = comparisonPart(demo(), later);
  ASSERT_FALSE(part.table.rows.empty());
  EXPECT_EQ(part.table.rows.front()[0], "dig-cellar");
  EXPECT_EQ(part.table.rows.front()[3], "9");
  EXPECT_EQ(part.table.rows.front()[6], "0");
  EXPECT_EQ(part.table.rows.back()[6].front(), '+');
}

TEST(EventCalendar, LinesAreFoldedAndTextIsEscaped) {
  const std::string text = eventCalendar(demo(), true);
  EXPECT_NE(text.find("Facing bricks\\; 6 packs\\, by crane"), std::string::npos);
  size_t from = 0, events = 0;
  while (from < text.size()) {
    const size_t end = text.find("\r\n", from);
    ASSERT_NE(end, std::string::npos);
    EXPECT_LE(end - from, 75u);
    events += text.compare(from, end - from, "BEGIN:VEVENT") == 0;
    from = end + 2;
  }
  EXPECT_EQ(events, demo().programme.stages.size() + siteEvents(demo()).size());
}

}  // namespace
}  // namespace model
