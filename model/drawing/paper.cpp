#include "model/drawing/paper.h"

#include <algorithm>

namespace model {

const char* nameOf(Paper paper) { return paper == Paper::A3 ? "A3" : "A4"; }

std::optional<Paper> paperNamed(const std::string& name) {
  if (name == "A4" || name == "a4") return Paper::A4;
  if (name == "A3" || name == "a3") return Paper::A3;
  return std::nullopt;
}

Sheet blankSheet(Paper paper, Lie lie) {
  Sheet sheet;
  sheet.width = paper == Paper::A3 ? 420 : 297;
  sheet.height = paper == Paper::A3 ? 297 : 210;
  if (lie == Lie::Portrait) std::swap(sheet.width, sheet.height);
  return sheet;
}

Area insideBorder(const Sheet& sheet) { return {{20, 10}, {sheet.width - 10, sheet.height - 10}}; }

const std::vector<int>& standardScales() {
  static const std::vector<int> scales{20, 50, 100, 200, 500, 1000, 2000, 5000, 10000};
  return scales;
}

std::optional<int> largestScale(const std::function<bool(int)>& fits) {
  for (const int scale : standardScales())
    if (fits(scale)) return scale;
  return std::nullopt;
}

std::optional<int> readScale(const std::string& text) {
  std::string digits;
  for (const char c : text)
    if (c != ' ') digits += c;
  if (digits.rfind("1:", 0) == 0) digits = digits.substr(2);
  if (digits.empty() || digits.size() > 5 ||
      !std::all_of(digits.begin(), digits.end(), [](char c) { return c >= '0' && c <= '9'; }))
    return std::nullopt;
  const int scale = std::stoi(digits);
  if (scale < 1 || scale > 10000) return std::nullopt;
  return scale;
}

}  // namespace model
