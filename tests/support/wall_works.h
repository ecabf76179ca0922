// The walls of a job, and finding one part of them.
#pragma once

#include <string>

#include "model/works/parts.h"

namespace test_support {

inline model::Works wallsOf(const model::Job& job, const model::SettingOut& out) {
  model::Works works;
  buildCavityWalls(job, out, works);
  buildDampCourse(job, out, works);
  buildLintels(job, out, works);
  return works;
}

inline const model::Element* find(const model::Works& works, const std::string& id) {
  for (const model::Element& e : works.elements) {
    if (e.id == id) return &e;
  }
  return nullptr;
}

}  // namespace test_support
