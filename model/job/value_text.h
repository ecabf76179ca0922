// Values as TOML text.
#pragma once

#include <string>
#include <string_view>

#include "model/job/key_table.h"

namespace model {

// A text as a TOML string in double quotes.
std::string quotedText(std::string_view text);

// "[3590, 0]".
std::string pointText(const Vec2& point);

// The value in a slot as the file has it, such that reading gives exactly it back. A StoreyRef
// becomes the name of that storey of `job`. Empty when the slot is unset or an
// empty outline: such a key is left out.
std::string valueText(const KeySpec& key, const Slot& slot, const Job& job);

}  // namespace model
