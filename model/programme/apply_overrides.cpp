#include <algorithm>
#include <map>
#include <numeric>

#include "model/programme/plan_stages.h"

namespace model {
namespace {

// Levenshtein's distance: how many letters must change to make one word the other.
size_t lettersApart(const std::string& a, const std::string& b) {
  std::vector<size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), size_t{0});
  for (size_t i = 0; i < a.size(); ++i) {
    size_t diagonal = row[0];
    row[0] = i + 1;
    for (size_t j = 0; j < b.size(); ++j) {
      const size_t replaced = diagonal + (a[i] == b[j] ? 0 : 1);
      diagonal = row[j + 1];
      row[j + 1] = std::min({row[j] + 1, row[j + 1] + 1, replaced});
    }
  }
  return row.back();
}

std::string nearestId(const Programme& programme, const std::string& wanted) {
  const auto nearest = std::min_element(
      programme.stages.begin(), programme.stages.end(), [&](const Stage& a, const Stage& b) {
        return lettersApart(a.id, wanted) < lettersApart(b.id, wanted);
      });
  return nearest == programme.stages.end() ? "" : nearest->id;
}

void applyDone(const StageOverride& change, const std::string& key, Stage& stage,
               std::vector<ProgrammeFault>& faults) {
  const auto started = dayNumber(change.started), finished = dayNumber(change.finished);
  if (started && finished && *finished < *started) {
    faults.push_back({key + ".finished", Severity::Error,
                      "programme.stage: \"" + change.stage + "\" was finished on " +
                          change.finished + ", before it was started on " + change.started,
                      "give the day on which it really started or finished"});
    return;
  }
  stage.started = started || finished;
  if (started) stage.start = change.started;
  if (finished) {
    stage.finish = change.finished;
    if (!started) stage.start = change.finished;
    stage.percent = 100;
  } else if (change.percent) {
    if (*change.percent > 0 && !started) {
      faults.push_back(
          {key + ".percent", Severity::Warning,
           "programme.stage: some of \"" + change.stage + "\" is done, and it has not started",
           "give the day on which it was started"});
      return;
    }
    stage.percent = *change.percent;
  }
}

}  // namespace

std::optional<size_t> stageNamed(Programme& programme, const std::string& name,
                                 const std::string& key) {
  const auto index = programme.find(name);
  if (!index) {
    const std::string table = key.substr(0, key.find('['));
    programme.faults.push_back({key, Severity::Warning,
                                table + ": this job has no stage \"" + name + "\"",
                                "did you mean \"" + nearestId(programme, name.substr(0, 64)) +
                                    "\"? `stages` lists them all"});
  }
  return index;
}

StageNames applyOverrides(const ProgrammeInput& input,
                          const std::function<double(const StageKey&, double)>& daysAt,
                          Programme& programme) {
  StageNames names;
  std::map<size_t, size_t> saidBefore;
  for (size_t i = 0; i < input.stages.size(); ++i) {
    const StageOverride& change = input.stages[i];
    const std::string key = "programme.stage[" + std::to_string(i) + "]";
    const auto index = stageNamed(programme, change.stage, key + ".stage");
    if (!index) continue;
    if (!saidBefore.emplace(*index, i).second) {
      programme.faults.push_back(
          {key + ".stage", Severity::Warning,
           "programme.stage: stage \"" + change.stage + "\" is changed twice",
           "keep one of the two; the last one counts"});
    }
    Stage& stage = programme.stages[*index];
    if (change.perDay) stage.days = daysAt(stage.key, *change.perDay);
    if (change.days) stage.days = *change.days;
    if (change.waitDays) stage.waitDays = *change.waitDays;
    if (change.crew) stage.crew = *change.crew;
    if (change.holdPoint) stage.holdPoint = *change.holdPoint;
    if (change.note) stage.note = *change.note;
    if (change.notice) stage.notice = *change.notice;
    if (change.decision) stage.decision = *change.decision;
    if (change.name) names.emplace_back(stage.key, *change.name);
    applyDone(change, key, stage, programme.faults);
  }
  return names;
}

}  // namespace model
