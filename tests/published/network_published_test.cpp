// Networks worked in print, against ours. The sources print early and late times and the float
// (slack); free floats follow from their early times.
#include <gtest/gtest.h>

#include <map>

#include "model/programme/network.h"

namespace published {
namespace {

using namespace model;

Activity lasting(double days) {
  Activity activity;
  activity.days = days;
  return activity;
}

// Name, days, those it follows, then early start and finish, late start and finish, free float.
struct Printed {
  std::string name;
  double days;
  std::string after;  // one letter each
  double earlyStart, earlyFinish, lateStart, lateFinish, freeFloat;
};

void expectAsPrinted(const std::vector<Printed>& table, double finish,
                     const std::string& critical) {
  std::map<char, size_t> index;
  for (size_t i = 0; i < table.size(); ++i) index[table[i].name[0]] = i;
  std::vector<Activity> activities;
  std::vector<Relation> relations;
  for (size_t i = 0; i < table.size(); ++i) {
    activities.push_back(lasting(table[i].days));
    for (char before : table[i].after) relations.push_back({index.at(before), i});
  }
  const auto times = scheduleNetwork(activities, relations, WorkCalendar({}, 0));
  ASSERT_TRUE(times);
  EXPECT_DOUBLE_EQ(times->finish, finish);
  std::string found;
  for (size_t i = 0; i < table.size(); ++i) {
    const Printed& printed = table[i];
    const ActivityTimes& ours = times->activities[i];
    EXPECT_DOUBLE_EQ(ours.earlyStart, printed.earlyStart) << printed.name;
    EXPECT_DOUBLE_EQ(ours.earlyFinish, printed.earlyFinish) << printed.name;
    EXPECT_DOUBLE_EQ(ours.lateStart, printed.lateStart) << printed.name;
    EXPECT_DOUBLE_EQ(ours.lateFinish, printed.lateFinish) << printed.name;
    EXPECT_DOUBLE_EQ(ours.totalFloat, printed.lateStart - printed.earlyStart) << printed.name;
    EXPECT_DOUBLE_EQ(ours.freeFloat, printed.freeFloat) << printed.name;
    if (ours.critical) found += printed.name;
  }
  EXPECT_EQ(found, critical);
}

// "Example 1: Draw the network for the events in Table 1", course example, studylib.net document
// 8378728, table 2.
TEST(PublishedNetwork, SevenActivities) {
  expectAsPrinted({{"A", 6, "", 0, 6, 0, 6, 0},
                   {"B", 2, "A", 6, 8, 6, 8, 0},
                   {"C", 2, "A", 6, 8, 7, 9, 0},
                   {"D", 3, "B", 8, 11, 8, 11, 0},
                   {"E", 4, "DF", 11, 15, 11, 15, 0},
                   {"F", 2, "C", 8, 10, 9, 11, 1},
                   {"G", 1, "E", 15, 16, 15, 16, 0}},
                  16, "ABDEG");
}

// Course slides, slideplayer.com slide 3283910; its links follow from its printed dates.
TEST(PublishedNetwork, ElevenActivities) {
  expectAsPrinted({{"A", 4, "", 0, 4, 0, 4, 0},
                   {"B", 6, "A", 4, 10, 4, 10, 0},
                   {"C", 3, "A", 4, 7, 22, 25, 0},
                   {"D", 6, "B", 10, 16, 10, 16, 0},
                   {"E", 14, "D", 16, 30, 16, 30, 0},
                   {"F", 5, "C", 7, 12, 25, 30, 18},
                   {"G", 2, "EF", 30, 32, 30, 32, 0},
                   {"H", 2, "G", 32, 34, 33, 35, 1},
                   {"I", 3, "G", 32, 35, 32, 35, 0},
                   {"J", 4, "HI", 35, 39, 35, 39, 0},
                   {"K", 2, "J", 39, 41, 39, 41, 0}},
                  41, "ABDEGIJK");
}

// B. W. Taylor, Introduction to Management Science, chapter 8, problem 5: activities on arrows
// 1-2 (A), 1-3 (B), 2-4 (C), 3-4 (D), 3-5 (E), 4-5 (F), 5-6 (G).
TEST(PublishedNetwork, SixEventsWithActivitiesOnArrows) {
  expectAsPrinted({{"A", 7, "", 0, 7, 2, 9, 0},
                   {"B", 10, "", 0, 10, 0, 10, 0},
                   {"C", 6, "A", 7, 13, 9, 15, 2},
                   {"D", 5, "B", 10, 15, 10, 15, 0},
                   {"E", 4, "B", 10, 14, 14, 18, 4},
                   {"F", 3, "CD", 15, 18, 15, 18, 0},
                   {"G", 2, "EF", 18, 20, 18, 20, 0}},
                  20, "BDFG");
}

// The same book, problem 6: nine events, with a dummy from 4 to 5 (G).
TEST(PublishedNetwork, NineEventsWithADummy) {
  expectAsPrinted({{"A", 8, "", 0, 8, 1, 9, 0},
                   {"B", 10, "", 0, 10, 0, 10, 0},
                   {"C", 9, "", 0, 9, 6, 15, 0},
                   {"D", 6, "A", 8, 14, 9, 15, 1},
                   {"E", 4, "A", 8, 12, 16, 20, 0},
                   {"F", 5, "B", 10, 15, 10, 15, 0},
                   {"G", 0, "C", 9, 9, 15, 15, 6},
                   {"H", 7, "C", 9, 16, 20, 27, 11},
                   {"I", 12, "DFG", 15, 27, 15, 27, 0},
                   {"J", 15, "DFG", 15, 30, 16, 31, 1},
                   {"K", 18, "E", 12, 30, 20, 38, 8},
                   {"L", 4, "HI", 27, 31, 27, 31, 0},
                   {"M", 7, "JL", 31, 38, 31, 38, 0}},
                  38, "BFILM");
}

// NAVEDTRA 14233, figure 2-13: the largest early finish of those before counts (11, not 10), and a
// lag of 3 days, for concrete to cure, is added to it.
TEST(PublishedNetwork, ALagIsAddedToTheEarlyFinish) {
  const std::vector<Activity> activities{lasting(10), lasting(11), lasting(2), lasting(1)};
  const std::vector<Relation> relations{
      {0, 2}, {1, 2}, {2, 3, LinkKind::FinishStart, 3, LagKind::Working}};
  const auto times = scheduleNetwork(activities, relations, WorkCalendar({}, 0));
  ASSERT_TRUE(times);
  EXPECT_DOUBLE_EQ(times->activities[2].earlyStart, 11);
  EXPECT_DOUBLE_EQ(times->activities[3].earlyStart, 11 + 2 + 3);
  EXPECT_DOUBLE_EQ(times->activities[0].totalFloat, 1);
}

}  // namespace
}  // namespace published
