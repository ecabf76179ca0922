// A reader of RFC 4180 that shares nothing with the program's writer.
#pragma once

#include <string>
#include <vector>

namespace test_support {

inline std::vector<std::vector<std::string>> readCsv(const std::string& text) {
  std::vector<std::vector<std::string>> rows(1, {""});
  bool quoted = false;
  for (size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    const char next = i + 1 < text.size() ? text[i + 1] : '\0';
    if (quoted) {
      if (c != '"') {
        rows.back().back() += c;
      } else if (next == '"') {
        rows.back().back() += text[++i];
      } else {
        quoted = false;
      }
    } else if (c == '"') {
      quoted = true;
    } else if (c == ',') {
      rows.back().emplace_back();
    } else if (c == '\r' && next == '\n') {
      ++i;
      rows.push_back({""});
    } else {
      rows.back().back() += c;
    }
  }
  rows.pop_back();  // what follows the last line end
  return rows;
}

}  // namespace test_support
