#include "viewer/line_breaks.h"

#include <algorithm>

#include "viewer/utf8.h"

namespace viewer {
namespace {

using WidthOf = std::function<float(const std::string&)>;

// The longest beginning that fits, one character at least.
size_t fitting(const std::u32string& word, float width, const WidthOf& widthOf) {
  size_t fits = 1, over = word.size() + 1;
  while (over - fits > 1) {
    const size_t middle = (fits + over) / 2;
    (widthOf(utf8(word.substr(0, middle))) <= width ? fits : over) = middle;
  }
  return fits;
}

}  // namespace

std::vector<std::string> brokenLines(const std::string& text, float width, const WidthOf& widthOf) {
  std::vector<std::string> lines;
  std::string line;
  for (size_t from = 0; from < text.size();) {
    const size_t space = std::min(text.find(' ', from), text.size());
    std::string word = text.substr(from, space - from);
    from = space + 1;
    if (word.empty()) continue;
    if (!line.empty() && widthOf(line + " " + word) > width) {
      lines.push_back(line);
      line.clear();
    }
    while (line.empty() && widthOf(word) > width) {
      const std::u32string characters = codePoints(word);
      if (characters.size() < 2) break;
      const size_t fits = fitting(characters, width, widthOf);
      if (fits == characters.size()) break;
      lines.push_back(utf8(characters.substr(0, fits)));
      word = utf8(characters.substr(fits));
    }
    line += (line.empty() ? "" : " ") + word;
  }
  if (!line.empty()) lines.push_back(line);
  return lines;
}

}  // namespace viewer
