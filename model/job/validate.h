// The checks behind validateJob(), one function for each part of the job.
#pragma once

#include <string>

#include "model/job/read_tables.h"

namespace model {

// What every check works with. A check looks at the job, and adds what is wrong at the place of the
// key that would have to change.
struct Validation {
  const Job& job;
  const std::string& file;
  const KeyPlaces& places;
  const BrokenParts& broken;
  Problems& problems;

  // False when the part ("walls", "opening[2]") could not be read.
  bool readable(const std::string& part) const { return broken.count(part) == 0; }
  // The place of a key as the file spells it, or of what it belongs to when it is absent.
  Place placeOf(std::string path) const;
  void error(const std::string& path, std::string what, std::string instead) const;
  void warning(const std::string& path, std::string what, std::string instead) const;
};

// Validates all that was readable.
Problems validateReadable(const Job& job, const std::string& file, const KeyPlaces& places,
                          const BrokenParts& broken);

}  // namespace model
