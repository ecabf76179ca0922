#include "viewer/panels/change_stage.h"

#include <algorithm>

#include "model/job/read_job.h"
#include "model/job/write_job.h"
#include "model/problem_lines.h"
#include "viewer/panels/change_job_file.h"

namespace viewer {
namespace {

std::string firstFault(const model::Programme& programme) {
  for (const model::ProgrammeFault& fault : programme.faults)
    if (fault.severity == model::Severity::Error) return fault.what;
  return "";
}

}  // namespace

ChangedStage changeStage(const std::string& path, const model::Model& model, size_t stage,
                         const std::function<void(model::StageOverride&)>& set) {
  const model::Stage& wanted = model.programme.stages[stage];
  const auto ours = [&](const model::StageOverride& change) {
    return change.stage == wanted.id || model.programme.find(change.stage) == stage;
  };
  ChangedStage result;
  SavedChange saved;
  const auto wrong = changeJobFile(
      path,
      [&](model::Job& job) -> std::optional<std::string> {
        auto& all = job.programme.stages;
        auto entry = std::find_if(all.begin(), all.end(), ours);
        if (entry == all.end()) {
          all.emplace_back();
          entry = all.end() - 1;
          entry->stage = wanted.id;
        }
        set(*entry);
        const std::string fault =
            firstFault(model::deriveProgramme(job, model.settingOut, model.works));
        if (!fault.empty()) return fault;
        return std::nullopt;
      },
      &saved.before, &saved.after);
  if (wrong)
    result.problem = *wrong;
  else if (saved.before != saved.after)
    result.saved = saved;
  return result;
}

std::optional<std::string> takeBackChange(const std::string& path, const SavedChange& change) {
  const auto now = textOfFile(path);
  if (!now) return "the job file cannot be read";
  if (*now != change.after) return "the job file has been changed since; it is left as it is";
  if (const auto failed = model::saveAtomically(path, change.before))
    return model::inOneLine(*failed);
  return std::nullopt;
}

}  // namespace viewer
