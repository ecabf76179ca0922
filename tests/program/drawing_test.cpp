// The setting-out drawing as the real program writes it, read back by outside readers: Poppler for
// the PDF, ezdxf for the DXF.
#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>
#include <regex>

#include "model/level_text.h"
#include "model/settingout/setting_out.h"
#include "tests/program/outside_reader.h"
#include "tests/program/program_fixture.h"

namespace program_test {
namespace {

using test_support::demoJob;
using test_support::demoNames;

class Drawing : public InFolder {
 protected:
  // Writes the drawing of a demo; the path of it.
  std::string drawn(const std::string& demo, const std::string& file,
                    std::vector<std::string> more = {}) const {
    std::vector<std::string> call{"drawing", demoPath(demo), "--out", inFolder(file)};
    call.insert(call.end(), more.begin(), more.end());
    const ProgramRun run = stringcourse(call);
    EXPECT_EQ(run.exitCode, 0) << demo << " " << run.err;
    return inFolder(file);
  }
};

bool hasWord(const std::string& text, const std::string& word) {
  return std::regex_search(text, std::regex("(^|\\s)" + word + "(\\s|$)"));
}

TEST_F(Drawing, PdfOfEveryDemoSaysItsCornersAndLengths) {
  for (const std::string& demo : demoNames()) {
    const std::string text = output({"pdftotext", drawn(demo, demo + ".pdf"), "-"});
    const model::SettingOut out = model::deriveSettingOut(demoJob(demo));
    for (const model::Corner& corner : out.corners)
      EXPECT_TRUE(hasWord(text, corner.letter)) << demo << " " << corner.letter;
    for (const model::WallLine& wall : out.walls) {
      EXPECT_TRUE(hasWord(text, model::lengthText(wall.length))) << demo << " " << wall.name;
      EXPECT_TRUE(hasWord(text, wall.name)) << demo << " " << wall.name;
    }
  }
}

TEST_F(Drawing, PdfHasItsFontsInsideItsTitleAndItsPaper) {
  const std::string path = drawn("orchard-house", "a.pdf");
  EXPECT_NE(output({"pdffonts", path}).find("B612"), std::string::npos);
  EXPECT_GT(fontsInside(path), 0);
  const std::string info = output({"pdfinfo", path});
  EXPECT_NE(info.find("Setting-out of Orchard house"), std::string::npos) << info;
  // 420 by 297 mm in points of 1/72 inch.
  EXPECT_TRUE(std::regex_search(info, std::regex("Page size: +1190\\.[0-9]+ x 841\\.[0-9]+ pts")))
      << info;
  const std::string a4 = output({"pdfinfo", drawn("orchard-house", "b.pdf", {"--paper", "A4"})});
  EXPECT_TRUE(std::regex_search(a4, std::regex("Page size: +841\\.[0-9]+ x 595\\.[0-9]+ pts")))
      << a4;
}

// Every closed path of straight lines in a page, as the lengths of its sides in points. Poppler
// writes the points as they are in the PDF, and then a matrix that fits the page to whole pixels;
// the matrix is none of ours.
std::vector<std::vector<double>> closedPaths(const std::string& svg) {
  std::vector<std::vector<double>> found;
  const std::string begin = " d=\"M";
  for (size_t at = svg.find(begin); at != std::string::npos; at = svg.find(begin, at + 1)) {
    const size_t from = at + begin.size();
    const std::string data = svg.substr(from, svg.find('"', from) - from);
    if (data.find('Z') == std::string::npos || data.find('C') != std::string::npos) continue;
    std::istringstream in(data.substr(0, data.find('Z')));
    std::vector<std::pair<double, double>> points;
    std::string word;
    for (double x = 0, y = 0; in >> x >> y; in >> word) points.emplace_back(x, y);
    std::vector<double> sides;
    for (size_t i = 0; i + 1 < points.size(); ++i)
      sides.push_back(std::hypot(points[i + 1].first - points[i].first,
                                 points[i + 1].second - points[i].second));
    found.push_back(sides);
  }
  return found;
}

TEST_F(Drawing, WallsMeasuredOnThePaperAreTrueToScale) {
  for (const auto& [scale, paper] : std::vector<std::pair<int, std::string>>{
           {100, "A3"}, {100, "A4"}, {200, "A4"}, {75, "A3"}}) {
    const std::string path = drawn("orchard-house", "a.pdf",
                                   {"--scale", "1:" + std::to_string(scale), "--paper", paper});
    const std::string svg = output({"pdftocairo", "-svg", "-f", "1", "-l", "1", path, "-"});
    // Corner A to B and on: 11240, 6065, 5850, 3600, 5390 on site.
    bool measured = false;
    for (const auto& sides : closedPaths(svg)) {
      if (sides.size() != 5) continue;
      bool all = true;
      size_t i = 0;
      for (const double length : {11240.0, 6065.0, 5850.0, 3600.0, 5390.0})
        all = all && std::abs(sides[i++] * 25.4 / 72 - length / scale) < 0.01;
      measured = measured || all;
    }
    EXPECT_TRUE(measured) << "1:" << scale << " at " << paper;
  }
}

// ezdxf reads it with no fault to repair; each closed outline of a layer comes back as numbers.
nlohmann::json readDxf(const std::string& path) {
  const std::string script =
      "import ezdxf, json, sys\n"
      "from ezdxf.lldxf.encoding import decode_dxf_unicode\n"
      "d = ezdxf.readfile(sys.argv[1])\n"
      "a = d.audit()\n"
      "m = d.modelspace()\n"
      "print(json.dumps({'faults': [e.message for e in a.errors + a.fixes],\n"
      "  'layers': sorted(set(e.dxf.layer for e in m)),\n"
      "  'undefined': sorted(set(e.dxf.layer for e in m if e.dxf.layer not in d.layers)),\n"
      "  'outlines': [[list(p)[:2] for p in e.points()] for e in\n"
      "    m.query('POLYLINE[layer==\"OUTLINE\"]') if e.is_closed],\n"
      "  'limits': [[list(e.dxf.start)[:2], list(e.dxf.end)[:2]] for e in\n"
      "    m.query('LINE[layer==\"LIMITS\"]') if e.dxf.linetype == 'DASHED'],\n"
      "  'texts': [decode_dxf_unicode(e.plain_text()) for e in m.query('TEXT')]}))\n";
  // Debian's own python: the one that Debian's packages belong to.
  return nlohmann::json::parse(output({"/usr/bin/python3", "-c", script, path}));
}

TEST_F(Drawing, DxfOfEveryDemoReadsBackSoundWithTheOutlineInPlace) {
  for (const std::string& demo : demoNames()) {
    const auto dxf = readDxf(drawn(demo, demo + ".dxf"));
    EXPECT_TRUE(dxf["faults"].empty()) << demo << dxf["faults"];
    EXPECT_TRUE(dxf["undefined"].empty()) << dxf["undefined"];
    for (const char* layer : {"OUTLINE", "FACES", "FOUNDATIONS", "PROFILES", "STRINGS", "CORNERS",
                              "DIMENSIONS", "TABLES", "FRAME"})
      EXPECT_NE(std::find(dxf["layers"].begin(), dxf["layers"].end(), layer), dxf["layers"].end())
          << demo << " " << layer;
    const model::SettingOut out = model::deriveSettingOut(demoJob(demo));
    ASSERT_EQ(dxf["outlines"].size(), 1u) << demo;
    const auto& outline = dxf["outlines"][0];
    ASSERT_EQ(outline.size(), out.corners.size());
    for (size_t i = 0; i < outline.size(); ++i) {
      EXPECT_NEAR(outline[i][0].get<double>(), out.corners[i].at.x * 1000, 0.001);
      EXPECT_NEAR(outline[i][1].get<double>(), out.corners[i].at.y * 1000, 0.001);
    }
  }
}

// Orchard house must keep 4000 from boundary 4, which runs from (-4900, 14800) to (-4500, -7500).
TEST_F(Drawing, LimitsAreOnThePlanToScaleAndInWords) {
  const std::string text = output({"pdftotext", drawn("orchard-house", "a.pdf"), "-"});
  // Poppler sees gaps between the letters of words that stand a little askew.
  const std::string close = std::regex_replace(text, std::regex("\\s"), "");
  EXPECT_NE(close.find("limit4000fromboundary4:clearby635"), std::string::npos) << text;
  const auto dxf = readDxf(drawn("orchard-house", "a.dxf"));
  ASSERT_EQ(dxf["limits"].size(), 2u) << "the boundary's and the house next door's";
  for (const auto& p : dxf["limits"][0]) {
    const double dx = 400, dy = -22300, x = p[0].get<double>() + 4900,
                 y = p[1].get<double>() - 14800;
    EXPECT_NEAR(std::abs(dx * y - dy * x) / std::hypot(dx, dy), 4000, 0.5);
  }
}

TEST_F(Drawing, NamesInAnyScriptReachBothForms) {
  const std::string job =
      writeFile("name.toml",
                "[job]\nname = \"Дом 東京 %%d ^J\"\n[outline]\ncorners = [[0, 0], "
                "[6000, 0], [6000, 4000], [0, 4000]]\n");
  ASSERT_EQ(stringcourse({"drawing", job, "--out", inFolder("a.pdf")}).exitCode, 0);
  const std::string text = output({"pdftotext", inFolder("a.pdf"), "-"});
  EXPECT_NE(text.find("Дом 東京"), std::string::npos) << text;
  ASSERT_EQ(stringcourse({"drawing", job, "--out", inFolder("a.dxf")}).exitCode, 0);
  const auto dxf = readDxf(inFolder("a.dxf"));
  EXPECT_TRUE(dxf["faults"].empty()) << dxf["faults"];
  bool found = false;
  for (const auto& words : dxf["texts"])
    found = found || words.get<std::string>() == "Дом 東京 % %d ^J";
  EXPECT_TRUE(found) << dxf["texts"];
}

TEST_F(Drawing, IsTheSameBytesEveryTime) {
  for (const std::string ending : {".pdf", ".dxf"})
    EXPECT_EQ(contents(drawn("garage", "a" + ending)), contents(drawn("garage", "b" + ending)));
}

TEST_F(Drawing, OfAnImpossibleScaleIsRefusedWithOneThatFits) {
  const ProgramRun run = stringcourse({"drawing", demoPath("orchard-house"), "--paper", "A4",
                                       "--scale", "1:20", "--out", inFolder("a.pdf")});
  EXPECT_EQ(run.exitCode, 1);
  EXPECT_NE(run.err.find("1:100 fits"), std::string::npos) << run.err;
  EXPECT_TRUE(left().empty());
}

TEST_F(Drawing, WrongUsageIsToldAndWritesNothing) {
  const std::string job = demoPath("garage");
  for (const std::vector<std::string>& wrong :
       std::vector<std::vector<std::string>>{{"--out", inFolder("a.txt")},
                                             {"--out", inFolder("a.pdf"), "--paper", "A0"},
                                             {"--out", inFolder("a.pdf"), "--scale", "big"},
                                             {"--out", inFolder("a.pdf"), "--scale", "50:1"},
                                             {}}) {
    std::vector<std::string> call{"drawing", job};
    call.insert(call.end(), wrong.begin(), wrong.end());
    const ProgramRun run = stringcourse(call);
    EXPECT_EQ(run.exitCode, 2) << run.err;
    EXPECT_FALSE(run.err.empty());
  }
  EXPECT_TRUE(left().empty());
  EXPECT_EQ(stringcourse({"drawing", job, "--out", inFolder("no/such/a.pdf")}).exitCode, 1);
}

}  // namespace
}  // namespace program_test
