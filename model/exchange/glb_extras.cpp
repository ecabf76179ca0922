#include "model/exchange/glb_extras.h"

#include <cmath>
#include <stdexcept>

#include "model/exchange/utf8.h"

namespace model {

const std::string& checked(const std::string& text) {
  if (!isUtf8(text)) throw std::runtime_error("a text in the job is not UTF-8");
  return text;
}

void say(Extras& extras, const char* key, const std::string& text) {
  if (!text.empty()) extras[key] = tinygltf::Value(checked(text));
}

void say(Extras& extras, const char* key, double number) {
  if (!std::isfinite(number)) throw std::runtime_error("a level or quantity is not finite");
  extras[key] = tinygltf::Value(std::round(number * 1e4) / 1e4 + 0.0);
}

void say(Extras& extras, const char* key, int number) { extras[key] = tinygltf::Value(number); }

void sayStages(Extras& extras, const GlbGroup& group, const Programme& programme) {
  const auto& stages = programme.stages;
  if (group.placed >= 0 && size_t(group.placed) < stages.size()) {
    say(extras, "stage", stages[size_t(group.placed)].name);
    say(extras, "stageNumber", group.placed + 1);
  } else {
    say(extras, "stage", std::string("Before work starts"));
    say(extras, "stageNumber", 0);
  }
  if (group.removed >= 0 && size_t(group.removed) < stages.size()) {
    say(extras, "removedIn", stages[size_t(group.removed)].name);
    say(extras, "removedInNumber", group.removed + 1);
  }
}

Extras extrasOf(const Element& element, const GlbGroup& group, const Programme& programme) {
  Extras extras;
  say(extras, "id", element.id);
  say(extras, "kind", std::string(nameOf(element.kind)));
  say(extras, "material", std::string(nameOf(element.material)));
  sayStages(extras, group, programme);
  say(extras, "topLevel", element.top);
  say(extras, "undersideLevel", element.underside);
  say(extras, "quantity", element.quantity.amount);
  say(extras, "unit", std::string(nameOf(element.quantity.unit)));
  say(extras, "wall", element.wall);
  return extras;
}

Extras extrasOf(const GlbGroup& group, const Programme& programme) {
  Extras extras;
  sayStages(extras, group, programme);
  if (group.placed >= 0 && size_t(group.placed) < programme.stages.size()) {
    const Stage& stage = programme.stages[size_t(group.placed)];
    say(extras, "stageId", stage.id);
    say(extras, "what", stage.what);
    say(extras, "atEnd", stage.atEnd);
    say(extras, "holdPoint", stage.holdPoint);
    say(extras, "start", stage.start);
    say(extras, "finish", stage.finish);
  }
  return extras;
}

}  // namespace model
