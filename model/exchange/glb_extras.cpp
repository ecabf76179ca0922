#include "model/exchange/glb_extras.h"

#include <algorithm>
#include <glm/geometric.hpp>

namespace model {

namespace {

// The stage, or null when it is none of the programme's.
const Stage* stageAt(const Programme& programme, int index) {
  const bool known = index >= 0 && size_t(index) < programme.stages.size();
  return known ? &programme.stages[size_t(index)] : nullptr;
}

}  // namespace

GlbExtras stagesOf(const GlbGroup& group, const Programme& programme) {
  GlbExtras extras;
  if (const Stage* placed = stageAt(programme, group.placed)) {
    extras.say("stage", placed->name);
    extras.say("stageNumber", group.placed + 1);
  } else {
    extras.say("stage", std::string_view("Before work starts"));
    extras.say("stageNumber", 0);
  }
  if (const Stage* removed = stageAt(programme, group.removed)) {
    extras.say("removedIn", removed->name);
    extras.say("removedInNumber", group.removed + 1);
  }
  return extras;
}

GlbExtras extrasOf(const GlbGroup& group, const Programme& programme) {
  GlbExtras extras = stagesOf(group, programme);
  if (const Stage* stage = stageAt(programme, group.placed)) {
    extras.say("stageId", stage->id);
    extras.say("what", stage->what);
    extras.say("atEnd", stage->atEnd);
    extras.say("caution", stage->caution);
    extras.say("holdPoint", stage->holdPoint);
    extras.say("start", stage->start);
    extras.say("finish", stage->finish);
    extras.say("note", stage->note);
  }
  return extras;
}

GlbExtras extrasOf(const Element& element, const GlbExtras& stages) {
  GlbExtras extras;
  extras.say("id", element.id);
  extras.say("kind", std::string_view(nameOf(element.kind)));
  extras.say("material", std::string_view(nameOf(element.material)));
  extras.say(stages);
  extras.say("topLevel", element.top);
  extras.say("undersideLevel", element.underside);
  extras.say("quantity", element.quantity.amount);
  extras.say("unit", std::string_view(nameOf(element.quantity.unit)));
  extras.say("wall", element.wall);
  return extras;
}

GlbExtras extrasOf(const StringLine& line, const GlbExtras& stages) {
  GlbExtras extras;
  extras.say("kind", std::string_view("string line"));
  extras.say(stages);
  extras.say("topLevel", std::max(line.a.z, line.b.z));
  extras.say("undersideLevel", std::min(line.a.z, line.b.z));
  extras.say("quantity", glm::distance(line.a, line.b));
  extras.say("unit", std::string_view(nameOf(Unit::Metre)));
  return extras;
}

GlbExtras extrasOf(const Programme& programme, const GlbClock& clock) {
  std::vector<GlbExtras> stages(programme.stages.size());
  for (size_t i = 0; i < stages.size(); ++i) {
    const Stage& stage = programme.stages[i];
    stages[i].say("stage", int(i) + 1);
    stages[i].say("id", stage.id);
    stages[i].say("name", stage.name);
    stages[i].say("startSeconds", clock.startOf(int(i)));
    stages[i].say("startDate", stage.start);
    stages[i].say("finishDate", stage.finish);
  }
  GlbExtras extras;
  extras.say("stages", stages);
  return extras;
}

}  // namespace model
