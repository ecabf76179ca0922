#include "model/drawing/wrap_text.h"

#include <algorithm>
#include <utility>

namespace model {

namespace {

// Where a text may be cut without leaving half a character or a mark without its letter: the
// lengths of its beginnings, in bytes.
std::vector<size_t> cuts(const std::string& text) {
  std::vector<size_t> found;
  for (size_t i = 1; i <= text.size(); ++i) {
    if (i < text.size()) {
      const auto byte = static_cast<unsigned char>(text[i]);
      if ((byte & 0xc0) == 0x80) continue;
      // Combining Diacritical Marks, and the joiner that holds signs together.
      if (byte == 0xcc || (byte == 0xcd && static_cast<unsigned char>(text[i + 1]) < 0xb0))
        continue;
      if (text.compare(i, 3, "\u200d") == 0 || (i >= 3 && text.compare(i - 3, 3, "\u200d") == 0))
        continue;
    }
    found.push_back(i);
  }
  return found;
}

// The longest beginning that, with `end` behind it, goes into the width; at least one character.
size_t beginningThatFits(const std::string& text, double width, const Letters& letters,
                         const TextWidth& widthOf, const std::string& end) {
  const std::vector<size_t> places = cuts(text);
  const auto fits = [&](size_t length) {
    return widthOf(text.substr(0, length) + end, letters.size, letters.bold) <= width;
  };
  const auto last = std::partition_point(places.begin(), places.end(), fits);
  return last == places.begin() ? places.front() : *(last - 1);
}

// Line ends in cells of a CSV file are spaces here.
bool isSpace(char c) { return c == ' ' || c == '\n' || c == '\r' || c == '\t'; }

std::vector<std::string> wordsOf(const std::string& text) {
  std::vector<std::string> words;
  std::string word;
  for (const char c : text + " ") {
    if (!isSpace(c)) {
      word += c;
    } else if (!word.empty()) {
      words.push_back(std::exchange(word, {}));
    }
  }
  return words;
}

}  // namespace

std::vector<std::string> wrapped(const std::string& text, double width, const Letters& letters,
                                 const TextWidth& widthOf) {
  const auto fits = [&](const std::string& line) {
    return widthOf(line, letters.size, letters.bold) <= width;
  };
  std::vector<std::string> lines;
  std::string line;
  for (std::string word : wordsOf(text)) {
    const std::string longer = line.empty() ? word : line + " " + word;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (!line.empty()) lines.push_back(std::exchange(line, {}));
    while (!fits(word)) {
      const size_t length = beginningThatFits(word, width, letters, widthOf, "");
      if (length == word.size()) break;
      lines.push_back(word.substr(0, length));
      word.erase(0, length);
    }
    line = word;
  }
  if (!line.empty() || lines.empty()) lines.push_back(line);
  return lines;
}

std::string textAfter(const std::string& text, const std::vector<std::string>& lines) {
  // Lines have the text's own characters in their order, but not all of its spaces.
  size_t letters = 0;
  for (const std::string& line : lines)
    letters += size_t(std::count_if(line.begin(), line.end(), [](char c) { return !isSpace(c); }));
  size_t at = 0;
  while (at < text.size() && (letters > 0 || isSpace(text[at]))) letters -= !isSpace(text[at++]);
  return text.substr(at);
}

std::string shortened(const std::string& text, double width, const Letters& letters,
                      const TextWidth& widthOf) {
  if (text.empty() || widthOf(text, letters.size, letters.bold) <= width) return text;
  return text.substr(0, beginningThatFits(text, width, letters, widthOf, "\u2026")) + "\u2026";
}

double widestWord(const std::string& text, const Letters& letters, const TextWidth& widthOf) {
  double widest = 0;
  for (const std::string& word : wordsOf(text))
    widest = std::max(widest, widthOf(word, letters.size, letters.bold));
  return widest;
}

}  // namespace model
