// Lines and columns of a text, in characters, and what is wrong with its bytes.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/problems.h"

namespace model {

// Byte offsets for places and back. Lines end with LF (a CR before it belongs to the line).
class LineIndex {
 public:
  explicit LineIndex(std::string_view text);

  size_t lineCount() const { return starts_.size(); }
  // Offset of the first byte of a line, from 1; the text's end for lines past it.
  size_t lineStart(int line) const;
  // Offset just past the line's last character, its line break left out.
  size_t lineEnd(int line) const;
  size_t offsetOf(Place place) const;
  Place placeOf(size_t offset) const;

 private:
  std::string_view text_;
  std::vector<size_t> starts_;
};

inline constexpr size_t kMostTextBytes = 1 << 20;

// The text without a byte order mark, with every byte that cannot stand in a job file (invalid
// UTF-8, NUL) replaced by one '?', so that reading can go on behind it. Each run of such bytes is
// reported once.
std::string cleanedText(std::string_view text, const std::string& file, Problems& problems);

// Nothing, or where the text nests deeper than any job needs. Checked before the TOML library sees
// the text, because it recurses.
std::optional<Problem> nestingProblem(std::string_view text, const std::string& file);

}  // namespace model
