#include "viewer/panels/dates_entry.h"

#include "model/exchange/programme_tables.h"
#include "model/programme/calendar.h"
#include "model/programme/date_words.h"

namespace viewer {

bool DatesEntry::taken(const ChangedStage& change, const std::string& what) {
  noticeWarns = !change.problem.empty();
  notice = noticeWarns ? change.problem : what;
  if (!change.saved) return false;
  undo = change.saved;
  return true;
}

bool DatesEntry::setDays(const std::string& path, const model::Model& model, size_t stage,
                         double days) {
  const model::Stage& s = model.programme.stages[stage];
  if (s.days == days) return false;
  const std::string text = model::daysText(days);
  return taken(changeStage(path, model, stage,
                           [&](model::StageOverride& change) {
                             change.days = days;
                             change.perDay.reset();
                           }),
               s.name + ": " + text + (days == 1 ? " day" : " days"));
}

bool DatesEntry::setFollows(const std::string& path, const model::Model& model, size_t stage,
                            size_t host) {
  if (stage == host || stage == host + 1) return false;  // there already
  const auto& stages = model.programme.stages;
  return taken(changeStage(path, model, stage,
                           [&](model::StageOverride& change) { change.follows = stages[host].id; }),
               stages[stage].name + ", after: " + stages[host].name);
}

bool DatesEntry::setDelivery(const std::string& path, const model::Model& model,
                             const DeliveryMark& mark, long day) {
  if (day == mark.day) return false;
  ChangedStage change;
  const auto days = daysBeforeOn(model, mark, day, change.problem);
  if (!days) return taken(change, "");
  const long comes = deliveryDay(model, mark.stage, *days);
  if (comes == mark.day) return false;
  const std::string before =
      model::daysText(*days) + (*days == 1 ? " working day" : " working days");
  return taken(changeDelivery(path, model, mark.delivery, *days),
               model.job.programme.deliveries[mark.delivery].what + ": " +
                   model::dateWords(model::isoDate(comes)) + ", " + before + " before " +
                   model.programme.stages[mark.stage].name);
}

bool DatesEntry::takeBack(const std::string& path) {
  if (!undo) return false;
  const auto wrong = takeBackChange(path, *undo);
  undo.reset();
  noticeWarns = wrong.has_value();
  notice = wrong ? *wrong : "Taken back";
  return !wrong;
}

}  // namespace viewer
