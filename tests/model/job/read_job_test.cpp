#include "model/job/read_job.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "model/job/key_table.h"
#include "tests/support/demo_job.h"
#include "tests/support/folders.h"

namespace {

using model::Job;
using model::readJob;

std::string pathOf(const std::string& name) {
  return test_support::sourceFolder() + "/assets/jobs/" + name + ".toml";
}

std::string textOf(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

const std::string kOutline = "[outline]\ncorners = [[0, 0], [6740, 0], [6740, 4490], [0, 4490]]\n";

Job jobOf(const std::string& text) {
  const auto result = readJob(text, "test.toml");
  for (const auto& problem : result.problems) {
    EXPECT_NE(problem.severity, model::Severity::Error) << model::format(problem);
  }
  return result.job.value_or(Job{});
}

std::string onlyProblem(const std::string& text) {
  const auto result = readJob(text, "test.toml");
  EXPECT_EQ(result.problems.size(), 1u);
  return result.problems.empty() ? "" : model::format(result.problems[0]);
}

TEST(ReadJob, EveryDemoJobReadsWithoutAnyErrorOrSurprise) {
  for (const std::string& name : test_support::demoNames()) {
    const auto result = model::readJobFile(pathOf(name));
    EXPECT_TRUE(result.job.has_value()) << name;
    for (const auto& problem : result.problems) {
      // One is built on to what stands, and its concrete is cut off there.
      const bool builtOn = name == "row-end" && problem.severity == model::Severity::Warning &&
                           problem.what.find("the foundations reach") == 0;
      EXPECT_TRUE(builtOn) << model::format(problem);
    }
  }
}

TEST(ReadJob, TheSmallestJobHasTheDefaultsOfTheStructs) {
  Job expected;
  expected.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  EXPECT_TRUE(model::sameJob(jobOf(textOf(pathOf("smallest"))), expected));
}

TEST(ReadJob, EverySectionOfTheDemoArrivesInItsPlace) {
  const Job job = jobOf(textOf(pathOf("orchard-house")));
  EXPECT_EQ(job.name, "Orchard house");
  EXPECT_EQ(job.ordnanceDatum, 61.35);
  ASSERT_EQ(job.outline.size(), 6u);
  EXPECT_EQ(job.outline[3], model::Vec2(5.39, 6.065));
  ASSERT_EQ(job.site.spots.size(), 9u);
  EXPECT_EQ(job.site.spots[7].level, -0.19);
  ASSERT_TRUE(job.site.benchMark);
  EXPECT_EQ(job.site.benchMark->at, model::Vec2(-4.1, 13.6));
  ASSERT_EQ(job.site.buildings.size(), 3u);
  EXPECT_EQ(job.site.buildings[2].kind, model::BuildingKind::Demolish);
  EXPECT_EQ(job.site.buildings[1].height, 5.2);
  EXPECT_EQ(job.ground.bulking, 1.3);
  ASSERT_EQ(job.storeys.size(), 2u);
  EXPECT_EQ(job.storeys[1].floor, 2.7);
  EXPECT_EQ(job.walls.cavity, 0.15);
  EXPECT_EQ(job.walls.top, 5.1);
  EXPECT_EQ(job.foundations.top, -0.975);
  ASSERT_EQ(job.foundations.steps.size(), 2u);
  EXPECT_EQ(job.foundations.steps[1].from, 6.0);
  EXPECT_FALSE(job.foundations.steps[1].to);
  ASSERT_TRUE(job.cellar);
  EXPECT_EQ(job.cellar->floor, -2.525);
  EXPECT_EQ(job.cellar->outline.size(), 4u);
  ASSERT_EQ(job.openings.size(), 16u);
  EXPECT_EQ(job.openings[15].storey, 1);
  EXPECT_EQ(job.openings[15].head, 6.45);
  EXPECT_EQ(job.openings[5].kind, model::OpeningKind::Garage);
  ASSERT_EQ(job.roof.edges.size(), 1u);
  EXPECT_EQ(job.roof.edges[0].kind, model::EavesKind::Gable);
  ASSERT_EQ(job.programme.stages.size(), 3u);
  EXPECT_EQ(job.programme.stages[0].days, 4.0);
  EXPECT_TRUE(job.programme.stages[1].decision);
  EXPECT_EQ(job.programme.stages[2].name, "Windows, doors and glazing");
}

TEST(ReadJob, QuotedValuesCarryTheirUnit) {
  const Job job = jobOf(kOutline +
                        "[foundations]\nwidth = \"2 ft\"\ntop = \"-975 mm\"\n"
                        "[roof]\npitch = \"8 in 12\"\neaves = \"30 cm\"\n");
  EXPECT_DOUBLE_EQ(job.foundations.width, 0.6096);
  EXPECT_EQ(job.foundations.top, -0.975);
  EXPECT_NEAR(job.roof.pitch, 33.690, 0.001);
  EXPECT_EQ(job.roof.eaves, 0.3);
}

TEST(ReadJob, ACellarIsThereWhenItsSectionIs) {
  EXPECT_FALSE(jobOf(kOutline).cellar);
  const Job job = jobOf(kOutline + "[cellar]\n");
  ASSERT_TRUE(job.cellar);
  EXPECT_TRUE(job.cellar->outline.empty());
}

TEST(ReadJob, StoreysOfTheFileReplaceTheDefaultOne) {
  const Job job =
      jobOf(kOutline +
            "[[opening]]\nwall = \"A-B\"\nfrom = \"A\"\nat = 900\nstorey = \"Upper\"\n"
            "[[storey]]\nname = \"Lower\"\n[[storey]]\nname = \"Upper\"\nfloor = 2.7\n");
  ASSERT_EQ(job.storeys.size(), 2u);
  EXPECT_EQ(job.storeys[0].name, "Lower");
  EXPECT_EQ(job.openings[0].storey, 1);
}

TEST(ReadJob, ADateMayStandWithoutQuotes) {
  EXPECT_EQ(jobOf(kOutline + "[programme]\nstart = 2027-04-02\n").programme.start, "2027-04-02");
}

TEST(ReadJob, DottedAndInlineTomlMeansTheSame) {
  const Job plain =
      jobOf(kOutline + "[roof]\npitch = 35\n[[roof.edge]]\nwall = \"A-B\"\nkind = \"gable\"\n");
  const Job dotted =
      jobOf("roof.pitch = 35\nroof.edge = [{ wall = \"A-B\", kind = \"gable\" }]\n" + kOutline);
  EXPECT_TRUE(model::sameJob(plain, dotted));
}

TEST(ReadJob, AByteOrderMarkAndWindowsLinesAreRead) {
  std::string text = "\xEF\xBB\xBF";
  for (const char c : textOf(pathOf("orchard-house"))) {
    if (c == '\n') text += '\r';
    text += c;
  }
  EXPECT_TRUE(model::sameJob(jobOf(text), jobOf(textOf(pathOf("orchard-house")))));
}

TEST(ReadJob, PlacesAreThereUnderBothSpellings) {
  const auto result =
      readJob(kOutline + "[[opening]]\nwall = \"A-B\"\nfrom = \"A\"\n  at = 900\n", "");
  for (const char* key : {"opening[0].at", "openings[0].at"}) {
    ASSERT_EQ(result.places.count(key), 1u) << key;
    EXPECT_EQ(result.places.at(key).line, 6);
    EXPECT_EQ(result.places.at(key).column, 3);
  }
  EXPECT_EQ(result.places.at("outline.corners[1]").column, 20);
}

TEST(ReadJob, ProblemsComeInFileOrder) {
  const auto result = readJob(
      "[walls]\ncavty = 1\n[outline]\ncorners = [[0, 0], [6740, 4490], [6740, 0], [0, "
      "4490]]\n[roof]\npitch = 2\n",
      "");
  ASSERT_EQ(result.problems.size(), 3u);
  EXPECT_EQ(result.problems[0].place.line, 2);
  EXPECT_EQ(result.problems[1].place.line, 4);
  EXPECT_EQ(result.problems[2].place.line, 6);
}

TEST(ReadJob, CountsAreWholeNumbers) {
  EXPECT_EQ(jobOf(kOutline + "[laying]\nlayers = 3\n").laying.layers, 3);
  EXPECT_EQ(jobOf(kOutline + "[laying]\nlayers = 3.0\n").laying.layers, 3);
  EXPECT_EQ(onlyProblem(kOutline + "[laying]\nlayers = 2.5\n"),
            "test.toml:4:1: error: laying.layers is 2.5; a whole number is needed, like 3");
}

TEST(ReadJob, AFileThatIsNotThereIsAProblem) {
  const auto result = model::readJobFile("no/such/job.toml");
  ASSERT_EQ(result.problems.size(), 1u);
  EXPECT_FALSE(result.job);
  EXPECT_NE(
      model::format(result.problems[0]).find("no/such/job.toml: error: the file cannot be read"),
      std::string::npos);
}

TEST(ReadJob, AFolderIsNoJob) {
  const auto result = model::readJobFile(test_support::sourceFolder() + "/assets");
  EXPECT_FALSE(result.job);
  ASSERT_EQ(result.problems.size(), 1u);
  EXPECT_NE(result.problems[0].what.find("cannot be read"), std::string::npos);
}

TEST(ReadJob, TextsOverOneMebibyteAreRefused) {
  const std::string large = kOutline + "# " + std::string(1 << 20, 'x');
  EXPECT_NE(onlyProblem(large).find("over 1 MiB"), std::string::npos);
  const std::string path = testing::TempDir() + "/large.toml";
  std::ofstream(path) << large;
  EXPECT_NE(model::format(model::readJobFile(path).problems.at(0)).find("over 1 MiB"),
            std::string::npos);
  std::filesystem::remove(path);
}

TEST(ReadJob, ManyMistakesStayWithinBounds) {
  std::string text = kOutline;
  for (int i = 0; i < 20000; ++i) text += "key" + std::to_string(i) + " = 1\n";
  EXPECT_LE(readJob(text, "").problems.size(), 250u);
  std::string broken = kOutline;
  for (int i = 0; i < 20000; ++i) broken += "this line is no toml\n";
  EXPECT_LE(readJob(broken, "").problems.size(), 250u);
}

TEST(ReadJob, DeepNestingEndsInAMessage) {
  for (const std::string& unit : {std::string("["), std::string("{a="), std::string("a.")}) {
    std::string text = "x = ";
    for (int i = 0; i < 100000; ++i) text += unit;
    EXPECT_NE(onlyProblem(text).find("nested too deep"), std::string::npos);
  }
}

TEST(ReadJob, AQuotedNumberWithoutUnitIsToldBothWaysToWriteIt) {
  const std::string length = onlyProblem(kOutline + "[walls]\ncavity = \"100\"\n");
  EXPECT_NE(length.find("write 100 without quotes for millimetres"), std::string::npos) << length;
  EXPECT_NE(length.find("\"100 mm\""), std::string::npos) << length;
  const std::string level = onlyProblem(kOutline + "[walls]\ndamp_course = \"-0.15\"\n");
  EXPECT_NE(level.find("without quotes for metres"), std::string::npos) << level;
  EXPECT_EQ(jobOf(kOutline + "[walls]\nrender = \"0\"\ndamp_course = \"0\"\n").walls.render, 0);
}

TEST(ReadJob, AnOutlineInMetresIsToldInRoundMillimetres) {
  const std::string text =
      onlyProblem("[outline]\ncorners = [[1e1, 2.1], [16.7, 2.1], [16.7, 6.6], [1e1, 6.6]]\n");
  EXPECT_NE(text.find("for 6.7 m write 6700"), std::string::npos) << text;
  EXPECT_EQ(text.find("6700."), std::string::npos) << text;
}

TEST(ReadJob, AFileThatIsNoTextHasOneProblem) {
  std::string picture = "\x89PNG\r\n\x1a\n";
  unsigned state = 1;
  for (int i = 0; i < 5000; ++i) {
    state = state * 1103515245u + 12345u;
    picture += static_cast<char>(state >> 16);
  }
  const std::string text = onlyProblem(picture);
  EXPECT_EQ(text.rfind("test.toml:1:1: error: this byte is not UTF-8 text, and ", 0), 0u) << text;
  EXPECT_NE(text.find("is this the right file?"), std::string::npos) << text;
}

// A name in an old code page spoils nothing else: what else is wrong is still said.
TEST(ReadJob, AFewBytesOfAnotherCodePageAreOneProblemBesideTheRest) {
  const auto result = readJob("[job]\nname = \"Caf\xE9 d\xE9j\xE0\"\n" + kOutline +
                                  "# a longer comment, as there is in every real file of a job\n"
                                  "# and another line of it, so that most of this is text\n"
                                  "[roof]\npich = 40\n",
                              "test.toml");
  ASSERT_EQ(result.problems.size(), 2u);
  EXPECT_EQ(result.problems[0].place.line, 2);
  EXPECT_NE(result.problems[1].what.find("pich"), std::string::npos);
}

RC_GTEST_PROP(ReadJob, AnyBytesEndInAMessage, (const std::string& bytes)) {
  const auto result = readJob(bytes, "x");
  if (result.job) RC_ASSERT(!result.job->outline.empty());
  RC_ASSERT(result.job || model::hasErrors(result.problems));
}

// A demo file with one byte changed, taken out or put in: what a slip of the hand makes.
RC_GTEST_PROP(ReadJob, ASlipInADemoEndsInAJobOrAMessage,
              (unsigned at, unsigned char byte, int how)) {
  static const std::string demo = textOf(pathOf("orchard-house"));
  std::string text = demo;
  const size_t offset = at % text.size();
  if (how % 3 == 0) text[offset] = static_cast<char>(byte);
  if (how % 3 == 1) text.erase(offset, 1 + byte % 20);
  if (how % 3 == 2) text.insert(offset, 1, static_cast<char>(byte));
  const auto result = readJob(text, "x");
  RC_ASSERT(result.job.has_value() == !model::hasErrors(result.problems));
}

// A house that is built on to stands against the new walls.
TEST(ReadJob, AsksAboutABuildingAgainstTheWallsAndBuildsAllTheSame) {
  const auto result = readJob(
      "[outline]\ncorners = [[0, 0], [5000, 0], [5000, 4000], [0, 4000]]\n"
      "[[site.building]]\nname = \"House\"\n"
      "outline = [[-3000, 4000], [8000, 4000], [8000, 9000], [-3000, 9000]]\n",
      "x");
  ASSERT_TRUE(result.job);
  ASSERT_EQ(result.problems.size(), 1u);
  EXPECT_EQ(result.problems[0].severity, model::Severity::Warning);
  EXPECT_EQ(result.problems[0].place.line, 5);
  EXPECT_NE(result.problems[0].what.find("cut off at the building"), std::string::npos);
}

}  // namespace
