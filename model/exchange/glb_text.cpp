#include "model/exchange/glb_text.h"

#include <charconv>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <stdexcept>

#include "model/exchange/utf8.h"

namespace model {

namespace {

template <typename T>
void appendFigures(std::string& out, T number) {
  char figures[32];
  const auto end = std::to_chars(figures, figures + sizeof figures, number).ptr;
  out.append(figures, end);
}

// A whole number of ten-thousandths, without noughts at the end. Several times faster than looking
// for the shortest figures that read back as the same number, which these are.
void appendTenThousandths(std::string& out, double count) {
  if (std::abs(count) >= 1e15) return appendFigures(out, count / 1e4);
  auto whole = static_cast<std::int64_t>(count);
  if (whole < 0) out += '-';
  whole = std::abs(whole);
  appendFigures(out, whole / 10000);
  auto rest = static_cast<int>(whole % 10000);
  if (rest == 0) return;
  out += '.';
  for (int unit = 1000; rest > 0; rest %= unit, unit /= 10)
    out += static_cast<char>('0' + rest / unit);
}

void appendEscaped(std::string& out, char c) {
  constexpr char kHex[] = "0123456789abcdef";
  const auto byte = static_cast<unsigned char>(c);
  if (c == '"' || c == '\\') {
    out += '\\';
    out += c;
  } else if (byte < 0x20) {
    out += "\\u00";
    out += kHex[byte >> 4];
    out += kHex[byte & 15];
  } else {
    out += c;
  }
}

}  // namespace

void appendQuoted(std::string& out, std::string_view text) {
  bool plain = true, ascii = true;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    plain = plain && byte >= 0x20 && c != '"' && c != '\\';
    ascii = ascii && byte < 0x80;
  }
  if (!ascii && !isUtf8(text)) throw std::runtime_error("a text in the job is not UTF-8");
  out += '"';
  if (plain) {
    out += text;
  } else {
    for (const char c : text) appendEscaped(out, c);
  }
  out += '"';
}

void appendNumber(std::string& out, double number) { appendFigures(out, number); }
void appendNumber(std::string& out, float number) { appendFigures(out, number); }
void appendNumber(std::string& out, size_t number) { appendFigures(out, number); }
void appendNumber(std::string& out, int number) { appendFigures(out, number); }

void GlbExtras::begin(std::string_view key) {
  if (!members_.empty()) members_ += ',';
  members_ += '"';
  members_ += key;
  members_ += "\":";
}

void GlbExtras::say(std::string_view key, std::string_view text) {
  if (text.empty()) return;
  begin(key);
  appendQuoted(members_, text);
}

void GlbExtras::say(std::string_view key, double number) {
  if (!std::isfinite(number)) throw std::runtime_error("a level or quantity is not finite");
  begin(key);
  appendTenThousandths(members_, std::round(number * 1e4));
}

void GlbExtras::say(std::string_view key, int number) {
  begin(key);
  appendNumber(members_, number);
}

void GlbExtras::say(const GlbExtras& others) {
  if (others.empty()) return;
  if (!members_.empty()) members_ += ',';
  members_ += others.members_;
}

void GlbExtras::say(std::string_view key, const std::vector<GlbExtras>& list) {
  if (list.empty()) return;
  begin(key);
  members_ += '[';
  for (const GlbExtras& entry : list) {
    entry.appendTo(members_);
    members_ += ',';
  }
  members_.back() = ']';
}

void GlbExtras::appendTo(std::string& out) const {
  out += '{';
  out += members_;
  out += '}';
}

}  // namespace model
