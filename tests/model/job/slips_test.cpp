// Every slip has its message however many there are, and no slip makes others up.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>

#include "model/job/key_table.h"
#include "model/job/read_job.h"
#include "model/job/write_job.h"
#include "tests/support/folders.h"
#include "tests/support/random_job.h"

namespace {

using Messages = std::set<std::string>;

const std::string kOutline = "[outline]\ncorners = [[0, 0], [6740, 0], [6740, 4490], [0, 4490]]\n";

std::string demoText() {
  std::ifstream stream(test_support::sourceFolder() + "/assets/jobs/orchard-house.toml");
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

Messages messagesOf(const std::string& text) {
  Messages all;
  for (const auto& problem : model::readJob(text, "job.toml").problems) {
    all.insert(model::format(problem));
  }
  return all;
}

std::vector<std::string> linesOf(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

std::string joined(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) text += line + "\n";
  return text;
}

// `name = value` on a line of its own, or nothing.
std::string nameOnLine(const std::string& line) {
  const size_t equals = line.find(" = ");
  const bool whole =
      std::count(line.begin(), line.end(), '[') == std::count(line.begin(), line.end(), ']') &&
      line.find('{') == std::string::npos;
  if (equals == std::string::npos || !whole || line.front() == '#' || line.front() == ' ')
    return {};
  return line.substr(0, equals);
}

// The line with a slip in it: of a wrong type, out of range, or with its key misspelt.
std::string slipped(const std::string& line, int way) {
  const std::string name = nameOnLine(line);
  if (way == 2) return name + name.back() + line.substr(name.size());
  return name + " = " + (way == 0 ? "true" : "1e9");
}

// With one line of `text` slipped, that line has its one error, and whatever else is said was said
// before.
void expectOneMessageForEachSlip(const std::string& text) {
  const Messages before = messagesOf(text);
  const std::vector<std::string> lines = linesOf(text);
  for (size_t i = 0; i < lines.size(); ++i) {
    if (nameOnLine(lines[i]).empty()) continue;
    for (int way = 0; way < 3; ++way) {
      std::vector<std::string> changed = lines;
      changed[i] = slipped(lines[i], way);
      int own = 0;
      for (const auto& problem : model::readJob(joined(changed), "job.toml").problems) {
        if (problem.place.line == static_cast<int>(i) + 1 &&
            problem.severity == model::Severity::Error) {
          ++own;
        } else if (!before.count(model::format(problem))) {
          ADD_FAILURE() << changed[i] << " also gives " << model::format(problem) << "\n" << text;
        }
      }
      EXPECT_EQ(own, 1) << changed[i];
    }
  }
}

TEST(Slips, AnyOneInTheDemoIsOneMessage) { expectOneMessageForEachSlip(demoText()); }

TEST(Slips, AnyOneInDrawnJobsIsOneMessage) {
  for (unsigned seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    expectOneMessageForEachSlip(model::writeJob(kOutline, test_support::seededJob(seed)));
  }
}

// Slips of the demo that have nothing to do with each other, some of a key and some of the meaning;
// none moves a line.
struct Slip {
  const char *from, *to;
};

constexpr Slip kSlips[] = {
    {"latitude = 52.4", "latitude = 524"},
    {"north = 12  ", "nord = 12  "},
    {"{ at = [0, 0], level = -0.430 }", "{ at = [11240, 0], level = -0.430 }"},
    {"height = 5200", "height = \"high\""},
    {"[[7600, 1200], [10000, 1200], [10000, 3000], [7600, 3000]]", "[[7600, 1200], [10000, 1200]]"},
    {"bulking = 1.30", "bulking = 13"},
    {"name = \"Ground floor\"", "name = 5"},
    {"outer_leaf = 102.5", "outer_leef = 3"},
    {"cavity = 150", "cavity = 20"},
    {"thickness = 225", "thickness = 225mm"},
    {"from = 6000", "from = 60000"},
    {"membrane = 25", "membran = 25"},
    {"slab = 300", "slab 300"},
    {"spacing = 400\n\n[[opening]]", "spacing = 40\n\n[[opening]]"},
    {"from = \"D\"\nat = 1125", "from = \"D\"\nat = 5500"},
    {"from = \"C\"\nat = 1340", "from = \"E\"\nat = 1340"},
    {"wall = \"A-B\"\nfrom = \"B\"", "wall = \"A-H\"\nfrom = \"B\""},
};

std::string withSlips(const std::vector<size_t>& which) {
  std::string text = demoText();
  for (const size_t i : which) {
    const size_t at = text.find(kSlips[i].from);
    if (at == std::string::npos) {
      ADD_FAILURE() << kSlips[i].from << " is not in the demo";
      continue;
    }
    text.replace(at, std::string(kSlips[i].from).size(), kSlips[i].to);
  }
  return text;
}

TEST(Slips, EachHasAMessageAlone) {
  for (size_t i = 0; i < std::size(kSlips); ++i) {
    const Messages said = messagesOf(withSlips({i}));
    EXPECT_EQ(said.size(), 1u) << kSlips[i].to;
    for (const auto& message : said) {
      EXPECT_NE(message.find("error"), std::string::npos) << kSlips[i].to << ": " << message;
    }
  }
}

RC_GTEST_PROP(Slips, TogetherSayWhatEachSaysAloneAndNothingElse, ()) {
  const auto which =
      *rc::gen::unique<std::vector<size_t>>(rc::gen::inRange<size_t>(0, std::size(kSlips)));
  Messages expected;
  for (const size_t i : which) expected.merge(messagesOf(withSlips({i})));
  RC_ASSERT(messagesOf(withSlips(which)) == expected);
}

TEST(Slips, AllTogetherSayWhatEachSaysAlone) {
  std::vector<size_t> all;
  Messages expected;
  for (size_t i = 0; i < std::size(kSlips); ++i) {
    all.push_back(i);
    expected.merge(messagesOf(withSlips({i})));
  }
  EXPECT_EQ(messagesOf(withSlips(all)), expected);
}

}  // namespace
