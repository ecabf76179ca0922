#include "model/job/decimals.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>

namespace model {
namespace {

constexpr size_t kLongest = 30;  // characters; longer ones are no reading

void replaceAll(std::string& text, std::string_view from, std::string_view to) {
  for (size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size()) {
    text.replace(at, from.size(), to);
  }
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }

// Where the number at the beginning ends: a sign, digits, one mark. 0 when there are no digits.
size_t numberEnd(const std::string& text) {
  size_t at = !text.empty() && (text[0] == '-' || text[0] == '+') ? 1 : 0;
  size_t digits = 0;
  bool mark = false;
  for (; at < text.size(); ++at) {
    if (isDigit(text[at])) {
      ++digits;
    } else if ((text[at] == '.' || text[at] == ',') && !mark) {
      mark = true;
    } else {
      break;
    }
  }
  return digits > 0 ? at : 0;
}

std::string shortened(const std::string& text) {
  size_t end = std::min(text.size(), kLongest);
  while (end < text.size() && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end;
  return "\"" + text.substr(0, end) + (end < text.size() ? "..." : "") + "\"";
}

double valueOf(std::string number) {
  std::replace(number.begin(), number.end(), ',', '.');
  const size_t sign = number[0] == '+' ? 1 : 0;
  double value = 0;
  const auto [end, error] = std::from_chars(number.data() + sign, number.data() + number.size(),
                                            value, std::chars_format::fixed);
  return error == std::errc{} ? value : std::numeric_limits<double>::quiet_NaN();
}

}  // namespace

std::string withDecimalMark(std::string number, char mark) {
  const size_t at = number.find_first_of(".,");
  if (at != std::string::npos && number.find_first_of(".,", at + 1) == std::string::npos)
    number[at] = mark;
  return number;
}

std::optional<double> Decimals::read(const CsvCell& cell, const DecimalWords& words) {
  const std::string unit = words.unit, write = "write " + unit + ", such as " + words.example;
  std::string text = cell.text;
  replaceAll(text, "\xE2\x88\x92", "-");  // minus and dashes, as spreadsheets and people write them
  replaceAll(text, "\xE2\x80\x93", "-");
  replaceAll(text, "\xE2\x80\x94", "-");
  if (text.empty() || text == "-") return std::nullopt;
  const size_t end = numberEnd(text);
  if (text.size() > kLongest || end == 0) {
    return fault(cell, shortened(cell.text) + " is no number", write);
  }
  const std::string number = text.substr(0, end);
  const std::string rest = text.substr(end);
  const size_t at = number.find_first_of(".,");
  if (at != std::string::npos && rest.find_first_of(".,") == 0) {
    return fault(cell, shortened(cell.text) + " has more than one point or comma",
                 "write " + unit + " with one decimal mark and nothing between the thousands");
  }
  if (!rest.empty()) {
    const bool letters = rest.find_first_of("0123456789") == std::string::npos;
    return fault(cell,
                 shortened(cell.text) + (letters ? " is more than a number" : " is no number"),
                 letters ? "leave the unit out: the number is " + unit : write);
  }
  if (at != std::string::npos) {
    if (mark_ == 0) {
      mark_ = number[at];
      markLine_ = cell.place.line;
    }
    if (mark_ != number[at]) {
      return fault(cell,
                   number + " has a decimal " + (mark_ == ',' ? "point" : "comma") + ", but line " +
                       std::to_string(markLine_) + " a decimal " +
                       (mark_ == ',' ? "comma" : "point"),
                   "use one of them in the whole file");
    }
  }
  const double value = valueOf(number);
  if (std::isfinite(value)) return value;
  return fault(cell, shortened(cell.text) + " is no number", write);
}

double Decimals::fault(const CsvCell& cell, const std::string& what, const std::string& instead) {
  problems_.push_back({file_, cell.place, Severity::Error, what, instead});
  return std::numeric_limits<double>::quiet_NaN();
}

}  // namespace model
