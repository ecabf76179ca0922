#include "model/job/write_job.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <fstream>
#include <functional>
#include <sstream>

#include "model/job/key_table.h"
#include "model/job/read_job.h"
#include "model/job/section_text.h"
#include "tests/support/demo_job.h"
#include "tests/support/folders.h"
#include "tests/support/random_job.h"

namespace {

using model::Job;
using model::writeJob;

std::string demo(const std::string& name) {
  std::ifstream stream(test_support::sourceFolder() + "/assets/jobs/" + name + ".toml");
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

Job read(const std::string& text) {
  const auto result = model::readJob(text, "test.toml");
  for (const auto& problem : result.problems) {
    EXPECT_NE(problem.severity, model::Severity::Error) << model::format(problem) << "\n" << text;
  }
  return result.job.value_or(Job{});
}

std::string changed(const std::string& text, const std::function<void(Job&)>& change) {
  Job job = read(text);
  change(job);
  const std::string written = writeJob(text, job);
  EXPECT_TRUE(model::sameJob(read(written), job)) << written;
  return written;
}

// Lines of `after` that are not in `before`, and the other way round: "-old" and "+new".
std::string difference(const std::string& before, const std::string& after) {
  const auto lines = [](const std::string& text) {
    std::vector<std::string> all;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) all.push_back(line);
    return all;
  };
  const auto a = lines(before), b = lines(after);
  size_t head = 0, tail = 0;
  while (head < std::min(a.size(), b.size()) && a[head] == b[head]) ++head;
  while (tail < std::min(a.size(), b.size()) - head &&
         a[a.size() - 1 - tail] == b[b.size() - 1 - tail]) {
    ++tail;
  }
  std::string text;
  for (size_t i = head; i + tail < a.size(); ++i) text += "-" + a[i] + "\n";
  for (size_t i = head; i + tail < b.size(); ++i) text += "+" + b[i] + "\n";
  return text;
}

const std::string kSmall = R"(# Barn
[outline]
corners = [
  [0, 0],       # A
  [6740, 0],    # B
  [6740, 4490], # C
  [0, 4490],    # D
]

# what the walls are
[walls]
cavity = 100    # clear

[[opening]]
name = "Door"   # the front
wall = "A-B"
from = "A"
at = 900

[[opening]]
name = "Window"
wall = "C-D"
from = "C"
at = 900
)";

TEST(WriteJob, AnUnchangedJobGivesTheSameText) {
  for (const std::string& name : test_support::demoNames()) {
    const std::string text = demo(name);
    EXPECT_EQ(writeJob(text, read(text)), text);
  }
}

TEST(WriteJob, AChangedValueLeavesTheRestOfItsLine) {
  const std::string text = demo("orchard-house");
  EXPECT_EQ(difference(text, changed(text, [](Job& job) { job.walls.insulation = 0.125; })),
            "-insulation = 100                 # partial fill, against the inner leaf\n"
            "+insulation = 125                 # partial fill, against the inner leaf\n");
  EXPECT_EQ(difference(text, changed(text, [](Job& job) { job.site.spots[4].level = -0.5; })),
            "-  { at = [0, 0], level = -0.430 },\n+  { at = [0, 0], level = -0.500 },\n");
}

TEST(WriteJob, ANewKeyGoesToTheEndOfItsSection) {
  EXPECT_EQ(difference(kSmall, changed(kSmall, [](Job& job) { job.walls.render = 0.02; })),
            "+render = 20\n");
  EXPECT_EQ(difference(kSmall, changed(kSmall, [](Job& job) { job.openings[0].width = 1.2; })),
            "+width = 1200\n");
}

TEST(WriteJob, ANewSectionGoesToTheEndOfTheFile) {
  EXPECT_EQ(difference(kSmall, changed(kSmall, [](Job& job) { job.roof.pitch = 35; })),
            "+\n+[roof]\n+pitch = 35\n");
  EXPECT_EQ(difference(kSmall, changed(kSmall, [](Job& job) { job.cellar.emplace(); })),
            "+\n+[cellar]\n");
}

TEST(WriteJob, AMovedCornerKeepsItsComment) {
  EXPECT_EQ(difference(kSmall, changed(kSmall, [](Job& job) { job.outline[1].x = 7.19; })),
            "-  [6740, 0],    # B\n+  [7190, 0],    # B\n");
}

TEST(WriteJob, CornersComeAndGoWithoutTouchingTheOthers) {
  EXPECT_EQ(difference(kSmall, changed(kSmall,
                                       [](Job& job) {
                                         job.outline.insert(job.outline.begin() + 2, {8, 2.2});
                                       })),
            "+  [8000, 2200],\n");
  EXPECT_EQ(difference(kSmall, changed(kSmall,
                                       [](Job& job) {
                                         job.outline.push_back({-1, 2});
                                       })),
            "+  [-1000, 2000],\n");
  const std::string fewer = changed(kSmall, [](Job& job) {
    job.outline.erase(job.outline.begin() + 2);
    job.openings.pop_back();
  });
  EXPECT_NE(fewer.find("  [6740, 0],    # B\n  [0, 4490],    # D\n]\n"), std::string::npos)
      << fewer;
}

TEST(WriteJob, ARemovedOpeningTakesItsSectionAlong) {
  std::string expected = kSmall;
  const size_t first = expected.find("[[opening]]"), second = expected.rfind("[[opening]]");
  expected.erase(first, second - first);
  EXPECT_EQ(changed(kSmall, [](Job& job) { job.openings.erase(job.openings.begin()); }), expected);
}

