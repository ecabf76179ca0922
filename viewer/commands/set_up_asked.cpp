#include "viewer/commands/set_up_asked.h"

#include "model/levelling/level_book.h"

namespace viewer {

SetUpAsked::SetUpAsked(const model::Model& model, const std::string& name) {
  if (name.empty()) return;
  std::string names;
  for (const model::SetUp& each : model.job.setUps) {
    if (!setUp && model::sameName(each.name, name)) setUp = &each;
    names += (names.empty() ? "" : ", ") + each.name;
  }
  if (setUp) return;
  wrong = "there is no set-up \"" + name + "\" in this job" +
          (names.empty() ? ": it has none; give [[set_up]] in the job file" : ": " + names);
}

}  // namespace viewer
