// What was built, held against what is drawn, and what it changes above.
//
// A pure function of the job with its readings; nothing of the design is changed by it. Worked out
// when somebody asks for it, not by buildModel.
#pragma once

#include <string>
#include <vector>

#include "model/asbuilt/deviations.h"
#include "model/asbuilt/face_lines.h"
#include "model/asbuilt/first_bed.h"
#include "model/asbuilt/rafter_changes.h"
#include "model/asbuilt/squareness.h"
#include "model/asbuilt/wall_thickness.h"

namespace model {

enum class ChangeOf { FirstBed, Corner, Face, ClearSpan, Cavity, Bearing, Rafters };
const char* nameOf(ChangeOf of);  // "first bed", "corner", "face", "span", "cavity" ...

// One thing to be done, or to be asked, in a foreman's words.
struct Change {
  ChangeOf of = ChangeOf::FirstBed;
  std::string where;  // "corner C", "A-B"
  std::string words;
};

struct AsBuilt {
  std::vector<Deviation> deviations;  // in the job's order, earlier readings of a point too
  std::vector<Unheld> unheld;
  std::vector<FirstBed> beds;
  std::vector<CornerAsBuilt> corners;
  std::vector<FaceAsBuilt> faces;
  std::vector<SpanAsBuilt> spans;
  std::vector<CavityAsBuilt> cavities;
  std::vector<BearingAsBuilt> bearings;
  RafterChanges roof;
  std::vector<Change> changes;  // of all those what asks for something; from the bottom up
};

// The job must be free of errors.
AsBuilt deriveAsBuilt(const Job& job, const SettingOut& settingOut);

}  // namespace model
