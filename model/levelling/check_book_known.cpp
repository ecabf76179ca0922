#include "model/levelling/check_book_known.h"

#include <cmath>

#include "model/job/nearest.h"
#include "model/level_text.h"
#include "model/levelling/book_findings.h"

namespace model {
namespace {

constexpr double kSameLevel = 0.0005;

class KnownChecker : public BookFindings {
 public:
  using BookFindings::BookFindings;

  Problems check() {
    if (book_.bookings.empty()) return {};
    checkDistances();
    checkKnownLevels();
    return std::move(problems_);
  }

 private:
  void checkDistances() {
    const Booking* before = nullptr;
    const Booking* missing = nullptr;
    bool any = false;
    double last = isReadable(row(0).distance) ? *row(0).distance : 0;
    for (const Booking& booking : book_.bookings) {
      any = any || (booking.distance && booking.foresight);
      if (booking.foresight && !booking.distance && !missing) missing = &booking;
      if (!isReadable(booking.distance)) continue;
      const bool turns = booking.foresight.has_value();
      if (*booking.distance < last - 1e-9 || (turns && *booking.distance <= last)) {
        error(booking.places.distance,
              "the distance to " + named(booking) + " is no more than the one before" +
                  (before ? " it, to " + named(*before) : ""),
              "give metres along the way levelled, counted from the first point");
      }
      last = *booking.distance;
      before = &booking;
    }
    if (any && missing) {
      error(missing->places.distance,
            "there is no distance to " + named(*missing) + ", and others have one",
            "give it at every change point and the last, or nowhere");
    }
  }

  void checkKnownLevels() {
    for (size_t i = 0; i < book_.bookings.size(); ++i) {
      const Booking& booking = row(i);
      if (!isReadable(booking.known)) continue;
      const auto agreed = knownLevel(book_, i, settings_);
      for (const Mark& mark : settings_.marks) {
        if (!sameName(mark.name, booking.point)) continue;
        if (isAboveOrdnance(*booking.known, mark.level)) {
          tellOrdnance(booking, mark.level);
        } else {
          tellOther(booking, mark.level, "the job has " + levelText(mark.level));
        }
      }
      if (agreed && !overruled(i)) {
        tellOther(booking, *agreed, "another row has " + levelText(*agreed));
      }
    }
    const Booking& first = row(0);
    if (first.backsight && !first.known && !knownLevel(book_, 0, settings_)) tellUnknown(first);
  }

  // By a level given in place of the book's.
  bool overruled(size_t i) const {
    if (i + 1 == book_.bookings.size() && settings_.close) return true;
    return settings_.start && sameName(row(i).point, row(0).point);
  }

  bool isAboveOrdnance(double known, double level) const {
    const auto& datum = settings_.ordnanceDatum;
    return datum && std::abs(*datum) > kSameLevel && std::abs(known - level - *datum) < kSameLevel;
  }

  void tellOrdnance(const Booking& booking, double level) {
    error(booking.places.known,
          "the known level of " + named(booking) + ", " + levelText(*booking.known) +
              ", is above ordnance datum; the job has " + levelText(level),
          "leave known out, or give it above the job's 0.000");
  }

  void tellOther(const Booking& booking, double other, const std::string& who) {
    if (std::abs(*booking.known - other) < kSameLevel || !std::isfinite(other)) return;
    error(booking.places.known,
          "the known level of " + named(booking) + " is " + levelText(*booking.known) + " here; " +
              who,
          "a mark has one level; find out which is right");
  }

  void tellUnknown(const Booking& first) {
    std::vector<std::string> names;
    for (const Mark& mark : settings_.marks) names.push_back(mark.name);
    std::string instead = "give it in the column known";
    if (const auto meant = nearest(first.point, names)) {
      instead += "; or is it " + *meant + "?";
    } else if (!names.empty()) {
      instead += "; the marks of the job are";
      for (size_t i = 0; i < names.size(); ++i) instead += (i > 0 ? ", " : " ") + names[i];
    }
    error(first.places.point, "the level of the first point, " + named(first) + ", is not known",
          instead);
  }
};

}  // namespace

Problems checkBookKnown(const LevelBook& book, const std::string& file,
                        const BookSettings& settings) {
  return KnownChecker(book, file, settings).check();
}

}  // namespace model
