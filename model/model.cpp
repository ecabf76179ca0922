#include "model/model.h"

#include "model/programme/split_stages.h"

namespace model {

Model buildModel(const Job& job) {
  Model m;
  m.job = job;
  m.settingOut = deriveSettingOut(m.job);
  m.works = buildWorks(m.job, m.settingOut);
  splitStages(m.job, m.settingOut, m.works);
  m.programme = deriveProgramme(m.job, m.settingOut, m.works);
  m.takeoff = deriveTakeoff(m.job, m.settingOut, m.works, m.programme);
  return m;
}

}  // namespace model
