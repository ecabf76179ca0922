#include "viewer/panels/keep_view.h"

#include <algorithm>

#include "viewer/panels/change_job_file.h"

namespace viewer {
namespace {

// Those of the job's views that are the stage's.
auto viewsOf(const model::Model& model, size_t stage) {
  return [&model, stage](const model::KeptView& view) {
    return view.stage == model.programme.stages[stage].id ||
           model.programme.find(view.stage) == stage;
  };
}

}  // namespace

std::optional<std::string> keepView(const std::string& path, const model::Model& model,
                                    size_t stage, model::KeptView view) {
  return changeJobFile(path, [&](model::Job& job) -> std::optional<std::string> {
    auto& all = job.programme.views;
    // The last one counts.
    const auto found = std::find_if(all.rbegin(), all.rend(), viewsOf(model, stage));
    view.stage = found == all.rend() ? model.programme.stages[stage].id : found->stage;
    if (found == all.rend())
      all.push_back(view);
    else
      *found = view;
    return std::nullopt;
  });
}

std::optional<std::string> forgetView(const std::string& path, const model::Model& model,
                                      size_t stage) {
  return changeJobFile(path, [&](model::Job& job) -> std::optional<std::string> {
    std::erase_if(job.programme.views, viewsOf(model, stage));
    return std::nullopt;
  });
}

}  // namespace viewer
