#include "model/designer/sheet_facts.h"

#include <algorithm>
#include <set>

#include "model/designer/sheet_parts.h"
#include "model/programme/date_words.h"

namespace model {

namespace {

// By when they are wanted, none of them twice, with their numbers.
std::vector<SheetQuestion> numbered(const SheetData& data) {
  std::vector<SheetQuestion> all;
  std::set<std::string> said;
  for (auto* ask : {askedAlready, leftOutQuestions, bondQuestions, checkQuestions})
    for (SheetQuestion& question : ask(data))
      if (said.insert(question.about + "\n" + question.text).second)
        all.push_back(std::move(question));
  std::stable_sort(all.begin(), all.end(), [](const SheetQuestion& a, const SheetQuestion& b) {
    return a.stage < b.stage;  // none before any
  });
  for (size_t i = 0; i < all.size(); ++i) all[i].number = i + 1;
  return all;
}

// Which levels of the sheet an answer would move.
void tellLevels(DesignerSheetFacts& facts) {
  for (SheetQuestion& question : facts.questions) {
    if (question.keys.empty()) continue;
    std::vector<size_t> levels;
    for (size_t i = 0; i < facts.levels.size(); ++i) {
      const auto& of = facts.levels[i].source.questions;
      if (std::find(of.begin(), of.end(), question.number) != of.end()) levels.push_back(i + 1);
    }
    if (levels.empty()) continue;
    question.changes += (question.changes.empty() ? "" : "; ") +
                        std::string(levels.size() == 1 ? "level " : "levels ") +
                        numberRuns(levels) + " of this sheet";
  }
}

}  // namespace

const char* nameOf(Origin origin) {
  switch (origin) {
    case Origin::Given:
      return "given";
    case Origin::WorkedOut:
      return "worked out";
    case Origin::Assumed:
      break;
  }
  return "assumed";
}

std::string listedWords(const std::vector<std::string>& words) {
  std::string text;
  for (size_t i = 0; i < words.size(); ++i)
    text += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
  return text;
}

std::string sentence(std::string words) {
  if (!words.empty() && words[0] >= 'a' && words[0] <= 'z') words[0] = char(words[0] - 'a' + 'A');
  return words;
}

void restOn(const SheetData& data, const KeyRef& key, const QuestionsOfKeys& asked,
            Source& source) {
  if (data.given.given(key)) return;
  const auto found = asked.find(GivenKeys::pathOf(key));
  if (found == asked.end()) return;
  source.questions.insert(source.questions.end(), found->second.begin(), found->second.end());
  std::sort(source.questions.begin(), source.questions.end());
  source.questions.erase(std::unique(source.questions.begin(), source.questions.end()),
                         source.questions.end());
}

Source sourceOf(const SheetData& data, const KeyRef& key, const QuestionsOfKeys& asked) {
  Source source;
  if (data.given.given(key)) {
    source.words = data.given.line(key);
    return source;
  }
  source.origin = Origin::Assumed;
  source.words = data.given.whenAbsent(key);
  restOn(data, key, asked, source);
  return source;
}

std::optional<size_t> firstOf(const Programme& programme, std::initializer_list<StageKind> kinds) {
  const auto among = [&](const StageKey& key) {
    return std::find(kinds.begin(), kinds.end(), key.kind) != kinds.end();
  };
  for (size_t i = 0; i < programme.stages.size(); ++i) {
    const Stage& stage = programme.stages[i];
    if (among(stage.key) || std::any_of(stage.shares.begin(), stage.shares.end(),
                                        [&](const StageShare& share) { return among(share.key); }))
      return i;
  }
  return std::nullopt;
}

DesignerSheetFacts designerSheetFacts(const Model& model, const AsBuilt& built,
                                      const KeyPlaces& places, const Problems& problems) {
  const GivenKeys given(model.job, places);
  const SheetData data{model, built, places, problems, given};
  DesignerSheetFacts facts;
  facts.questions = numbered(data);
  QuestionsOfKeys asked;
  for (const SheetQuestion& question : facts.questions)
    for (const std::string& key : question.keys) asked[key].push_back(question.number);
  facts.levels = sheetLevels(data, asked);
  facts.dimensions = sheetDimensions(data, asked);
  facts.openings = sheetOpenings(data, asked);
  facts.off = offReadings(data);
  tellLevels(facts);
  return facts;
}

std::string wantedBy(const Programme& programme, const SheetQuestion& question) {
  if (!question.stage) return "as soon as can be";
  const Stage& stage = programme.stages[*question.stage];
  const std::string name = "stage " + std::to_string(*question.stage + 1) + ": " + stage.name;
  return stage.start.empty() ? "before " + name : "by " + dateWords(stage.start) + ", " + name;
}

std::string numberRuns(const std::vector<size_t>& numbers) {
  std::string text;
  for (size_t i = 0; i < numbers.size();) {
    size_t last = i;
    while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) ++last;
    if (last < i + 2) last = i;  // two stand by themselves
    text += (text.empty() ? "" : ", ") + std::to_string(numbers[i]);
    if (last > i) text += " to " + std::to_string(numbers[last]);
    i = last + 1;
  }
  return text;
}

}  // namespace model
