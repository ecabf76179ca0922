// Changes one field of a job file on disk, keeping everything else of its text.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "model/job/job.h"

namespace viewer {

// What the title block lets a hand change.
enum class TitleField { None, JobName, DatumNote, BenchMark };

struct TitleWords {
  std::string text;   // the name or the datum's words
  std::string level;  // of the bench mark only: metres, as typed
};

// Reads the file as it is now, sets the field, and saves it in one step. Nothing is written, and
// what is wrong is returned in one line, when: the file cannot be read or has errors; it gives no
// bench mark; the level is no number; the reader would refuse the result. A field that says the
// same already is left alone and the file untouched.
std::optional<std::string> changeJobFile(const std::string& path, TitleField field,
                                         const TitleWords& words);

// The same for any change of the job. `change` returns what is wrong with it, or nothing. The text
// before and after goes to `before` and `after` where they are not null.
std::optional<std::string> changeJobFile(
    const std::string& path, const std::function<std::optional<std::string>(model::Job&)>& change,
    std::string* before = nullptr, std::string* after = nullptr);

// Nothing when it cannot be read.
std::optional<std::string> textOfFile(const std::string& path);

// Whether there is a file that can be written.
bool canChange(const std::string& path);

}  // namespace viewer
