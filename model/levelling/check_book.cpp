#include "model/levelling/check_book.h"

#include <cmath>

#include "model/job/lengths.h"
#include "model/level_text.h"
#include "model/levelling/book_findings.h"
#include "model/levelling/check_book_known.h"
#include "model/levelling/check_book_levels.h"
#include "model/levelling/staff_text.h"

namespace model {
namespace {

constexpr double kFarthestLevel = 9000;  // no ground on earth is higher, so it is millimetres
constexpr size_t kLongestName = 60;

class BookChecker : public BookFindings {
 public:
  using BookFindings::BookFindings;

  Problems check() {
    if (book_.bookings.empty()) {
      error({}, "the book has no bookings",
            "the first is on a mark: its name, its known level and the backsight read on it");
      return std::move(problems_);
    }
    for (size_t i = 0; i < book_.bookings.size(); ++i) {
      checkPoint(row(i));
      checkReadings(row(i));
      checkSights(i);
    }
    checkEnd();
    return std::move(problems_);
  }

 private:
  void checkPoint(const Booking& booking) {
    if (booking.point.empty()) {
      error(booking.places.point, "nothing says which point this is", "give the point a name");
    } else if (booking.point.size() > kLongestName) {
      error(booking.places.point,
            "the point's name has " + std::to_string(booking.point.size()) + " letters",
            "keep the name under 60 letters, and put the rest into the remark");
    }
  }

  // ---- one reading -----------------------------------------------------------

  void checkReadings(const Booking& booking) {
    const BookingPlaces& places = booking.places;
    checkReading("backsight", booking.backsight, places.backsight);
    checkReading("intermediate sight", booking.intermediate, places.intermediate);
    checkReading("foresight", booking.foresight, places.foresight);
    checkLevel("known level", booking.known, places.known);
    checkLevel("level", booking.booked, places.booked);
  }

  void checkReading(const std::string& sight, const std::optional<double>& reading, Place place) {
    if (!isReadable(reading) || std::abs(*reading) <= settings_.staff + 1e-9) return;
    const double size = std::abs(*reading);
    const std::string text = numberValueText(*reading);
    if (size >= 100 && size <= settings_.staff * 1000) {
      error(place, sight + " " + text + " is past any staff; it looks like millimetres",
            "write metres: " + staffText(*reading / 1000));
    } else {
      error(place,
            sight + " " + text + " is past the end of a staff of " +
                numberValueText(settings_.staff) + " m",
            "read it again, or say how long the staff is");
    }
  }

  void checkLevel(const std::string& what, const std::optional<double>& level, Place place) {
    if (!isReadable(level) || std::abs(*level) <= kFarthestLevel) return;
    error(place, what + " " + levelText(*level) + " is higher than any ground",
          "write metres: " + levelText(*level / 1000));
  }

  // ---- the order of sights ---------------------------------------------------

  // Where a row's first sight stands.
  static Place sightPlace(const Booking& booking) {
    if (booking.intermediate) return booking.places.intermediate;
    return booking.foresight ? booking.places.foresight : booking.places.backsight;
  }

  void checkSights(size_t i) {
    const Booking& booking = row(i);
    if (!booking.backsight && !booking.intermediate && !booking.foresight) {
      error(booking.places.backsight, "there is no reading on " + named(booking),
            "give its staff reading, or take the row out");
    } else if (booking.intermediate && (booking.backsight || booking.foresight)) {
      error(booking.places.intermediate,
            named(booking) + " has an intermediate sight and a " +
                (booking.foresight ? "foresight" : "backsight") + " in one row",
            "only a change point has two sights, a foresight and a backsight; else one row is one "
            "sight");
    } else if (i == 0) {
      checkFirst(booking);
    } else if (booking.backsight && !booking.foresight) {
      checkLoneBacksight(row(i - 1), booking);
    } else if (i > 1 && isOpenEnd(row(i - 1))) {
      error(row(i - 1).places.backsight,
            "there is no backsight on change point " + named(row(i - 1)),
            "after a foresight the instrument is set up again: read the same point as a backsight "
            "before going on");
    }
  }

  // A foresight with which the set-up ends and none begins.
  static bool isOpenEnd(const Booking& booking) {
    return booking.foresight && !booking.backsight && !booking.intermediate;
  }

  void checkFirst(const Booking& booking) {
    if (booking.intermediate || !booking.backsight) {
      error(sightPlace(booking),
            std::string(booking.foresight ? "a foresight" : "an intermediate sight") + " on " +
                named(booking) + " with no set-up before it",
            "begin with the backsight on a mark of known level");
    } else if (booking.foresight) {
      error(booking.places.foresight,
            "a foresight on the first point, " + named(booking) + ", with no set-up before it",
            "the first row has a backsight only");
    }
  }

  void checkLoneBacksight(const Booking& before, const Booking& booking) {
    if (isOpenEnd(before)) {
      error(booking.places.backsight,
            "the backsight on " + named(booking) +
                " hangs on nothing: the foresight before it is on " + named(before),
            "a change point is read twice, a foresight and then a backsight on the same point");
    } else {
      error(booking.places.foresight,
            "the instrument was moved at " + named(booking) + " without a foresight on it",
            "read the change point before moving, and again after; a new run from another mark is "
            "a book of its own");
    }
  }

  void checkEnd() {
    const Booking& last = book_.bookings.back();
    const BookingPlaces& places = last.places;
    if (book_.bookings.size() == 1) {
      if (last.backsight && !last.foresight && !last.intermediate)
        error(places.point, "there is one row only", "go on with the points that were read");
    } else if (last.intermediate && !last.foresight && !last.backsight) {
      error(places.intermediate, "the book ends on an intermediate sight, so nothing closes it",
            "read a mark again at the end, as a foresight; without one, the last sight is the "
            "foresight");
    } else if (last.backsight) {
      error(places.backsight,
            "the book ends on a backsight, on " + named(last) + ", so nothing closes it",
            "read a mark at the end, as a foresight");
    }
  }
};

}  // namespace

Problems checkBook(const LevelBook& book, const std::string& file, const BookSettings& settings) {
  Problems problems = BookChecker(book, file, settings).check();
  const auto add = [&](const Problems& more) {
    problems.insert(problems.end(), more.begin(), more.end());
  };
  add(checkBookKnown(book, file, settings));
  if (!hasErrors(problems)) add(checkBookLevels(book, file, settings));
  sortByPlace(problems);
  return problems;
}

}  // namespace model
