// Lengths, levels and angles as people write them, and back again.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace model {

// What came of reading a quoted value: a value, or why there is none.
struct ReadValue {
  std::optional<double> value;
  std::string fault;  // "the unit is missing", when there is no value
};

// A length or level with its unit: "1.2 m", "1200 mm", "120 cm", "8'-3 1/2\"", "3 ft 6 in",
// "-0.5 m". Value in metres. A number without a unit is refused, because quoted values carry
// their unit; only 0 is the same in all of them.
ReadValue readLength(std::string_view text);

// "40 deg", "40 degrees", "40°"; value in degrees.
ReadValue readDegrees(std::string_view text);

// As readDegrees, and also rise in run: "8 in 12" (any unit, the same for both).
ReadValue readPitch(std::string_view text);

// Millimetres and metres as the file has them. Exactly one rounding, so that 102.5 in the file and
// 0.1025 in the source are the same double.
double fromMillimetres(double millimetres);

// TOML text of a value such that the reader gives exactly `value` back: "102.5", or "0.1 m" in
// quotes for the few doubles that no number of millimetres gives.
std::string lengthValueText(double metres);
// At least three places: "-0.975".
std::string levelValueText(double metres);
// The shortest text that reads back as `value`: "40", "1.3".
std::string numberValueText(double value);

}  // namespace model
