// The views that the job keeps, by stage.
#include "model/programme/plan_stages.h"

namespace model {

void applyViews(const ProgrammeInput& input, Programme& programme) {
  for (size_t i = 0; i < input.views.size(); ++i) {
    const std::string key = "programme.view[" + std::to_string(i) + "].stage";
    const auto index = stageNamed(programme, input.views[i].stage, key);
    if (!index) continue;
    std::optional<size_t>& view = programme.stages[*index].view;
    if (view) {
      programme.faults.push_back(
          {key, Severity::Warning,
           "programme.view: stage \"" + input.views[i].stage + "\" has two views",
           "keep one of the two; the last one counts"});
    }
    view = i;
  }
}

}  // namespace model