TEST(WriteJob, ANewOpeningStandsBehindTheOthers) {
  const std::string text = changed(kSmall, [](Job& job) {
    model::Opening opening{"Hatch", model::OpeningKind::Opening, "B-C", "B", 1, 0.6, {}, {}};
    job.openings.push_back(opening);
  });
  EXPECT_EQ(difference(kSmall, text),
            "+\n+[[opening]]\n+name = \"Hatch\"\n+kind = \"opening\"\n+wall = \"B-C\"\n+from = "
            "\"B\"\n+at = 1000\n+width = 600\n");
}

TEST(WriteJob, AKeyThatNoLongerHoldsGoesWithItsLine) {
  const std::string text = demo("orchard-house");
  EXPECT_EQ(difference(text, changed(text, [](Job& job) { job.walls.dampCourse.reset(); })),
            "-damp_course = 0.000\n");
  // Nothing may hang on the mark that goes.
  const std::string bare = changed(text, [](Job& job) { job.setUps.clear(); });
  EXPECT_EQ(difference(bare, changed(bare, [](Job& job) { job.site.benchMark.reset(); })),
            "-bench_mark = { name = \"Bolt in gate pier\", at = [-4100, 13600], level = 0.185 }\n");
}

TEST(WriteJob, RenamingAStoreyRenamesItWhereOpeningsNameIt) {
  const std::string text = demo("orchard-house");
  const std::string written = changed(text, [](Job& job) {
    job.storeys[1].name = "Upper floor";
    for (model::SetUp& setUp : job.setUps)  // by a name of their own, as they name their mark
      if (setUp.floor == "First floor") setUp.floor = "Upper floor";
  });
  EXPECT_EQ(written.find("First floor"), std::string::npos);
  EXPECT_NE(written.find("storey = \"Upper floor\""), std::string::npos);
}

TEST(WriteJob, EveryCommentSurvivesAChangeOfEveryNumber) {
  const std::string text = demo("orchard-house");
  const std::string written = changed(text, [](Job& job) {
    for (model::Vec2& corner : job.outline) corner *= 1.5;
    for (model::Vec2& corner : job.cellar->outline) corner *= 1.5;
    for (model::StandingBuilding& building : job.site.buildings) {
      for (model::Vec2& corner : building.outline) corner *= 1.5;
    }
    for (model::Vec2& corner : job.site.boundary) corner *= 1.5;
    for (model::Stair& stair : job.stairs) stair.foot *= 1.5;
    job.walls.insulation = 0.09;
    job.ground.bulking = 1.25;
    job.ordnanceDatum = 62;
  });
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    const size_t comment = line.find('#');
    if (comment == std::string::npos) continue;
    EXPECT_NE(written.find(line.substr(comment)), std::string::npos) << line;
  }
}

TEST(WriteJob, WindowsLineEndsAndTheByteOrderMarkStay) {
  std::string text = "\xEF\xBB\xBF";
  for (const char c : kSmall) {
    if (c == '\n') text += '\r';
    text += c;
  }
  const std::string written = changed(text, [](Job& job) {
    job.walls.render = 0.02;
    job.roof.pitch = 35;
  });
  EXPECT_EQ(written.substr(0, 3), "\xEF\xBB\xBF");
  for (size_t i = 0; i < written.size(); ++i) {
    if (written[i] == '\n') {
      EXPECT_EQ(written[i - 1], '\r') << i;
    }
  }
  EXPECT_NE(written.find("render = 20\r\n"), std::string::npos);
}

TEST(WriteJob, AFileWithoutALastLineBreakIsContinuedOnANewLine) {
  const std::string text = kSmall.substr(0, kSmall.size() - 1);
  const std::string written = changed(text, [](Job& job) { job.openings[1].width = 1.2; });
  EXPECT_NE(written.find("at = 900\nwidth = 1200\n"), std::string::npos) << written;
}

TEST(WriteJob, DottedKeysAndInlineSectionsAreFollowed) {
  const std::string text =
      "roof.pitch = 35 # steep\nwalls = { cavity = 100 }\n"
      "outline.corners = [[0, 0], [6740, 0], [6740, 4490], [0, 4490]]\n";
  const std::string written = changed(text, [](Job& job) {
    job.roof.eaves = 0.4;
    job.walls.render = 0.02;
    job.outline[2] = {7, 5};
  });
  EXPECT_EQ(written,
            "roof.pitch = 35 # steep\nroof.eaves = 400\nwalls = { cavity = 100, render = 20 }\n"
            "outline.corners = [[0, 0], [6740, 0], [7000, 5000], [0, 4490]]\n");
}

TEST(WriteJob, TextsWithQuotesComeBackAsTheyWere) {
  const std::string written =
      changed(kSmall, [](Job& job) { job.openings[0].name = "\"Oak\" door \\ C:\\new"; });
  EXPECT_NE(written.find(R"(name = "\"Oak\" door \\ C:\\new"   # the front)"), std::string::npos);
}

RC_GTEST_PROP(WriteJob, AnyJobIsReadBackAsItWas, ()) {
  const Job job = *test_support::randomJob();
  RC_ASSERT(model::sameJob(read(model::freshText(job)), job));
}

RC_GTEST_PROP(WriteJob, AnyJobWrittenOverAnyOtherIsReadBackAsItWas, ()) {
  const Job before = *test_support::randomJob(), now = *test_support::randomJob();
  const std::string text = model::freshText(before);
  RC_ASSERT(model::sameJob(read(writeJob(text, now)), now));
}

RC_GTEST_PROP(WriteJob, WritingTwiceChangesNothing, ()) {
  const Job now = *test_support::randomJob();
  const std::string once = writeJob(demo("orchard-house"), now);
  RC_ASSERT(writeJob(once, now) == once);
  RC_ASSERT(once.find("# The demonstration job: an invented house") == 0u);
}

}  // namespace
