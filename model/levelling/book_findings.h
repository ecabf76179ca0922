// What the checks of a level book work with; private to this folder.
#pragma once

#include <cmath>
#include <optional>
#include <string>

#include "model/levelling/level_book.h"
#include "model/problems.h"

namespace model {

// False for a reading that is there but could not be read.
inline bool isReadable(const std::optional<double>& value) {
  return value && std::isfinite(*value);
}

class BookFindings {
 public:
  BookFindings(const LevelBook& book, const std::string& file, const BookSettings& settings)
      : book_(book), file_(file), settings_(settings) {}

 protected:
  const Booking& row(size_t i) const { return book_.bookings[i]; }
  static std::string named(const Booking& booking) { return "\"" + booking.point + "\""; }

  void error(Place place, const std::string& what, const std::string& instead) {
    problems_.push_back({file_, place, Severity::Error, what, instead});
  }

  const LevelBook& book_;
  const std::string& file_;
  const BookSettings& settings_;
  Problems problems_;
};

}  // namespace model
