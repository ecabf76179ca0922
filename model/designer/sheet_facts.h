// What the designer is told before and after the work: every level and size with where it comes
// from, what had to be assumed, and what was built otherwise.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/as_built.h"
#include "model/job/read_job.h"
#include "model/model.h"

namespace model {

enum class Origin { Given, WorkedOut, Assumed };
const char* nameOf(Origin origin);  // "given", "worked out", "assumed"

// Where a number comes from.
struct Source {
  Origin origin = Origin::Given;
  std::string words;              // the line of the job file, what it follows from, or the rule
  std::vector<size_t> questions;  // numbers of those that it rests on, in order
};

// The readings of one level that count: the one most off speaks for them.
struct LevelAsRead {
  size_t readings = 0;
  size_t deviation = 0;  // into AsBuilt::deviations
};

struct SheetLevel {
  std::string key;  // as in SettingOut::schedule; "bench-mark:0" for the marks
  std::string name, where;
  double level = 0;
  Source source;
  std::vector<size_t> openings;  // whose sill or head it is, into DesignerSheetFacts::openings
  std::optional<LevelAsRead> asRead;
};

struct SheetDimension {
  std::string part;   // "walls", "roof"
  std::string what;   // "cavity"
  std::string value;  // mm, or with its own unit
  Source source;
};

struct SheetOpening {
  size_t opening = 0;  // into SettingOut::openings
  std::string name;    // unique in the job
  std::string wall, kind;
  std::string from;          // the corner that it is measured from
  double at = 0, width = 0;  // metres; `at` from that corner to the nearer jamb
  double coordinating = 0;   // the nearest width in brick sizes, with a joint at both ends
  int halfBricks = 0;        // that it is called after
  double sill = 0, head = 0;
  Source widthFrom, sillFrom, headFrom;
};

enum class AskedBy { Job, Readings, LeftOut, Bond, Check };

struct SheetQuestion {
  size_t number = 0;  // from 1, by when an answer is wanted
  AskedBy by = AskedBy::Job;
  std::string about, text;
  std::string assumed;  // until it is answered; may be empty
  std::string changes;  // what an answer changes; may be empty
  // The first that rests on the answer; none: it cannot be told, so the sooner the better.
  std::optional<size_t> stage;
  std::optional<Vec2> at;         // where on plan, when it is about a place
  std::vector<std::string> keys;  // of the job file, that the answer would give
};

// A reading that is out and counts.
struct OffReading {
  size_t deviation = 0;  // into AsBuilt::deviations
  std::string touches;   // what it changes, or else what is built on it next
};

struct DesignerSheetFacts {
  std::vector<SheetLevel> levels;  // the bench marks, then the schedule: highest first
  std::vector<SheetDimension> dimensions;
  std::vector<SheetOpening> openings;  // in job order
  std::vector<SheetQuestion> questions;
  std::vector<OffReading> off;
};

// `built` is deriveAsBuilt() of the job; `places` those of its file, or empty; `problems` what
// reading and the checks warn of, of which errors are not looked at.
DesignerSheetFacts designerSheetFacts(const Model& model, const AsBuilt& built,
                                      const KeyPlaces& places, const Problems& problems);

// "by Mon 12 Apr 2027, stage 4: Dig the trenches"; "before stage 4: Dig the trenches" without
// dates; "as soon as can be".
std::string wantedBy(const Programme& programme, const SheetQuestion& question);

// "1 to 4, 7, 9": numbers that rise.
std::string numberRuns(const std::vector<size_t>& numbers);

}  // namespace model
