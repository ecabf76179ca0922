#include "model/model.h"

namespace model {

Model buildModel(const Job& job) {
  Model m;
  m.job = job;
  m.settingOut = deriveSettingOut(m.job);
  m.works = buildWorks(m.job, m.settingOut);
  m.programme = deriveProgramme(m.job, m.settingOut, m.works);
  m.takeoff = deriveTakeoff(m.job, m.settingOut, m.works, m.programme);
  return m;
}

}  // namespace model
