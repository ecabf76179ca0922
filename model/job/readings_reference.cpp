// The reference of files of readings, made from the table that their reader works from.
#include "model/job/reading_targets.h"
#include "model/job/readings_csv.h"

namespace model {

namespace {

constexpr const char* kIntroduction =
    R"(
## The file of readings

A CSV file for each `[[readings]]`, as any spreadsheet saves it: commas, semicolons or tabs between
the cells, a decimal point or a decimal comma. The first row names the columns, in any order; those
that are not used may be left out. At most 5,000 rows.

    kind,target,at,along mm,value,x mm,y mm,set-up,note,photo
    level,top-of-concrete,C,,-0.987,,,,wet,pour-3.jpg
    staff,top-of-concrete,A-B,2400,2.385,,,Site,,
    level,oversite,middle of the slab,,-0.350,3000,2000,,,
    face,outer-face,A-B,1200,-9,,,,,
    corner,outer-face,C,,,11242,6062,,,
    side,outer-face,A-B,,11243,,,,,
    diagonal,outer-face,A-C,,12785,,,,,

| kind | value | where |
|---|---|---|
| `level` | metres above the job's 0.000 | as below |
| `staff` | staff reading in metres, from the set-up named; a bigger one is a lower point | as below |
| `face` | mm off its own line: outside counts up, inside down | a wall, and how far along it |
| `corner` | none; its position under x and y | a corner |
| `side` | mm by tape | a wall |
| `diagonal` | mm by tape | two corners with a hyphen between them |

Levels are read at a corner (`C`), on a wall (`A-B`, and under along the mm from A; `B-A` counts from
B), or at any point that x and y give in the drawing's own mm; sills and lintels at an opening, by
its name; concrete also at its level pins: `top-of-concrete` at `pin 3`, `structural-floor` of the
ground slab at `pin B3`, `cellar-slab-top` at `pin K-B3` (`lines JOB --part pins` lists them). One set
reads a point once. A photo is the name of its file alone.

| target | what it is | kind |
|---|---|---|
)";

const char* kindsOf(const ReadingTarget& target) {
  switch (target.kind) {
    case TargetKind::Level:
      return "level, staff";
    case TargetKind::Line:
      return "face, corner, side, diagonal";
    case TargetKind::Distance:
      break;
  }
  return "only under `[[tolerance]]`";
}

}  // namespace

std::string readingsReference() {
  std::string text = kIntroduction;
  for (const ReadingTarget& target : readingTargets()) {
    text += std::string("| `") + target.name + "` | " + target.words;
    if (target.storeys != TargetStoreys::None)
      text += std::string("; of another storey by its number: `") + target.name + ":1`";
    text += std::string(" | ") + kindsOf(target) + " |\n";
  }
  return text;
}

}  // namespace model
