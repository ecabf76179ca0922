// Which of the job's numbers the drawing gives, and which a default stands in for.
#pragma once

#include <string>

#include "model/job/key_table.h"
#include "model/job/read_job.h"

namespace model {

// A key of the job file; `index`: which of a repeated table.
struct KeyRef {
  const char* table;
  const char* name;
  size_t index = 0;
};

class GivenKeys {
 public:
  // `places` are those of the file that the job was read from. Without any, as for a job that is no
  // file, a value that is not the default counts as given.
  GivenKeys(const Job& job, const KeyPlaces& places);

  // "foundations.step[1].top".
  static std::string pathOf(const KeyRef& key);

  // False for what this job has no such part of: keys of a cellar where there is none.
  bool has(const KeyRef& key) const;
  // Sizes that a named brick or block brings with it are given.
  bool given(const KeyRef& key) const;
  // "line 52"; empty when no line is known.
  std::string line(const KeyRef& key) const;
  // Lengths in mm, levels in m, angles with their sign: "102.5", "-0.975", "40°", "strip". Empty
  // when it is not set.
  std::string value(const KeyRef& key) const;
  // What holds where the key is left out, in the words of the reference; may be empty.
  std::string whenAbsent(const KeyRef& key) const;

 private:
  bool inFile(const std::string& path) const { return places_.count(path) > 0; }
  bool isDefault(const KeyRef& key) const;

  mutable Job job_;  // the table of keys hands out places in a job that may be changed
  const KeyPlaces& places_;
};

}  // namespace model
