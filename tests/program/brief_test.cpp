// `brief` with the real program, read back by outside readers: Poppler and qpdf.
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "tests/program/outside_reader.h"
#include "tests/program/program_fixture.h"
#include "tests/support/csv_reader.h"

namespace program_test {
namespace {

class Brief : public InFolder {
 protected:
  std::string written(const std::string& job, const std::string& file,
                      std::vector<std::string> more = {}) const {
    std::vector<std::string> call{"brief", job, "--out", inFolder(file)};
    call.insert(call.end(), more.begin(), more.end());
    const ProgramRun run = stringcourse(call);
    EXPECT_EQ(run.exitCode, 0) << job << " " << run.err;
    return inFolder(file);
  }
  std::string textOf(const std::string& pdf) const {
    return std::regex_replace(output({"pdftotext", "-layout", pdf, "-"}), std::regex("\\s+"), " ");
  }
  // As a PDF should be, its fonts inside, all pages A4, small.
  void expectSound(const std::string& pdf, size_t pages) const {
    EXPECT_NE(output({"qpdf", "--check", pdf}).find("No syntax or stream encoding errors"),
              std::string::npos);
    EXPECT_GE(fontsInside(pdf), 1);
    const std::string info = output({"pdfinfo", "-f", "1", "-l", "1000", pdf});
    const std::regex size("Page +[0-9]+ size: +595\\.[0-9]+ x 841\\.[0-9]+ pts \\(A4\\)");
    EXPECT_EQ(size_t(std::distance(std::sregex_iterator(info.begin(), info.end(), size), {})),
              pages)
        << info;
    EXPECT_LT(contents(pdf).size(), pages * 100'000) << "3 MB for 30 pages";
  }
};

size_t stagesOf(const std::string& job) {
  return nlohmann::json::parse(stringcourse({"stages", job, "--json"}).out).size();
}

size_t picturesIn(const std::string& pdf) {
  std::istringstream lines(output({"pdfimages", "-list", pdf}));
  size_t count = 0;
  for (std::string line; std::getline(lines, line);) count += line.find(" jpeg ") != line.npos;
  return count;
}

TEST_F(Brief, OfTheSmallestJobIsSoundForCrewAndClient) {
  const std::string job = demoPath("smallest");
  for (const char* reader : {"crew", "client"}) {
    const std::string pdf = written(job, std::string(reader) + ".pdf", {"--for", reader});
    const size_t pages = size_t(pagesOf(pdf));
    EXPECT_EQ(pages, stagesOf(job) + 1) << "and its contents";
    expectSound(pdf, pages);
    EXPECT_EQ(picturesIn(pdf), stagesOf(job));
  }
}

TEST_F(Brief, OfThirtyPagesAndMoreStaysSmall) {
  const std::string pdf = written(demoPath("orchard-house"), "a.pdf");
  ASSERT_GT(pagesOf(pdf), 30);
  expectSound(pdf, size_t(pagesOf(pdf)));
  const std::string text = textOf(pdf);
  for (const char* words : {"Crew brief", "Dig the cellar", "3.670 Cellar", "HOLD POINT",
                            "Load out, by wall", "SIGNATURE", "Watch out", "1:300"})
    EXPECT_NE(text.find(words), std::string::npos) << words;
}

TEST_F(Brief, OfOneStageIsOnePageAndTheSameBytesEveryTime) {
  const auto one = [&](const std::string& file) {
    return written(demoPath("orchard-house"), file,
                   {"--stage", "dig-cellar", "--date", "2027-04-16"});
  };
  const std::string pdf = one("a.pdf");
  EXPECT_EQ(pagesOf(pdf), 1);
  EXPECT_EQ(picturesIn(pdf), 1u);
  EXPECT_NE(textOf(pdf).find("2027-04-16"), std::string::npos);
  EXPECT_EQ(contents(pdf), contents(one("b.pdf")));
}

TEST_F(Brief, ForTheClientSaysWhatIsToBeDecided) {
  const std::string text = textOf(
      written(demoPath("orchard-house"), "a.pdf", {"--for", "client", "--stage", "oversite"}));
  for (const char* words :
       {"The bed under the floor", "Please decide by Tue 1 Jun 2027", "the kitchen island"})
    EXPECT_NE(text.find(words), std::string::npos) << words << "\n" << text;
}

TEST_F(Brief, HasNamesOfAnyScriptAsText) {
  const std::string job = writeFile(
      "job.toml",
      "[job]\nname = \"Дом 東京の石\"\n[outline]\ncorners = [[0, 0], [6000, 0], [6000, 4000], [0, "
      "4000]]\n[[programme.own]]\nname = \"Кухня 台所\"\nfollows = \"ground-slab\"\n");
  const std::string pdf = written(job, "a.pdf", {"--stage", "Кухня"});
  expectSound(pdf, 1);
  const std::string text = textOf(pdf);
  for (const char* words : {"Дом 東京の石", "Кухня 台所"})
    EXPECT_NE(text.find(words), std::string::npos) << text;
}

TEST_F(Brief, WithoutOpenGlHasNoPicturesAndSaysSo) {
  ProgramSettings none;
  none.environment = {{"__EGL_VENDOR_LIBRARY_FILENAMES", "/nonexistent.json"}};
  const ProgramRun run =
      stringcourse({"brief", demoPath("garage"), "--out", inFolder("a.pdf")}, none);
  EXPECT_EQ(run.exitCode, 0) << run.err;
  EXPECT_NE(run.err.find("warning: no OpenGL 3.3"), std::string::npos) << run.err;
  EXPECT_NE(run.err.find("without pictures"), std::string::npos) << run.err;
  expectSound(inFolder("a.pdf"), size_t(pagesOf(inFolder("a.pdf"))));
  EXPECT_EQ(picturesIn(inFolder("a.pdf")), 0u);
}

TEST_F(Brief, StoppedLeavesNoFile) {
  ProgramSettings settings;
  int asked = 0;  // some milliseconds each: it is drawing then
  settings.interruptWhen = [&] { return ++asked > 200; };
  const ProgramRun run =
      stringcourse({"brief", demoPath("orchard-house"), "--out", inFolder("a.pdf")}, settings);
  EXPECT_EQ(run.exitCode, 130) << run.err;
  EXPECT_NE(run.err.find("Stopped. Nothing was written."), std::string::npos) << run.err;
  EXPECT_TRUE(left().empty());
}

TEST_F(Brief, WrongUseIsSaidAndWritesNothing) {
  const std::string job = demoPath("smallest");
  for (const std::vector<std::string>& wrong :
       std::vector<std::vector<std::string>>{{"--out", inFolder("a.txt")},
                                             {"--out", inFolder("a.pdf"), "--for", "the cat"},
                                             {"--out", inFolder("a.pdf"), "--stage", "tea"},
                                             {}}) {
    std::vector<std::string> call{"brief", job};
    call.insert(call.end(), wrong.begin(), wrong.end());
    const ProgramRun run = stringcourse(call);
    EXPECT_EQ(run.exitCode, 2) << run.err;
    EXPECT_FALSE(run.err.empty());
  }
  EXPECT_EQ(stringcourse({"brief", job, "--out", inFolder("no/such/a.pdf")}).exitCode, 1);
  EXPECT_EQ(stringcourse({"brief", "/no/such.toml", "--out", inFolder("a.pdf")}).exitCode, 1);
  EXPECT_TRUE(left().empty());
}

TEST_F(Brief, ForTheDesignerIsSoundAndSaysWhereEveryLevelComesFrom) {
  for (const char* name : {"orchard-house", "smallest", "garage"}) {
    const std::string pdf =
        written(demoPath(name), std::string(name) + ".pdf", {"--for", "designer"});
    expectSound(pdf, size_t(pagesOf(pdf)));
    EXPECT_EQ(picturesIn(pdf), 0u);
    const std::string text = textOf(pdf);
    for (const char* words : {"For the designer", "Levels", "Dimensions", "worked out", "assumed",
                              "Questions", "Name, date", "ridge"})
      EXPECT_NE(text.find(words), std::string::npos) << name << " " << words;
  }
  const std::string text = textOf(inFolder("orchard-house.pdf"));
  for (const char* words :
       {"given, line 96", "Loft light", "Readings out of what is allowed", "as assumed",
        "Wanted by Wed 14 Apr 2027, stage 4: Set out the building", "may the first bed"})
    EXPECT_NE(text.find(words), std::string::npos) << words;
  EXPECT_EQ(contents(inFolder("orchard-house.pdf")),
            contents(written(demoPath("orchard-house"), "again.pdf", {"--for", "designer"})));
}

// The levels of `levels`, by another reader and another command, each once.
TEST_F(Brief, ForTheDesignerAsATableHasEveryLevelAndOpeningOnce) {
  const std::string job = demoPath("orchard-house");
  const auto rows = test_support::readCsv(contents(written(job, "a.csv", {"--for", "designer"})));
  std::multiset<std::string> levels, openings, questions;
  for (const auto& row : rows) {
    if (row[0] == "level" && row[2].rfind("bench-mark", 0) != 0) levels.insert(row[2]);
    if (row[0] == "opening") openings.insert(row[3]);
    if (row[0] == "question") questions.insert(row[3] + "|" + row[21]);
  }
  std::multiset<std::string> expected;
  for (const auto& each : nlohmann::json::parse(stringcourse({"levels", job, "--json"}).out))
    expected.insert(each["key"].get<std::string>());
  EXPECT_EQ(levels, expected);
  EXPECT_EQ(openings.size(), 16u);
  EXPECT_EQ(std::set<std::string>(openings.begin(), openings.end()).size(), 16u);
  EXPECT_EQ(std::set<std::string>(questions.begin(), questions.end()).size(), questions.size());
}

TEST_F(Brief, ForTheDesignerOfVeryLongAndForeignNamesKeepsToItsPages) {
  std::string name;
  for (int i = 0; i < 4; ++i) name += "Дом東京の石工事بيتDonaudampfschifffahrt ";
  std::string text = "[job]\nname = \"" + name + "\"\ndrawing = \"" + name +
                     "\"\n[outline]\ncorners = [[0, 0], [60000, 0], [60000, 9000], [0, 9000]]\n";
  for (int i = 0; i < 20; ++i)
    text += "[[opening]]\nname = \"台所 " + std::to_string(i) + " " + name +
            "\"\nwall = \"A-B\"\nfrom = \"A\"\nat = " + std::to_string(1340 + 2800 * i) + "\n";
  const std::string pdf = written(writeFile("job.toml", text), "a.pdf", {"--for", "designer"});
  expectSound(pdf, size_t(pagesOf(pdf)));
  EXPECT_LT(contents(pdf).size(), 3'000'000u);
  for (const char* words : {"東京の石工事", "台所"})
    EXPECT_NE(textOf(pdf).find(words), std::string::npos);
}

TEST_F(Brief, ForTheDesignerRefusesAStageOrAnotherFile) {
  const std::string job = demoPath("orchard-house");
  const auto run = [&](std::vector<std::string> more) {
    std::vector<std::string> call{"brief", job, "--for", "designer"};
    call.insert(call.end(), more.begin(), more.end());
    return stringcourse(call);
  };
  EXPECT_EQ(run({"--out", inFolder("a.txt")}).exitCode, 2);
  EXPECT_EQ(run({"--out", inFolder("a.pdf"), "--stage", "1"}).exitCode, 2);
  const ProgramRun over =
      run({"--out", test_support::sourceFolder() + "/assets/jobs/orchard-house-walls.csv"});
  EXPECT_EQ(over.exitCode, 2);
  EXPECT_NE(over.err.find("readings"), std::string::npos) << over.err;
  EXPECT_TRUE(left().empty());
}

TEST_F(Brief, AllAreAmongWhatAWalkthroughWrites) {
  const ProgramRun run = stringcourse(
      {"walkthrough", demoPath("smallest"), "--size", "160x90", "--out", inFolder("w")});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  for (const char* name : {"crew-brief.pdf", "client-booklet.pdf"}) {
    const std::string pdf = inFolder(std::string("w/") + name);
    EXPECT_EQ(picturesIn(pdf), stagesOf(demoPath("smallest"))) << name;
    EXPECT_NE(contents(inFolder("w/contents.txt")).find(name), std::string::npos);
  }
  EXPECT_NE(contents(inFolder("w/designer-sheet.csv")).find("\nlevel,1,ridge,"), std::string::npos);
  EXPECT_NE(textOf(inFolder("w/designer-sheet.pdf")).find("For the designer"), std::string::npos);
}

}  // namespace
}  // namespace program_test
