// Jobs with readings, made from what is drawn and known errors.
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include <glm/geometric.hpp>

#include "model/asbuilt/as_built.h"
#include "model/lines/wall_runs.h"
#include "tests/support/demo_job.h"
#include "tests/support/dice.h"
#include "tests/support/random_job.h"

namespace asbuilt_test {

using namespace model;

inline Job rectangle(double x, double y) {
  Job job;
  job.outline = {{0, 0}, {x, 0}, {x, y}, {0, y}};
  return job;
}

inline Reading levelAt(const std::string& target, const std::string& at, double level,
                       std::optional<double> along = std::nullopt) {
  Reading reading;
  reading.kind = ReadingKind::Level;
  reading.target = target;
  reading.at = at;
  reading.along = along;
  reading.value = level;
  return reading;
}

inline Reading faceAt(const std::string& target, const std::string& wall, double along,
                      double off) {
  Reading reading = levelAt(target, wall, off, along);
  reading.kind = ReadingKind::Face;
  return reading;
}

inline Reading cornerAt(const std::string& target, const std::string& corner, const Vec2& at) {
  Reading reading = levelAt(target, corner, 0);
  reading.kind = ReadingKind::Corner;
  reading.position = at;
  return reading;
}

inline Reading tapeOf(ReadingKind kind, const std::string& at, double length) {
  Reading reading = levelAt("outer-face", at, length);
  reading.kind = kind;
  return reading;
}

inline void addSet(Job& job, std::vector<Reading> rows, const std::string& date = "") {
  ReadingSet set;
  set.name = "Set " + std::to_string(job.readings.size() + 1);
  set.date = date;
  set.rows = std::move(rows);
  job.readings.push_back(std::move(set));
}

inline AsBuilt derive(const Job& job) { return deriveAsBuilt(job, deriveSettingOut(job)); }

inline bool says(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

inline bool anyChangeSays(const AsBuilt& built, const std::string& part) {
  for (const Change& change : built.changes) {
    if (says(change.words, part)) return true;
  }
  return false;
}

}  // namespace asbuilt_test
