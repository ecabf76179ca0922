// One TOML value into one place of a Job.
#pragma once

#include <toml++/toml.h>

#include <string>

#include "model/job/key_table.h"
#include "model/job/read_job.h"

namespace model {

// What reading a value needs besides the value.
struct ReadContext {
  std::string file;
  Problems problems;
  KeyPlaces places;

  void error(Place place, std::string what, std::string instead);
};

Place placeOf(const toml::node& node);
Place placeOf(const toml::key& key);

// Reads `node` into `slot`. `shown` is how messages name the key: "foundations.width" or
// `opening "Front door": width`; `path` is its path in `places`, for the points of a list. False,
// with the problem added, when the value is of the wrong type or out of range.
bool readInto(const KeySpec& key, const Slot& slot, const toml::node& node, Place place,
              const std::string& shown, const std::string& path, ReadContext& context);

}  // namespace model
