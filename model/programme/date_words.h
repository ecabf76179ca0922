// Dates as people read them.
#pragma once

#include <string>

namespace model {

// "Mon 12 Apr 2027" from "2027-04-12"; the text itself when it is not a date.
std::string dateWords(const std::string& iso);

// "Mon 12 to Wed 14 Apr 2027", "Mon 12 Apr 2027" for one day; empty without dates.
std::string dateSpanWords(const std::string& from, const std::string& to);

}  // namespace model
