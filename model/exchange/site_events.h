// What happens on a day of the programme besides the work: who looks at what, what is brought, what
// is taken away, what the client must have decided.
#pragma once

#include <string>
#include <vector>

#include "model/model.h"

namespace model {

enum class SiteEventKind { HoldPoint, Delivery, MuckAway, Decision };
const char* nameOf(SiteEventKind kind);  // "hold point"

struct SiteEvent {
  SiteEventKind kind = SiteEventKind::HoldPoint;
  std::string date;  // ISO; empty when the job gives no start
  size_t stage = 0;
  std::string text;
};

// By date; without dates in the order of the stages. A hold point falls on the last day of its
// stage, muck-away and decisions on the first.
std::vector<SiteEvent> siteEvents(const Model& model);

}  // namespace model
