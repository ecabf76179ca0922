#include "model/job/reading_checks.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/job/lengths.h"
#include "model/job/nearest.h"
#include "model/job/reading_targets.h"
#include "model/job/value_words.h"

namespace model {

namespace {

// Nothing on a small building is read as little as this, in millimetres, from a corner.
constexpr double kLeastAlong = 30;

bool isMetres(ReadingKind kind) { return kind == ReadingKind::Level || kind == ReadingKind::Staff; }

TargetKind targetKindOf(ReadingKind kind) {
  return isMetres(kind) ? TargetKind::Level : TargetKind::Line;
}

std::string listed(const std::vector<std::string>& names) {
  std::string words;
  for (const std::string& name : names) words += (words.empty() ? "" : ", ") + name;
  return words;
}

std::string shown(const std::string& name) { return "\"" + name.substr(0, 60) + "\""; }

}  // namespace

bool ReadingChecks::fail(const ReadingRow& row, ReadingColumn column, std::string what,
                         std::string instead) {
  problems_.push_back(
      {file_, row.place(column), Severity::Error, std::move(what), std::move(instead)});
  return false;
}

void ReadingChecks::warn(const ReadingRow& row, ReadingColumn column, std::string what,
                         std::string instead) {
  problems_.push_back(
      {file_, row.place(column), Severity::Warning, std::move(what), std::move(instead)});
}

std::optional<Reading> ReadingChecks::accept(const ReadingRow& row, Reading reading) {
  if (!target(row, reading)) return std::nullopt;
  if (!(isMetres(reading.kind) ? placeOfLevel(row, reading) : placeOnPlan(row, reading)))
    return std::nullopt;
  if (!setUp(row, reading) || !value(row, reading) || !extras(row, reading) || !once(row, reading))
    return std::nullopt;
  if (reading.along) reading.along = fromMillimetres(*reading.along);
  if (reading.position) {
    reading.position =
        Vec2{fromMillimetres(reading.position->x), fromMillimetres(reading.position->y)};
  }
  if (!isMetres(reading.kind)) reading.value = fromMillimetres(reading.value);
  return reading;
}

bool ReadingChecks::target(const ReadingRow& row, const Reading& reading) {
  const TargetKind wanted = targetKindOf(reading.kind);
  const std::vector<std::string> names = readingTargetNames(wanted);
  const std::string& name = reading.target;
  const ReadingTarget* found = findReadingTarget(name);
  const char* kind = wordOf(reading.kind);
  if (!found) {
    const auto near = nearest(name, names);
    return fail(row, ReadingColumn::Target,
                name.empty() ? "this row has no target" : "there is no target " + shown(name),
                near ? "did you mean \"" + *near + "\"?" : "it is one of " + listed(names));
  }
  if (found->kind != wanted) {
    return fail(row, ReadingColumn::Target,
                std::string("a ") + kind + " reading is not of " + found->name,
                std::string("of kind ") + kind + " are " + listed(names));
  }
  if (name == found->name) {
    if (found->storeys == TargetStoreys::None || storeyOfTarget(name, job_.storeys.size()))
      return true;
    return fail(row, ReadingColumn::Target, "there is no storey with " + name + " in this job",
                "only storeys above the first have it");
  }
  if (!storeyOfTarget(name, job_.storeys.size())) {
    return fail(row, ReadingColumn::Target, "there is no " + shown(name) + " in this job",
                found->storeys == TargetStoreys::None
                    ? std::string("write ") + found->name + ", and where it was read under at"
                    : "behind the colon stands a storey's number; the ground floor is 0");
  }
  return true;
}

bool ReadingChecks::unknownPoint(const ReadingRow& row, const std::string& what,
                                 const std::vector<std::string>& names, const std::string& other) {
  // One letter is as near as any other.
  const std::string at = row.text(ReadingColumn::At);
  const auto near = at.size() > 1 ? nearest(at, names) : std::nullopt;
  return fail(row, ReadingColumn::At, what, near ? "did you mean \"" + *near + "\"?" : other);
}

bool ReadingChecks::placeOfLevel(const ReadingRow& row, const Reading& reading) {
  const std::string& at = reading.at;
  if (reading.position) {
    constexpr double kFarthest = 1e7;  // mm, as of coordinates in the job file
    if (std::abs(reading.position->x) > kFarthest || std::abs(reading.position->y) > kFarthest) {
      return fail(row, ReadingColumn::X, "this position is far off the site",
                  "give it in the drawing's own coordinates, in mm");
    }
    if (!reading.along) return true;
    return fail(row, ReadingColumn::Along, "this reading has a distance along and a position",
                "keep one of them");
  }
  const ReadingTarget& target = *findReadingTarget(reading.target);
  if (at.empty()) {
    return fail(row, ReadingColumn::At, "this row does not say where it was read",
                "name a corner, a wall or an opening, or give x and y");
  }
  const auto wall = points_.wall(at);
  if (target.place == TargetPlace::Openings) {
    if (!points_.opening(at)) {
      return unknownPoint(row, "there is no opening " + shown(at), points_.openings(),
                          std::string("a ") + target.words + " is read at an opening, by its name");
    }
  } else if (wall) {
    if (reading.along) return along(row, reading, *wall);
    return fail(row, ReadingColumn::Along, "this row does not say how far along wall " + at,
                "give along in mm from corner " + at.substr(0, at.find('-')));
  } else if (const auto pin = pinOf(at)) {
    // Where the pins stand is not known here.
    if (!isOfPin(reading, *pin)) return wrongPin(row, *pin);
  } else if (!points_.corner(at)) {
    std::vector<std::string> names = points_.walls();
    names.insert(names.end(), points_.letters().begin(), points_.letters().end());
    return unknownPoint(row, "there is no corner or wall " + shown(at), names,
                        "name a corner or a wall, or give x and y of another point");
  }
  if (!reading.along) return true;
  return fail(row, ReadingColumn::Along, at + " is a point, with nothing along it",
              "leave along out, or name a wall");
}

bool ReadingChecks::isOfPin(const Reading& reading, const PinWord& pin) const {
  return findReadingTarget(reading.target)->place == pin.place &&
         storeyOfTarget(reading.target, job_.storeys.size()).value_or(0) == 0;
}

bool ReadingChecks::wrongPin(const ReadingRow& row, const PinWord& pin) {
  const char* target = pin.place == TargetPlace::Pins       ? "top-of-concrete"
                       : pin.place == TargetPlace::SlabPins ? "structural-floor"
                                                            : "cellar-slab-top";
  return fail(row, ReadingColumn::At,
              std::string(findReadingTarget(row.text(ReadingColumn::Target))->words) +
                  " is not read at pin " + pin.name,
              std::string("of that pin write ") + target + ", or name a corner or a wall");
}

bool ReadingChecks::placeOnPlan(const ReadingRow& row, const Reading& reading) {
  const std::string& at = reading.at;
  const auto wall = points_.wall(at);
  const auto strayAlong = [&] {
    if (!reading.along) return true;
    return fail(row, ReadingColumn::Along,
                std::string("a ") + wordOf(reading.kind) + " has no distance along",
                "leave along out; only faces and levels on a wall have it");
  };
  switch (reading.kind) {
    case ReadingKind::Corner:
      if (!points_.corner(at)) {
        return unknownPoint(
            row, at.empty() ? "this row names no corner" : "there is no corner " + shown(at),
            points_.letters(),
            "the corners are " + points_.letters().front() + " to " + points_.letters().back());
      }
      return strayAlong();
    case ReadingKind::Diagonal: {
      const auto two = points_.twoCorners(at);
      if (!two) {
        return fail(row, ReadingColumn::At,
                    at.empty() ? "this row names no corners" : shown(at) + " is not two corners",
                    "name both with a hyphen between: A-C");
      }
      if (points_.neighbours(*two)) {
        return fail(row, ReadingColumn::At, at + " is a side, not a diagonal",
                    "write side, or name two corners that have no wall between them");
      }
      return strayAlong();
    }
    default:
      break;
  }
  if (!wall) {
    return unknownPoint(
        row, at.empty() ? "this row names no wall" : "there is no wall " + shown(at),
        points_.walls(),
        "the walls run from " + points_.walls().front() + " to " + points_.walls().back());
  }
  if (reading.kind == ReadingKind::Side) return strayAlong();
  if (reading.along) return along(row, reading, *wall);
  return fail(row, ReadingColumn::Along, "this row does not say how far along wall " + at,
              "give along in mm from corner " + at.substr(0, at.find('-')));
}

bool ReadingChecks::along(const ReadingRow& row, const Reading& reading, size_t wall) {
  const double along = *reading.along, length = points_.wallLength(wall) * 1000;
  const double metres = along * 1000;
  const auto words = [](double mm) { return lengthWords(mm / 1000); };
  if (along > 0 && along < kLeastAlong && along != std::floor(along) && metres <= length) {
    return fail(row, ReadingColumn::Along, "along is " + words(along),
                "it is in mm; for " + numberValueText(along) + " m write " +
                    numberValueText(std::round(metres)));
  }
  if (along < 0 || along > length + 0.5) {
    return fail(row, ReadingColumn::Along, "along is " + words(along) + ", off wall " + reading.at,
                "the wall is " + words(std::round(length)) + " long; along begins at corner " +
                    reading.at.substr(0, reading.at.find('-')));
  }
  return true;
}

bool ReadingChecks::setUp(const ReadingRow& row, const Reading& reading) {
  if (reading.kind != ReadingKind::Staff) {
    if (!reading.setUp.empty()) {
      warn(row, ReadingColumn::SetUp,
           std::string("a ") + wordOf(reading.kind) + " reading needs no set-up; it is not used",
           "leave it out, or write staff for a staff reading");
    }
    return true;
  }
  std::vector<std::string> names;
  for (const SetUp& setUp : job_.setUps) names.push_back(setUp.name);
  if (std::find(names.begin(), names.end(), reading.setUp) != names.end()) return true;
  const auto near = nearest(reading.setUp, names);
  return fail(row, ReadingColumn::SetUp,
              reading.setUp.empty() ? "this staff reading names no set-up"
                                    : "there is no set-up " + shown(reading.setUp),
              names.empty() ? "add it to the job: [[set_up]] with its name, at and backsight"
              : near        ? "did you mean \"" + *near + "\"?"
                            : "the set-ups are " + listed(names));
}

bool ReadingChecks::extras(const ReadingRow& row, const Reading& reading) {
  if (reading.photo.find_first_of("/\\") != std::string::npos) {
    return fail(row, ReadingColumn::Photo, "this photo's name has a folder in it",
                "give the file's name alone");
  }
  return true;
}

bool ReadingChecks::once(const ReadingRow& row, const Reading& reading) {
  std::string at = reading.at;
  double along = reading.along.value_or(-1);
  if (const auto wall = points_.wall(at)) {
    if (reading.along && points_.backwards(*wall, at))
      along = points_.wallLength(*wall) * 1000 - along;
    at = points_.walls()[*wall];
  } else if (const auto two = points_.twoCorners(at)) {
    at = std::to_string(std::min(two->first, two->second)) + "-" +
         std::to_string(std::max(two->first, two->second));
  }
  // A level and a staff reading of one point are two readings of it.
  const ReadingKind kind = reading.kind == ReadingKind::Staff ? ReadingKind::Level : reading.kind;
  std::string what = std::string(wordOf(kind)) + "\n" + reading.target + "\n";
  if (reading.position && kind == ReadingKind::Level) {
    what += numberValueText(std::round(reading.position->x)) + " " +
            numberValueText(std::round(reading.position->y));
  } else {
    what += at + "\n" + numberValueText(std::round(along));
  }
  const auto [before, fresh] = lineOf_.emplace(what, row.row.place.line);
  if (fresh) return true;
  return fail(row, ReadingColumn::At,
              "this was read already, on line " + std::to_string(before->second),
              "keep one of them; a later reading goes into a set of its own");
}

}  // namespace model
