// The one table of keys of a job file. Reading, suggestions, the reference, the starter file and
// writing back all work from it, so that none of them can drift from the others.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "model/job/job.h"

namespace model {

enum class ValueKind {
  Length,   // mm when bare; metres in Job
  Level,    // m when bare
  Metres,   // a staff reading or a coordinate of a survey: m when bare
  Degrees,  // bare or "40 deg"
  Pitch,    // as Degrees, and "8 in 12"
  Factor,   // a plain number
  Days,     // a plain number
  Count,    // a whole number
  Text,
  Date,       // "2027-04-12"
  Choice,     // one of a few words
  StoreyRef,  // a storey's name; an index in Job
  Point,      // [x, y]
  Corners,    // [[x, y], ...]
};

// Where a key's value lives in a Job.
using Slot =
    std::variant<double*, std::optional<double>*, std::string*, std::optional<std::string>*, int*,
                 Vec2*, Outline*, BuildingKind*, OpeningKind*, FoundationKind*, GroundFloorKind*,
                 EavesKind*, LimitKind*, BondKind*, BlockBondKind*, BrickFormat*, BlockFormat*,
                 CellarWallKind*, JunctionKind*, LinkKind*, LagKind*, ViewProjection*, CutAway*,
                 SeeThrough*, RiserKind*, TrimmingKind*>;

struct KeySpec {
  const char* table;  // "walls", "site.building"
  const char* name;   // "outer_leaf"
  ValueKind kind;
  Slot (*slot)(Job& job, size_t index);  // index: which of a repeated table
  double low = 0, high = 0;              // allowed, in Job's units; for numbers only
  const char* example = "";              // as it stands in the file
  const char* meaning = "";
  const char* whenAbsent = nullptr;  // in words; null: the value of a default Job
  const char* choices = nullptr;     // "strip|trench-fill", in the order of the enum
  bool required = false;
};

enum class TableForm {
  Always,    // [walls]: left out means its defaults
  Optional,  // [cellar]: left out means there is none
  Many,      // [[opening]]
};

struct TableSpec {
  const char* path;
  TableForm form;
  size_t limit;                     // most repetitions
  const char* labelKey;             // the key whose text tells one repetition from another, or null
  const char* noun;                 // "opening", for messages
  const char* jobPath;              // how Job spells it: "openings"
  const char* meaning;              // for the reference
  size_t (*count)(const Job& job);  // 0 or 1 unless Many
  void (*resize)(Job& job, size_t count);                            // does nothing for Always
  void (*take)(Job& job, size_t to, const Job& from, size_t index);  // Many: copies one
  bool (*equal)(const Job& a, size_t i, const Job& b, size_t j);     // Many: compares one
};

const std::vector<KeySpec>& keyTable();
const std::vector<TableSpec>& tableTable();

const KeySpec* findKey(std::string_view table, std::string_view name);
const TableSpec* findTable(std::string_view path);

// The choices of a key one by one.
std::vector<std::string> choicesOf(const KeySpec& key);
// The index of the choice a slot holds, and setting it.
int choiceIn(const Slot& slot);
void setChoice(const Slot& slot, int choice);

// True when the slots hold equal values. Both must be of the same key.
bool sameValue(const Slot& a, const Slot& b);
// True when two jobs agree in every key of the table.
bool sameJob(const Job& a, const Job& b);
// True when an optional slot holds nothing; false for every other.
bool isUnset(const Slot& slot);

}  // namespace model
