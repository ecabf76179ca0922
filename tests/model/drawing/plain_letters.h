// A typeface for tests: every character is as wide as another, so that layouts are the same on
// every machine.
#pragma once

#include "model/drawing/sheet.h"

namespace test_support {

inline model::TextWidth plainLetters() {
  return [](const std::string& text, double size, bool bold) {
    double count = 0;
    for (const char c : text) count += (static_cast<unsigned char>(c) & 0xc0) != 0x80;
    return count * size * (bold ? 0.95 : 0.9);
  };
}

}  // namespace test_support
