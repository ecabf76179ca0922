// Paper sizes and the scales of drawings.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "model/drawing/sheet.h"

namespace model {

enum class Paper { A4, A3 };
enum class Lie { Landscape, Portrait };

const char* nameOf(Paper paper);                           // "A3"
std::optional<Paper> paperNamed(const std::string& name);  // either case

// An empty sheet of the size that ISO 216 gives.
Sheet blankSheet(Paper paper, Lie lie);
// Inside the border: 20 mm at the left for filing, 10 mm elsewhere (ISO 5457, from memory).
Area insideBorder(const Sheet& sheet);

// The reductions that ISO 5455 recommends, largest drawing first: 20, 50, 100, 200 ...
const std::vector<int>& standardScales();
// The first of them, so the largest drawing, that fits; nothing when none does.
std::optional<int> largestScale(const std::function<bool(int)>& fits);

// 50 from "1:50", "1 : 50" or "50"; nothing for anything else. Any whole number from 1 to 10,000
// may be asked for, as rules for 1:25 and 1:75 exist.
std::optional<int> readScale(const std::string& text);

}  // namespace model
