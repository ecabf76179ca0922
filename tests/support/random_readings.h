// Readings of drawn jobs, as a file may hold them: no point twice, every number in whole
// millimetres or tenths of them.
#pragma once

#include <cmath>
#include <set>
#include <string>

#include "model/job/job_names.h"
#include "model/job/lengths.h"
#include "model/job/readings_csv.h"
#include "tests/support/dice.h"
#include "tests/support/random_job.h"

namespace test_support {

struct RandomReadings {
  model::Job job;
  std::vector<model::Reading> rows;
};

inline model::Reading randomReading(Dice& dice, const model::Job& job) {
  using model::ReadingKind;
  const size_t corners = job.outline.size();
  const auto corner = [&] { return static_cast<size_t>(dice.between(0, int(corners) - 1)); };
  const auto mm = [&](int low, int high) {
    return model::fromMillimetres(dice.between(low * 10, high * 10) / 10.0);
  };
  const size_t wall = corner(), next = (wall + 1) % corners;
  const model::Vec2 run = job.outline[next] - job.outline[wall];
  const double length = std::hypot(run.x, run.y);
  model::Reading reading;
  reading.kind = dice.pick<ReadingKind>({ReadingKind::Level, ReadingKind::Staff, ReadingKind::Face,
                                         ReadingKind::Corner, ReadingKind::Side});
  const bool level = reading.kind == ReadingKind::Level || reading.kind == ReadingKind::Staff;
  reading.target = level ? dice.pick<std::string>({"top-of-concrete", "damp-course", "wall-top"})
                         : dice.pick<std::string>({"outer-face", "inner-face"});
  const bool backwards = dice.chance(30);
  reading.at = model::nameOfWall(wall, corners);
  if (backwards) reading.at = model::letterOfCorner(next) + "-" + model::letterOfCorner(wall);
  const double along = std::floor(length * dice.between(1, 9) * 100) / 1000;
  if (reading.kind == ReadingKind::Corner) {
    reading.at = model::letterOfCorner(wall);
    reading.position = model::Vec2{std::round(job.outline[wall].x * 1000) / 1000 + 0.012,
                                   std::round(job.outline[wall].y * 1000) / 1000};
    for (double* v : {&reading.position->x, &reading.position->y})
      *v = std::round(*v * 1000) / 1000;
  } else if (reading.kind == ReadingKind::Side) {
    reading.value = std::round(length * 1000 + dice.between(-20, 20)) / 1000;
  } else if (reading.kind == ReadingKind::Face) {
    reading.along = along;
    reading.value = mm(-30, 30);
    if (std::abs(reading.value) < 0.001) reading.value = 0;
  } else {
    reading.value = dice.between(-1500, 3000) / 1000.0;
    if (reading.kind == ReadingKind::Staff) {
      reading.setUp = "Site";
      reading.value = dice.between(-900, 4900) / 1000.0;
    }
    const int where = dice.between(0, 2);
    if (where == 0) reading.along = along;
    if (where == 1) reading.at = model::letterOfCorner(wall);
    if (where == 2) {
      reading.at = "trench, \"south\"";
      reading.position = model::Vec2{mm(-9000, 9000), mm(-9000, 9000)};
    }
  }
  if (dice.chance(20)) reading.note = "by the gate, wet; \"low\"";
  if (dice.chance(10)) reading.photo = "pour 3.jpg";
  return reading;
}

inline RandomReadings randomReadings(unsigned seed) {
  Dice dice(seed + 77);
  RandomReadings drawn{seededJob(seed % 200), {}};
  drawn.job.setUps.push_back({"Site", "", {0, 0}, "", 1.2, 5, ""});
  std::set<std::string> points;
  for (int i = dice.between(1, 25); i > 0; --i) {
    const model::Reading reading = randomReading(dice, drawn.job);
    // One reading of a wall or a corner for each kind and target, whichever way it is named.
    std::string at = reading.at;
    if (at.find("trench") == std::string::npos && at.find('-') != std::string::npos) {
      const size_t hyphen = at.find('-');
      at = std::min(at, at.substr(hyphen + 1) + "-" + at.substr(0, hyphen));
    }
    const bool level =
        reading.kind == model::ReadingKind::Level || reading.kind == model::ReadingKind::Staff;
    const std::string key =
        (level ? std::string("level") : std::to_string(int(reading.kind))) + reading.target + at;
    if (points.insert(key).second) drawn.rows.push_back(reading);
  }
  return drawn;
}

}  // namespace test_support
