// Prints, as JSON, what the model says stands at the end of each stage of a job, with its bounds:
// what the browser must show when it plays the GLB of the same job.
#include <cstdio>
#include <nlohmann/json.hpp>

#include "model/job/read_job.h"
#include "model/model.h"

namespace {

nlohmann::json standing(const model::Model& m, double time) {
  nlohmann::json ids = nlohmann::json::array();
  model::Bounds all;
  for (size_t index : model::standingAt(m.programme, m.works, time)) {
    ids.push_back(m.works.elements[index].id);
    all.add(model::bounds(m.works.elements[index].solid));
  }
  return {{"standing", ids},
          {"low", {all.low.x, all.low.y, all.low.z}},
          {"high", {all.high.x, all.high.y, all.high.z}}};
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) {
    std::fputs("usage: stages_expected JOB.toml\n", stderr);
    return 2;
  }
  const model::ReadResult read = model::readJobFile(argv[1]);
  if (!read.job) {
    for (const model::Problem& problem : read.problems) {
      std::fprintf(stderr, "%s\n", model::format(problem).c_str());
    }
    return 1;
  }
  const model::Model m = model::buildModel(*read.job);
  nlohmann::json moments = nlohmann::json::array();
  moments.push_back(standing(m, 0));
  for (size_t i = 0; i < m.programme.stages.size(); ++i) {
    moments.push_back(standing(m, double(i) + 1));
    moments.back()["name"] = m.programme.stages[i].name;
  }
  std::printf("%s\n", moments.dump(1).c_str());
  return 0;
}
