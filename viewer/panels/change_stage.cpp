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

ChangedStage change(const std::string& path,
                    const std::function<std::optional<std::string>(model::Job&)>& set) {
  ChangedStage result;
  SavedChange saved;
  const auto wrong = changeJobFile(path, set, &saved.before, &saved.after);
  if (wrong)
    result.problem = *wrong;
  else if (saved.before != saved.after)
    result.saved = saved;
  return result;
}

}  // namespace

ChangedStage changeStage(const std::string& path, const model::Model& model, size_t stage,
                         const std::function<void(model::StageOverride&)>& set) {
  const model::Stage& wanted = model.programme.stages[stage];
  const auto ours = [&](const model::StageOverride& each) {
    return each.stage == wanted.id || model.programme.find(each.stage) == stage;
  };
  return change(path, [&](model::Job& job) -> std::optional<std::string> {
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
  });
}

ChangedStage changeDelivery(const std::string& path, const model::Model& model, size_t delivery,
                            double daysBefore) {
  const model::Delivery& known = model.job.programme.deliveries[delivery];
  return change(path, [&](model::Job& job) -> std::optional<std::string> {
    auto& all = job.programme.deliveries;
    if (delivery >= all.size() || all[delivery].what != known.what ||
        all[delivery].stage != known.stage)
      return "the deliveries of the job file have been changed since; it is left as it is";
    all[delivery].daysBefore = daysBefore;
    return std::nullopt;
  });
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
