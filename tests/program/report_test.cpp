// `report` with the real program, read back by outside readers: Poppler for the PDF, Python for the
// CSV.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <regex>

#include "tests/program/outside_reader.h"
#include "tests/program/program_fixture.h"

namespace program_test {
namespace {

using test_support::demoNames;

class Report : public InFolder {
 protected:
  std::string written(const std::string& job, const std::string& file,
                      std::vector<std::string> more = {}) const {
    std::vector<std::string> call{"report", job, "--out", inFolder(file)};
    call.insert(call.end(), more.begin(), more.end());
    const ProgramRun run = stringcourse(call);
    EXPECT_EQ(run.exitCode, 0) << job << " " << run.err;
    return inFolder(file);
  }
  std::string textOf(const std::string& pdf) const {
    std::string text = output({"pdftotext", "-layout", pdf, "-"});
    return std::regex_replace(text, std::regex("\\s+"), " ");
  }
};

TEST_F(Report, SaysInThePdfWhatTheReadingsCommandSays) {
  const std::string text = textOf(written(demoPath("orchard-house"), "a.pdf"));
  const auto said =
      nlohmann::json::parse(stringcourse({"readings", demoPath("orchard-house"), "--json"}).out);
  for (const auto& row : said.at("deviations")) {
    const std::string off = row.at("off");
    const std::string words = off.substr(0, off.find_first_of(",("));
    EXPECT_NE(text.find(words), std::string::npos) << off;
  }
  for (const char* words :
       {"12 low: out", "first bed 22, thick", "concrete-corner-e.jpg", "Specification, clause 7",
        "may the first bed be made up", "1204/07 revision C", "The designer decides."})
    EXPECT_NE(text.find(words), std::string::npos) << words;
}

TEST_F(Report, NumbersItsPagesOnThePaperAskedFor) {
  for (const auto& [paper, size] : std::vector<std::pair<std::string, std::string>>{
           {"A4", "595\\.[0-9]+ x 841\\.[0-9]+"}, {"A3", "1190\\.[0-9]+ x 841\\.[0-9]+"}}) {
    const std::string pdf = written(demoPath("orchard-house"), paper + ".pdf", {"--paper", paper});
    EXPECT_TRUE(
        std::regex_search(output({"pdfinfo", pdf}), std::regex("Page size: +" + size + " pts")))
        << paper;
    const int pages = pagesOf(pdf);
    ASSERT_GT(pages, 1);
    for (int i = 1; i <= pages; ++i) {
      const std::string number = std::to_string(i);
      const std::string page = output({"pdftotext", "-f", number, "-l", number, pdf, "-"});
      EXPECT_NE(page.find(number + " of " + std::to_string(pages)), std::string::npos) << page;
    }
  }
}

TEST_F(Report, HasItsFontsInside) {
  EXPECT_GE(fontsInside(written(demoPath("orchard-house"), "a.pdf")), 2) << "words and marks";
}

TEST_F(Report, OfEveryDemoIsWrittenAndIsTheSameBytesEveryTime) {
  for (const std::string& demo : demoNames())
    for (const std::string ending : {".pdf", ".csv"}) {
      const std::string a = contents(written(demoPath(demo), "a" + ending));
      EXPECT_FALSE(a.empty());
      EXPECT_EQ(a, contents(written(demoPath(demo), "b" + ending))) << demo;
    }
}

nlohmann::json readCsvByPython(const std::string& path) {
  const std::string script =
      "import csv, json, sys\n"
      "print(json.dumps(list(csv.DictReader(open(sys.argv[1], encoding='utf-8', newline='')))))\n";
  return nlohmann::json::parse(output({"/usr/bin/python3", "-c", script, path}));
}

TEST_F(Report, AsCsvHasARowForEachReadingAndQuestion) {
  const auto rows = readCsvByPython(written(demoPath("orchard-house"), "a.csv"));
  const auto said =
      nlohmann::json::parse(stringcourse({"readings", demoPath("orchard-house"), "--json"}).out);
  std::vector<nlohmann::json> readings, questions;
  for (const auto& row : rows) (row.at("row") == "reading" ? readings : questions).push_back(row);
  ASSERT_EQ(readings.size(), said.at("deviations").size());
  for (size_t i = 0; i < readings.size(); ++i) {
    const auto& told = said.at("deviations").at(i);
    EXPECT_EQ(readings[i].at("number"), std::to_string(i + 1));
    EXPECT_EQ(readings[i].at("words"), told.at("off"));
    EXPECT_DOUBLE_EQ(std::stod(readings[i].at("off mm").get<std::string>()),
                     told.at("off mm").get<double>());
    EXPECT_EQ(readings[i].at("allowed by"), told.at("allowed by"));
    EXPECT_EQ(readings[i].at("photograph"), told.at("photo"));
  }
  ASSERT_GE(questions.size(), 2u);
  EXPECT_EQ(questions[0].at("question"),
            "12 low: may the first bed be made up with a split course?");
  EXPECT_EQ(questions[0].at("asked"), "in the job");
  EXPECT_EQ(questions.back().at("asked"), "follows from readings");
}

TEST_F(Report, DocumentsEveryColumn) {
  const std::string told = contents(test_support::sourceFolder() + "/assets/report-csv.md");
  const auto rows = readCsvByPython(written(demoPath("orchard-house"), "a.csv"));
  for (const auto& column : rows.at(0).items())
    EXPECT_NE(told.find("`" + column.key() + "`"), std::string::npos) << column.key();
}

// Remarks with all that CSV and PDF stumble over come back whole.
TEST_F(Report, KeepsNamesAndRemarksOfAnyScriptWhole) {
  const std::string remark = "beim Tor, \"naß\"; 東京の石, Преображенская, بيت";
  std::string quoted;
  for (const char c : remark) quoted += c == '"' ? "\"\"" : std::string(1, c);
  writeFile("r.csv", "kind,target,at,value,note,photo\nlevel,damp-course,A,0.030,\"" + quoted +
                         "\",фото 1.jpg\n");
  const std::string job = writeFile(
      "job.toml",
      "[job]\nname = \"Дом 東京\"\n[outline]\ncorners = [[0, 0], [6000, 0], [6000, 4000], [0, "
      "4000]]\n[[readings]]\nname = \"Plinthe, côté nord\"\nfile = \"r.csv\"\n");
  const auto rows = readCsvByPython(written(job, "a.csv"));
  EXPECT_EQ(rows.at(0).at("remark"), remark);
  EXPECT_EQ(rows.at(0).at("photograph"), "фото 1.jpg");
  EXPECT_EQ(rows.at(0).at("set"), "Plinthe, côté nord");
  const std::string text = textOf(written(job, "a.pdf"));
  for (const char* words : {"Дом 東京", "Plinthe, côté nord", "Преображенская", "фото 1.jpg"})
    EXPECT_NE(text.find(words), std::string::npos) << words << "\n" << text;
}

TEST_F(Report, TakesOneSetAlone) {
  const std::string text =
      textOf(written(demoPath("orchard-house"), "a.pdf", {"--set", "Concrete"}));
  EXPECT_NE(text.find("Readings: Concrete"), std::string::npos);
  EXPECT_EQ(text.find("Walls and plate"), std::string::npos);
}

TEST_F(Report, WithoutReadingsStillHasItsQuestionsAndSaysThatNothingWasRead) {
  const std::string job =
      writeFile("job.toml",
                "[outline]\ncorners = [[0, 0], [6000, 0], [6000, 4000], [0, 4000]]\n"
                "[[question]]\nabout = \"Gate\"\ntext = \"May the bench mark be moved?\"\n");
  const std::string text = textOf(written(job, "a.pdf"));
  EXPECT_NE(text.find("Nothing was read yet."), std::string::npos) << text;
  EXPECT_NE(text.find("May the bench mark be moved?"), std::string::npos) << text;
  EXPECT_EQ(readCsvByPython(written(job, "a.csv")).size(), 1u);
}

TEST_F(Report, NeverReplacesTheJobOrItsReadings) {
  const std::string readings = writeFile("r.csv", "kind,target,at,value\nlevel,damp-course,A,0\n");
  const std::string job = writeFile(
      "job.toml",
      "[outline]\ncorners = [[0, 0], [6000, 0], [6000, 4000], [0, 4000]]\n[[readings]]\nname = "
      "\"1\"\nfile = \"r.csv\"\n");
  const std::string before = contents(readings);
  const ProgramRun run = stringcourse({"report", job, "--out", inFolder("./r.csv")});
  EXPECT_EQ(run.exitCode, 2);
  EXPECT_NE(run.err.find("holds readings of this job"), std::string::npos) << run.err;
  EXPECT_EQ(contents(readings), before);
}

TEST_F(Report, WrongUseIsSaidAndWritesNothing) {
  const std::string job = demoPath("orchard-house");
  for (const std::vector<std::string>& wrong :
       std::vector<std::vector<std::string>>{{"--out", inFolder("a.txt")},
                                             {"--out", inFolder("a.pdf"), "--paper", "A0"},
                                             {"--out", inFolder("a.pdf"), "--set", "Tuesday"},
                                             {}}) {
    std::vector<std::string> call{"report", job};
    call.insert(call.end(), wrong.begin(), wrong.end());
    const ProgramRun run = stringcourse(call);
    EXPECT_EQ(run.exitCode, 2) << run.err;
    EXPECT_FALSE(run.err.empty());
  }
  EXPECT_EQ(stringcourse({"report", job, "--out", inFolder("no/such/a.pdf")}).exitCode, 1);
  EXPECT_EQ(stringcourse({"report", "/no/such.toml", "--out", inFolder("a.pdf")}).exitCode, 1);
  EXPECT_TRUE(left().empty());
}

TEST_F(Report, IsAmongWhatAWalkthroughWrites) {
  const auto walk = [&](const std::string& job, const std::string& folder) {
    return stringcourse({"walkthrough", job, "--size", "160x90", "--out", folder});
  };
  const std::vector<std::string> files{"readings.csv", "report.csv", "report.pdf"};
  ASSERT_EQ(walk(demoPath("orchard-house"), inFolder("w")).exitCode, 0);
  const std::string list = contents(inFolder("w/contents.txt"));
  for (const std::string& file : files)
    EXPECT_NE(list.find("  " + file + "\n"), std::string::npos) << list;
  EXPECT_EQ(contents(inFolder("w/readings.csv")),
            stringcourse({"readings", demoPath("orchard-house"), "--csv"}).out);
  EXPECT_EQ(contents(inFolder("w/report.pdf")),
            contents(written(demoPath("orchard-house"), "a.pdf")));
  // Of a job that has none they go away again.
  ASSERT_EQ(walk(demoPath("smallest"), inFolder("w")).exitCode, 0);
  for (const std::string& file : files)
    EXPECT_FALSE(std::filesystem::exists(inFolder("w/" + file))) << file;
}

TEST_F(Report, OfAWalkthroughNeverReplacesReadings) {
  const std::string readings =
      writeFile("readings.csv", "kind,target,at,value\nlevel,damp-course,A,0\n");
  const std::string job = writeFile(
      "job.toml",
      "[outline]\ncorners = [[0, 0], [6000, 0], [6000, 4000], [0, 4000]]\n[[readings]]\nname = "
      "\"1\"\nfile = \"readings.csv\"\n");
  const std::string before = contents(readings);
  const ProgramRun run = stringcourse({"walkthrough", job, "--out", inFolder("")});
  EXPECT_EQ(run.exitCode, 1);
  EXPECT_NE(run.err.find("readings.csv"), std::string::npos) << run.err;
  EXPECT_EQ(contents(readings), before);
  EXPECT_EQ(left(), (std::vector<std::string>{"job.toml", "readings.csv"}));
}

}  // namespace
}  // namespace program_test
