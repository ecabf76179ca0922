// Readings typed in the window, on the disk: a row in the file of its set, beside the job file; of
// a new set also its section in the job file. Every save is one step, and a file is only ever added
// to.
#pragma once

#include <optional>
#include <string>
#include <variant>

#include "model/job/typed_reading.h"

namespace viewer {

// A set that the job does not have yet.
struct NewSet {
  std::string name;
  std::string date;  // "2027-05-06"; may be empty
  std::string by;
};

// A file as it was and as it is now.
struct SavedFile {
  std::string path;
  std::string before, after;
};

// What has to be known to take a reading back.
struct SavedReading {
  std::string words;             // "C -0.987"
  SavedFile file;                // of the set
  std::optional<SavedFile> job;  // when the set came with it
};

// The saved reading, or in one line what is wrong; then nothing has been written.
using ReadingSaved = std::variant<SavedReading, std::string>;

// Puts a row at the end of the file of the set.
ReadingSaved saveReading(const std::string& jobPath, const model::Job& job, size_t set,
                         const model::TypedReading& typed);

// The same for a new set: its file is called after the job and the set.
ReadingSaved saveInNewSet(const std::string& jobPath, const NewSet& set,
                          const model::TypedReading& typed);

// Takes it back, or says in one line why that cannot be: the files must be as they were left.
std::optional<std::string> takeBack(const SavedReading& saved);

}  // namespace viewer
