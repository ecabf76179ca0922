#include "model/drawing/rod_strips.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "model/drawing/rod_strip_parts.h"
#include "model/level_text.h"
#include "tests/model/drawing/plain_letters.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

using test_support::demoJob;
using test_support::plainLetters;

struct Drawn {
  Job job;
  SettingOut out;
  std::vector<GaugeRod> rods;
  Drawing drawing;

  explicit Drawn(const Job& given, Paper paper = Paper::A4)
      : job(given),
        out(deriveSettingOut(job)),
        rods(deriveGaugeRods(job, out)),
        drawing(drawRodStrips(job, out, rods, paper, plainLetters())) {}
};

std::vector<Job> someJobs() {
  std::vector<Job> jobs;
  for (const std::string& name : test_support::demoNames()) jobs.push_back(demoJob(name));
  for (unsigned seed = 0; seed < 15; ++seed) jobs.push_back(test_support::seededJob(seed));
  return jobs;
}

TEST(RodPieces, ReachFromTheFootPastThePlateAndJoinWhereNothingIsMarked) {
  for (const Job& job : someJobs()) {
    const SettingOut out = deriveSettingOut(job);
    for (const GaugeRod& rod : deriveGaugeRods(job, out)) {
      const auto pieces = rodPieces(rod, 0.235);
      double level = rod.foot;
      for (size_t i = 0; i < pieces.size(); ++i) {
        EXPECT_EQ(pieces[i].number, i + 1);
        EXPECT_EQ(pieces[i].of, pieces.size());
        EXPECT_EQ(pieces[i].low, level);
        level = pieces[i].high;
        EXPECT_LE(level - pieces[i].low, 0.235 + 1e-9);
        EXPECT_GT(level - pieces[i].low, 0.020 - 1e-9);
        if (i + 1 == pieces.size()) continue;
        for (const RodCourse& course : rod.courses)
          EXPECT_GT(std::fabs(course.top() - level), 0.005) << job.name;
        for (const GaugeMark& mark : rod.marks)
          EXPECT_GT(std::fabs(mark.level - level), 0.005) << job.name << " " << mark.name;
      }
      EXPECT_NEAR(level, rod.top + kRodEnd, 1e-9);
    }
  }
}

TEST(RodLabels, KeepApartInsideTheirStripAndNearWhatTheyName) {
  std::vector<RodLabel> labels;
  for (const double at : {10.0, 12.0, 13.0, 90.0, 99.0})
    labels.push_back({at, 0, 0, {"one", "two", "three"}, 1});
  ASSERT_TRUE(spreadLabels(labels, 0, 100, 4));
  double edge = 100;
  for (const RodLabel& label : labels) {
    EXPECT_LE(label.middle + 2, edge + 1e-9);
    edge = label.middle - 10;
  }
  EXPECT_GE(edge, 0 - 1e-9);
  EXPECT_EQ(labels[1].at, 90);
  EXPECT_LT(std::fabs(labels[1].middle - 90), 12);
  labels.resize(1);
  labels[0].at = 50;
  ASSERT_TRUE(spreadLabels(labels, 0, 100, 4));
  EXPECT_EQ(labels[0].middle, 50);
  labels.assign(20, labels[0]);
  EXPECT_FALSE(spreadLabels(labels, 0, 100, 4));
}

// The lines of whole courses on a sheet, by strip: heights from the lowest.
std::vector<std::vector<double>> courseHeights(const Sheet& sheet) {
  std::set<long> lefts;
  const auto isCourse = [](const Stroke& stroke) {
    if (stroke.layer != Layer::Levels || stroke.points[0].y != stroke.points[1].y) return false;
    const double length = stroke.points[1].x - stroke.points[0].x;
    return std::fabs(length - kCourseLine) < 1e-9 || std::fabs(length - kBlockLine) < 1e-9;
  };
  for (const Stroke& stroke : sheet.strokes)
    if (isCourse(stroke)) lefts.insert(std::lround(stroke.points[0].x * 1000));
  std::vector<std::vector<double>> strips;
  for (const long left : lefts) {
    std::set<long> heights;  // micrometres
    for (const Stroke& stroke : sheet.strokes)
      if (isCourse(stroke) && std::lround(stroke.points[0].x * 1000) == left)
        heights.insert(std::lround(stroke.points[0].y * 1000));
    if (heights.size() < 2) continue;
    strips.emplace_back(heights.begin(), heights.end());
  }
  return strips;
}

TEST(RodStrips, HaveTheirCoursesAtFullSize) {
  const Drawn drawn(demoJob("garage"));
  size_t measured = 0;
  for (const Sheet& sheet : drawn.drawing.sheets) {
    for (const auto& strip : courseHeights(sheet)) {
      for (size_t i = 1; i < strip.size(); ++i) {
        const double between = (strip[i] - strip[i - 1]) / 1000;
        EXPECT_NEAR(between, 75, 1e-6);
        ++measured;
      }
    }
  }
  EXPECT_GT(measured, 10u);
}

TEST(RodStrips, SayEveryMarkOnceWithItsLevel) {
  const Drawn drawn(demoJob("orchard-house"), Paper::A3);
  size_t corner = 0;
  for (const GaugeRod& rod : drawn.rods) {
    std::string all;
    const std::string letter = drawn.out.corners[corner++].letter;
    for (const Sheet& sheet : drawn.drawing.sheets)
      if (sheet.title == "Gauge rod, corner " + letter)
        for (const Text& text : sheet.texts) all += text.text + " ";
    for (const GaugeMark& mark : rod.marks) {
      EXPECT_NE(all.find(levelText(mark.level)), std::string::npos) << letter << mark.name;
      const std::string word = mark.name.substr(0, mark.name.find_first_of(" ,"));
      EXPECT_NE(all.find(word), std::string::npos) << letter << mark.name;
    }
    EXPECT_NE(all.find("datum of this rod"), std::string::npos) << letter;
    EXPECT_NE(all.find("Paste behind strip 1,"), std::string::npos) << letter;
  }
}

bool overlap(const Polygon& a, const Polygon& b) {
  for (const auto& region : intersect({{a, {}}}, {{b, {}}}))
    if (std::fabs(signedArea(region.outer)) > 0.05) return true;
  return false;
}

TEST(RodStrips, HaveNoTextOnAnotherOrOffThePaper) {
  for (const Job& job : someJobs()) {
    const Drawn drawn(job);
    for (const Sheet& sheet : drawn.drawing.sheets) {
      std::vector<Polygon> boxes;
      for (const Text& text : sheet.texts) boxes.push_back(boxOf(text, plainLetters(), -0.2));
      for (size_t i = 0; i < boxes.size(); ++i) {
        for (const Vec2& p : boxes[i]) {
          EXPECT_TRUE(p.x > 0 && p.x < sheet.width && p.y > 0 && p.y < sheet.height)
              << job.name << ": " << sheet.texts[i].text;
        }
        for (size_t j = 0; j < i; ++j)
          EXPECT_FALSE(overlap(boxes[i], boxes[j])) << job.name << ": \"" << sheet.texts[i].text
                                                    << "\" on \"" << sheet.texts[j].text << "\"";
      }
    }
  }
}

}  // namespace
}  // namespace model
