// Names as files and ids carry them.
#pragma once

#include <string>

namespace model {

// Small letters and digits of the words with a hyphen between them: "Walls & plate" to
// "walls-plate". Empty when there are none.
std::string slugOf(const std::string& words);

}  // namespace model
