// Changes one field of a job file on disk, keeping everything else of its text.
#pragma once

#include <optional>
#include <string>

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

// Whether there is a file that can be written.
bool canChange(const std::string& path);

}  // namespace viewer
