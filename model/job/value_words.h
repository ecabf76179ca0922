// Values and their limits in words, the same in messages and in the reference.
#pragma once

#include <string>
#include <string_view>

#include "model/job/key_table.h"

namespace model {

// "120 mm", "+0.150 m", "40 degrees": a number of a key of this kind.
std::string valueWords(const KeySpec& key, double value);
// Millimetres, at most one decimal: "102.5 mm".
std::string lengthWords(double metres);
// Signed, three places: "-0.975 m".
std::string levelWords(double metres);
// The same with no plus sign: "1.415 m", for what is no level.
std::string metresWords(double metres);

// What a key needs: "a length in mm is needed, like 600".
std::string neededWords(const KeySpec& key);
// What to write when millimetres were probably given for metres or the other way round; empty when
// the other unit would not fit either.
std::string unitMixUpWords(const KeySpec& key, double value);
// What would be right for a number outside its range; spots millimetres given for metres and the
// other way round.
std::string rangeWords(const KeySpec& key, double value);
// "200 mm to 3000 mm".
std::string limitsWords(const KeySpec& key);

// True for year-month-day of a day that exists, from 1900 to 2199.
bool isCalendarDay(std::string_view text);

}  // namespace model
