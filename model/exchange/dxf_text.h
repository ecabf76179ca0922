// A text as DXF release 12 has it: one line of ASCII.
#pragma once

#include <string>
#include <string_view>

namespace model {

// Characters beyond ASCII as \U+0416, those beyond U+FFFF and bytes that are not UTF-8 as U+FFFD;
// control characters as spaces; a space between per cent signs, and carets as the form has them, so
// that they are not taken for codes.
std::string dxfText(std::string_view text);

}  // namespace model
