#include "model/levelling/level_book.h"

#include <algorithm>
#include <tuple>

namespace model {
namespace {

char small(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

auto contents(const Booking& b) {
  return std::tie(b.point, b.backsight, b.intermediate, b.foresight, b.distance, b.known, b.booked,
                  b.remark);
}

// Known for the point by its name, whatever row it stands in.
std::optional<double> knownByName(const LevelBook& book, const std::string& name,
                                  const BookSettings& settings) {
  for (const Booking& booking : book.bookings) {
    if (booking.known && sameName(booking.point, name)) return booking.known;
  }
  for (const Mark& mark : settings.marks) {
    if (sameName(mark.name, name)) return mark.level;
  }
  return std::nullopt;
}

bool isSecondHalf(const Booking& first, const Booking& second) {
  return first.foresight && !first.backsight && !first.intermediate && second.backsight &&
         !second.foresight && !second.intermediate && sameName(first.point, second.point);
}

}  // namespace

bool operator==(const Booking& a, const Booking& b) { return contents(a) == contents(b); }

bool sameName(std::string_view a, std::string_view b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](char x, char y) { return small(x) == small(y); });
}

std::optional<double> knownLevel(const LevelBook& book, size_t row, const BookSettings& settings) {
  const std::vector<Booking>& all = book.bookings;
  if (row + 1 == all.size() && row > 0 && settings.close) return settings.close;
  if (row == 0 && settings.start) return settings.start;
  if (settings.start && sameName(all[row].point, all[0].point)) return settings.start;
  return knownByName(book, all[row].point, settings);
}

void joinChangePoints(LevelBook& book) {
  std::vector<Booking> joined;
  for (Booking& booking : book.bookings) {
    if (joined.empty() || !isSecondHalf(joined.back(), booking)) {
      joined.push_back(std::move(booking));
      continue;
    }
    Booking& change = joined.back();
    change.backsight = booking.backsight;
    change.places.backsight = booking.places.backsight;
    const auto take = [](auto& into, auto& from, Place& place, Place other) {
      if (into || !from) return;
      into = from;
      place = other;
    };
    take(change.distance, booking.distance, change.places.distance, booking.places.distance);
    take(change.known, booking.known, change.places.known, booking.places.known);
    take(change.booked, booking.booked, change.places.booked, booking.places.booked);
    if (!booking.remark.empty()) {
      change.remark += (change.remark.empty() ? "" : "; ") + booking.remark;
    }
  }
  book.bookings = std::move(joined);
}

}  // namespace model
