// The pipeline in one call.
//
//   auto read = model::readJob(text, "garage.toml");
//   if (read.job) {
//     model::Model m = model::buildModel(*read.job);
//     for (const auto& stage : m.programme.stages) ...
//   }
#pragma once

#include "model/job/job.h"
#include "model/programme/programme.h"
#include "model/settingout/setting_out.h"
#include "model/takeoff/takeoff.h"
#include "model/works/build_works.h"

namespace model {

struct Model {
  Job job;
  SettingOut settingOut;
  Works works;
  Programme programme;
  Takeoff takeoff;
};

// A pure function of the job, which must be free of errors (validateJob).
Model buildModel(const Job& job);

// The same without its takeoff, which count() adds: for whoever has other things to make of the
// model meanwhile.
Model buildUncounted(const Job& job);
void count(Model& model);

}  // namespace model
