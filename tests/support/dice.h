// Repeatable chance for test inputs; the standard distributions differ between libraries.
#pragma once

#include <cstdint>
#include <vector>

namespace test_support {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed * 0x9E3779B97F4A7C15ull + 0x1234567ull) {}

  // SplitMix64 (G. L. Steele, D. Lea, C. H. Flood, "Fast splittable pseudorandom number
  // generators", OOPSLA 2014).
  std::uint64_t next() {
    std::uint64_t z = (state_ += 0x9E3779B97F4A7C15ull);
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ull;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBull;
    return z ^ (z >> 31);
  }
  // low..high, both included.
  int between(int low, int high) {
    return low + static_cast<int>(next() % static_cast<std::uint64_t>(high - low + 1));
  }
  double real(double low, double high) {
    return low + (high - low) * (static_cast<double>(next() >> 11) / 9007199254740992.0);
  }
  // Metres in steps of `step` millimetres.
  double length(int lowMm, int highMm, int step = 5) {
    return between(lowMm / step, highMm / step) * step / 1000.0;
  }
  bool chance(int percent) { return between(1, 100) <= percent; }
  template <typename T>
  T pick(const std::vector<T>& choices) {
    return choices[static_cast<std::size_t>(between(0, static_cast<int>(choices.size()) - 1))];
  }

 private:
  std::uint64_t state_;
};

}  // namespace test_support
