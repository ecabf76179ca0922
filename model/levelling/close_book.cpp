#include "model/levelling/close_book.h"

#include <cmath>

#include "model/levelling/book_words.h"

namespace model {
namespace {

// To the micrometre first: half a millimetre goes up whatever the last binary digits say.
double wholeMillimetres(double metres) { return std::round(std::round(metres * 1e6) / 1e3) / 1e3; }

// From the first point to the last, when every foresight has its distance.
std::optional<double> distanceLevelled(const LevelBook& book) {
  for (const Booking& booking : book.bookings) {
    if (booking.foresight && !booking.distance) return std::nullopt;
  }
  return *book.bookings.back().distance - book.bookings[0].distance.value_or(0);
}

// The part of the whole error that has come in by the end of each set-up.
std::vector<double> shares(const LevelBook& book, const Closing& closing) {
  std::vector<double> shares;
  const double start = book.bookings[0].distance.value_or(0);
  for (const Booking& booking : book.bookings) {
    if (!booking.foresight) continue;
    const double setUps = static_cast<double>(shares.size() + 1);
    shares.push_back(closing.distance ? (*booking.distance - start) / *closing.distance
                                      : setUps / static_cast<double>(closing.setUps));
  }
  return shares;
}

}  // namespace

bool Closing::within() const { return std::abs(wholeMillimetres(error())) <= allowed + 1e-9; }

std::optional<Closing> closeBook(const LevelBook& book, const ReducedBook& reduced,
                                 const Allowance& allowance) {
  if (reduced.rows.size() < 2 || !reduced.rows.back().known) return std::nullopt;
  Closing closing;
  closing.on = book.bookings.back().point;
  closing.known = *reduced.rows.back().known;
  closing.found = reduced.rows.back().level;
  closing.setUps = reduced.setUps;
  closing.distance = distanceLevelled(book);
  closing.allowed = wholeMillimetres(
      closing.distance ? allowance.perKilometre * std::sqrt(*closing.distance / 1000)
                       : allowance.perSetUp * std::sqrt(static_cast<double>(closing.setUps)));
  return closing;
}

std::optional<std::string> adjustBook(const LevelBook& book, ReducedBook& reduced,
                                      const std::optional<Closing>& closing, Adjust adjust) {
  if (!closing) return notClosedText(book);
  if (adjust == Adjust::WithinAllowance && !closing->within()) return closingText(*closing);
  const std::vector<double> parts = shares(book, *closing);
  for (size_t i = 1; i < reduced.rows.size(); ++i) {
    ReducedRow& row = reduced.rows[i];
    row.correction = -closing->error() * parts[row.setUp];
  }
  return std::nullopt;
}

}  // namespace model
