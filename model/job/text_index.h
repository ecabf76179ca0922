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

// A text that reading can go on with.
struct CleanedText {
  std::string text;
  size_t bad = 0;  // bytes that were replaced
  // Too many of them for something that somebody wrote: a picture or a program by mistake.
  bool isText() const { return bad * 10 <= text.size(); }
};

// The text without a byte order mark, with every byte that cannot stand in a job file (invalid
// UTF-8, NUL) replaced by one '?', so that reading can go on behind it. One problem says where the
// first is, and in how many places more there are such.
CleanedText cleanedText(std::string_view text, const std::string& file, Problems& problems);

// Nothing, or where the text nests deeper than any job needs. Checked before the TOML library sees
// the text, because it recurses.
std::optional<Problem> nestingProblem(std::string_view text, const std::string& file);

}  // namespace model
