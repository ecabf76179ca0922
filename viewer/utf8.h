// Text as characters: UTF-8 to code points and back.
#pragma once

#include <string>
#include <string_view>

namespace viewer {

// Bytes that are no UTF-8 become U+FFFD, each on its own.
std::u32string codePoints(std::string_view text);
std::string utf8(std::u32string_view characters);

}  // namespace viewer
