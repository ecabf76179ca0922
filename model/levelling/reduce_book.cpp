#include "model/levelling/reduce_book.h"

#include <algorithm>
#include <cmath>

namespace model {
namespace {

// The sight by which a row's level is found.
double sightOn(const Booking& booking) {
  return booking.foresight ? *booking.foresight : booking.intermediate.value_or(0);
}

void riseAndFall(const LevelBook& book, ReducedBook& reduced) {
  double before = *book.bookings[0].backsight;  // the reading on the row before, same set-up
  for (size_t i = 1; i < book.bookings.size(); ++i) {
    const Booking& booking = book.bookings[i];
    ReducedRow& row = reduced.rows[i];
    const double sight = sightOn(booking);
    const double rise = before - sight;  // a smaller reading is a higher point
    (rise >= 0 ? row.rise : row.fall) = std::abs(rise);
    row.level = reduced.rows[i - 1].level + row.rise.value_or(0) - row.fall.value_or(0);
    before = booking.backsight ? *booking.backsight : sight;
  }
}

void byCollimation(const LevelBook& book, ReducedBook& reduced) {
  double line = 0;
  for (size_t i = 0; i < book.bookings.size(); ++i) {
    const Booking& booking = book.bookings[i];
    ReducedRow& row = reduced.rows[i];
    if (i > 0) row.level = line - sightOn(booking);
    if (!booking.backsight) continue;
    line = row.level + *booking.backsight;
    row.collimation = line;
  }
}

void addSums(const LevelBook& book, ReducedBook& reduced) {
  BookSums& sums = reduced.sums;
  for (const Booking& booking : book.bookings) {
    sums.backsights += booking.backsight.value_or(0);
    sums.intermediates += booking.intermediate.value_or(0);
    sums.foresights += booking.foresight.value_or(0);
  }
  for (const ReducedRow& row : reduced.rows) {
    sums.rises += row.rise.value_or(0);
    sums.falls += row.fall.value_or(0);
  }
}

ArithmeticCheck intermediatesCheck(const ReducedBook& reduced) {
  double levels = 0, lines = 0, line = 0;
  for (size_t i = 0; i < reduced.rows.size(); ++i) {
    const ReducedRow& row = reduced.rows[i];
    if (i > 0) {
      levels += row.level;
      lines += line;
    }
    if (row.collimation) line = *row.collimation;
  }
  return {{"all levels but the first",
           "each collimation times its sights, less intermediate sights and foresights"},
          {levels, lines - reduced.sums.intermediates - reduced.sums.foresights}};
}

void addChecks(ReducedBook& reduced) {
  const BookSums& sums = reduced.sums;
  const double gained = reduced.rows.back().level - reduced.rows.front().level;
  ArithmeticCheck check{{"backsights less foresights"}, {sums.backsights - sums.foresights}};
  if (reduced.method == BookMethod::RiseAndFall) {
    check.names.emplace_back("rises less falls");
    check.figures.push_back(sums.rises - sums.falls);
  }
  check.names.emplace_back("last level less first");
  check.figures.push_back(gained);
  reduced.checks.push_back(std::move(check));
  if (reduced.method == BookMethod::Collimation) {
    reduced.checks.push_back(intermediatesCheck(reduced));
  }
}

}  // namespace

bool ArithmeticCheck::holds() const {
  const auto [least, most] = std::minmax_element(figures.begin(), figures.end());
  // Levels over the sea times a thousand rows add up to 1e7 m; doubles are good to 1e-9 of that.
  return *most - *least <= 1e-9 + 1e-12 * std::abs(*most);
}

ReducedBook reduceBook(const LevelBook& book, const BookSettings& settings, BookMethod method) {
  ReducedBook reduced;
  reduced.method = method;
  reduced.rows.resize(book.bookings.size());
  if (book.bookings.empty()) return reduced;
  for (size_t i = 0; i < reduced.rows.size(); ++i) {
    reduced.rows[i].known = knownLevel(book, i, settings);
    reduced.rows[i].setUp = reduced.setUps > 0 ? reduced.setUps - 1 : 0;
    if (book.bookings[i].backsight) ++reduced.setUps;
  }
  reduced.rows[0].level = reduced.rows[0].known.value_or(0);
  method == BookMethod::RiseAndFall ? riseAndFall(book, reduced) : byCollimation(book, reduced);
  addSums(book, reduced);
  addChecks(reduced);
  return reduced;
}

}  // namespace model
