// Whether a text is well-formed UTF-8, as every text in a GLB file must be.
#pragma once

#include <string_view>

namespace model {

// False on stray or missing continuation bytes, overlong forms, surrogates and anything past
// U+10FFFF. Source: [RFC3629]
bool isUtf8(std::string_view text);

}  // namespace model
