// Level books read from levels that are known, for property tests.
#pragma once

#include <rapidcheck.h>

#include "model/levelling/level_book.h"
#include "tests/support/dice.h"

namespace test_support {

struct RandomBook {
  model::LevelBook book;       // starts on a mark of known level and comes back to it
  std::vector<double> levels;  // the true level of each row's point
};

// Levels in whole millimetres, staffs both ways up, one to six set-ups, up to eight intermediate
// sights from each; with distances in every other book. `errors`, when given, adds to each set-up's
// foresight: the line that the instrument sank between its two sights.
inline RandomBook randomBook(unsigned seed, double error = 0) {
  Dice dice(seed);
  RandomBook made;
  const bool distances = dice.chance(50);
  const int setUps = dice.between(1, 6);
  const double start = dice.between(-3000, 60000) / 1000.0;
  double level = start, way = 0;
  const auto add = [&](const std::string& name, double trueLevel) -> model::Booking& {
    made.levels.push_back(trueLevel);
    made.book.bookings.emplace_back();
    made.book.bookings.back().point = name;
    return made.book.bookings.back();
  };
  add("Mark", start).known = start;
  if (distances) made.book.bookings.back().distance = 0;
  for (int k = 0; k < setUps; ++k) {
    const double line = level + dice.between(-400, 4000) / 1000.0;
    made.book.bookings.back().backsight = line - level;
    for (int i = dice.between(0, 8); i > 0; --i) {
      const double at = line - dice.between(-4900, 4900) / 1000.0;
      model::Booking& booking = add("Pin " + std::to_string(made.levels.size()), at);
      booking.intermediate = line - at;
      if (dice.chance(20)) booking.remark = "corner, by the \"gate\"";
    }
    const bool last = k + 1 == setUps;
    // The way back to the mark must be on the staff.
    const double next = last ? start : line - dice.between(100, 4000) / 1000.0;
    const double off = line - next;
    if (last && (off > 4.8 || off < -4.8)) {  // one more set-up half way
      --k;
      level = (line + next) / 2;
      level = line - std::min(4.0, std::max(-4.0, line - level));
      add("Change " + std::to_string(made.levels.size()), level).foresight = line - level;
    } else {
      level = next;
      add(last ? "Mark" : "Change " + std::to_string(made.levels.size()), level).foresight = off;
    }
    made.book.bookings.back().foresight.value() -= error;
    way += dice.between(5, 60);
    if (distances) made.book.bookings.back().distance = way;
  }
  return made;
}

inline rc::Gen<unsigned> bookSeed() { return rc::gen::inRange<unsigned>(0, 100000); }

}  // namespace test_support
