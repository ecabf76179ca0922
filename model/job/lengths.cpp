#include "model/job/lengths.h"

#include <cctype>
#include <charconv>
#include <cmath>

namespace model {

namespace {

constexpr double kInch = 0.0254;  // exact, by the international yard of 1959
constexpr size_t kLongest = 60;   // characters of a quoted value; longer ones are no length

enum class LengthUnit { Millimetre, Centimetre, Metre, Inch, Foot };

struct UnitWord {
  std::string_view word;
  LengthUnit unit;
};

// Longest words first, so that "mm" is not read as "m".
constexpr UnitWord kUnitWords[] = {
    {"millimetres", LengthUnit::Millimetre},
    {"centimetres", LengthUnit::Centimetre},
    {"metres", LengthUnit::Metre},
    {"metre", LengthUnit::Metre},
    {"inches", LengthUnit::Inch},
    {"inch", LengthUnit::Inch},
    {"feet", LengthUnit::Foot},
    {"foot", LengthUnit::Foot},
    {"\xE2\x80\xB2", LengthUnit::Foot},  // prime
    {"\xE2\x80\xB3", LengthUnit::Inch},  // double prime
    {"\xE2\x80\x99", LengthUnit::Foot},  // closing quotes, as word processors make them
    {"\xE2\x80\x9D", LengthUnit::Inch},
    {"mm", LengthUnit::Millimetre},
    {"cm", LengthUnit::Centimetre},
    {"''", LengthUnit::Inch},
    {"ft", LengthUnit::Foot},
    {"in", LengthUnit::Inch},
    {"m", LengthUnit::Metre},
    {"'", LengthUnit::Foot},
    {"\"", LengthUnit::Inch},
};

// Reads along one quoted value.
class Cursor {
 public:
  explicit Cursor(std::string_view text) : rest_(text) { skipSpace(); }

  bool atEnd() const { return rest_.empty(); }
  std::string_view rest() const { return rest_; }

  void skipSpace() {
    while (!rest_.empty() && (rest_.front() == ' ' || rest_.front() == '\t'))
      rest_.remove_prefix(1);
  }

  bool take(std::string_view word) {
    if (rest_.substr(0, word.size()) != word) return false;
    rest_.remove_prefix(word.size());
    return true;
  }

  bool digitNext() const {
    return !rest_.empty() &&
           ((rest_.front() >= '0' && rest_.front() <= '9') || rest_.front() == '.');
  }

  // A plain decimal number: no sign, no exponent, no thousands comma.
  std::optional<double> decimal() {
    if (!digitNext()) return std::nullopt;
    double value = 0;
    const auto [end, error] =
        std::from_chars(rest_.data(), rest_.data() + rest_.size(), value, std::chars_format::fixed);
    if (error != std::errc{} || !std::isfinite(value)) return std::nullopt;
    rest_.remove_prefix(static_cast<size_t>(end - rest_.data()));
    return value;
  }

  // "3", "3.5", "1/2", "3 1/2", "3-1/2".
  std::optional<double> number() {
    const auto first = decimal();
    if (!first) return std::nullopt;
    if (take("/")) return fraction(*first);
    const Cursor before = *this;
    if (!take("-")) skipSpace();
    if (digitNext()) {
      const auto top = decimal();
      if (top && take("/")) {
        const auto part = fraction(*top);
        if (!part) return std::nullopt;
        return *first + *part;
      }
    }
    *this = before;
    return first;
  }

  std::optional<LengthUnit> unit() {
    skipSpace();
    for (const UnitWord& candidate : kUnitWords) {
      const Cursor before = *this;
      if (!take(candidate.word)) continue;
      const bool isWord = candidate.word.front() >= 'a' && candidate.word.front() <= 'z';
      if (isWord && !rest_.empty() && std::isalpha(static_cast<unsigned char>(rest_.front()))) {
        *this = before;  // "min" is no inch
        continue;
      }
      return candidate.unit;
    }
    return std::nullopt;
  }

 private:
  std::optional<double> fraction(double top) {
    const auto bottom = decimal();
    if (!bottom || *bottom == 0) return std::nullopt;
    return top / *bottom;
  }

