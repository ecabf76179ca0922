// Job files: TOML text to Job and back, with every problem named at its place.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "model/job/job.h"
#include "model/problems.h"

namespace model {

// Where each key of the file stands. A key is there under its path as the file spells it
// ("roof.pitch", "opening[2].width", "outline.corners[1]") and, for sections that Job spells
// otherwise, under that too ("openings[2].width").
using KeyPlaces = std::map<std::string, Place>;

struct ReadResult {
  std::optional<Job> job;  // only when there is no error
  Problems problems;       // all of them, in file order
  KeyPlaces places;
};

// Reads and validates. `file` is only used in messages. Never throws and never crashes, whatever
// the bytes; refuses texts over 1 MiB. Bare numbers are millimetres for lengths and metres for
// levels; quoted values carry a unit ("1.2 m", "8'-3 1/2\"").
ReadResult readJob(std::string_view text, const std::string& file);

// The same for a file on disk; a file that cannot be read is a problem too.
ReadResult readJobFile(const std::string& path);

// What the numbers mean together: outlines that cross themselves, openings past a corner, floors
// under foundations ... Positions are looked up in `places`, which may be empty.
Problems validateJob(const Job& job, const std::string& file, const KeyPlaces& places);

}  // namespace model
