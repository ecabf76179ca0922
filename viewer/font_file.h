// What a typeface's file says of its size.
#pragma once

#include <string>

namespace viewer {

// The height of a line in ems: from the highest to the lowest that the typeface is made for. Two
// typefaces of the same em look the same size, however tall their lines are; Dear ImGui counts
// sizes in lines. 1 when the file cannot be read. Source: OpenType 1.9, tables "head" and "hhea".
double lineInEms(const std::string& path);

}  // namespace viewer
