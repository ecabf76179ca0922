#include "model/levelling/check_book_levels.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "model/job/nearest.h"
#include "model/level_text.h"
#include "model/levelling/book_words.h"

namespace model {
namespace {

// Two levels in writing are the same to half a millimetre.
constexpr double kSameInWriting = 0.0005 + 1e-9;

std::string folded(std::string name) {
  std::transform(name.begin(), name.end(), name.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
  return name;
}

// The row's first sight.
Place sightPlace(const Booking& booking) {
  return booking.foresight ? booking.places.foresight : booking.places.intermediate;
}

void tellDisagreeing(const LevelBook& book, const ReducedBook& reduced, double agree,
                     const std::string& file, Problems& problems) {
  std::map<std::string, size_t> firsts;
  for (size_t i = 0; i < book.bookings.size(); ++i) {
    const Booking& booking = book.bookings[i];
    const auto [first, isNew] = firsts.emplace(folded(booking.point), i);
    // The last sight on the first mark is the closing error, which has words of its own.
    if (isNew || reduced.rows[i].known) continue;
    const double apart = reduced.rows[i].level - reduced.rows[first->second].level;
    if (std::abs(apart) <= agree + 1e-9) continue;
    const Place other = sightPlace(book.bookings[first->second]);
    problems.push_back({file, sightPlace(booking), Severity::Warning,
                        "\"" + booking.point + "\" comes out " + highOrLow(apart) +
                            " of its level by the sight before" +
                            (other.line > 0 ? ", in line " + std::to_string(other.line) : ""),
                        "read it again, or give the points different names"});
  }
}

void tellHandWorked(const LevelBook& book, const ReducedBook& reduced, const std::string& file,
                    Problems& problems) {
  for (size_t i = 0; i < book.bookings.size(); ++i) {
    const Booking& booking = book.bookings[i];
    const double level = reduced.rows[i].level;
    if (!booking.booked || std::abs(*booking.booked - level) <= kSameInWriting) continue;
    problems.push_back({file, booking.places.booked, Severity::Warning,
                        "the level of \"" + booking.point + "\" is booked as " +
                            levelText(*booking.booked) + " and works out at " + levelText(level),
                        "work it out again"});
  }
}

std::string endInstead(const std::string& point, const BookSettings& settings) {
  std::vector<std::string> names;
  for (const Mark& mark : settings.marks) names.push_back(mark.name);
  const auto meant = nearest(point, names);
  return "end on a mark, or come back to the first point" +
         (meant ? "; or is it " + *meant + "?" : "");
}

}  // namespace

Problems checkBookLevels(const LevelBook& book, const std::string& file,
                         const BookSettings& settings) {
  Problems problems;
  const ReducedBook reduced = reduceBook(book, settings, BookMethod::RiseAndFall);
  tellDisagreeing(book, reduced, settings.agree, file, problems);
  tellHandWorked(book, reduced, file, problems);
  if (!reduced.rows.back().known) {
    const Booking& last = book.bookings.back();
    problems.push_back({file, last.places.point, Severity::Warning,
                        "the book ends on \"" + last.point +
                            "\", whose level is not known, so a wrong reading would not show",
                        endInstead(last.point, settings)});
  }
  return problems;
}

}  // namespace model
