#include "model/programme/programme.h"

#include <algorithm>
#include <charconv>

namespace model {
namespace {

// Names are matched without regard to ASCII case; other scripts as they are.
std::string lowered(const std::string& text) {
  std::string result = text;
  std::transform(result.begin(), result.end(), result.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return result;
}

std::optional<size_t> numbered(const Programme& programme, const std::string& text) {
  size_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  if (number < 1 || number > programme.stages.size()) return std::nullopt;
  return number - 1;
}

// The index of the only stage that fits, or nothing.
template <typename Fits>
std::optional<size_t> onlyOne(const std::vector<Stage>& stages, const Fits& fits) {
  const auto first = std::find_if(stages.begin(), stages.end(), fits);
  if (first == stages.end()) return std::nullopt;
  if (std::any_of(first + 1, stages.end(), fits)) return std::nullopt;
  return static_cast<size_t>(first - stages.begin());
}

}  // namespace

std::optional<size_t> Programme::indexOf(const StageKey& key) const {
  for (size_t i = 0; i < stages.size(); ++i) {
    const auto& shares = stages[i].shares;
    if (stages[i].key == key || std::any_of(shares.begin(), shares.end(),
                                            [&](const StageShare& s) { return s.key == key; })) {
      return i;
    }
  }
  return std::nullopt;
}

std::optional<size_t> Programme::find(const std::string& text) const {
  if (text.empty()) return std::nullopt;
  const std::string wanted = lowered(text);
  if (auto i = onlyOne(stages, [&](const Stage& s) { return s.id == wanted; })) return i;
  if (auto i = numbered(*this, text)) return i;
  if (auto i = onlyOne(stages, [&](const Stage& s) { return lowered(s.name) == wanted; })) return i;
  return onlyOne(stages, [&](const Stage& s) { return lowered(s.name).rfind(wanted, 0) == 0; });
}

}  // namespace model
