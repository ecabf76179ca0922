// Text as the eye sees it: scripts that read from the right turned round and their letters joined.
#pragma once

#include <string>

namespace viewer {

// One line of text, from left to right as it stands on the sheet, ready to be lettered. Not for a
// text that has been through it already, nor for one that is still to be broken into lines.
// Source: Unicode Standard Annex 9, by fribidi.
std::string asSeen(const std::string& line);

// True when asSeen() would leave the text alone.
bool seenAsWritten(const std::string& text);

}  // namespace viewer
