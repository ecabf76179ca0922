// Pieces of JSON, written straight into a text.
//
// A house has thousands of values, and a tree of them in memory takes many times longer to make
// than the file takes to write.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace model {

// With its quotes and escapes. Throws std::runtime_error when it is not UTF-8.
void appendQuoted(std::string& out, std::string_view text);
// The shortest figures that read back as the same number; must be finite.
void appendNumber(std::string& out, double number);
void appendNumber(std::string& out, float number);
void appendNumber(std::string& out, size_t number);
void appendNumber(std::string& out, int number);

template <typename T>
void appendList(std::string& out, const T& numbers) {
  out += '[';
  for (const auto& number : numbers) {
    appendNumber(out, number);
    out += ',';
  }
  if (out.back() == ',') out.pop_back();
  out += ']';
}

// What a thing says of itself: flat, numbers and texts only, which readers of glTF can be trusted
// with.
class GlbExtras {
 public:
  // Nothing is written for an empty text: readers trip over empty values.
  void say(std::string_view key, std::string_view text);
  // To a tenth of a millimetre: what is written is a figure for people, not the geometry. Throws
  // std::runtime_error when it is not finite.
  void say(std::string_view key, double number);
  void say(std::string_view key, int number);
  // All that other extras say.
  void say(const GlbExtras& others);
  // A list of objects; nothing is written for an empty one.
  void say(std::string_view key, const std::vector<GlbExtras>& list);

  bool empty() const { return members_.empty(); }
  // "{...}", appended.
  void appendTo(std::string& out) const;

 private:
  void begin(std::string_view key);

  std::string members_;  // without the braces
};

}  // namespace model
