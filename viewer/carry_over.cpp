#include "viewer/carry_over.h"

#include <glm/vector_relational.hpp>

namespace viewer {
namespace {

constexpr float kOff = 0.002f;  // metres that a point may lie off its thing

std::uint32_t sameThing(std::uint32_t index, const model::Works& before,
                        const model::Works& after) {
  if (index >= before.elements.size()) return kNothing;
  const std::string& id = before.elements[index].id;
  for (std::size_t i = 0; i < after.elements.size(); ++i)
    if (after.elements[i].id == id) return static_cast<std::uint32_t>(i);
  return kNothing;
}

bool reaches(const ElementRange& range, const glm::vec3& point) {
  return glm::all(glm::greaterThan(point, range.low - kOff)) &&
         glm::all(glm::lessThan(point, range.high + kOff));
}

}  // namespace

void carryOver(ViewState& state, const ReadyJob& before, const ReadyJob& after) {
  const model::Works &was = before.model.works, &is = after.model.works;
  state.originMoved(glm::vec3(after.scene.origin - before.scene.origin));
  state.selected = sameThing(state.selected, was, is);
  state.selectedUnit = kNothing;  // another number may have another bond
  bool stands = state.measuredOn.size() == state.measured.size();
  for (std::size_t i = 0; stands && i < state.measured.size(); ++i) {
    std::uint32_t& on = state.measuredOn[i];
    on = sameThing(on, was, is);
    stands = on != kNothing && reaches(after.scene.elements[on], state.measured[i]);
  }
  if (!stands) state.clearMeasured();
  const model::Job& job = after.model.job;
  if (state.readingSet && *state.readingSet >= job.readings.size()) state.readingSet.reset();
  const bool plane = state.planeIsLine(before.model.job);
  state.standing = sameSetUp(job, state.standing);
  const auto instrument = state.standing ? instrumentOf(job, *state.standing) : std::nullopt;
  if (plane && instrument) state.switches.levelPlaneAt = float(instrument->collimation);
  if (!state.wanted) return;
  const std::string name = state.wanted->name;
  state.wanted.reset();
  for (const model::ScheduledLevel& level : after.model.settingOut.schedule)
    if (nameOf(level) == name) state.wanted = WantedLevel{name, level.level};
}

}  // namespace viewer
