// Gauge rods as the real program writes them, read back by an outside reader of PDF.
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "model/level_text.h"
#include "model/settingout/gauge_rod.h"
#include "tests/program/outside_reader.h"
#include "tests/program/program_fixture.h"

namespace program_test {
namespace {

using test_support::demoJob;

class Rod : public InFolder {
 protected:
  std::string drawn(const std::string& demo, std::vector<std::string> more = {}) const {
    std::vector<std::string> call{"rod", demoPath(demo), "--out", inFolder("rod.pdf")};
    call.insert(call.end(), more.begin(), more.end());
    const ProgramRun run = stringcourse(call);
    EXPECT_EQ(run.exitCode, 0) << demo << " " << run.err;
    return inFolder("rod.pdf");
  }
};

// The paths of a page that have a word in their style, as points in millimetres; not those with
// curves. Poppler writes the points as they are in the PDF.
std::vector<std::vector<std::pair<double, double>>> pathsOf(const std::string& pdf, int page,
                                                            const std::string& style) {
  const std::string number = std::to_string(page);
  std::istringstream svg(output({"pdftocairo", "-svg", "-f", number, "-l", number, pdf, "-"}));
  std::vector<std::vector<std::pair<double, double>>> paths;
  const std::string begin = " d=\"M";
  for (std::string line; std::getline(svg, line);) {
    const size_t at = line.find(begin);
    if (at == std::string::npos || line.find(style) == std::string::npos) continue;
    const size_t from = at + begin.size();
    std::string data = line.substr(from, line.find('"', from) - from);
    if (data.find('C') != std::string::npos) continue;
    for (char& c : data)
      if (c == 'L' || c == 'M' || c == 'Z') c = ' ';
    std::istringstream in(data);
    paths.emplace_back();
    for (double x = 0, y = 0; in >> x >> y;)
      paths.back().emplace_back(x * 25.4 / 72, y * 25.4 / 72);
  }
  return paths;
}

TEST_F(Rod, CoursesMeasuredOnThePaperAreSeventyFive) {
  const std::string pdf = drawn("garage", {"--corner", "A"});
  std::map<long, std::set<double>> heights;  // of level lines 8 or 14 long, by their left end
  bool across = false, upright = false;
  for (const auto& path : pathsOf(pdf, 1, "stroke-width")) {
    if (path.size() != 2) continue;
    const double dx = std::fabs(path[1].first - path[0].first);
    const double dy = std::fabs(path[1].second - path[0].second);
    if (dy < 1e-6 && (std::fabs(dx - 8) < 0.01 || std::fabs(dx - 14) < 0.01))
      heights[std::lround(path[0].first * 100)].insert(path[0].second);
    across = across || (dy < 1e-6 && std::fabs(dx - 100) < 0.005);
    upright = upright || (dx < 1e-6 && std::fabs(dy - 100) < 0.005);
  }
  EXPECT_TRUE(across && upright) << "the lines to measure are 100";
  size_t measured = 0;
  for (const auto& [left, strip] : heights) {
    for (auto it = strip.begin(); std::next(it) != strip.end(); ++it) {
      EXPECT_NEAR(*std::next(it) - *it, 75.000, 0.005);
      ++measured;
    }
  }
  EXPECT_GE(measured, 4u);
}

TEST_F(Rod, EveryPageSaysItsCornerItsJobItsNumberAndWhatToMeasure) {
  const std::string pdf = drawn("orchard-house");
  const int pages = pagesOf(pdf);
  ASSERT_GT(pages, 10);
  for (const int page : {1, 2, pages}) {
    const std::string number = std::to_string(page);
    const std::string text = output({"pdftotext", "-f", number, "-l", number, pdf, "-"});
    for (const std::string& words :
         {std::string("Gauge rod, corner"), std::string("Orchard house"),
          std::string("measure this: 100"), "page " + number + " of " + std::to_string(pages)})
      EXPECT_NE(text.find(words), std::string::npos) << words << "\n" << text;
    // Nothing is filled but bed joints and arrowheads, all low.
    size_t fills = 0;
    for (const auto& path : pathsOf(pdf, page, "fill-rule")) {
      double least = 1e9, most = -1e9;
      for (const auto& point : path) {
        least = std::min(least, point.second);
        most = std::max(most, point.second);
      }
      EXPECT_LT(most - least, 26) << page;
      ++fills;
    }
    EXPECT_GT(fills, 0u) << page;
  }
  const std::string last = std::to_string(pages);
  EXPECT_NE(output({"pdftotext", "-f", last, "-l", last, pdf, "-"}).find("Gauge rod, corner F"),
            std::string::npos);
}

TEST_F(Rod, OfOneCornerOnLargerPaperTakesFewerPages) {
  const int a4 = pagesOf(drawn("orchard-house", {"--corner", "c"}));
  const std::string pdf = drawn("orchard-house", {"--corner", "C", "--paper", "A3"});
  EXPECT_LT(pagesOf(pdf), a4);
  EXPECT_NE(output({"pdfinfo", pdf}).find("(A3)"), std::string::npos);
  const std::string text = output({"pdftotext", "-layout", pdf, "-"});
  for (const char* words :
       {"damp course", "datum of this rod", "joist bearing", "plate bed", "Bathroom window (B-C)",
        "Landing window (C-D)", "up 4050", "course -5 cut:", "top of lift 1"})
    EXPECT_NE(text.find(words), std::string::npos) << words;
}

TEST_F(Rod, TableHasEveryMarkOfTheModel) {
  const ProgramRun run = stringcourse({"rod", demoPath("orchard-house"), "--json"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  const auto rows = nlohmann::json::parse(run.out);
  const model::Job job = demoJob("orchard-house");
  const model::SettingOut out = model::deriveSettingOut(job);
  for (const model::GaugeRod& rod : model::deriveGaugeRods(job, out)) {
    for (const model::GaugeMark& mark : rod.marks) {
      const bool found = std::any_of(rows.begin(), rows.end(), [&](const auto& row) {
        return row.at("corner") == out.corners[rod.corner].letter && row.at("key") == mark.key &&
               std::fabs(row.at("level m").template get<double>() - mark.level) < 5.1e-4;
      });
      EXPECT_TRUE(found) << mark.name;
    }
  }
  const ProgramRun one = stringcourse({"rod", demoPath("garage"), "--corner", "B"});
  EXPECT_EQ(one.exitCode, 0);
  EXPECT_NE(one.out.find("Corner B: "), std::string::npos);
  EXPECT_EQ(one.out.find("Corner A: "), std::string::npos);
}

TEST_F(Rod, WrongCommandLinesAreToldApart) {
  struct Case {
    std::vector<std::string> more;
    const char* says;
  };
  for (const Case& c : {Case{{"--corner", "Z"}, "no corner \"Z\" in this job: A, B, C, D"},
                        Case{{"--out", inFolder("rod.dxf")}, ".pdf"},
                        Case{{"--out", inFolder("rod.pdf"), "--csv"}, "of the table"},
                        Case{{"--out", inFolder("rod.pdf"), "--paper", "A5"}, "A3 or A4"}}) {
    std::vector<std::string> call{"rod", demoPath("garage")};
    call.insert(call.end(), c.more.begin(), c.more.end());
    const ProgramRun run = stringcourse(call);
    EXPECT_EQ(run.exitCode, 2) << c.says;
    EXPECT_NE(run.err.find(c.says), std::string::npos) << run.err;
  }
  EXPECT_TRUE(left().empty());
}

}  // namespace
}  // namespace program_test
