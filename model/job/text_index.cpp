#include "model/job/text_index.h"

#include <algorithm>

namespace model {

namespace {

constexpr int kMostDepth = 8;  // brackets inside brackets; a job needs four
constexpr int kMostDots = 8;   // parts of one dotted key; a job needs three

bool isContinuation(char byte) { return (static_cast<unsigned char>(byte) & 0xC0) == 0x80; }

// Length of the valid UTF-8 sequence at `at`, or 0. Table 3-7 of the Unicode Standard, version 15,
// section 3.9: no overlong forms, no surrogates, nothing over U+10FFFF.
size_t sequenceLength(std::string_view text, size_t at) {
  const auto byte = [&](size_t i) -> unsigned {
    return at + i < text.size() ? static_cast<unsigned char>(text[at + i]) : 0u;
  };
  const auto continues = [&](size_t from, size_t to) {
    for (size_t i = from; i < to; ++i) {
      if (byte(i) < 0x80 || byte(i) > 0xBF) return false;
    }
    return true;
  };
  const unsigned first = byte(0), second = byte(1);
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first <= 0xDF) return continues(1, 2) ? 2 : 0;
  if (first >= 0xE0 && first <= 0xEF) {
    const bool fits = !(first == 0xE0 && second < 0xA0) && !(first == 0xED && second > 0x9F);
    return fits && continues(1, 3) ? 3 : 0;
  }
  if (first >= 0xF0 && first <= 0xF4) {
    const bool fits = !(first == 0xF0 && second < 0x90) && !(first == 0xF4 && second > 0x8F);
    return fits && continues(1, 4) ? 4 : 0;
  }
  return 0;
}

}  // namespace

LineIndex::LineIndex(std::string_view text) : text_(text), starts_{0} {
  for (size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '\n') starts_.push_back(i + 1);
  }
}

size_t LineIndex::lineStart(int line) const {
  if (line < 1) return 0;
  const size_t index = static_cast<size_t>(line) - 1;
  return index < starts_.size() ? starts_[index] : text_.size();
}

size_t LineIndex::lineEnd(int line) const {
  size_t end = line >= 1 && static_cast<size_t>(line) < starts_.size()
                   ? starts_[static_cast<size_t>(line)] - 1
                   : text_.size();
  if (end > lineStart(line) && text_[end - 1] == '\r') --end;
  return std::max(end, lineStart(line));
}

size_t LineIndex::offsetOf(Place place) const {
  size_t at = lineStart(place.line);
  for (int column = 1; column < place.column && at < text_.size(); ++column) {
    ++at;
    while (at < text_.size() && isContinuation(text_[at])) ++at;
  }
  return at;
}

Place LineIndex::placeOf(size_t offset) const {
  offset = std::min(offset, text_.size());
  const auto next = std::upper_bound(starts_.begin(), starts_.end(), offset);
  const size_t start = *(next - 1);
  const auto characters = std::count_if(text_.begin() + static_cast<std::ptrdiff_t>(start),
                                        text_.begin() + static_cast<std::ptrdiff_t>(offset),
                                        [](char byte) { return !isContinuation(byte); });
  return {static_cast<int>(next - starts_.begin()), static_cast<int>(characters) + 1};
}

CleanedText cleanedText(std::string_view text, const std::string& file, Problems& problems) {
  if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
  CleanedText clean;
  clean.text.reserve(text.size());
  bool inBadRun = false;
  int line = 1, column = 1;
  size_t runs = 0, first = problems.size();
  for (size_t i = 0; i < text.size();) {
    const size_t length = text[i] == '\0' ? 0 : sequenceLength(text, i);
    if (length == 0) {
      if (!inBadRun && runs++ == 0) {
        problems.push_back(
            {file,
             {line, column},
             Severity::Error,
             text[i] == '\0' ? "there is a NUL byte here" : "this byte is not UTF-8 text",
             "save the file as plain text in UTF-8"});
      }
      inBadRun = true;
      clean.text += '?';
      ++clean.bad;
      ++i;
    } else {
      inBadRun = false;
      clean.text.append(text, i, length);
      i += length;
    }
    ++column;
    if (clean.text.back() == '\n') {
      ++line;
      column = 1;
    }
  }
  if (runs > 1) {
    problems[first].what += ", and " + std::to_string(runs - 1) +
                            (runs > 2 ? " more places are" : " more place is") + " no text either";
  }
  if (!clean.isText())
    problems[first].instead = "a job file is plain text in UTF-8; is this the right file?";
  return clean;
}

std::optional<Problem> nestingProblem(std::string_view text, const std::string& file) {
  int depth = 0, dots = 0;
  char quote = 0;
  bool comment = false;
  for (size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c == '\n') {
      // A quote that is still open is an error or a text over several lines; both end the guard's
      // interest in the line, and counting brackets too many only makes it stricter.
      comment = false;
      quote = 0;
      dots = 0;
    } else if (comment) {
      continue;
    } else if (quote) {
      if (c == '\\' && quote == '"') {
        ++i;
      } else if (c == quote) {
        quote = 0;
      }
    } else if (c == '"' || c == '\'') {
      quote = c;
    } else if (c == '#') {
      comment = true;
    } else if (c == '[' || c == '{') {
      ++depth;
      dots = 0;
    } else if (c == ']' || c == '}') {
      depth = std::max(0, depth - 1);
      dots = 0;
    } else if (c == '.') {
      ++dots;
    } else if (c == ',' || c == '=') {
      dots = 0;
    }
    if (depth > kMostDepth || dots > kMostDots) {
      return Problem{file, LineIndex(text).placeOf(i), Severity::Error,
                     "brackets or dotted names are nested too deep here",
                     "no part of a job file needs more than four levels"};
    }
  }
  return std::nullopt;
}

}  // namespace model
