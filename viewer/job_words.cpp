#include "viewer/job_words.h"

namespace viewer {

std::vector<std::string> jobWords(const model::Model& model) {
  const model::Job& job = model.job;
  std::vector<std::string> words{job.name, job.datumNote};
  if (job.site.benchMark) words.push_back(job.site.benchMark->name);
  for (const auto& mark : job.site.marks) words.push_back(mark.name);
  for (const auto& set : job.readings) {
    words.insert(words.end(), {set.name, set.by});
    for (const auto& reading : set.rows) words.push_back(reading.at);
  }
  for (const auto& setUp : job.setUps) words.push_back(setUp.name);
  for (const auto& building : job.site.buildings) words.push_back(building.name);
  for (const auto& storey : job.storeys) words.push_back(storey.name);
  for (const auto& opening : job.openings) words.push_back(opening.name);
  for (const auto& stage : model.programme.stages)
    words.insert(words.end(),
                 {stage.name, stage.what, stage.atEnd, stage.caution, stage.holdPoint, stage.note});
  for (const auto& level : model.settingOut.schedule)
    words.insert(words.end(), {level.name, level.where});
  for (const auto& line : model.works.strings) words.push_back(line.name);
  for (const auto& element : model.works.elements) words.push_back(element.name);
  for (const auto& row : model.takeoff.rows) words.insert(words.end(), {row.item, row.basis});
  return words;
}

}  // namespace viewer
