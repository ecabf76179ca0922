// The programme as the real program tells it, its calendar read back by another program.
#include <gtest/gtest.h>

#include <map>
#include <nlohmann/json.hpp>

#include "model/exchange/site_events.h"
#include "model/model.h"
#include "tests/program/outside_reader.h"
#include "tests/program/program_fixture.h"

namespace program_test {
namespace {

using test_support::demoJob;

class ProgrammeCommand : public InFolder {
 protected:
  // A copy of a demo with more lines at its end.
  std::string changed(const std::string& more, const std::string& name = "changed.toml") const {
    std::ifstream in(demoPath("garage"));
    std::stringstream text;
    text << in.rdbuf() << "\n" << more;
    std::ofstream(inFolder(name)) << text.str();
    return inFolder(name);
  }
};

TEST_F(ProgrammeCommand, TellsDatesFloatsAndEvents) {
  const ProgramRun run = stringcourse({"programme", demoPath("orchard-house")});
  EXPECT_EQ(run.exitCode, 0);
  for (const char* word : {"late finish", "critical", "Scaffolders", "hold point", "muck away"})
    EXPECT_NE(run.out.find(word), std::string::npos) << word;
}

TEST_F(ProgrammeCommand, JsonHasEveryStageOfTheModel) {
  const ProgramRun run = stringcourse({"programme", demoPath("orchard-house"), "--json"});
  ASSERT_EQ(run.exitCode, 0);
  const auto json = nlohmann::json::parse(run.out);
  const model::Model model = model::buildModel(demoJob("orchard-house"));
  const auto& rows = json.at("dates");
  ASSERT_EQ(rows.size(), model.programme.stages.size());
  for (size_t i = 0; i < rows.size(); ++i) {
    EXPECT_EQ(rows[i].at("start"), model.programme.stages[i].start);
    EXPECT_EQ(rows[i].at("id"), model.programme.stages[i].id);
  }
}

// icalendar, a general library, reads the file; dates and texts come back as the model has them.
TEST_F(ProgrammeCommand, TheCalendarIsReadByAnotherProgram) {
  const std::string out = inFolder("house.ics");
  const ProgramRun run =
      stringcourse({"programme", demoPath("orchard-house"), "--out", out, "--stages"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  const std::string script =
      "import icalendar, json, sys\n"
      "c = icalendar.Calendar.from_ical(open(sys.argv[1], 'rb').read())\n"
      "assert not c.errors, c.errors\n"
      "print(json.dumps([{'uid': str(e['uid']), 'summary': str(e['summary']),\n"
      "  'start': e.decoded('dtstart').isoformat(), 'end': e.decoded('dtend').isoformat(),\n"
      "  'text': str(e.get('description', '')), 'errors': e.errors} for e in c.walk('vevent')]))\n";
  const auto events = nlohmann::json::parse(output({"/usr/bin/python3", "-c", script, out}));
  const model::Model model = model::buildModel(demoJob("orchard-house"));
  const auto expected = model::siteEvents(model);
  const size_t stages = model.programme.stages.size();
  ASSERT_EQ(events.size(), stages + expected.size());
  std::map<std::string, int> uids;
  for (const auto& event : events) {
    ++uids[event.at("uid")];
    EXPECT_TRUE(event.at("errors").empty());
    EXPECT_LT(event.at("start"), event.at("end"));
  }
  EXPECT_EQ(uids.size(), events.size()) << "no two have one identifier";
  for (size_t i = 0; i < stages; ++i) {
    EXPECT_EQ(events[i].at("summary"), model.programme.stages[i].name);
    EXPECT_EQ(events[i].at("start"), model.programme.stages[i].start);
    EXPECT_EQ(events[i].at("text"), model.programme.stages[i].what);
  }
  for (size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(events[stages + i].at("start"), expected[i].date);
  }
}

TEST_F(ProgrammeCommand, AnImpossibleOrderIsRefusedAtItsPlace) {
  const std::string job = changed(
      "[[programme.stage]]\n"
      "stage = \"pour-foundations\"\n"
      "follows = \"corners-ground-1\"\n");
  const ProgramRun run = stringcourse({"check", job});
  EXPECT_EQ(run.exitCode, 1);
  EXPECT_NE(run.err.find("error: programme.stage: \"pour-foundations\" cannot follow"),
            std::string::npos)
      << run.err;
  EXPECT_NE(run.err.find("bears on"), std::string::npos) << run.err;
  std::ifstream in(job);
  int number = 0, line = 0;
  for (std::string text; std::getline(in, text);) {
    ++number;
    if (text.rfind("follows", 0) == 0) line = number;
  }
  EXPECT_EQ(run.err.find(job + ":" + std::to_string(line) + ":"), 0u) << run.err;
}

TEST_F(ProgrammeCommand, TwoPlansAreCompared) {
  const std::string job = changed("[[programme.stage]]\nstage = \"rafters\"\ndays = 20\n");
  const ProgramRun run = stringcourse({"programme", job, "--against", demoPath("garage")});
  EXPECT_EQ(run.exitCode, 0) << run.err;
  EXPECT_NE(run.out.find("Cut and fix the rafters"), std::string::npos) << run.out;
  EXPECT_NE(run.out.find("working days in the first"), std::string::npos);
}

TEST_F(ProgrammeCommand, WrongWordsAreUsage) {
  EXPECT_EQ(stringcourse({"programme", demoPath("garage"), "--from", "soon"}).exitCode, 2);
  EXPECT_EQ(stringcourse({"programme", demoPath("garage"), "--out", inFolder("a.txt")}).exitCode,
            2);
  EXPECT_EQ(stringcourse({"programme", demoPath("garage"), "--days", "3"}).exitCode, 2);
  EXPECT_EQ(stringcourse({"programme", inFolder("none.toml")}).exitCode, 1);
}

}  // namespace
}  // namespace program_test
