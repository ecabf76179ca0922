// The report to the designer, of the demonstration jobs and of drawn ones, with the real typeface.
#include "model/drawing/designer_report.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "tests/model/drawing/tidy_drawing.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_readings.h"

namespace model {
namespace {

using test_support::says;
using test_support::untidy;

Drawing report(const Job& job, Paper paper = Paper::A4) {
  const SettingOut out = deriveSettingOut(job);
  return drawDesignerReport(job, out, deriveAsBuilt(job, out), {paper, "2027-08-01"},
                            test_support::letters());
}

// All words of a drawing, in their order, with single spaces.
std::string wordsOf(const Drawing& drawing) {
  std::string words;
  for (const Sheet& sheet : drawing.sheets)
    for (const Text& text : sheet.texts) words += text.text + " ";
  return words;
}

bool has(const Drawing& drawing, const std::string& words) {
  return wordsOf(drawing).find(words) != std::string::npos;
}

TEST(DesignerReport, OfEveryDemoIsTidyOnEitherPaper) {
  for (const std::string& name : test_support::demoNames())
    for (const Paper paper : {Paper::A4, Paper::A3}) {
      const Drawing drawing = report(test_support::demoJob(name), paper);
      EXPECT_EQ(untidy(drawing), "") << name << " " << nameOf(paper);
      const Sheet like = blankSheet(paper, paper == Paper::A4 ? Lie::Portrait : Lie::Landscape);
      const size_t count = drawing.sheets.size();
      for (size_t i = 0; i < count; ++i) {
        EXPECT_EQ(drawing.sheets[i].width, like.width);
        EXPECT_EQ(drawing.sheets[i].height, like.height);
        EXPECT_TRUE(says(drawing.sheets[i], std::to_string(i + 1) + " of " + std::to_string(count)))
            << name << " page " << i + 1;
      }
    }
}

TEST(DesignerReport, SaysWhatWasReadWhatItChangesAndWhatIsAsked) {
  const Job job = test_support::demoJob("orchard-house");
  const AsBuilt built = deriveAsBuilt(job, deriveSettingOut(job));
  const Drawing drawing = report(job);
  for (const char* words :
       {"Orchard house", "2027-08-01", "+0.185 Bolt in gate pier", "59 readings in 2 sets",
        "52 within what is allowed, 4 at the edge of it and 3 out.", "The designer decides.",
        "may the first bed be made up with a split course?", "Name, date",
        "the job's own: Specification, clause 7", "\u25bc -12", "photograph concrete-corner-e.jpg",
        "Readings: Concrete", "Readings: Walls and plate", "pitch held"})
    EXPECT_TRUE(has(drawing, words)) << words;
  for (const Change& change : built.changes)
    EXPECT_TRUE(has(drawing, change.words.substr(0, 40))) << change.words;
  for (const Deviation& d : built.deviations)
    EXPECT_TRUE(has(drawing, lengthText(std::abs(d.off)))) << d.what;
}

// Each mark of the plan stands where its reading was taken: off corner A, to scale.
TEST(DesignerReport, MarksReadingsOnAPlanToScale) {
  Job job;
  job.outline = {{0, 0}, {9, 0}, {9, 6}, {0, 6}};
  const SettingOut out = deriveSettingOut(job);
  ReadingSet set;
  set.name = "Concrete";
  const double drawn = out.foundations.front().top;
  for (const auto& [at, off] : {std::pair{"A", 0.001}, {"B", 0.030}, {"C", -0.030}, {"D", 0.013}}) {
    Reading reading;
    reading.target = "top-of-concrete";
    reading.at = at;
    reading.value = drawn + off;
    set.rows.push_back(reading);
  }
  job.readings.push_back(set);
  const Drawing drawing = report(job);
  std::vector<Fill> marks;
  for (const Sheet& sheet : drawing.sheets)
    for (const Fill& fill : sheet.fills)
      if (fill.layer == Layer::Levels) marks.push_back(fill);
  ASSERT_EQ(marks.size(), 4u);
  const auto middle = [](const Fill& fill) {
    Vec2 low{1e9, 1e9}, high{-1e9, -1e9};
    for (const Vec2& p : fill.outline)
      low = {std::min(low.x, p.x), std::min(low.y, p.y)},
      high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    return (low + high) / 2.0;
  };
  const double along = glm::length(middle(marks[1]) - middle(marks[0]));
  const double up = glm::length(middle(marks[2]) - middle(marks[1]));
  // Triangles stand a little off their points' middles.
  EXPECT_NEAR(along / up, 1.5, 0.02);
  EXPECT_GT(marks[0].outline.size(), 8u) << "a dot within";
  ASSERT_EQ(marks[1].outline.size(), 3u) << "a triangle out";
  ASSERT_EQ(marks[2].outline.size(), 3u);
  EXPECT_EQ(marks[3].outline.size(), 4u) << "a diamond at the edge";
  const auto tip = [&](const Fill& fill) {  // the corner that is alone at its height
    for (size_t i = 0; i < 3; ++i) {
      const double y = fill.outline[i].y;
      if (std::abs(y - fill.outline[(i + 1) % 3].y) > 1 &&
          std::abs(y - fill.outline[(i + 2) % 3].y) > 1)
        return y - middle(fill).y;
    }
    return 0.0;
  };
  EXPECT_GT(tip(marks[1]), 0) << "high points up";
  EXPECT_LT(tip(marks[2]), 0) << "low points down";
  EXPECT_TRUE(has(drawing, "2: 30 high"));
  EXPECT_TRUE(has(drawing, "3: 30 low"));
}

TEST(DesignerReport, WithoutReadingsSaysSo) {
  const Drawing drawing = report(test_support::demoJob("smallest"));
  ASSERT_EQ(drawing.sheets.size(), 1u);
  EXPECT_TRUE(has(drawing, "Nothing was read yet."));
  EXPECT_TRUE(has(drawing, "There are no questions."));
  EXPECT_EQ(untidy(drawing), "");
}

Job manyReadings(size_t count, const std::string& name, const std::string& note) {
  Job job = test_support::demoJob("orchard-house");
  job.name = name;
  job.drawing = name;
  job.readings.resize(1);
  job.readings[0].name = name;
  job.readings[0].by = name;
  job.readings[0].file = name + ".csv";
  job.readings[0].rows.clear();
  const SettingOut out = deriveSettingOut(job);
  for (size_t i = 0; i < count; ++i) {
    Reading reading;
    reading.target = i % 3 == 0 ? "damp-course" : "plate-top";
    reading.at = out.walls[i % out.walls.size()].name;
    reading.along = 0.05 + 0.017 * double(i / out.walls.size());
    reading.value = (i % 3 == 0 ? out.levels.dampCourse : out.levels.plateTop) +
                    double(int(i % 41) - 20) / 1000;
    reading.note = i % 7 == 0 ? note : "";
    reading.photo = i % 11 == 0 ? "фото " + std::to_string(i) + " 東京.jpg" : "";
    job.readings[0].rows.push_back(reading);
  }
  return job;
}

TEST(DesignerReport, OfThreeHundredReadingsRepeatsItsHeadings) {
  const Drawing drawing = report(manyReadings(300, "Plate", "by the gate"));
  EXPECT_EQ(untidy(drawing), "");
  size_t pages = 0;
  for (const Sheet& sheet : drawing.sheets) {
    if (!says(sheet, "Readings: Plate, continued")) continue;
    ++pages;
    EXPECT_TRUE(says(sheet, "point")) << "headings too";
  }
  EXPECT_GE(pages, 4u);
  for (size_t i = 1; i <= 300; ++i)
    ASSERT_TRUE(std::any_of(drawing.sheets.begin(), drawing.sheets.end(), [&](const Sheet& sheet) {
      return says(sheet, std::to_string(i));
    })) << i;
}

TEST(DesignerReport, OfLongNamesInManyScriptsKeepsToItsPages) {
  const std::string name =
      "Дом Ольги Петровны Преображенской-Воскресенской у старой мельницы, "
      "東京都千代田区の石造りの家, Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunter"
      "beamtengesellschaft, بيت الحجر";
  std::string note;
  for (int i = 0; i < 300; ++i) note += name + " ";  // higher than a page
  Job job = manyReadings(30, name, name);
  job.readings[0].rows[3].note = note;
  job.questions.push_back({name, note});
  job.tolerances.push_back({"damp-course", 0.005, 0.005, note});
  for (const Paper paper : {Paper::A4, Paper::A3})
    EXPECT_EQ(untidy(report(job, paper)), "") << nameOf(paper);
}

RC_GTEST_PROP(DesignerReport, OfAnyReadingsIsTidyAndNumbersThemAll, ()) {
  test_support::RandomReadings drawn =
      test_support::randomReadings(*rc::gen::inRange<unsigned>(0, 100000));
  drawn.job.site.benchMark = BenchMark{"Peg", {-1, -1}, 0.1};
  ReadingSet set;
  set.name = "Drawn";
  set.rows = drawn.rows;
  drawn.job.readings = {set};
  const Drawing drawing = report(drawn.job, *rc::gen::element(Paper::A4, Paper::A3));
  const std::string wrong = untidy(drawing);
  if (!wrong.empty()) RC_FAIL(wrong);
  for (size_t i = 1; i <= set.rows.size(); ++i)
    RC_ASSERT(std::any_of(drawing.sheets.begin(), drawing.sheets.end(),
                          [&](const Sheet& sheet) { return says(sheet, std::to_string(i)); }));
}

}  // namespace
}  // namespace model
