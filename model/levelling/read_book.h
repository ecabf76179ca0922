// Level books as CSV, with every problem named at its place, and back.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "model/levelling/level_book.h"
#include "model/problems.h"

namespace model {

struct ReadBookResult {
  std::optional<LevelBook> book;  // only when there is no error
  Problems problems;              // all of them, in file order
};

// The first row names the columns, in any order: point, backsight, intermediate, foresight; and,
// where wanted, distance, known, level (as worked out by hand; it is checked), remark. BS, IS and
// FS are short for the sights. `file` is only used in messages. Never throws or crashes, whatever
// the bytes; refuses texts over 1 MiB and books over 2,000 rows.
ReadBookResult readBook(std::string_view text, const std::string& file,
                        const BookSettings& settings);

// The same for a file on disk; a file that cannot be read is a problem too.
ReadBookResult readBookFile(const std::string& path, const BookSettings& settings);

// CSV (RFC 4180) that readBook gives back the same. Columns that no booking uses are left out.
std::string writeBook(const LevelBook& book);

}  // namespace model
