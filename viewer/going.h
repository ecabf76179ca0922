// How things that are taken away go: seen to, not at one blow.
#pragma once

#include <glm/vec3.hpp>

#include "model/programme/programme.h"
#include "viewer/growth.h"

namespace viewer {

// When a thing goes, with its box in local coordinates. What the programme takes away bit by bit
// goes as that says. What it takes away whole goes over the last of the time before that moment,
// within its stage: what is as high as it is long from its top down, as it is taken down; what is
// longer from end to end, as forms and boards are struck one after another. The last of it goes at
// the programme's moment.
Growth goingOf(const model::Programme& programme, const model::Element& element,
               const model::Vec3& origin, const glm::vec3& low, const glm::vec3& high);

}  // namespace viewer
