#include "model/exchange/site_events.h"

#include <algorithm>

#include "model/decimal_text.h"

namespace model {

const char* nameOf(SiteEventKind kind) {
  switch (kind) {
    case SiteEventKind::HoldPoint:
      return "hold point";
    case SiteEventKind::Delivery:
      return "delivery";
    case SiteEventKind::MuckAway:
      return "muck away";
    case SiteEventKind::Decision:
      return "decision";
  }
  return "";
}

std::vector<SiteEvent> siteEvents(const Model& model) {
  using K = SiteEventKind;
  std::vector<SiteEvent> events;
  const std::vector<Stage>& stages = model.programme.stages;
  for (size_t i = 0; i < stages.size(); ++i) {
    const Stage& stage = stages[i];
    if (!stage.decision.empty()) events.push_back({K::Decision, stage.start, i, stage.decision});
    if (!stage.holdPoint.empty())
      events.push_back({K::HoldPoint, stage.finish, i, stage.holdPoint});
  }
  for (const DatedDelivery& each : model.programme.deliveries)
    events.push_back({K::Delivery, each.date, each.stage, each.what});
  for (const TakeoffRow& row : model.takeoff.byStage) {
    if (!row.item.starts_with("Muck away")) continue;
    const auto stage = std::find_if(stages.begin(), stages.end(),
                                    [&](const Stage& each) { return each.name == row.stage; });
    if (stage == stages.end()) continue;
    events.push_back({K::MuckAway, stage->start, size_t(stage - stages.begin()),
                      row.item + ": " + decimalText(row.order, 1) + " " + row.unit});
  }
  std::stable_sort(events.begin(), events.end(), [](const SiteEvent& a, const SiteEvent& b) {
    return a.date != b.date ? a.date < b.date : a.stage < b.stage;
  });
  return events;
}

}  // namespace model
