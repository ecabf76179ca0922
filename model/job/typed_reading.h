// One reading as it is typed, put at the end of its set's file.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "model/job/job.h"
#include "model/problems.h"

namespace model {

// The cells of a row as they stand under the fingers; those that its kind does not need are empty.
struct TypedReading {
  std::string kind = "level", target, at, along, value, x, y, setUp, note, photo;
};

struct AddedReading {
  std::string text;                // the file with the row behind its last; empty when it is wrong
  std::optional<Reading> reading;  // only when nothing is wrong
  Problems problems;  // in the words of readReadings, places in the file as it would be
};

// `text` is the file as it stands, nothing of it is changed: its order of columns, separator, line
// ends, columns of its owner's own and rows stay. A column that the row needs and the file lacks
// goes behind the others; a typed decimal mark becomes the file's. An empty text gets the headings
// first. Errors that the file has already are told too, and nothing is added to such a file.
AddedReading addReading(std::string_view text, const TypedReading& typed, const std::string& file,
                        const Job& job);

}  // namespace model
