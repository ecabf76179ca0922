#include "model/job/value_text.h"

#include "model/job/lengths.h"

namespace model {

namespace {

std::string numberText(const KeySpec& key, double value) {
  if (key.kind == ValueKind::Length) return lengthValueText(value);
  if (key.kind == ValueKind::Level || key.kind == ValueKind::Metres) return levelValueText(value);
  return numberValueText(value);
}

// An empty list means that the key is left out.
std::string cornersText(const Outline& outline) {
  if (outline.empty()) return {};
  std::string text = "[";
  for (const Vec2& point : outline) text += (text.size() > 1 ? ", " : "") + pointText(point);
  return text + "]";
}

}  // namespace

std::string quotedText(std::string_view text) {
  static const char kHex[] = "0123456789ABCDEF";
  std::string quoted = "\"";
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      quoted += '\\';
      quoted += c;
    } else if (byte < 0x20 || byte == 0x7F) {
      quoted += "\\u00";
      quoted += kHex[byte >> 4];
      quoted += kHex[byte & 15];
    } else {
      quoted += c;
    }
  }
  return quoted + "\"";
}

std::string pointText(const Vec2& point) {
  return "[" + lengthValueText(point.x) + ", " + lengthValueText(point.y) + "]";
}

std::string valueText(const KeySpec& key, const Slot& slot, const Job& job) {
  if (key.kind == ValueKind::Choice) return quotedText(choicesOf(key)[choiceIn(slot)]);
  if (key.kind == ValueKind::StoreyRef) {
    const int index = **std::get_if<int*>(&slot);
    const bool known = index >= 0 && static_cast<size_t>(index) < job.storeys.size();
    return known ? quotedText(job.storeys[static_cast<size_t>(index)].name) : std::string{};
  }
  if (auto* const* count = std::get_if<int*>(&slot)) return std::to_string(**count);
  if (isUnset(slot)) return {};
  if (auto* const* number = std::get_if<double*>(&slot)) return numberText(key, **number);
  if (auto* const* number = std::get_if<std::optional<double>*>(&slot)) {
    return numberText(key, ***number);
  }
  if (auto* const* text = std::get_if<std::string*>(&slot)) return quotedText(**text);
  if (auto* const* text = std::get_if<std::optional<std::string>*>(&slot)) {
    return quotedText(***text);
  }
  if (auto* const* point = std::get_if<Vec2*>(&slot)) return pointText(**point);
  if (auto* const* outline = std::get_if<Outline*>(&slot)) return cornersText(**outline);
  return {};
}

}  // namespace model