  std::string_view rest_;
};

double inMetres(double amount, LengthUnit unit) {
  switch (unit) {
    case LengthUnit::Millimetre:
      return amount / 1000.0;
    case LengthUnit::Centimetre:
      return amount / 100.0;
    case LengthUnit::Metre:
      return amount;
    case LengthUnit::Inch:
      return amount * kInch;
    case LengthUnit::Foot:
      return amount * 12.0 * kInch;
  }
  return amount;
}

// Takes a leading sign; true when it was a minus.
bool takeSign(Cursor& cursor) {
  const bool minus = cursor.take("-") || cursor.take("\xE2\x88\x92");
  if (!minus) cursor.take("+");
  cursor.skipSpace();
  return minus;
}

ReadValue faulty(std::string fault) { return {std::nullopt, std::move(fault)}; }

// The inches after feet: "-3 1/2\"", " 6 in".
ReadValue readInchesAfter(Cursor& cursor, double feet) {
  cursor.skipSpace();
  if (cursor.take("-")) cursor.skipSpace();
  if (cursor.atEnd()) return {feet * 12.0 * kInch, {}};
  const auto inches = cursor.number();
  if (!inches) return faulty("what follows the feet is no number of inches");
  if (cursor.unit() != LengthUnit::Inch) return faulty("the inches have no unit after them");
  if (*inches >= 12) return faulty("there are 12 or more inches after the feet");
  cursor.skipSpace();
  if (!cursor.atEnd()) return faulty("there is something after the inches");
  return {(feet * 12.0 + *inches) * kInch, {}};
}

// Locale plays no part here: to_chars and from_chars, never printf.
double parsed(std::string_view text) {
  double value = 0;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

}  // namespace

ReadValue readLength(std::string_view text) {
  if (text.size() > kLongest) return faulty("it is too long for a length");
  Cursor cursor(text);
  if (cursor.atEnd()) return faulty("it is empty");
  const bool minus = takeSign(cursor);
  const auto amount = cursor.number();
  if (!amount) return faulty("it does not begin with a number");
  cursor.skipSpace();
  if (cursor.take(",")) return faulty("it has a comma; decimals take a point");
  if (cursor.atEnd()) return *amount == 0 ? ReadValue{0.0, {}} : faulty("the unit is missing");
  const auto unit = cursor.unit();
  if (!unit) return faulty("'" + std::string(cursor.rest()) + "' is no unit of length");
  ReadValue result{inMetres(*amount, *unit), {}};
  if (*unit == LengthUnit::Foot) result = readInchesAfter(cursor, *amount);
  cursor.skipSpace();
  if (result.value && !cursor.atEnd()) return faulty("there is something after the unit");
  if (result.value && minus) result.value = -*result.value;
  return result;
}

ReadValue readDegrees(std::string_view text) {
  if (text.size() > kLongest) return faulty("it is too long for an angle");
  Cursor cursor(text);
  const bool minus = takeSign(cursor);
  const auto amount = cursor.decimal();
  if (!amount) return faulty("it does not begin with a number");
  cursor.skipSpace();
  const bool hasUnit = cursor.take("degrees") || cursor.take("deg") || cursor.take("\xC2\xB0");
  if (!hasUnit) return faulty("the unit is missing");
  cursor.skipSpace();
  if (!cursor.atEnd()) return faulty("there is something after the unit");
  return {minus ? -*amount : *amount, {}};
}

ReadValue readPitch(std::string_view text) {
  const ReadValue degrees = readDegrees(text);
  if (degrees.value || text.size() > kLongest) return degrees;
  Cursor cursor(text);
  const auto rise = cursor.number();
  if (!rise) return degrees;
  cursor.skipSpace();
  if (!cursor.take("in")) return degrees;
  cursor.skipSpace();
  const auto run = cursor.number();
  cursor.skipSpace();
  if (!run || !cursor.atEnd()) return faulty("a slope is written as rise in run, like 8 in 12");
  if (*run <= 0) return faulty("the run is 0");
  return {std::atan2(*rise, *run) * 180.0 / 3.14159265358979323846, {}};
}

double fromMillimetres(double millimetres) { return millimetres / 1000.0; }

std::string lengthValueText(double metres) {
  char text[64];
  for (int digits = 1; digits <= 17; ++digits) {
    const auto end = std::to_chars(text, text + sizeof text, metres * 1000.0,
                                   std::chars_format::general, digits);
    const std::string_view candidate(text, static_cast<size_t>(end.ptr - text));
    if (candidate.find('e') != std::string_view::npos) continue;
    if (fromMillimetres(parsed(candidate)) != metres) continue;
    return candidate == "-0" ? "0" : std::string(candidate);
  }
  return "\"" + numberValueText(metres) + " m\"";
}

std::string levelValueText(double metres) {
  if (metres == 0) return "0.000";
  char text[512];
  const auto end = std::to_chars(text, text + sizeof text, metres, std::chars_format::fixed, 3);
  const std::string_view short3(text, static_cast<size_t>(end.ptr - text));
  return parsed(short3) == metres ? std::string(short3) : numberValueText(metres);
}

std::string numberValueText(double value) {
  if (value == 0) return "0";
  char text[1200];  // holds any double written without an exponent
  const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::fixed);
  return std::string(text, end.ptr);
}

}  // namespace model
