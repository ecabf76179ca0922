#include "model/asbuilt/designer_questions.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "model/asbuilt/reading_summary.h"
#include "model/levelling/level_book.h"

namespace model {

namespace {

constexpr size_t kNamed = 6;  // readings named in one question; the table has them all

std::string capitalised(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = char(text[0] - 'a' + 'A');
  return text;
}

bool askedByJob(const Job& job, const Deviation& d) {
  return std::any_of(job.questions.begin(), job.questions.end(),
                     [&](const Question& question) { return sameName(question.about, d.what); });
}

// The readings of one set and target that are out, the most off first.
struct OutGroup {
  size_t set = 0;
  std::string target;
  std::vector<size_t> deviations;
};

std::vector<OutGroup> outGroups(const Job& job, const AsBuilt& built) {
  std::vector<OutGroup> groups;
  for (size_t i = 0; i < built.deviations.size(); ++i) {
    const Deviation& d = built.deviations[i];
    if (!d.latest || d.verdict != Verdict::Out || askedByJob(job, d)) continue;
    const std::string target = targetWords(d);
    auto found = std::find_if(groups.begin(), groups.end(), [&](const OutGroup& group) {
      return group.set == d.set && group.target == target;
    });
    if (found == groups.end()) found = groups.insert(groups.end(), OutGroup{d.set, target, {}});
    found->deviations.push_back(i);
  }
  for (OutGroup& group : groups)
    std::stable_sort(group.deviations.begin(), group.deviations.end(), [&](size_t a, size_t b) {
      return std::abs(built.deviations[a].off) > std::abs(built.deviations[b].off);
    });
  return groups;
}

DesignerQuestion questionOf(const Job& job, const AsBuilt& built, const OutGroup& group) {
  const ReadingSet& set = job.readings[group.set];
  DesignerQuestion question;
  question.about = capitalised(group.target);
  question.text =
      "Read" + (set.date.empty() ? "" : " on " + set.date) + " (" + set.name + ") and out: ";
  question.deviation = group.deviations.front();
  const size_t count = group.deviations.size();
  for (size_t k = 0; k < std::min(count, kNamed); ++k) {
    const Deviation& d = built.deviations[group.deviations[k]];
    question.text += (k == 0 ? "" : "; ") + d.place.words + ": " + d.offWords + ", " + d.limitText +
                     " allowed (reading " + std::to_string(readingNumber(job, d.set, d.row)) + ")";
  }
  if (count > kNamed) question.text += "; and " + std::to_string(count - kNamed) + " more";
  question.text += count == 1 ? ". May it stay as built; if not, what is to be done?"
                              : ". May these stay as built; if not, what is to be done?";
  return question;
}

}  // namespace

std::vector<DesignerQuestion> designerQuestions(const Job& job, const AsBuilt& built) {
  std::vector<DesignerQuestion> questions;
  for (const Question& question : job.questions)
    questions.push_back({question.about, question.text, true});
  for (const OutGroup& group : outGroups(job, built))
    questions.push_back(questionOf(job, built, group));
  if (!built.roof.words.empty())
    questions.push_back({"Rafters",
                         "On the plates as read, rafters come out longer or shorter than drawn, as "
                         "listed under what the readings change. Is the ridge to be held, or the "
                         "pitch?",
                         false});
  return questions;
}

}  // namespace model
