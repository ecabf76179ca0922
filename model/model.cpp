#include "model/model.h"

#include "model/programme/split_stages.h"

namespace model {

Model buildUncounted(const Job& job) {
  Model m;
  m.job = job;
  m.settingOut = deriveSettingOut(m.job);
  m.works = buildWorks(m.job, m.settingOut);
  splitStages(m.job, m.settingOut, m.works);
  m.programme = deriveProgramme(m.job, m.settingOut, m.works);
  return m;
}

void count(Model& model) {
  model.takeoff = deriveTakeoff(model.job, model.settingOut, model.works, model.programme);
}

Model buildModel(const Job& job) {
  Model m = buildUncounted(job);
  count(m);
  return m;
}

}  // namespace model
